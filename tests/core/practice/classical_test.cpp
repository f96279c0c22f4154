// The classical method by rule: what it reaches on the practice buildings, by each of its aims.
#include "core/practice/classical.h"

#include <gtest/gtest.h>

namespace ww::practice {
namespace {

int withinBand(Difficulty difficulty, const ClassicalRules& rules, int seeds) {
    int count = 0;
    for (int seed = 1; seed <= seeds; ++seed) {
        const Building building(planOf(difficulty), static_cast<std::uint64_t>(seed));
        count += playClassical(building, rules).isWithinBand ? 1 : 0;
    }
    return count;
}

TEST(ClassicalTest, matchingToTheReferenceConverges) {
    // As seen on other simulated buildings: the reference's ratio converges in one or two passes.
    EXPECT_EQ(withinBand(Difficulty::First, {}, 10), 10);
    EXPECT_EQ(withinBand(Difficulty::Steady, {}, 10), 10);
}

TEST(ClassicalTest, theSumOfBranchesConverges) {
    const ClassicalRules rules{ClassicalAim::SumOfBranches};
    EXPECT_GE(withinBand(Difficulty::Steady, rules, 10), 9);
}

TEST(ClassicalTest, aTotalOffThePumpCurveDoesNot) {
    // A gauge of 1 % on a flat curve cannot say the flow to 5 %: dQ/Q is dH/H over the curve's slope, here
    // 0.01 / (2 x 0.25) = 2 % at duty and more below (from the curve H = 1.25 - 0.25 q^2 of the buildings).
    ClassicalRules rules{ClassicalAim::PumpCurveTotal};
    rules.isByGroups = false;
    EXPECT_LT(withinBand(Difficulty::Steady, rules, 10), 8);
}

TEST(ClassicalTest, leavesAReferenceOpenInEveryGroup) {
    const Building building(planOf(Difficulty::Steady), 1);
    const ClassicalGame game = playClassical(building);
    ASSERT_GE(game.passes.size(), 2u);
    EXPECT_TRUE(game.passes.back().outcome.hasOpenMemberInEveryGroup);
    EXPECT_LT(game.passes.back().outcome.worstTrue, game.passes.front().outcome.worstTrue);
    EXPECT_GT(game.passes.back().moves, 5);
    EXPECT_GT(game.passes.back().readings, 30);
}

}  // namespace
}  // namespace ww::practice
