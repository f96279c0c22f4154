// The verdict on small loops whose flows are given. The rules are those of proportional balancing as commonly
// practised (no single source); the expected numbers are worked by hand.
#include "core/balancing/verdict_forms.h"

#include <gtest/gtest.h>

#include "tests/core/balancing/small_loop.h"

namespace ww::balancing {
namespace {

using project::RoundKind;

TEST(Verdict, acceptedWhenEverythingHolds) {
    FieldJob job = flatLoop(3);
    job.instrument("1", "0.1");
    job.round(RoundKind::Final);
    readAs(job, "A", 1.02, "3");
    readAs(job, "B", 0.99, "3");
    readAs(job, "C", 1.00, "4");
    const Assessment a = assessNewest(job);
    EXPECT_EQ(a.verdict, Verdict::Accepted);
    EXPECT_TRUE(a.reasons.empty());
}

TEST(Verdict, missingTerminal) {
    FieldJob job = flatLoop(2);
    job.round(RoundKind::Final);
    readAs(job, "A", 1.0);
    const Assessment a = assessNewest(job);
    EXPECT_EQ(a.verdict, Verdict::NotAccepted);
    ASSERT_FALSE(a.reasons.empty());
    EXPECT_TRUE(a.reasons[0].is(kTerminalsUnread));
    EXPECT_EQ(base::english(a.reasons[0]), "not read in this round: 1 of 2 terminals (B); read them");
}

TEST(Verdict, aTerminalThatCannotBeReadLeavesItUndecided) {
    FieldJob job = flatLoop(2);
    job.round(RoundKind::Final);
    readAs(job, "A", 1.0);
    job.cannotBeRead("B", "");
    EXPECT_EQ(assessNewest(job).verdict, Verdict::NotAccepted);
    job.cannotBeRead("B", "port blocked");
    const Assessment a = assessNewest(job);
    EXPECT_EQ(a.verdict, Verdict::Undecidable);
    EXPECT_TRUE(hasReason(a, kTerminalsUnreadable));
    EXPECT_TRUE(a.isComplete);
}

TEST(Verdict, undecidableWhereTheUncertaintySpansTheLimit) {
    const auto verdictAt = [](double high, const char* accuracy) {
        FieldJob job = flatLoop(2);
        job.instrument(accuracy, "");
        job.round(RoundKind::Adjusting);
        readAs(job, "A", high, "4");
        readAs(job, "B", 2 - high, "4");
        return assessNewest(job).verdict;
    };
    // Two equal terminals, each dp known to 4 %: flow 2 %, of target 1.4 % (root of squares, by hand).
    EXPECT_EQ(verdictAt(1.03, "4"), Verdict::Accepted);
    EXPECT_EQ(verdictAt(1.04, "4"), Verdict::Undecidable);
    EXPECT_EQ(verdictAt(1.06, "4"), Verdict::Undecidable);
    EXPECT_EQ(verdictAt(1.07, "4"), Verdict::NotAccepted);
    EXPECT_EQ(verdictAt(1.04, "0.1"), Verdict::Accepted);
    EXPECT_EQ(verdictAt(1.06, "0.1"), Verdict::NotAccepted);
}

TEST(Verdict, theTablesErrorMovesNoShare) {
    FieldJob job = flatLoop(2);
    job.instrument("1", "");
    job.round(RoundKind::Adjusting);
    readAs(job, "A", 1.02, "3");
    readAs(job, "B", 0.98, "4");
    const Assessment a = assessNewest(job);
    EXPECT_EQ(a.verdict, Verdict::Accepted);
    const BranchResult& result = resultOf(job, a, "A");
    EXPECT_GT(*result.flowUncertainty / *result.flow, 0.05);
    EXPECT_LT(*result.readingUncertainty / *result.flow, 0.006);
}

TEST(Verdict, designFlowCountsInAFinalRoundOnly) {
    for (const RoundKind kind : {RoundKind::Adjusting, RoundKind::Final}) {
        FieldJob job = flatLoop(2);
        job.round(kind);
        readAs(job, "A", 1.2);
        readAs(job, "B", 1.2);
        const Assessment a = assessNewest(job);
        EXPECT_EQ(a.verdict, kind == RoundKind::Final ? Verdict::NotAccepted : Verdict::Accepted);
        EXPECT_EQ(hasReason(a, kOffDesign), kind == RoundKind::Final);
    }
}

TEST(Verdict, theFartherOffTheSooner) {
    FieldJob job = flatLoop(3);
    job.round(RoundKind::Adjusting);
    readAs(job, "A", 1.30);
    readAs(job, "B", 0.95);
    readAs(job, "C", 0.75);
    const Assessment a = assessNewest(job);
    ASSERT_TRUE(hasReason(a, kOffShare));
    EXPECT_EQ(base::english(a.reasons[0]),
              "outside 5.0 % around their target share: 2 of 3 branches (A, C), the farthest is A with 130.0 "
              "% of target; "
              "adjust them");
}

TEST(Verdict, aGroupOffTheIndexCircuitNeedsAnOpenValveToo) {
    FieldJob job = twoRisers();
    job.round(RoundKind::Adjusting);
    readAs(job, "A", 1.01, "3");
    readAs(job, "B", 1.01, "3");
    readAs(job, "C", 0.99, "3");
    readAs(job, "D", 0.99, "4");
    const Assessment a = assessNewest(job);
    EXPECT_EQ(a.verdict, Verdict::NotAccepted);
    EXPECT_TRUE(hasReason(a, kGroupWithoutOpenValve));
    EXPECT_FALSE(hasReason(a, kIndexValveThrottled));
}

TEST(Verdict, anUnreadableDpLeavesItUndecided) {
    FieldJob job = flatLoop(2);
    job.instrument("1", "2.6");  // readable from 26 kPa on
    job.round(RoundKind::Adjusting);
    readAs(job, "A", 1.02, "4");
    const base::Id low = readAs(job, "B", 0.98, "4");
    const Assessment doubtful = assessNewest(job);
    EXPECT_EQ(resultOf(job, doubtful, "B").source, FlowSource::Range);
    EXPECT_EQ(resultOf(job, doubtful, "B").state, State::Doubtful);
    EXPECT_LT(*resultOf(job, doubtful, "B").flowLow, *resultOf(job, doubtful, "B").flow);
    EXPECT_GT(*resultOf(job, doubtful, "B").flowHigh, *resultOf(job, doubtful, "B").flow);
    EXPECT_EQ(doubtful.verdict, Verdict::Undecidable);
    job.change(job.project().readings().at(low),
               [](project::Reading& reading) { reading.reason = "the only instrument on site"; });
    const Assessment explained = assessNewest(job);
    EXPECT_EQ(resultOf(job, explained, "B").state, State::OnShare);
    EXPECT_EQ(explained.verdict, Verdict::Undecidable);
    EXPECT_TRUE(hasReason(explained, kDpUnreadable));
}

}  // namespace
}  // namespace ww::balancing
