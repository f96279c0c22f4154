#include "ui/widgets/shown_refresh.h"

#include <QEvent>
#include <QScopedValueRollback>
#include <utility>

namespace ww::ui {
namespace {

/// A refresh that brings a scroll bar, without which it would be another, is not done for ever.
constexpr int kMostInTurn = 3;

}  // namespace

ShownRefresh::ShownRefresh(QWidget* widget, std::function<void()> refresh)
    : QObject(widget), m_widget(widget), m_refresh(std::move(refresh)), m_isShown(widget->isVisible()) {
    widget->installEventFilter(this);
}

void ShownRefresh::want() {
    m_isWanted = true;
    if (m_isShown) {
        catchUp();
    }
}

void ShownRefresh::catchUp() {
    if (m_isRefreshing) {
        return;
    }
    const QScopedValueRollback<bool> refreshing(m_isRefreshing, true);
    for (int i = 0; i < kMostInTurn && std::exchange(m_isWanted, false); ++i) {
        m_refresh();
    }
}

bool ShownRefresh::eventFilter(QObject* watched, QEvent* event) {
    // A widget that is about to be shown is still given its size, part by part.
    if (event->type() == QEvent::Show) {
        m_isShown = true;
        catchUp();
    } else if (event->type() == QEvent::Hide && !m_widget->isVisible()) {
        m_isShown = false;
    }
    return QObject::eventFilter(watched, event);
}

}  // namespace ww::ui
