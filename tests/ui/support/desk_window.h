// A main window on a workbook of its own, with hands on its keys. Keys go to the widget that has the focus,
// as the desktop sends them. Not for pictures.
#pragma once

#include <QApplication>
#include <QCloseEvent>
#include <QLabel>
#include <QTest>

#include "core/balancing/standing_readings.h"
#include "tests/support/counting_ids.h"
#include "tests/support/fixed_clock.h"
#include "tests/support/temporary_folder.h"
#include "tests/support/walk_job.h"
#include "ui/main_window.h"
#include "ui/places/walk/walk_place.h"

namespace ww::support {

class DeskWindow {
  public:
    explicit DeskWindow(const WalkJobOptions& options = {}, bool isRoundOpen = true)
        : DeskWindow(walkJob(options), isRoundOpen) {}
    DeskWindow(const project::Edit& content, bool isRoundOpen,
               double desktopPoints = ui::Preferences::kLeastPoints)
        : preferences(QString::fromStdString(folder.file("settings.ini")), desktopPoints),
          ids(1'000'000),
          window(ui::Desk{clock, ids, "A. Fields", "LT-1"}, preferences) {
        const base::Outcome made =
            window.bridge().create(QString::fromStdString(folder.file("walk.wwj")), content);
        if (!made) {
            throw std::runtime_error(base::englishWithSubject(made.fault()));
        }
        window.resize(1366, 694);
        window.show();
        window.activateWindow();
        QTest::qWait(0);
        if (isRoundOpen) {
            const base::Outcome opened = bridge().openRound(project::RoundKind::Adjusting);
            if (!opened) {
                throw std::runtime_error(base::englishWithSubject(opened.fault()));
            }
        }
        window.showPlace(ui::MainWindow::Walk);
    }

    ui::WorkbookBridge& bridge() { return window.bridge(); }
    const project::Project& project() { return window.bridge().project(); }
    ui::WalkGrid& grid() { return *window.walk()->grid(); }
    ui::WalkModel& model() { return *window.walk()->model(); }

    void key(int key, Qt::KeyboardModifiers modifiers = {}) {
        QTest::keyClick(QApplication::focusWidget(), static_cast<Qt::Key>(key), modifiers);
    }
    void type(const QString& text) {
        for (const QChar c : text) {
            QTest::keyClick(QApplication::focusWidget(), c.toLatin1());
        }
    }
    void enter(const QString& text) {
        type(text);
        key(Qt::Key_Return);
    }
    /// Standing dp of a branch in the last round as entered; empty where there is none.
    std::string stored(const std::string& tag) {
        const project::Reading* reading =
            balancing::countingReading(project(), project().lastRound()->id, project().branchTagged(tag)->id);
        return reading != nullptr && reading->dp ? reading->dp->text() : "";
    }
    int storedCount() {
        int count = 0;
        for (const std::size_t i : project().readingsOf(project().lastRound()->id)) {
            const project::Reading& reading = project().readings()[i];
            count += reading.dp && reading.status == project::ReadingStatus::Standing ? 1 : 0;
        }
        return count;
    }
    std::string currentTag() { return project().branches().at(model().branchAt(grid().currentRow())).tag; }
    int currentColumn() { return grid().currentIndex().column(); }
    /// The line of keys at the bottom.
    QString keyLine() const { return window.findChild<QLabel*>("key_line")->text(); }
    static int dialogCount() {
        int count = 0;
        for (const QWidget* widget : QApplication::topLevelWidgets()) {
            count += widget->isVisible() && !qobject_cast<const ui::MainWindow*>(widget) ? 1 : 0;
        }
        return count;
    }

    TemporaryFolder folder;
    FixedClock clock{"2026-03-02T10:00:00Z"};  ///< after the survey's readings
    ui::Preferences preferences;
    CountingIds ids;
    ui::MainWindow window;
};

/// The part of a widget that a screen reader calls so; null where there is none.
template <class Widget>
Widget* named(const QWidget& whole, const char* name) {
    for (Widget* part : whole.findChildren<Widget*>()) {
        if (part->accessibleName() == name) {
            return part;
        }
    }
    return nullptr;
}

/// Closes a window as a person does; false where it stays.
inline bool isClosed(ui::MainWindow& window) {
    QCloseEvent closing;
    QApplication::sendEvent(&window, &closing);
    return closing.isAccepted();
}

}  // namespace ww::support
