// A whole job by the program's advice on a simulated building: surveyed, advised, set, verified, the pump
// brought down, and the final round accepted.
#include <gtest/gtest.h>

#include <cmath>

#include "core/balancing/assess.h"
#include "core/practice/classical.h"
#include "core/practice/comparison.h"
#include "tests/support/guided_practice.h"

namespace ww::practice {
namespace {

using balancing::AdviceStatus;
using project::RoundKind;

void workThrough(Difficulty difficulty, std::uint64_t seed) {
    SCOPED_TRACE(text({difficulty, seed}));
    const Building building(planOf(difficulty), seed);
    support::GuidedPractice technician(building);
    technician.walk(RoundKind::Survey);
    auto advice = technician.advise(technician.learn());
    // Two further rounds at most: one verifies, now and then another corrects.
    for (int round = 0; round < 2 && advice.status != AdviceStatus::Verified; ++round) {
        technician.set(advice);
        technician.walk(RoundKind::Adjusting);
        advice = technician.advise(technician.learn());
    }
    EXPECT_EQ(advice.status, AdviceStatus::Verified);
    technician.set(advice);
    ASSERT_TRUE(advice.pump && advice.pump->speedFraction);
    technician.setSpeed(*advice.pump->speedFraction);
    technician.walk(RoundKind::Final);
    const auto judged = balancing::assessLast(technician.project());
    EXPECT_EQ(judged.verdict, balancing::Verdict::Accepted)
        << (judged.reasons.empty() ? "" : base::englishWithSubject(judged.reasons.front()));
    const Outcome outcome = technician.outcome();
    EXPECT_LE(outcome.worstTrue.si(), 0.05);
    EXPECT_TRUE(outcome.hasOpenMemberInEveryGroup);
    // At the speed advised the least supplied terminal has its design flow within the tolerance of 10 %.
    EXPECT_NEAR(outcome.lowestOfDesign.si(), 1, 0.1);
}

TEST(WholeJobTest, threeTerminalsEndAccepted) {
    for (std::uint64_t seed = 1; seed <= 5; ++seed) {
        workThrough(Difficulty::First, seed);
    }
}

TEST(WholeJobTest, twelveTerminalsEndAccepted) {
    for (std::uint64_t seed = 1; seed <= 5; ++seed) {
        workThrough(Difficulty::Steady, seed);
    }
}

TEST(WholeJobTest, adviceTakesFewerReadingsThanTheClassicalMethodForBetterShares) {
    const Building building(planOf(Difficulty::Steady), 1);
    support::GuidedPractice technician(building);
    technician.walk(RoundKind::Survey);
    technician.set(technician.advise(technician.learn()));
    technician.walk(RoundKind::Adjusting);
    technician.set(technician.advise(technician.learn()));
    const ClassicalGame game = playClassical(building);
    EXPECT_LT(technician.outcome().worstTrue, game.passes.back().outcome.worstTrue);
    EXPECT_LT(static_cast<int>(technician.project().readings().size()), game.passes.back().readings);
}

TEST(WholeJobTest, aWrongReadingIsNamedAfterTheNextRound) {
    BuildingPlan plan = planOf(Difficulty::Steady);
    plan.faults = {FaultKind::DpDoubled};
    const Building building(plan, 3);
    support::GuidedPractice technician(building);
    technician.walk(RoundKind::Survey);
    technician.set(technician.advise(technician.learn()));
    technician.walk(RoundKind::Adjusting);
    const auto learned = technician.learn();
    ASSERT_FALSE(learned.doubtful.empty());
    EXPECT_EQ(learned.doubtful.front().branch, building.truth().faults.front().branch);
}

TEST(ComparisonTest, setsTruthBesideWhatWasFound) {
    const PracticeJob job({Difficulty::Steady, 1});
    support::GuidedPractice technician(job.building());
    technician.walk(RoundKind::Survey);
    technician.set(technician.advise(technician.learn()));
    technician.walk(RoundKind::Adjusting);
    const Comparison end = compare(job, technician.project());
    EXPECT_FALSE(end.notLearned);
    EXPECT_EQ(end.work.rounds, 2);
    // Two rounds of fifteen valves and one gauge.
    EXPECT_EQ(end.work.readings, 32);
    EXPECT_GE(end.work.moves, 9);
    EXPECT_LT(end.now.worstTrue, end.asFound.worstTrue);
    ASSERT_TRUE(end.headSaved);
    EXPECT_GT(end.headSaved->si(), 0);
    // Two sd hold 95 % of normal errors; of 27 losses at least 22 with 99.5 % (binomial).
    ASSERT_EQ(end.losses.size(), 27u);
    int within = 0;
    for (const ComparedLoss& loss : end.losses) {
        ASSERT_TRUE(loss.found);
        within += std::abs(std::log(*loss.found / loss.real)) <= 2 * loss.foundUncertainty.si() ? 1 : 0;
    }
    EXPECT_GE(within, 22);
}

}  // namespace
}  // namespace ww::practice
