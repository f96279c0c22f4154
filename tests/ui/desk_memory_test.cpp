// What a window keeps over a restart, who is written into readings and journal, what undo says and where it
// leaves the keys, and what closing does with half-typed text. The source of these checks is the interaction
// design of this project.
#include <gtest/gtest.h>

#include <QLabel>
#include <QLineEdit>

#include "tests/ui/support/desk_window.h"
#include "ui/models/instrument_model.h"
#include "ui/places/job/job_place.h"
#include "ui/places/review/review_place.h"

namespace ww::ui {
namespace {

using support::DeskWindow;
using support::isClosed;

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

/// The file of a desk that is closed and has forgotten who worked at it.
QString fileOfNobody(DeskWindow& desk) {
    QString file = desk.bridge().file();
    desk.bridge().close();
    desk.preferences.reset();
    return file;
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

TEST(DeskMemory, readingsAndJournalNameWhoIsChosenAndSayWhereNobodyIs) {
    DeskWindow desk;
    const QString file = fileOfNobody(desk);
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
    const QString file = fileOfNobody(desk);
    NextSession session(desk);
    ASSERT_TRUE(session.window.openFile(file));
    session.window.showPlace(MainWindow::Review);
    QTest::qWait(20);
    const auto* state = support::named<QLabel>(*session.window.review(), "State of the round");
    ASSERT_NE(state, nullptr);
    const auto said = [&] { return state->text(); };
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
    auto* table = support::named<EntryTable>(desk.window, "People");
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
