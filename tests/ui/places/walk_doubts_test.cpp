// What the place Walk makes of values that cannot be right. The source of these checks is the
// interaction design of this project.
#include <gtest/gtest.h>

#include <QLabel>
#include <algorithm>

#include "core/balancing/standing_readings.h"
#include "core/balancing/walk_progress.h"
#include "tests/support/solved_job.h"
#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/pump_rig.h"
#include "ui/places/reading_fix.h"
#include "ui/places/walk/walk_place.h"

namespace ww::ui {
namespace {

using support::DeskWindow;

TEST(WalkPlace, aSlipOfUnitIsKeptDoubtfulAndOneKeyMendsIt) {
    DeskWindow desk;
    // The survey read B-01 at a dp of D; D in psi digits is what a meter left in psi would show.
    const double last = desk.project().readings()[0].dp->value.in(quantity::Unit::Psi);
    const std::string typed = base::Decimal::fromNumber(last, 2).text();
    desk.enter(QString::fromStdString(typed));
    EXPECT_EQ(desk.currentTag(), "B-02");  // the walk goes on, nothing is asked
    EXPECT_EQ(DeskWindow::dialogCount(), 0);
    EXPECT_EQ(desk.stored("B-01"), typed + " kPa");
    EXPECT_EQ(desk.model().index(0, WalkModel::State).data().toString(), "Doubtful");
    EXPECT_TRUE(desk.window.notice().contains("psi")) << desk.window.notice().toStdString();
    desk.key(Qt::Key_U, Qt::ControlModifier);
    EXPECT_EQ(desk.stored("B-01"), typed + " psi");
    desk.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(desk.stored("B-01"), typed + " kPa");
}

TEST(WalkPlace, aSlippedPointIsOfferedAndNeverMovedByItself) {
    DeskWindow desk;
    const double last = desk.project().readings()[0].dp->value.in(quantity::Unit::Kilopascal);
    const QString meant = QString::number(last, 'f', 1);
    const QString typed = QString(meant).remove('.');
    desk.enter(typed);
    EXPECT_EQ(desk.stored("B-01"), typed.toStdString() + " kPa");
    EXPECT_TRUE(desk.window.notice().contains("Ctrl+U to store " + meant + " kPa"))
        << desk.window.notice().toStdString();
    desk.key(Qt::Key_U, Qt::ControlModifier);
    EXPECT_EQ(desk.stored("B-01"), meant.toStdString() + " kPa");
    EXPECT_FALSE(desk.window.notice().contains("far from")) << desk.window.notice().toStdString();
}

TEST(WalkPlace, anImplausibleValueGivesOneNoticeAndNoDialog) {
    DeskWindow desk;
    int notices = 0;
    QObject::connect(&desk.bridge(), &WorkbookBridge::messageRaised, [&](const base::Fault&) { ++notices; });
    desk.enter("190");
    EXPECT_EQ(notices, 1);
    EXPECT_EQ(DeskWindow::dialogCount(), 0);
    EXPECT_EQ(desk.currentTag(), "B-02");
    EXPECT_TRUE(desk.grid().hasFocus());
    EXPECT_EQ(desk.model().index(0, WalkModel::State).data().toString(), "Doubtful");
}

TEST(WalkPlace, aReadingAboveTheRangeNamesTheMeterAndTheKeyToReadAgain) {
    DeskWindow desk;
    desk.enter("25000");  // nor near what is expected in any unit of a meter
    const QString notice = desk.window.notice();
    EXPECT_TRUE(notice.contains("200 kPa") && notice.contains("Ctrl+R")) << notice.toStdString();
    EXPECT_EQ(desk.stored("B-01"), "25000 kPa");
    EXPECT_EQ(desk.model().index(0, WalkModel::State).data().toString(), "Doubtful");
}

TEST(WalkPlace, reversedHosesAreSaidOnce) {
    DeskWindow desk;
    desk.enter("-30.0");
    const QString notice = desk.window.notice();
    EXPECT_EQ(notice.count("hoses"), 1) << notice.toStdString();
    EXPECT_TRUE(notice.contains("Ctrl+U")) << notice.toStdString();
}

TEST(WalkPlace, anOverdueMeterIsNamedInTheStripAndEntryGoesOn) {
    support::WalkJobOptions options;
    options.due = "2026-02-01";  // the desk's clock stands in March
    DeskWindow desk(options);
    desk.enter(QString::fromStdString(support::walkReadings(desk.project())[0]));
    EXPECT_EQ(desk.currentTag(), "B-02");
    EXPECT_TRUE(desk.window.notice().isEmpty()) << desk.window.notice().toStdString();
    bool isNamed = false;
    for (const QLabel* label : desk.window.findChildren<QLabel*>()) {
        isNamed =
            isNamed || (label->accessibleName() == "Meter" && label->text().contains("was due 2026-02-01"));
    }
    EXPECT_TRUE(isNamed);
}

TEST(WalkPlace, aMeterCountsAsCalibratedOnTheDayItFallsDue) {
    support::WalkJobOptions options;
    options.due = "2026-03-02";  // the day of the desk's clock
    DeskWindow desk(options, false);
    const auto isToldOverdue = [&] {
        const auto labels = desk.window.findChildren<QLabel*>();
        return std::any_of(labels.begin(), labels.end(),
                           [](const QLabel* label) { return label->text().contains("was due"); });
    };
    EXPECT_FALSE(isToldOverdue());
    desk.window.commands().newRound->trigger();
    desk.key(Qt::Key_Return);
    ASSERT_NE(desk.bridge().openRoundOrNull(), nullptr);
    EXPECT_FALSE(desk.window.notice().contains("due for calibration")) << desk.window.notice().toStdString();
    EXPECT_FALSE(isToldOverdue());
}

TEST(WalkPlace, anOverdueMeterIsToldWithItsCuresWhenARoundIsOpened) {
    support::WalkJobOptions options;
    options.due = "2026-02-01";
    DeskWindow desk(options, false);
    desk.window.commands().newRound->trigger();
    desk.key(Qt::Key_Return);
    ASSERT_NE(desk.bridge().openRoundOrNull(), nullptr);
    const QString notice = desk.window.notice();
    EXPECT_TRUE(notice.contains("2026-02-01, 29 days ago")) << notice.toStdString();
    EXPECT_TRUE(notice.contains("menu Round, Meter")) << notice.toStdString();
    EXPECT_TRUE(notice.contains("give the reason")) << notice.toStdString();
    EXPECT_EQ(DeskWindow::dialogCount(), 0);
}

TEST(WalkPlace, belowTheReadableMinimumTheFlowIsARangeAndTheRoundStaysOpen) {
    DeskWindow desk;
    desk.enter("0.6");
    EXPECT_TRUE(desk.model().index(0, WalkModel::Flow).data().toString().contains(QChar(0x2013)))
        << desk.model().index(0, WalkModel::Flow).data().toString().toStdString();
    EXPECT_EQ(desk.model().index(0, WalkModel::State).data().toString(), "Doubtful");
    EXPECT_FALSE(desk.bridge().closeRound().ok());
    const base::Id round = desk.project().lastRound()->id;
    const base::Id branch = desk.project().branchTagged("B-01")->id;
    const auto isOpen = [&] {
        const auto items = balancing::openItems(desk.project(), round);
        return std::any_of(items.begin(), items.end(),
                           [&](const balancing::Finding& item) { return item.branch == branch; });
    };
    EXPECT_TRUE(isOpen());
    const project::Reading* reading = balancing::countingReading(desk.project(), round, branch);
    ASSERT_TRUE(desk.bridge().giveReason(reading->id, "no smaller meter here").ok());
    EXPECT_FALSE(isOpen()) << "a reason answers it";
}

/// What stands in the totals below the grid and in the panel that closes a round.
QString totalsOf(DeskWindow& desk) {
    for (const QLabel* label : desk.window.walk()->findChildren<QLabel*>()) {
        if (label->accessibleName() == "Totals of the round") {
            return label->text();
        }
    }
    return {};
}
QString closingOf(DeskWindow& desk) {
    desk.window.walk()->beginClosing();
    QTest::qWait(0);
    return support::textsOf(*desk.window.findChild<CloseRoundPanel*>());
}

TEST(WalkPlace, totalsAndTheClosingOfTheRoundCallTheSameDoubtful) {
    DeskWindow desk({.terminals = 3});
    desk.enter("0.6");
    EXPECT_TRUE(totalsOf(desk).contains("doubts"));
    const base::Id branch = desk.project().branchTagged("B-01")->id;
    const project::Reading* reading =
        balancing::countingReading(desk.project(), desk.project().lastRound()->id, branch);
    EXPECT_TRUE(closingOf(desk).contains("B-01"));
    ASSERT_TRUE(desk.bridge().giveReason(reading->id, "no smaller meter here").ok());
    EXPECT_FALSE(totalsOf(desk).contains("doubts"));
    EXPECT_FALSE(closingOf(desk).contains("B-01"));
}

TEST(WalkPlace, aReadingThatDoesNotFitTheOthersIsListedBeforeTheRoundIsClosed) {
    constexpr int kTerminals = 12;
    constexpr int kWrong = 5;
    const support::SolvedJob job(kTerminals);
    DeskWindow desk(job.content(), true);
    for (int i = 1; i <= kTerminals; ++i) {
        const QString right = QString::fromStdString(job.readAt({}, support::SolvedJob::tagOf(i)));
        desk.enter(i == kWrong ? QString::number(1.7 * right.toDouble(), 'f', 1) : right);
    }
    const base::Id round = desk.project().lastRound()->id;
    constexpr int kPatience_ms = 20'000;
    ASSERT_TRUE(QTest::qWaitFor([&] { return desk.window.advisor().isCurrent(); }, kPatience_ms));
    ASSERT_TRUE(balancing::openItems(desk.project(), round).empty());
    const auto doubts = doubtsOf(desk.window.advisor(), desk.project(), round);
    ASSERT_EQ(doubts.size(), 1U);
    const project::Branch& branch = desk.project().branches()[doubts.front()->branch];
    EXPECT_EQ(branch.tag, support::SolvedJob::tagOf(kWrong));
    EXPECT_TRUE(totalsOf(desk).contains("doubts"));
    EXPECT_TRUE(closingOf(desk).contains("do not fit the others") ||
                closingOf(desk).contains("does not fit the others"));
    EXPECT_FALSE(closingOf(desk).contains("no open items"));
    EXPECT_TRUE(desk.window.findChild<CloseRoundPanel*>()->isReady()) << "it holds nothing up";
    desk.window.commands().nextOpen->trigger();
    EXPECT_EQ(desk.bridge().selectedBranch(), branch.id);
    ASSERT_TRUE(desk.bridge().giveReason(doubts.front()->readings.back(), "read twice").ok());
    EXPECT_FALSE(totalsOf(desk).contains("doubts")) << "a reason answers it";
}

TEST(WalkPlace, aReasonLeavesAMarkInTheGrid) {
    DeskWindow desk;
    desk.enter("190");
    EXPECT_EQ(desk.model().index(0, WalkModel::State).data().toString(), "Doubtful");
    const project::Reading* reading = balancing::countingReading(
        desk.project(), desk.project().lastRound()->id, desk.project().branchTagged("B-01")->id);
    ASSERT_TRUE(desk.bridge().giveReason(reading->id, "read twice").ok());
    EXPECT_TRUE(desk.model().index(0, WalkModel::State).data().toString().endsWith(", reason"));
}

TEST(WalkPlace, aNoticeGoesOnceWhatItSpeaksOfIsSettled) {
    DeskWindow desk({.terminals = 3});
    const auto readings = support::walkReadings(desk.project());
    desk.enter("190");
    ASSERT_FALSE(desk.window.notice().isEmpty());
    const project::Reading* reading = balancing::countingReading(
        desk.project(), desk.project().lastRound()->id, desk.project().branchTagged("B-01")->id);
    ASSERT_TRUE(desk.bridge().giveReason(reading->id, "read twice").ok());
    EXPECT_TRUE(desk.window.notice().isEmpty()) << desk.window.notice().toStdString();
    desk.enter("12..4");
    ASSERT_FALSE(desk.window.notice().isEmpty());
    desk.key(Qt::Key_Escape);
    EXPECT_TRUE(desk.window.notice().isEmpty()) << desk.window.notice().toStdString();
    desk.enter(QString::fromStdString(readings[1]));
    desk.enter(QString::fromStdString(readings[2]));
    desk.window.commands().newRound->trigger();
    ASSERT_TRUE(desk.window.notice().contains("still open")) << desk.window.notice().toStdString();
    ASSERT_TRUE(desk.bridge().closeRound().ok());
    EXPECT_TRUE(desk.window.notice().isEmpty()) << desk.window.notice().toStdString();
}

TEST(WalkPlace, aNoticeStaysWhileWhatItSpeaksOfHolds) {
    DeskWindow desk;
    desk.enter("190");
    const QString told = desk.window.notice();
    ASSERT_FALSE(told.isEmpty());
    ASSERT_TRUE(desk.bridge().storeDp(desk.project().branchTagged("B-09")->id, "20.0").ok());
    EXPECT_EQ(desk.window.notice(), told) << "another valve was read meanwhile";
}

TEST(WalkPlace, whatIsSaidOfTheNextValueGoesWithItsValve) {
    DeskWindow desk;
    desk.enter(QString::fromStdString(support::walkReadings(desk.project())[0]));
    desk.key(Qt::Key_Return, Qt::ShiftModifier);
    desk.window.walk()->readAgain();
    ASSERT_TRUE(desk.window.notice().contains("next value typed")) << desk.window.notice().toStdString();
    desk.key(Qt::Key_Down);
    EXPECT_EQ(desk.currentTag(), "B-02");
    EXPECT_EQ(desk.window.notice(), "");
}

TEST(WalkPlace, readingADoubtfulValueAgainTakesItsPlace) {
    DeskWindow desk;
    desk.enter("190");
    desk.key(Qt::Key_Return, Qt::ShiftModifier);
    desk.window.walk()->readAgain();
    desk.enter("20.0");
    EXPECT_EQ(desk.model().index(0, WalkModel::Dp).data().toString(), "20.0");
    EXPECT_EQ(desk.storedCount(), 1);
}

}  // namespace
}  // namespace ww::ui
