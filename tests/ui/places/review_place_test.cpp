// The place Review: steps of a round, comparison, rounds. The source of these checks is the interaction
// design of this project.
#include "ui/places/review/review_place.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <QTabWidget>
#include <algorithm>

#include "core/balancing/share_count.h"
#include "core/balancing/walk_forms.h"
#include "core/project/review.h"
#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/pump_rig.h"
#include "tests/ui/support/review_desk.h"
#include "ui/charts/chart_view.h"
#include "ui/places/job/job_place.h"

namespace ww::ui {
namespace {

using project::RoundState;
using support::DeskWindow;
using support::ReviewDesk;

TEST(ReviewPlace, onlyASupervisorAcceptsAndWithdrawingNeedsAReason) {
    ReviewDesk desk;
    desk.review();
    desk.actAs(false);
    QPushButton* accept = desk.button("Accept Round");
    accept->click();
    EXPECT_EQ(desk.state(), RoundState::Sent) << "the sender does not accept";
    EXPECT_FALSE(accept->isEnabled()) << "and it looks so";
    EXPECT_TRUE(accept->toolTip().contains("K. Moor")) << accept->toolTip().toStdString();
    EXPECT_EQ(accept->accessibleDescription(), accept->toolTip());
    EXPECT_TRUE(support::textsOf(*desk.window.findChild<DecisionPanel*>()).contains(accept->toolTip()));
    desk.actAs(true);
    EXPECT_TRUE(accept->isEnabled());
    EXPECT_TRUE(accept->toolTip().isEmpty());
    desk.button("Accept Round")->click();
    EXPECT_EQ(desk.state(), RoundState::Accepted);
    const base::Outcome refused = desk.bridge().storeDp(desk.branch("B-01"), "20");
    ASSERT_FALSE(refused.ok());
    EXPECT_TRUE(refused.fault().is(balancing::kRoundAccepted));
    EXPECT_FALSE(desk.bridge().undoLabel().contains("accept"));
    QPushButton* withdraw = desk.button("Withdraw");
    EXPECT_FALSE(withdraw->isEnabled());
    auto* reason = desk.window.findChild<DecisionPanel*>()->findChild<QLineEdit*>();
    reason->setText("wrong meter");
    EXPECT_TRUE(withdraw->isEnabled());
    withdraw->click();
    EXPECT_EQ(desk.state(), RoundState::Sent);
    EXPECT_EQ(desk.project().lastRound()->reason, "wrong meter");
}

TEST(ReviewPlace, anAcceptedRoundTellsItsLimitsAndWhatChangedSince) {
    ReviewDesk desk;
    desk.actAs(true);
    desk.review();
    desk.button("Accept Round")->click();
    auto* panel = desk.window.findChild<DecisionPanel*>();
    EXPECT_TRUE(support::textsOf(*panel).contains("by the limits: share ±5 %, of design -10 to +10 %"))
        << support::textsOf(*panel).toStdString();
    project::Job job = desk.project().job();
    job.matchingBand =
        quantity::measured<quantity::Ratio>(*base::Decimal::parse("10"), quantity::Unit::Percent);
    ASSERT_TRUE(desk.bridge().apply({"limits", {job}, {}, true}).ok());
    project::Branch zone = *desk.project().branchTagged("B-06");
    zone.id = desk.bridge().newId();
    zone.tag = "Z-01";
    ASSERT_TRUE(desk.bridge().apply({"zone", {zone}, {}, true}).ok());
    QCoreApplication::processEvents();
    const QString texts = support::textsOf(*panel);
    EXPECT_TRUE(texts.contains("by the limits: share ±5 %")) << texts.toStdString();
    EXPECT_TRUE(texts.contains("Branches added after round 2 was closed: Z-01")) << texts.toStdString();
    EXPECT_TRUE(texts.contains("share ±10 %, was ±5 %")) << texts.toStdString();
    EXPECT_TRUE(texts.contains("round 2 was accepted by those before")) << texts.toStdString();
}

TEST(ReviewPlace, whoReadTheRoundIsTurnedAwayAndThePersonIsChangedBesideTheButton) {
    ReviewDesk desk;
    project::Person other;
    other.id = desk.bridge().newId();
    other.name = "S. Olsen";
    other.role = project::PersonRole::Engineer;
    ASSERT_TRUE(desk.bridge().apply({"engineer", {other}, {}, true}).ok());
    desk.actAs(true);
    auto back = balancing::withdrawRound(desk.project(), desk.project().lastRound()->id, "one more",
                                         desk.bridge().reviewContext());
    ASSERT_TRUE(desk.bridge().apply(back).ok());
    const project::Reading* before =
        balancing::countingReading(desk.project(), desk.project().lastRound()->id, desk.branch("B-03"));
    const std::string corrected = base::Decimal::fromNumber(1.04 * before->dp->digits.value(), 1).text();
    ASSERT_TRUE(desk.bridge().storeDp(desk.branch("B-03"), QString::fromStdString(corrected)).ok())
        << "corrected by the supervisor";
    desk.send();
    desk.review();
    desk.actAs(true);
    QPushButton* accept = desk.button("Accept Round");
    EXPECT_FALSE(accept->isEnabled());
    EXPECT_TRUE(accept->toolTip().contains("S. Olsen")) << accept->toolTip().toStdString();
    const QPushButton* person = desk.button("Change Person");
    ASSERT_NE(person, nullptr);
    ASSERT_EQ(person->menu()->actions().size(), 1) << "who may, and nobody else";
    person->menu()->actions().front()->trigger();
    EXPECT_TRUE(accept->isEnabled());
    EXPECT_FALSE(person->isVisible());
    accept->click();
    EXPECT_EQ(desk.state(), RoundState::Accepted);
    EXPECT_EQ(desk.project().lastRound()->decidedBy, "S. Olsen");
}

TEST(ReviewPlace, comparesExactlyTheChangedRowsAndStrikesCorrections) {
    ReviewDesk desk(false);
    desk.send();
    ReviewPlace& place = desk.review();
    const auto tags = [&] {
        QStringList tags;
        for (int row = 0; row < place.comparison()->rowCount(); ++row) {
            tags << place.comparison()->row(row).cells.value(ReviewPlace::Tag);
        }
        return tags;
    };
    // A state may follow from another valve's reading; digits are what was seeded.
    QStringList changedDps;
    for (int row = 0; row < place.comparison()->rowCount(); ++row) {
        if (place.comparison()->row(row).cells.value(ReviewPlace::Dp).contains("→")) {
            changedDps << place.comparison()->row(row).cells.value(ReviewPlace::Tag);
        }
    }
    EXPECT_EQ(changedDps, (QStringList{"B-02", "B-05"}));
    place.findChild<QCheckBox*>()->setChecked(false);
    EXPECT_EQ(tags().size(), 6);
    // A correction in the sent-back round: the old value struck through, with who, when and why.
    desk.actAs(true);
    desk.comment("B-02", "Once more, please");
    desk.button("Send Back")->click();
    desk.actAs(false);
    const std::string old = desk.stored("B-02");
    ASSERT_TRUE(desk.bridge().storeDp(desk.branch("B-02"), "31.7").ok());
    QCoreApplication::processEvents();
    const int row = place.comparison()->rowOf(desk.branch("B-02"));
    const TextRow struck = place.comparison()->row(row + 1);
    EXPECT_TRUE(struck.isStruck);
    EXPECT_TRUE(struck.cells.value(ReviewPlace::Dp).startsWith(QString::fromStdString(old).left(4)));
    EXPECT_TRUE(struck.cells.value(ReviewPlace::Who).contains("A. Fields"));
    EXPECT_TRUE(place.comparison()->row(row).cells.value(ReviewPlace::Why).contains("corrected"));
    EXPECT_EQ(struck.cells.value(ReviewPlace::Why), "") << "nobody said why";
    desk.window.showPlace(MainWindow::Walk);
    desk.bridge().selectBranch(desk.branch("B-02"));
    desk.key(Qt::Key_M, Qt::ControlModifier);
    ASSERT_TRUE(QApplication::focusWidget()->accessibleName() == "Note to this reading")
        << "a round that was sent back takes notes";
    desk.enter("lost a digit");
    desk.review();
    EXPECT_EQ(place.comparison()->row(row + 1).cells.value(ReviewPlace::Why), "lost a digit");
    const QVariant font = place.comparison()->index(row + 1, ReviewPlace::Dp).data(Qt::FontRole);
    EXPECT_TRUE(font.value<QFont>().strikeOut());
    const QAbstractItemModelTester tester(place.comparison());
}

TEST(ReviewPlace, ofManyRowsTheLongestTagStandsWhole) {
    DeskWindow desk({.terminals = 400, .adjustingRounds = 1}, false);
    project::Branch named = *desk.project().branchTagged("B-350");
    named.tag = "B-350 N";
    ASSERT_TRUE(desk.bridge().apply({"tag", {named}, {}, true}).ok());
    desk.window.showPlace(MainWindow::Review);
    QCoreApplication::processEvents();
    const ReviewPlace& place = *desk.window.review();
    ASSERT_GT(place.comparison()->rowOf(named.id), 200) << "beyond the rows that others are measured by";
    EXPECT_GT(place.table()->columnWidth(ReviewPlace::Tag),
              place.table()->fontMetrics().horizontalAdvance("B-350 N"));
}

TEST(ReviewPlace, aRoundByItselfIsNotCompared) {
    DeskWindow desk({.terminals = 6});
    desk.window.showPlace(MainWindow::Review);
    QCoreApplication::processEvents();
    auto* place = desk.window.findChild<ReviewPlace*>();
    place->showRound(desk.project().rounds()[0].id);
    EXPECT_TRUE(place->findChild<QCheckBox*>()->isChecked());
    EXPECT_EQ(place->comparison()->rowCount(), 6) << "what was read in the first round is seen at once";
    EXPECT_TRUE(support::textsOf(*place).contains("all its rows"));
}

TEST(ReviewPlace, tagsStandWhole) {
    ReviewDesk desk;
    ReviewPlace& place = desk.review();
    place.findChild<QCheckBox*>()->setChecked(false);
    QCoreApplication::processEvents();
    const QString tag = place.comparison()->row(0).cells.value(ReviewPlace::Tag);
    EXPECT_GT(place.table()->columnWidth(ReviewPlace::Tag),
              place.table()->fontMetrics().horizontalAdvance(tag));
}

TEST(ReviewPlace, countsTheOpenRoundAsWalkDoes) {
    DeskWindow desk({.terminals = 6});
    // Read as in the survey: on share again where they were.
    for (const char* tag : {"B-01", "B-02", "B-03"}) {
        const base::Id branch = desk.project().branchTagged(tag)->id;
        const auto* before =
            balancing::countingReading(desk.project(), desk.project().rounds()[0].id, branch);
        ASSERT_TRUE(desk.bridge().storeDp(branch, QString::fromStdString(before->dp->digits.text())).ok());
    }
    const balancing::ShareCount count = balancing::shareCount(desk.bridge().assessment());
    ASSERT_TRUE(count.onShare.has_value());
    const QString words = QStringLiteral("%1/6").arg(*count.onShare);
    EXPECT_TRUE(support::textsOf(*desk.window.walk()).contains("on share <b"));
    EXPECT_TRUE(support::textsOf(*desk.window.walk()).contains('>' + words + '<'));
    desk.window.showPlace(MainWindow::Review);
    const auto tables = desk.window.review()->findChildren<QTableView*>();
    const auto rounds = std::find_if(tables.begin(), tables.end(), [](const QTableView* table) {
        return table->accessibleName() == "Rounds";
    });
    ASSERT_NE(rounds, tables.end());
    EXPECT_EQ((*rounds)->model()->index(1, 2).data().toString(), words + "\n3 read");
}

TEST(ReviewPlace, theRoundsOfALargeJobAreJudgedBetweenTheEventsOfTheScreen) {
    DeskWindow desk({.terminals = 900, .adjustingRounds = 5}, false);
    desk.window.showPlace(MainWindow::Job);
    // What was judged for the walk rests on the design.
    project::Branch branch = *desk.project().branchTagged("B-01");
    branch.designFlow = desk.project().branchTagged("B-02")->designFlow;
    ASSERT_TRUE(desk.bridge().apply({"design", {branch}, {}, true}).ok());
    desk.window.showPlace(MainWindow::Review);
    ReviewPlace& place = *desk.window.review();
    const auto tables = place.findChildren<QTableView*>();
    const auto rounds = std::find_if(tables.begin(), tables.end(), [](const QTableView* table) {
        return table->accessibleName() == "Rounds";
    });
    ASSERT_NE(rounds, tables.end());
    const auto onShare = [&](int row) { return (*rounds)->model()->index(row, 2).data().toString(); };
    EXPECT_EQ(place.comparison()->rowCount(), 0) << "the window waits for none of them";
    EXPECT_FALSE(onShare(0).endsWith("/900"));
    EXPECT_TRUE(QTest::qWaitFor([&] { return place.comparison()->rowCount() > 0; }));
    EXPECT_TRUE(onShare(5).endsWith("/900")) << "those that are compared come first";
    EXPECT_TRUE(QTest::qWaitFor([&] { return onShare(0).endsWith("/900"); }));
}

TEST(ReviewPlace, aBranchThatIsWantedIsShownBeforeAllIsJudged) {
    DeskWindow desk({.terminals = 900, .adjustingRounds = 5}, false);
    desk.window.showPlace(MainWindow::Review);
    ReviewPlace& place = *desk.window.review();
    const base::Id branch = desk.project().branchTagged("B-450")->id;
    place.showBranch(branch);
    ASSERT_GE(place.comparison()->rowOf(branch), 0);
    EXPECT_EQ(place.table()->currentIndex().row(), place.comparison()->rowOf(branch));
}

TEST(Review, showsHowTheSharesCameTogether) {
    DeskWindow desk({.terminals = 6});
    desk.window.showPlace(MainWindow::Review);
    auto* place = desk.window.findChild<ReviewPlace*>();
    auto* chart = place->findChild<charts::ChartView*>();
    ASSERT_NE(chart, nullptr);
    EXPECT_TRUE(chart->figure().isEmpty()) << "nobody looks at it yet";
    place->findChild<QTabWidget*>()->setCurrentIndex(1);
    EXPECT_FALSE(chart->figure().isEmpty());
    EXPECT_EQ(chart->figure().tableHeads.size(), 3) << "tag and two rounds";
    const bool wasTable = chart->isTableShown();
    desk.window.commands().tableTwin->trigger();
    EXPECT_NE(chart->isTableShown(), wasTable);
    bool isSaid = false;
    for (const QLabel* label : place->findChildren<QLabel*>()) {
        isSaid = isSaid || label->text().startsWith("Spread, %: Rd 1: ");
    }
    EXPECT_TRUE(isSaid);
}

TEST(Review, aValveReadTwiceCanBeCorrectedInAClosedRound) {
    DeskWindow desk({.terminals = 2});
    const base::Id branch = desk.project().branchTagged("B-01")->id;
    ASSERT_TRUE(desk.bridge().storeDp(branch, "20.1").ok());
    ASSERT_TRUE(desk.bridge().storeRepeat(branch, "20.5").ok());
    ASSERT_TRUE(desk.bridge().storeDp(desk.project().branchTagged("B-02")->id, "22").ok());
    const base::Id round = desk.project().lastRound()->id;
    project::Round closed = *desk.project().lastRound();
    closed.state = project::RoundState::Closed;
    ASSERT_TRUE(desk.bridge().apply({"close", {closed}, {}, true}).ok());
    const auto dp = quantity::measured<quantity::PressureDifference>(*base::Decimal::parse("21.7"),
                                                                     quantity::Unit::Kilopascal);
    const auto edit =
        balancing::storeDp(desk.project(), round, branch, dp, std::nullopt, desk.bridge().context());
    ASSERT_TRUE(edit.ok()) << base::english(edit.fault());
    const base::Outcome done = desk.bridge().apply(*edit);
    ASSERT_TRUE(done.ok()) << base::englishWithSubject(done.fault());
    EXPECT_EQ(desk.stored("B-01"), "21.7 kPa");
    EXPECT_EQ(desk.storedCount(), 2) << "both readings are superseded";
}

}  // namespace
}  // namespace ww::ui
