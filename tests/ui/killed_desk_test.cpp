// What comes back after the program was killed, from one moment to the next. The source of these checks is
// the interaction design of this project.
#include <gtest/gtest.h>

#include <QFile>
#include <QLabel>
#include <memory>

#include "tests/ui/support/desk_window.h"
#include "ui/run_desktop.h"

namespace ww::ui {
namespace {

using support::DeskWindow;
using support::isClosed;

/// A session of the program as it is started, with preferences and a clock that outlive it.
class StartedSession {
  public:
    StartedSession(DeskWindow& desk, const QStringList& files) : m_settings(desk.preferences) {
        const QWidgetList before = QApplication::topLevelWidgets();
        openFirstWindows(Desk{desk.clock, desk.ids, "A. Fields", "LT-1"}, m_settings, files);
        for (QWidget* widget : QApplication::topLevelWidgets()) {
            auto* window = qobject_cast<MainWindow*>(widget);
            if (window != nullptr && !before.contains(widget)) {
                m_windows.emplace_back(window);
            }
        }
    }
    ~StartedSession() { kill(); }

    std::size_t windowCount() const { return m_windows.size(); }
    MainWindow& window() { return *m_windows.front(); }
    WorkbookBridge& bridge() { return window().bridge(); }
    QString strip() const {
        QString text;
        for (const QLabel* label : m_windows.front()->findChild<JobStrip*>()->findChildren<QLabel*>()) {
            text += label->text() + ' ';
        }
        return text;
    }
    void read(const std::string& tag, const std::string& dp) {
        const auto stored = bridge().storeDp(branch(tag), QString::fromStdString(dp));
        EXPECT_TRUE(stored.ok()) << tag << " " << dp;
    }
    base::Id branch(const std::string& tag) { return bridge().project().branchTagged(tag)->id; }
    /// What stands for a branch in the last round, as entered.
    std::string dpOf(const std::string& tag) {
        const project::Project& job = bridge().project();
        const auto* reading = balancing::countingReading(job, job.lastRound()->id, branch(tag));
        return reading != nullptr && reading->dp ? reading->dp->text() : "";
    }
    /// Stands until what is open is written down.
    void stand() {
        EXPECT_TRUE(
            QTest::qWaitFor([&] { return m_settings.unclosedFiles().size() == qsizetype(windowCount()); }));
    }
    /// The program is gone from one moment to the next: nothing of it is closed in order.
    void kill() { m_windows.clear(); }
    void quit() {
        for (const auto& window : m_windows) {
            EXPECT_TRUE(isClosed(*window));
        }
        kill();
    }

  private:
    Preferences& m_settings;
    std::vector<std::unique_ptr<MainWindow>> m_windows;
};

/// A workbook with an open round that no window has open, and a desk that has closed all in order.
struct ClosedDesk {
    ClosedDesk() : file(desk.bridge().file()) { desk.bridge().close(); }

    DeskWindow desk;
    QString file;
};

TEST(Killed, theJobIsBackWithItsNewestStateWithAndWithoutAFileArgument) {
    ClosedDesk closed;
    for (const bool isNamed : {false, true}) {
        const QStringList again = isNamed ? QStringList(closed.file) : QStringList();
        const std::string tenths = isNamed ? ".2 kPa" : ".1 kPa";
        {
            StartedSession first(closed.desk, {closed.file});
            first.read("B-01", "20" + tenths.substr(0, 2));
            first.kill();
        }
        {
            StartedSession second(closed.desk, again);
            ASSERT_EQ(second.windowCount(), 1U);
            ASSERT_EQ(second.bridge().file(), closed.file);
            EXPECT_FALSE(second.bridge().isReadOnly());
            EXPECT_EQ(second.dpOf("B-01"), "20" + tenths);
            EXPECT_EQ(DeskWindow::dialogCount(), 0);
            // Straight after that reopening, and three more readings.
            second.read("B-02", "21" + tenths.substr(0, 2));
            second.read("B-03", "22" + tenths.substr(0, 2));
            second.read("B-04", "23" + tenths.substr(0, 2));
            second.kill();
        }
        StartedSession third(closed.desk, again);
        ASSERT_EQ(third.bridge().file(), closed.file);
        EXPECT_EQ(third.dpOf("B-01"), "20" + tenths);
        EXPECT_EQ(third.dpOf("B-02"), "21" + tenths);
        EXPECT_EQ(third.dpOf("B-03"), "22" + tenths);
        EXPECT_EQ(third.dpOf("B-04"), "23" + tenths);
        EXPECT_EQ(DeskWindow::dialogCount(), 0);
        EXPECT_TRUE(third.strip().contains(QString::fromStdString("23" + tenths)))
            << "the strip names the last stored reading: " << third.strip().toStdString();
        EXPECT_TRUE(third.strip().contains("B-04")) << third.strip().toStdString();
        const auto* walk = third.window().walk();
        EXPECT_EQ(
            third.bridge().project().branches().at(walk->model()->branchAt(walk->grid()->currentRow())).tag,
            "B-05")
            << "the first valve of the route that is not read";
        // A narrow strip says it too.
        const StripText narrow = stripText(third.bridge(), theme::Display::Office, StripLength::Short);
        EXPECT_TRUE(narrow.stored.contains("B-04")) << narrow.stored.toStdString();
        // What is short before it: all but the round.
        const StripText middle = stripText(third.bridge(), theme::Display::Office, StripLength::Middle);
        const StripText words = stripText(third.bridge(), theme::Display::Office, StripLength::RoundInWords);
        EXPECT_EQ(words.round, middle.round);
        EXPECT_NE(words.round, narrow.round);
        EXPECT_EQ(words.read, narrow.read);
        EXPECT_EQ(words.meter, narrow.meter);
        third.quit();
        StartedSession after(closed.desk, {});
        EXPECT_FALSE(after.bridge().isOpen()) << "what was closed in order is not opened by itself";
        EXPECT_TRUE(after.window().notice().contains("walk.wwj")) << "but named";
    }
}

TEST(Killed, everyJobThatWasOpenComesBackAndNoneThatWasClosed) {
    ClosedDesk closed;
    const QString other = QString::fromStdString(closed.desk.folder.file("other.wwj"));
    ASSERT_TRUE(QFile::copy(closed.file, other));
    {
        StartedSession first(closed.desk, {closed.file, other});
        ASSERT_EQ(first.windowCount(), 2U);
        first.stand();
        first.kill();
    }
    {
        StartedSession second(closed.desk, {});
        ASSERT_EQ(second.windowCount(), 2U);
        second.bridge().close();
        second.kill();
    }
    StartedSession third(closed.desk, {});
    EXPECT_EQ(third.windowCount(), 1U);
    EXPECT_TRUE(third.bridge().isOpen());
}

TEST(Killed, aJobThatIsGoneIsToldOnceAndLeavesAnEmptyWindow) {
    ClosedDesk closed;
    {
        StartedSession first(closed.desk, {closed.file});
        first.stand();
        first.kill();
    }
    ASSERT_TRUE(QFile::remove(closed.file));
    {
        StartedSession second(closed.desk, {});
        EXPECT_EQ(second.windowCount(), 1U);
        EXPECT_FALSE(second.bridge().isOpen());
        EXPECT_TRUE(second.window().notice().contains("There is no such file"))
            << second.window().notice().toStdString();
        EXPECT_TRUE(second.window().notice().contains("walk.wwj"));
        EXPECT_EQ(DeskWindow::dialogCount(), 0);
        second.quit();
    }
    StartedSession third(closed.desk, {});
    EXPECT_TRUE(third.window().notice().isEmpty()) << third.window().notice().toStdString();
}

TEST(Killed, aJobThatAnotherProgramHoldsIsToldAndStaysWithIt) {
    ClosedDesk closed;
    StartedSession first(closed.desk, {closed.file});
    first.read("B-01", "20.1");
    {
        StartedSession second(closed.desk, {});
        EXPECT_EQ(second.windowCount(), 1U);
        EXPECT_FALSE(second.bridge().isOpen());
        EXPECT_TRUE(second.window().notice().contains("Open for changes by A. Fields"))
            << second.window().notice().toStdString();
        EXPECT_TRUE(second.window().notice().contains("walk.wwj"));
        second.quit();
    }
    first.read("B-02", "21.1");
    first.kill();
    StartedSession third(closed.desk, {});
    ASSERT_EQ(third.bridge().file(), closed.file) << "the mark of the program that was killed still stands";
    EXPECT_EQ(third.dpOf("B-01"), "20.1 kPa");
    EXPECT_EQ(third.dpOf("B-02"), "21.1 kPa");
}

}  // namespace
}  // namespace ww::ui
