// What a window keeps over a restart, who is written into readings and journal, what undo says and where it
// leaves the keys, and what closing does with half-typed text. The source of these checks is the interaction
// design of this project.
#include <gtest/gtest.h>

#include <QCloseEvent>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <memory>

#include "tests/ui/support/desk_window.h"
#include "ui/models/instrument_model.h"
#include "ui/places/job/job_place.h"
#include "ui/places/review/review_place.h"
#include "ui/run_desktop.h"

namespace ww::ui {
namespace {

using support::DeskWindow;

/// A window of somebody whose account is no name of the job, on a workbook that the desk had open before.
class NextSession {
  public:
    explicit NextSession(DeskWindow& desk)
        : window(Desk{desk.clock, desk.ids, "account", "LT-1"}, desk.preferences) {
        window.resize(1366, 694);
        window.show();
        window.activateWindow();
        QTest::qWait(0);
    }
    WorkbookBridge& bridge() { return window.bridge(); }
    std::string author() { return bridge().workbook()->newestEntry().person; }

    MainWindow window;
};

base::Id branchOf(WorkbookBridge& bridge, const std::string& tag) {
    return bridge.project().branchTagged(tag)->id;
}

const project::Reading& newestReading(const WorkbookBridge& bridge) {
    const auto& readings = bridge.project().readingsOf(bridge.project().lastRound()->id);
    return bridge.project().readings()[readings.back()];
}

bool isClosed(MainWindow& window) {
    QCloseEvent closing;
    QApplication::sendEvent(&window, &closing);
    return closing.isAccepted();
}

TEST(DeskMemory, aClockBeforeTheLastStoredActionIsTold) {
    DeskWindow desk;
    const QString file = desk.bridge().file();
    desk.bridge().close();
    desk.clock.advance(std::chrono::minutes(-185));
    NextSession session(desk);
    ASSERT_TRUE(session.window.openFile(file));
    EXPECT_TRUE(session.window.notice().contains("3 h 5 min before"))
        << session.window.notice().toStdString();
}

TEST(DeskMemory, aStartWithoutAFileNamesTheJobThatWasOpenLast) {
    DeskWindow desk;
    const QString file = desk.bridge().file();
    desk.bridge().close();
    ASSERT_TRUE(desk.window.openFile(file));
    EXPECT_TRUE(isClosed(desk.window));
    const NextSession session(desk);
    EXPECT_TRUE(session.window.notice().contains("walk.wwj")) << session.window.notice().toStdString();
    EXPECT_TRUE(session.window.notice().contains("Open Recent"));
}

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
        const auto stored = bridge().storeDp(branchOf(bridge(), tag), QString::fromStdString(dp));
        EXPECT_TRUE(stored.ok()) << tag << " " << dp;
    }
    /// What stands for a branch in the last round, as entered.
    std::string dpOf(const std::string& tag) {
        const project::Project& job = bridge().project();
        const auto* reading = balancing::countingReading(job, job.lastRound()->id, branchOf(bridge(), tag));
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

TEST(DeskMemory, readingsAndJournalNameWhoIsChosenAndSayWhereNobodyIs) {
    DeskWindow desk;
    const QString file = desk.bridge().file();
    desk.bridge().close();
    desk.preferences.reset();
    NextSession session(desk);
    ASSERT_TRUE(session.window.openFile(file));
    EXPECT_TRUE(session.bridge().isNobodyChosen());
    EXPECT_TRUE(session.window.notice().contains("Round, Person")) << session.window.notice().toStdString();
    ASSERT_TRUE(session.bridge().storeDp(branchOf(session.bridge(), "B-01"), "20.1").ok());
    EXPECT_FALSE(newestReading(session.bridge()).person.has_value());
    EXPECT_EQ(session.author(), "account");

    const base::Id person = session.bridge().project().people()[0].id;
    session.bridge().setPerson(person);
    ASSERT_TRUE(session.bridge().storeDp(branchOf(session.bridge(), "B-02"), "20.2").ok());
    EXPECT_EQ(newestReading(session.bridge()).person, person);
    EXPECT_EQ(session.author(), "A. Fields");
    project::Person renamed = session.bridge().project().people()[0];
    renamed.name = "A. B. Fields";
    ASSERT_TRUE(session.bridge().apply({"person", {renamed}, {}, true}).ok());
    ASSERT_TRUE(session.bridge().storeDp(branchOf(session.bridge(), "B-03"), "20.3").ok());
    EXPECT_EQ(session.author(), "A. B. Fields");
}

TEST(DeskMemory, theDeskSaysOneThingOfWhoIsAtIt) {
    DeskWindow desk;
    const QString file = desk.bridge().file();
    desk.bridge().close();
    desk.preferences.reset();
    NextSession session(desk);
    ASSERT_TRUE(session.window.openFile(file));
    session.window.showPlace(MainWindow::Review);
    QTest::qWait(20);
    const auto said = [&] {
        for (const QLabel* label : session.window.review()->findChildren<QLabel*>()) {
            if (label->accessibleName() == "State of the round") {
                return label->text();
            }
        }
        return QString();
    };
    ASSERT_TRUE(session.bridge().isNobodyChosen());
    EXPECT_TRUE(said().contains("no person chosen")) << said().toStdString();
    EXPECT_FALSE(said().contains("at this desk")) << said().toStdString();
    EXPECT_TRUE(session.window.notice().contains("no person", Qt::CaseInsensitive));
    session.bridge().setPerson(session.bridge().project().people()[0].id);
    EXPECT_TRUE(said().contains("at this desk: A. Fields")) << said().toStdString();
    EXPECT_FALSE(said().contains("no person")) << said().toStdString();
    EXPECT_TRUE(session.window.notice().isEmpty()) << session.window.notice().toStdString();
}

TEST(DeskMemory, personAndPlaceComeBackWithTheWorkbook) {
    DeskWindow desk;
    const QString file = desk.bridge().file();
    const base::Id person = desk.project().people()[0].id;
    desk.window.showPlace(MainWindow::Review);
    desk.bridge().close();
    desk.preferences.rememberFile(file);
    NextSession session(desk);
    EXPECT_TRUE(session.window.notice().contains("walk.wwj")) << "the last job is offered";
    ASSERT_TRUE(session.window.openFile(file));
    EXPECT_EQ(session.bridge().person(), person);
    EXPECT_EQ(session.window.place(), MainWindow::Review);
    EXPECT_TRUE(session.window.notice().isEmpty()) << session.window.notice().toStdString();
    ASSERT_TRUE(session.bridge().storeDp(branchOf(session.bridge(), "B-01"), "20.1").ok());
    EXPECT_EQ(session.author(), "A. Fields");
}

TEST(UndoAway, saysWhatItWasAndLeavesNoCaretBehind) {
    DeskWindow desk;
    project::Person person = desk.project().people()[0];
    person.role = project::PersonRole::Supervisor;
    ASSERT_TRUE(desk.bridge().apply({"person A. Fields", {person}, {}, true}).ok());
    desk.window.showPlace(MainWindow::Walk);
    desk.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(desk.window.place(), MainWindow::Job);
    EXPECT_TRUE(desk.window.notice().contains("person A. Fields")) << desk.window.notice().toStdString();
    ASSERT_NE(QApplication::focusWidget(), nullptr);
    EXPECT_EQ(qobject_cast<QLineEdit*>(QApplication::focusWidget()), nullptr);
    desk.enter("12");
    EXPECT_EQ(desk.project().job().name, "Test job");
    EXPECT_EQ(desk.project().people()[0].name, "A. Fields");
}

TEST(EntryFieldUndo, isTheWindowsUnlessSomethingIsTyped) {
    DeskWindow desk;
    desk.window.showPlace(MainWindow::Job);
    EntryField& name = *desk.window.findChild<JobPlace*>()->field(JobField::Name);
    name.setFocus();
    name.end(false);
    desk.enter("foo");
    EXPECT_EQ(desk.project().job().name, "Test jobfoo");
    desk.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(desk.project().job().name, "Test job");
    EXPECT_EQ(name.text(), "Test job");
    desk.key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(desk.project().job().name, "Test jobfoo");
    EXPECT_EQ(name.text(), "Test jobfoo");
    name.end(false);
    desk.type("bar");
    desk.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(name.text(), "Test jobfoo");
    EXPECT_EQ(desk.project().job().name, "Test jobfoo") << "what is stored waits for the next undo";
}

TEST(Closing, storesWhatIsTypedAsEnterDoes) {
    DeskWindow desk;
    const std::string tag = desk.currentTag();
    desk.type("33.0");
    EXPECT_TRUE(isClosed(desk.window));
    EXPECT_EQ(desk.stored(tag), "33.0 kPa");
    desk.window.showPlace(MainWindow::Job);
    EntryField& name = *desk.window.findChild<JobPlace*>()->field(JobField::Name);
    name.setFocus();
    name.selectAll();
    desk.type("Riverside");
    EXPECT_TRUE(isClosed(desk.window));
    EXPECT_EQ(desk.project().job().name, "Riverside");
}

TEST(Closing, waitsWhereATextIsRefused) {
    DeskWindow desk;
    desk.type("3..1");
    EXPECT_FALSE(isClosed(desk.window));
    EXPECT_TRUE(desk.grid().isEditing());
    EXPECT_EQ(desk.grid().editor()->text(), "3..1");
    EXPECT_FALSE(desk.window.notice().isEmpty());
    desk.key(Qt::Key_Escape);
    desk.window.showPlace(MainWindow::Job);
    EntryField& band = *desk.window.findChild<JobPlace*>()->field(JobField::MatchingBand);
    band.setFocus();
    band.selectAll();
    desk.type("250");
    // Left as it was refused, the text waits in its field; closing leads back to it.
    desk.window.showPlace(MainWindow::Walk);
    EXPECT_FALSE(isClosed(desk.window));
    EXPECT_EQ(desk.window.place(), MainWindow::Job);
    EXPECT_TRUE(band.hasFocus());
    EXPECT_EQ(band.text(), "250");
    EXPECT_FALSE(desk.window.notice().isEmpty());
    desk.key(Qt::Key_Escape);
    EXPECT_TRUE(isClosed(desk.window));
}

TEST(JobPeople, areRemovedUnlessTheRecordNamesThem) {
    DeskWindow desk;
    desk.window.showPlace(MainWindow::Job);
    PeopleModel people(desk.bridge());
    ASSERT_TRUE(people.add().ok());
    EntryTable* table = nullptr;
    for (EntryTable* found : desk.window.findChildren<EntryTable*>()) {
        table = found->accessibleName() == "People" ? found : table;
    }
    ASSERT_NE(table, nullptr);
    table->setFocus();
    table->setCurrentIndex(table->model()->index(1, 0));
    desk.key(Qt::Key_Delete);
    EXPECT_EQ(desk.project().people().size(), 1U);
    ASSERT_TRUE(desk.bridge().storeDp(branchOf(desk.bridge(), "B-01"), "20.1").ok());
    table->setCurrentIndex(table->model()->index(0, 0));
    desk.key(Qt::Key_Delete);
    EXPECT_EQ(desk.project().people().size(), 1U) << "a reading names this person";
    EXPECT_FALSE(desk.window.notice().isEmpty());
    InstrumentModel instruments(desk.bridge());
    ASSERT_TRUE(instruments.add().ok());
    EXPECT_TRUE(instruments.remove(1).ok());
    EXPECT_EQ(instruments.remove(0).fault().code(), "still_in_use");
}

}  // namespace
}  // namespace ww::ui
