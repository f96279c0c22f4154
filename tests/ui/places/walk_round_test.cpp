// A round in the place Walk as a whole: taken back and done again, closed, opened, looked at over the rounds.
// The source of these checks is the interaction design of this project.
#include <gtest/gtest.h>

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "core/balancing/review_steps.h"
#include "tests/support/whole_job.h"
#include "tests/ui/support/desk_window.h"
#include "ui/charts/chart_view.h"
#include "ui/places/walk/round_panels.h"
#include "ui/places/walk/walk_place.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

using support::DeskWindow;
using support::walkTag;

TEST(WalkPlace, undoAndRedoOfAWholeWalkGiveTheSameJob) {
    DeskWindow desk;
    const auto readings = support::walkReadings(desk.project());
    const auto before = support::recordsOf(desk.project());
    for (const std::string& reading : readings) {
        desk.enter(QString::fromStdString(reading));
        const QString label = desk.bridge().undoLabel();
        EXPECT_TRUE(label.contains(QString::fromStdString(reading))) << label.toStdString();
    }
    const auto after = support::recordsOf(desk.project());
    for (std::size_t i = readings.size(); i > 0; --i) {
        EXPECT_TRUE(desk.bridge().undoLabel().contains(QString::fromStdString(walkTag(static_cast<int>(i)))));
        ASSERT_TRUE(desk.bridge().undo().ok());
    }
    EXPECT_EQ(support::recordsOf(desk.project()), before);
    for (std::size_t i = 0; i < readings.size(); ++i) {
        ASSERT_TRUE(desk.bridge().redo().ok());
    }
    EXPECT_EQ(support::recordsOf(desk.project()), after);
}

TEST(WalkPlace, undoFromAnotherPlaceShowsWhatItChanged) {
    DeskWindow desk;
    desk.enter("20.0");
    desk.enter("21.0");
    desk.window.showPlace(MainWindow::Job);
    ASSERT_TRUE(desk.bridge().undo().ok());
    EXPECT_EQ(desk.window.place(), MainWindow::Walk);
    EXPECT_EQ(desk.currentTag(), "B-02");
    desk.grid().goToRow(8, false);
    ASSERT_TRUE(desk.bridge().redo().ok());
    EXPECT_EQ(desk.currentTag(), "B-02");
}

TEST(WalkPlace, undoShowsTheRowInHandAsItStands) {
    DeskWindow desk;
    QStringList states;
    QObject::connect(&desk.model(), &QAbstractItemModel::dataChanged, [&](const QModelIndex& from) {
        if (from.row() == 0) {
            states << desk.model().index(0, WalkModel::State).data().toString();
        }
    });
    desk.window.walk()->beginClosing();
    desk.enter("no test points");
    ASSERT_FALSE(states.isEmpty());
    EXPECT_EQ(states.back(), "Not read, reason");
    desk.key(Qt::Key_Escape);
    ASSERT_TRUE(desk.bridge().undo().ok());
    EXPECT_EQ(states.back(), "Not read") << "it was painted anew";
    EXPECT_EQ(desk.model().index(0, WalkModel::Dp).data().toString(), "");
    ASSERT_TRUE(desk.bridge().redo().ok());
    EXPECT_EQ(states.back(), "Not read, reason");
}

TEST(WalkPlace, aStoredReadingIsNotCalledUnread) {
    balancing::BranchResult result;
    EXPECT_EQ(text::word(result), "Not read");
    result.reading = base::Id{};
    EXPECT_EQ(text::word(result), "Not read") << "said to be unreadable";
    result.dp = quantity::PressureDifference::si(20e3);
    EXPECT_EQ(text::word(result), "Read, no share");
    result.isFromEarlierRound = true;
    EXPECT_EQ(text::word(result), "Not read") << "in this round";
}

/// A walk without an open round, and two pumps, one of which runs.
struct PumpedDesk : DeskWindow {
    PumpedDesk() : DeskWindow({.terminals = 3}, false) {
        for (const char* tag : {"P-1", "P-2"}) {
            project::Pump pump;
            pump.id = bridge().newId();
            pump.tag = tag;
            pump.isRunning = pump.tag == "P-1";
            pump.speed = quantity::measured<quantity::RotationalSpeed>(*base::Decimal::parse("1450"),
                                                                       quantity::Unit::RevolutionPerMinute);
            EXPECT_TRUE(bridge().apply({"pump", {pump}, {}, true}).ok());
        }
        window.commands().newRound->trigger();
        QTest::qWait(0);
    }
    QLineEdit* speed() {
        for (auto* field : window.walk()->findChildren<QLineEdit*>()) {
            if (field->isVisible() && field->accessibleName().startsWith("Speed of")) {
                return field;
            }
        }
        return nullptr;
    }
    /// "1380 rpm" of the round just opened; empty where none is stored.
    std::string read() {
        std::string speeds;
        for (const std::size_t index : project().pumpReadingsOf(project().lastRound()->id)) {
            const auto& value = project().pumpReadings()[index].speed;
            speeds += value ? value->text() : "";
        }
        return speeds;
    }
};

TEST(WalkPlace, aPumpSpeedThatIsOnlyShownIsNoReading) {
    PumpedDesk desk;
    ASSERT_NE(desk.speed(), nullptr);
    EXPECT_EQ(desk.speed()->accessibleName(), "Speed of P-1, rpm: as before") << "P-2 does not run";
    EXPECT_EQ(desk.speed()->text(), "1450");
    desk.key(Qt::Key_Return);
    ASSERT_EQ(desk.project().lastRound()->number, 2) << "Enter opens the round with what stands there";
    EXPECT_EQ(desk.read(), "");
    ASSERT_TRUE(desk.bridge().undo().ok());
    EXPECT_EQ(desk.project().lastRound()->number, 1);
}

TEST(WalkPlace, aPumpSpeedThatIsTypedOrConfirmedIsReadWithTheRound) {
    for (const bool isTyped : {true, false}) {
        PumpedDesk desk;
        desk.speed()->setFocus();
        if (isTyped) {
            desk.speed()->selectAll();
            desk.type("1380");
        }
        desk.key(Qt::Key_Return);
        EXPECT_EQ(desk.project().lastRound()->number, 1) << "Enter in the field takes the speed alone";
        EXPECT_TRUE(desk.speed()->accessibleName().endsWith("as read"));
        desk.key(Qt::Key_Return);
        ASSERT_EQ(desk.project().lastRound()->number, 2);
        EXPECT_EQ(desk.read(), isTyped ? "1380 rpm" : "1450 rpm");
        ASSERT_TRUE(desk.bridge().undo().ok());
        EXPECT_EQ(desk.project().lastRound()->number, 1) << "one step";
        EXPECT_TRUE(desk.project().pumpReadings().empty());
    }
}

TEST(WalkPlace, whatWasChosenForARoundStaysWhereItIsAskedForAgain) {
    PumpedDesk desk;
    QComboBox* kind = nullptr;
    for (auto* combo : desk.window.walk()->findChildren<QComboBox*>()) {
        kind = combo->accessibleName() == "Kind of round" ? combo : kind;
    }
    ASSERT_NE(kind, nullptr);
    const int proposed = kind->currentIndex();
    kind->setCurrentIndex(3);
    desk.speed()->setFocus();
    desk.key(Qt::Key_Return);
    desk.window.commands().newRound->trigger();
    QTest::qWait(0);
    EXPECT_EQ(kind->currentIndex(), 3);
    EXPECT_TRUE(desk.speed()->accessibleName().endsWith("as read"));
    // Given up, it is forgotten.
    desk.key(Qt::Key_Escape);
    desk.window.commands().newRound->trigger();
    QTest::qWait(0);
    EXPECT_EQ(kind->currentIndex(), proposed);
    EXPECT_TRUE(desk.speed()->accessibleName().endsWith("as before"));
}

TEST(WalkPlace, aPumpSpeedThatIsNoneKeepsTheRoundFromBeingOpened) {
    PumpedDesk desk;
    desk.speed()->setFocus();
    desk.speed()->selectAll();
    desk.type("14..5");
    desk.key(Qt::Key_Return);
    desk.key(Qt::Key_Return);
    EXPECT_EQ(desk.project().lastRound()->number, 1);
    EXPECT_FALSE(desk.window.notice().isEmpty());
    EXPECT_TRUE(desk.speed()->hasFocus());
    desk.speed()->clear();
    desk.key(Qt::Key_Return);
    desk.key(Qt::Key_Return);
    EXPECT_EQ(desk.project().lastRound()->number, 2) << "without one nothing was read";
    EXPECT_EQ(desk.read(), "");
}

TEST(WalkPlace, aRoundIsClosedWhenEveryItemHasAValueOrAReason) {
    support::WalkJobOptions options;
    options.terminals = 3;
    DeskWindow desk(options);
    const auto readings = support::walkReadings(desk.project());
    desk.enter(QString::fromStdString(readings[0]));
    desk.enter("x");
    desk.key(Qt::Key_Return);  // B-03 is walked past
    desk.window.walk()->beginClosing();
    EXPECT_EQ(DeskWindow::dialogCount(), 0);
    desk.enter("no test points");
    QTest::qWait(0);
    desk.enter("locked room");
    QTest::qWait(0);
    const auto* button = qobject_cast<QPushButton*>(QApplication::focusWidget());
    ASSERT_NE(button, nullptr);
    EXPECT_TRUE(button->isEnabled());
    desk.key(Qt::Key_Space);
    EXPECT_EQ(desk.project().lastRound()->state, project::RoundState::Closed);
}

TEST(WalkPlace, whatIsTypedIsStoredBeforeTheRoundIsClosed) {
    DeskWindow desk;
    desk.type("27.1");
    desk.key(Qt::Key_W, Qt::ControlModifier | Qt::ShiftModifier);
    QTest::qWait(20);
    EXPECT_EQ(desk.stored(walkTag(1)), "27.1 kPa");
    const auto* panel = desk.window.findChild<CloseRoundPanel*>();
    ASSERT_NE(panel, nullptr);
    EXPECT_TRUE(panel->isVisible());
    EXPECT_EQ(support::named<QWidget>(desk.window, "Reason for B-01"), nullptr) << "it is read";
    EXPECT_NE(support::named<QWidget>(desk.window, "Reason for B-02"), nullptr);
}

TEST(WalkPlace, aSurveyWithoutAReadinessListSaysWhereToMakeOne) {
    DeskWindow desk({.terminals = 3, .hasSurvey = false}, false);
    ASSERT_EQ(desk.project().readiness().size(), 0U);
    desk.window.commands().newRound->trigger();
    desk.key(Qt::Key_Return);
    ASSERT_NE(desk.bridge().openRoundOrNull(), nullptr) << "it holds nothing up";
    EXPECT_EQ(DeskWindow::dialogCount(), 0);
    EXPECT_TRUE(desk.window.notice().contains("Job, Readiness")) << desk.window.notice().toStdString();
}

TEST(WalkPlace, aReadingOfAnotherDayIsShownWithItsDate) {
    DeskWindow desk;
    desk.enter("27.1");
    const auto shown = [&] {
        desk.window.walk()->showBranch(desk.project().branchTagged(walkTag(2))->id);
        desk.window.walk()->showBranch(desk.project().branchTagged(walkTag(1))->id);
        QTest::qWait(20);
        return support::named<QLabel>(desk.window, "Reading as entered")->text();
    };
    EXPECT_FALSE(shown().contains("2026-03-02")) << shown().toStdString();
    EXPECT_TRUE(shown().contains("10:0")) << shown().toStdString();
    desk.clock.set("2026-03-03T09:00:00Z");
    EXPECT_TRUE(shown().contains("2026-03-02 10:0")) << shown().toStdString();
}

TEST(WalkPlace, entersBeyondTheLastReadingCloseNoRound) {
    DeskWindow desk({.terminals = 3});
    for (const std::string& reading : support::walkReadings(desk.project())) {
        desk.enter(QString::fromStdString(reading));
    }
    for (int i = 0; i < 6; ++i) {
        desk.key(Qt::Key_Enter, Qt::KeypadModifier);
        QTest::qWait(0);
        EXPECT_NE(desk.bridge().openRoundOrNull(), nullptr) << "after Enter " << i + 1;
    }
    desk.key(Qt::Key_W, Qt::ControlModifier | Qt::ShiftModifier);
    QTest::qWait(0);
    desk.key(Qt::Key_Return);
    EXPECT_EQ(desk.bridge().openRoundOrNull(), nullptr) << "asked for by its command it is one Enter away";
}

TEST(WalkPlace, whatIsRefusedKeepsTheRoundFromBeingClosed) {
    DeskWindow desk;
    desk.type("2.7.1");
    desk.key(Qt::Key_W, Qt::ControlModifier | Qt::ShiftModifier);
    QTest::qWait(20);
    const auto* panel = desk.window.findChild<CloseRoundPanel*>();
    EXPECT_TRUE(panel == nullptr || !panel->isVisible());
    EXPECT_TRUE(desk.grid().isRefused());
    EXPECT_EQ(desk.grid().editor()->text(), "2.7.1");
}

TEST(WalkPlace, whatNobodyTurnedGetsOneReasonInOneStep) {
    DeskWindow desk({.terminals = 6});
    const auto readings = support::walkReadings(desk.project());
    desk.enter(QString::fromStdString(readings[0]));
    desk.enter(QString::fromStdString(readings[1]));
    desk.window.walk()->beginClosing();
    const QPushButton* together = nullptr;
    for (const QPushButton* button : desk.window.walk()->findChildren<QPushButton*>()) {
        together = button->text().contains("as Not Turned") ? button : together;
    }
    ASSERT_NE(together, nullptr);
    EXPECT_TRUE(together->isVisible());
    EXPECT_TRUE(together->text().contains('4')) << together->text().toStdString();
    QTest::qWait(0);
    EXPECT_TRUE(desk.keyLine().contains("Ctrl+Alt+X")) << desk.keyLine().toStdString();
    desk.key(Qt::Key_X, Qt::ControlModifier | Qt::AltModifier);
    QTest::qWait(0);
    EXPECT_FALSE(together->isVisible());
    EXPECT_EQ(desk.bridge().undoLabel(), "valves not turned in round 2: 4");
    EXPECT_TRUE(desk.window.walk()->findChild<CloseRoundPanel*>()->isReady());
    ASSERT_TRUE(desk.bridge().undo().ok());
    EXPECT_EQ(desk.bridge().notTurned().size(), 4U);
}

TEST(WalkPlace, onlyAnAdjustingRoundGivesOneReasonToAll) {
    for (const auto kind : {project::RoundKind::Survey, project::RoundKind::Final}) {
        DeskWindow desk({.terminals = 6, .hasSurvey = kind == project::RoundKind::Final}, false);
        ASSERT_TRUE(desk.bridge().openRound(kind).ok());
        desk.window.walk()->beginClosing();
        EXPECT_FALSE(desk.window.walk()->findChild<CloseRoundPanel*>()->offersNotTurned());
        EXPECT_FALSE(desk.window.commands().notTurned->isEnabled());
    }
}

TEST(WalkPlace, aNewRoundSaysHowManyReadingsAreCarriedOver) {
    DeskWindow desk;
    const auto isSaid = [&](const QString& words) {
        for (const QLabel* label : desk.window.walk()->findChildren<QLabel*>()) {
            if (label->accessibleName() == "Totals of the round" && label->text().contains(words)) {
                return true;
            }
        }
        return false;
    };
    EXPECT_TRUE(isSaid("Round 2: nothing read yet")) << "no figure of the round before stands for this one";
    EXPECT_FALSE(isSaid("spread"));
    desk.enter("20.0");
    EXPECT_TRUE(isSaid("23 of 24"));
}

// Who accepted the last round is asked for no readings: the reader of before is chosen, to be changed.
TEST(WalkPlace, theNextRoundIsReadByTheReaderNotByWhoAcceptedTheLast) {
    DeskWindow desk({.terminals = 3});
    project::Person boss;
    boss.id = desk.bridge().newId();
    boss.name = "K. Moor";
    boss.role = project::PersonRole::Supervisor;
    ASSERT_TRUE(desk.bridge().apply({"supervisor", {boss}, {}, true}).ok());
    const auto readings = support::walkReadings(desk.project());
    for (const std::string& reading : readings) {
        desk.enter(QString::fromStdString(reading));
    }
    const auto reader = desk.bridge().person();
    ASSERT_TRUE(reader.has_value());
    ASSERT_TRUE(desk.bridge().closeRound().ok());
    const base::Id round = desk.project().lastRound()->id;
    const auto sent = balancing::sendRound(desk.project(), round, desk.bridge().reviewContext());
    ASSERT_TRUE(sent.ok());
    ASSERT_TRUE(desk.bridge().apply(*sent).ok());
    desk.bridge().setPerson(boss.id);
    EXPECT_EQ(desk.bridge().nextReader(), boss.id) << "nothing was decided yet";
    ASSERT_TRUE(desk.bridge()
                    .apply(balancing::acceptRound(desk.project(), round, {}, desk.bridge().reviewContext()))
                    .ok());
    desk.window.commands().newRound->trigger();
    desk.key(Qt::Key_Return);
    ASSERT_NE(desk.bridge().openRoundOrNull(), nullptr);
    EXPECT_EQ(desk.bridge().person(), reader);
}

TEST(WalkPlace, convergenceStandsInPlaceOfTheGridWithItsTable) {
    DeskWindow desk;
    desk.window.walk()->toggleConvergence();
    auto* chart = desk.window.walk()->findChild<charts::ChartView*>();
    ASSERT_TRUE(chart->isVisible());
    EXPECT_FALSE(desk.grid().isVisible());
    EXPECT_FALSE(chart->figure().name.isEmpty());
    EXPECT_FALSE(chart->figure().sentence.isEmpty());
    EXPECT_EQ(chart->figure().tableRows.size(), 25U) << "the terminals and the spread";
    desk.window.walk()->toggleTable();
    EXPECT_TRUE(chart->isTableShown());
    desk.key(Qt::Key_Escape);
    EXPECT_TRUE(desk.grid().hasFocus());
}

}  // namespace
}  // namespace ww::ui
