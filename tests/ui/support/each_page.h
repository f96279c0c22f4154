// Every page of a window: each place, and each tab where a place has tabs. Not for dialogs.
#pragma once

#include <QTabWidget>

#include "ui/main_window.h"

namespace ww::support {

/// Shows one page after the other and calls `see` with its name in words ("place 5, Test sheet").
template <class See>
void eachPage(ui::MainWindow& window, See see) {
    for (int place = ui::MainWindow::Job; place <= ui::MainWindow::Report; ++place) {
        window.showPlace(static_cast<ui::MainWindow::Place>(place));
        const QString name = QStringLiteral("place %1").arg(place + 1);
        QTabWidget* tabs = nullptr;
        for (QTabWidget* candidate : window.findChildren<QTabWidget*>()) {
            tabs = candidate->isVisible() ? candidate : tabs;
        }
        if (tabs == nullptr) {
            see(name);
            continue;
        }
        const int shown = tabs->currentIndex();
        for (int page = 0; page < tabs->count(); ++page) {
            tabs->setCurrentIndex(page);
            see(name + QStringLiteral(", ") + tabs->tabText(page).remove('&'));
        }
        tabs->setCurrentIndex(shown);
    }
}

}  // namespace ww::support
