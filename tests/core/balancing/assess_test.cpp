// Shares, groups and states on small loops whose flows are given. The rules are those of
// proportional balancing as commonly practised (no single source); the expected numbers are worked by hand.
#include "core/balancing/assess.h"

#include <gtest/gtest.h>

#include "core/balancing/doubt_forms.h"
#include "core/balancing/verdict_forms.h"
#include "tests/core/balancing/small_loop.h"

namespace ww::balancing {
namespace {

using project::BranchKind;
using project::RoundKind;

TEST(Assess, withoutARoundThereAreOnlyDesignValues) {
    const FieldJob job = flatLoop(4);
    const Assessment a = assessLast(job.project());
    EXPECT_FALSE(a.round);
    EXPECT_EQ(a.terminalCount, 4u);
    EXPECT_FALSE(a.totalFlow);
    EXPECT_NEAR(a.branches[0].targetShare.si(), 0.25, 1e-12);
    EXPECT_EQ(a.verdict, Verdict::NotAccepted);
    EXPECT_TRUE(hasReason(a, kNoRoundYet));
    EXPECT_TRUE(a.index.path.empty());
}

TEST(Assess, anEmptyJobIsNoAccident) {
    FieldJob job;
    EXPECT_TRUE(hasReason(assessLast(job.project()), kNoRoundYet));
    job.round(RoundKind::Survey);
    const Assessment a = assessNewest(job);
    EXPECT_TRUE(hasReason(a, kNoTerminals));
    EXPECT_FALSE(a.isComplete);
    EXPECT_TRUE(a.groups.empty());
}

TEST(Assess, sharesAreOfTheSumOfTerminals) {
    FieldJob job = flatLoop(4);
    job.round(RoundKind::Survey);
    readAs(job, "A", 1.6);
    readAs(job, "B", 1.2);
    readAs(job, "C", 1.0);
    readAs(job, "D", 0.2);
    const Assessment a = assessNewest(job);
    ASSERT_TRUE(a.totalFlow);
    EXPECT_NEAR(a.totalFlow->in(quantity::Unit::CubicMetrePerHour), 16, 0.002);
    EXPECT_NEAR(resultOf(job, a, "A").share->si(), 0.4, 1e-4);
    EXPECT_NEAR(resultOf(job, a, "A").ofTarget->si(), 1.6, 1e-3);
    EXPECT_NEAR(resultOf(job, a, "D").ofDesign->si(), 0.2, 1e-3);
    EXPECT_NEAR(a.spread->si(), 1.4, 1e-3);
    EXPECT_EQ(a.readCount, 4u);
    EXPECT_EQ(a.onShareCount, 1u);
    EXPECT_TRUE(a.isComplete);
}

TEST(Assess, stateOfAShare) {
    FieldJob job = flatLoop(6);
    job.round(RoundKind::Adjusting);
    readAs(job, "A", 1.20, "3");  // over
    readAs(job, "B", 0.80, "3");  // short, and could be opened
    readAs(job, "C", 0.80, "4");  // short, and cannot
    readAs(job, "D", 1.20, "4");  // over, and can be closed
    readAs(job, "E", 1.00, "3");
    readAs(job, "F", 1.00, "4");
    const Assessment a = assessNewest(job);
    EXPECT_EQ(resultOf(job, a, "A").state, State::Over);
    EXPECT_EQ(resultOf(job, a, "B").state, State::Short);
    EXPECT_EQ(resultOf(job, a, "C").state, State::AtStop);
    EXPECT_TRUE(resultOf(job, a, "C").isFullyOpen);
    EXPECT_EQ(resultOf(job, a, "D").state, State::Over);
    EXPECT_EQ(resultOf(job, a, "E").state, State::OnShare);
    EXPECT_EQ(resultOf(job, a, "F").state, State::OnShare);
}

TEST(Assess, theBandIncludesItsLimits) {
    FieldJob job = flatLoop(2);
    job.round(RoundKind::Adjusting);
    job.flow("A", "4.2");
    job.flow("B", "3.8");
    const Assessment a = assessNewest(job);
    EXPECT_EQ(resultOf(job, a, "A").state, State::OnShare);
    EXPECT_EQ(resultOf(job, a, "B").state, State::OnShare);
    job.round(RoundKind::Adjusting);
    job.flow("A", "4.21");
    job.flow("B", "3.79");
    const Assessment outside = assessNewest(job);
    EXPECT_NE(resultOf(job, outside, "A").state, State::OnShare);
}

TEST(Assess, shutAndStillOverIsAtItsStop) {
    FieldJob job;
    const base::Id leaking = job.valve({{"1", "2"}, {"4", "8"}});  // the table's lowest setting still passes
    job.branch("A", "", "4", leaking);
    job.branch("B", "", "4", leaking);
    job.round(RoundKind::Adjusting);
    job.dp("A", dpFor(1.2, 2), "1");
    job.dp("B", dpFor(0.8, 8), "4");
    const Assessment a = assessNewest(job);
    EXPECT_TRUE(resultOf(job, a, "A").isShut);
    EXPECT_EQ(resultOf(job, a, "A").state, State::AtStop);
}

TEST(Assess, driftedWasOnShareAndWasNotTouched) {
    FieldJob job = flatLoop(3);
    job.round(RoundKind::Adjusting);
    readAs(job, "A", 1.00, "3");
    readAs(job, "B", 1.00, "3");
    readAs(job, "C", 1.00, "4");
    job.round(RoundKind::Adjusting);
    readAs(job, "A", 1.20, "3");  // untouched
    readAs(job, "B", 0.80, "2");  // closed too far
    readAs(job, "C", 1.00, "4");
    const Assessment a = assessNewest(job);
    EXPECT_EQ(resultOf(job, a, "A").state, State::Drifted);
    EXPECT_EQ(resultOf(job, a, "B").state, State::Short);
    const Assessment quick = assessNewest(job, {.numbersOnly = true});
    EXPECT_EQ(resultOf(job, quick, "A").state, State::Drifted);
    EXPECT_TRUE(quick.findings.empty());
}

TEST(Assess, wasNotOnShareBeforeSoItDidNotDrift) {
    FieldJob job = flatLoop(2);
    job.round(RoundKind::Adjusting);
    readAs(job, "A", 1.30, "3");
    readAs(job, "B", 0.70, "3");
    job.round(RoundKind::Adjusting);
    readAs(job, "A", 1.20, "3");
    readAs(job, "B", 0.80, "3");
    EXPECT_EQ(resultOf(job, assessNewest(job), "A").state, State::Over);
}

TEST(Assess, aTieGoesToTheFartherOne) {
    FieldJob job = flatLoop(3);
    job.round(RoundKind::Survey);
    readAs(job, "A", 1.0);
    readAs(job, "B", 0.9);
    readAs(job, "C", 0.9);
    const Assessment a = assessNewest(job);
    EXPECT_EQ(*a.groups[0].reference, job.indexOf("C"));
    EXPECT_EQ(*a.index.terminal, job.indexOf("C"));
}

TEST(Assess, onceMatchedTheOpenValveIsTheReference) {
    FieldJob job = flatLoop(3);
    job.round(RoundKind::Final);
    readAs(job, "A", 0.99, "3");  // lowest by the noise of reading
    readAs(job, "B", 1.01, "4");
    readAs(job, "C", 1.00, "3");
    const Assessment a = assessNewest(job);
    EXPECT_EQ(*a.groups[0].reference, job.indexOf("B"));
    EXPECT_TRUE(a.index.isPathFullyOpen);
    EXPECT_EQ(a.verdict, Verdict::Accepted);
}

TEST(Assess, aThrottledValveFarBelowTheOthersStaysTheReference) {
    FieldJob job = flatLoop(3);
    job.round(RoundKind::Adjusting);
    readAs(job, "A", 0.80, "3");
    readAs(job, "B", 1.10, "4");
    readAs(job, "C", 1.10, "3");
    const Assessment a = assessNewest(job);
    EXPECT_EQ(*a.groups[0].reference, job.indexOf("A"));
    EXPECT_FALSE(a.index.isValveFullyOpen);
    EXPECT_TRUE(hasReason(a, kIndexValveThrottled));
}

/// Main M with risers R1 and R2; R1 has branches B1 and B2 of two terminals each, R2 has two terminals.
FieldJob deepLoop() {
    FieldJob job;
    const base::Id valve = usualValve(job);
    job.branch("M", "", "", std::nullopt, BranchKind::None);
    job.branch("R1", "M", "", valve);
    job.branch("R2", "M", "", valve);
    job.branch("B1", "R1", "", valve);
    job.branch("B2", "R1", "", std::nullopt, BranchKind::None);
    for (const char* tag : {"T11", "T12"}) {
        job.branch(tag, "B1", "4", valve);
    }
    for (const char* tag : {"T21", "T22"}) {
        job.branch(tag, "B2", "4", valve);
    }
    for (const char* tag : {"T31", "T32"}) {
        job.branch(tag, "R2", "4", valve);
    }
    return job;
}

TEST(Assess, groupsAtDepthThree) {
    FieldJob job = deepLoop();
    job.round(RoundKind::Survey);
    readAs(job, "T11", 1.4);
    readAs(job, "T12", 1.2);
    readAs(job, "T21", 0.8);
    readAs(job, "T22", 1.0);
    readAs(job, "T31", 1.5);
    readAs(job, "T32", 1.3);
    const Assessment a = assessNewest(job);
    ASSERT_EQ(a.groups.size(), 6u);  // at the pump, then below M, R1, R2, B1 and B2
    EXPECT_FALSE(a.groups[0].parent);
    EXPECT_EQ(a.groups[1].parent, job.indexOf("M"));
    const BranchResult& r1 = resultOf(job, a, "R1");
    EXPECT_EQ(r1.source, FlowSource::SumOfChildren);
    EXPECT_FALSE(r1.isTerminal);
    EXPECT_NEAR(r1.ofDesign->si(), 1.1, 1e-3);
    EXPECT_NEAR(r1.targetShare.si(), 4.0 / 6, 1e-12);
    EXPECT_NEAR(resultOf(job, a, "B2").ofDesign->si(), 0.9, 1e-3);
    EXPECT_NEAR(resultOf(job, a, "M").share->si(), 1, 1e-12);
    const std::vector<std::size_t> path{job.indexOf("M"), job.indexOf("R1"), job.indexOf("B2"),
                                        job.indexOf("T21")};
    EXPECT_EQ(a.index.path, path);
    EXPECT_TRUE(a.index.isPathFullyOpen);  // no setting was ever read: as found, fully open
}

TEST(Assess, aGroupsOwnValveGoesBeforeTheSum) {
    FieldJob job = deepLoop();
    job.round(RoundKind::Survey);
    for (const char* tag : {"T11", "T12", "T21", "T22", "T31", "T32"}) {
        readAs(job, tag, 1.0);
    }
    job.dp("B1", dpFor(2.2, 8), "4");
    const Assessment a = assessNewest(job);
    EXPECT_EQ(resultOf(job, a, "B1").source, FlowSource::ValveDp);
    EXPECT_NEAR(resultOf(job, a, "B1").ofDesign->si(), 1.1, 1e-3);
    // R1 takes its children as they are known best; the total stays the sum of terminals.
    EXPECT_NEAR(resultOf(job, a, "R1").flow->in(quantity::Unit::CubicMetrePerHour), 16.8, 0.01);
    EXPECT_NEAR(a.totalFlow->in(quantity::Unit::CubicMetrePerHour), 24, 0.01);
}

TEST(Assess, aRisersReadingStandsInForItsUnreadTerminals) {
    FieldJob job = deepLoop();
    job.round(RoundKind::Survey);
    for (const char* tag : {"T11", "T12", "T21", "T22", "T31"}) {
        readAs(job, tag, 1.0);
    }
    EXPECT_FALSE(assessNewest(job).totalFlow);
    job.dp("R2", dpFor(2.0, 8), "4");
    const Assessment a = assessNewest(job);
    ASSERT_TRUE(a.totalFlow);
    EXPECT_NEAR(a.totalFlow->in(quantity::Unit::CubicMetrePerHour), 24, 0.01);
    EXPECT_FALSE(a.isComplete);
    EXPECT_TRUE(hasReason(a, kTerminalsUnread));
}

TEST(Assess, selfActingTerminalsCountInTheTotalAndStayOutOfTheGroup) {
    FieldJob job = flatLoop(2);
    const base::Id cartridge = job.valve({});
    job.change(job.project().valves().at(cartridge), [&](project::ValveModel& v) {
        v.minimumDp = job.pressure("15");
        v.maximumDp = job.pressure("220");
    });
    job.branch("L", "", "4", cartridge, BranchKind::Limiter);
    job.round(RoundKind::Survey);
    readAs(job, "A", 1.5);
    readAs(job, "B", 1.3);
    job.dp("L", "40");
    const Assessment a = assessNewest(job);
    EXPECT_NEAR(a.totalFlow->in(quantity::Unit::CubicMetrePerHour), 15.2, 0.01);
    EXPECT_TRUE(resultOf(job, a, "L").isSelfActing);
    EXPECT_FALSE(resultOf(job, a, "L").isMatchable);
    EXPECT_EQ(resultOf(job, a, "L").state, State::OnShare);
    EXPECT_EQ(*a.groups[0].reference, job.indexOf("B"));  // not L with 100 % of design
    EXPECT_NEAR(a.spread->si(), 0.2 * 12 / 15.2, 1e-3);
    job.round(RoundKind::Survey);
    readAs(job, "A", 1.0);
    readAs(job, "B", 1.0);
    job.dp("L", "3.75");  // a quarter of the range's start: half the design flow, like a fixed orifice
    const Assessment below = assessNewest(job);
    EXPECT_EQ(resultOf(job, below, "L").state, State::Short);
    EXPECT_NEAR(resultOf(job, below, "L").ofDesign->si(), 0.5, 1e-9);
    EXPECT_EQ(below.verdict, Verdict::NotAccepted);
    EXPECT_TRUE(hasReason(below, kSelfActingOutside));
}

TEST(Assess, aLimiterBelowInAndAboveItsRange) {
    // Common practice, published by a commissioning guide: a limiter of 2 to 32 psid read at 1.4, 12 and 40
    // psid is below, in and above its range; in kPa 13.79 to 220.6 and 9.653, 82.74, 275.8.
    FieldJob job = flatLoop(2);
    const base::Id cartridge = job.valve({});
    job.change(job.project().valves().at(cartridge), [&](project::ValveModel& v) {
        v.minimumDp = job.pressure("13.79");
        v.maximumDp = job.pressure("220.6");
    });
    job.branch("L", "", "4", cartridge, BranchKind::Limiter);
    const struct {
        const char* dp_kPa;
        State state;
    } kCases[] = {{"9.653", State::Short}, {"82.74", State::OnShare}, {"275.8", State::Over}};
    for (const auto& one : kCases) {
        SCOPED_TRACE(one.dp_kPa);
        job.round(RoundKind::Survey);
        readAs(job, "A", 1.0);
        readAs(job, "B", 1.0);
        job.dp("L", one.dp_kPa);
        const Assessment a = assessNewest(job);
        EXPECT_EQ(resultOf(job, a, "L").state, one.state);
        EXPECT_EQ(hasReason(a, kSelfActingOutside), one.state != State::OnShare);
    }
}

TEST(Assess, settingsCarryOverFromEarlierRounds) {
    FieldJob job = flatLoop(2);
    job.round(RoundKind::Adjusting);
    readAs(job, "A", 1.0, "3");
    readAs(job, "B", 1.0, "4");
    job.round(RoundKind::Adjusting);
    job.dp("A", dpFor(1.0, 4));  // no setting written: as before
    job.dp("B", dpFor(1.0, 8));
    const Assessment a = assessNewest(job);
    EXPECT_NEAR(resultOf(job, a, "A").ofDesign->si(), 1.0, 1e-3);
    EXPECT_EQ(resultOf(job, a, "A").setting->si(), 3);
    EXPECT_FALSE(resultOf(job, a, "A").isFullyOpen);
    EXPECT_TRUE(resultOf(job, a, "B").isFullyOpen);
}

TEST(Assess, repeatedReadingsCountByTheirMean) {
    FieldJob job = flatLoop(1);
    job.round(RoundKind::Survey);
    job.dp("A", "24", "4");
    const base::Id again = job.dp("A", "26", "4");
    job.change(job.project().readings().at(again), [](project::Reading& r) { r.isRepeat = true; });
    const Assessment a = assessNewest(job);
    EXPECT_NEAR(a.branches[0].dp->in(quantity::Unit::Kilopascal), 25, 1e-9);
    EXPECT_NEAR(a.branches[0].dpRepeatability->si(), 0.04, 1e-9);
}

TEST(Assess, theLaterReadingCountsWhereNoneRepeats) {
    FieldJob job = flatLoop(1);
    job.round(RoundKind::Survey);
    job.dp("A", "24", "4");
    job.dp("A", "26", "4");
    const Assessment a = assessNewest(job);
    EXPECT_NEAR(a.branches[0].dp->in(quantity::Unit::Kilopascal), 26, 1e-9);
    EXPECT_FALSE(a.branches[0].dpRepeatability);
}

TEST(Assess, gapsAreFilledWhileWalking) {
    FieldJob job = flatLoop(3);
    job.round(RoundKind::Survey);
    for (const char* tag : {"A", "B", "C"}) {
        readAs(job, tag, 1.0);
    }
    job.round(RoundKind::Adjusting, project::RoundState::Open);
    readAs(job, "A", 1.3);
    EXPECT_FALSE(assessNewest(job).totalFlow);
    const Assessment a = assessNewest(job, {.fillGaps = true});
    ASSERT_TRUE(a.totalFlow);
    EXPECT_NEAR(a.totalFlow->in(quantity::Unit::CubicMetrePerHour), 13.2, 0.01);
    EXPECT_TRUE(resultOf(job, a, "B").isFromEarlierRound);
    EXPECT_EQ(resultOf(job, a, "B").state, State::NotRead);
    EXPECT_EQ(a.readCount, 1u);
    EXPECT_FALSE(a.isComplete);
}

// A filled walk sheet may leave the setting empty: the valve stands where the round before left it.
TEST(Assess, aGapIsFilledAtTheSettingThatStoodWhenItWasRead) {
    FieldJob job = flatLoop(2);
    job.round(RoundKind::Survey);
    job.dp("A", "24", "4");
    job.dp("B", "24", "4");
    job.round(RoundKind::Adjusting);
    job.dp("A", "24", "2");
    job.dp("B", "24", "4");
    job.round(RoundKind::Final);
    job.dp("A", "30", "");
    job.dp("B", "30", "");
    const VolumeFlow read = *resultOf(job, assessNewest(job), "A").flow;
    job.round(RoundKind::Adjusting, project::RoundState::Open);
    const Assessment a = assessNewest(job, {.fillGaps = true});
    ASSERT_TRUE(resultOf(job, a, "A").isFromEarlierRound);
    EXPECT_EQ(resultOf(job, a, "A").flow->si(), read.si());
}

TEST(Assess, sharesOfAFirstRoundAreProvisionalWhileItIsWalked) {
    FieldJob job = flatLoop(4);
    job.round(RoundKind::Survey, project::RoundState::Open);
    readAs(job, "A", 1.5);
    readAs(job, "B", 0.5);
    const Assessment a = assessNewest(job, {.fillGaps = true});
    EXPECT_FALSE(a.totalFlow);
    EXPECT_NEAR(resultOf(job, a, "A").ofTarget->si(), 1.5, 1e-3);
    EXPECT_FALSE(resultOf(job, a, "C").ofTarget);
}

}  // namespace
}  // namespace ww::balancing
