// The simulated building: the same from the same seed, true to its own truth, with faults that do what they
// say.
#include "core/practice/building.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/practice/outcome.h"
#include "core/practice/random_numbers.h"

namespace ww::practice {
namespace {

const project::Branch& branchOf(const Building& building, std::size_t index) {
    return building.design().branches()[index];
}

std::size_t firstTerminal(const Building& building) {
    return building.design().tree().terminals()[0];
}

BuildingPlan twelve() {
    return planOf(Difficulty::Steady);
}

const PlantedFault& onlyFault(const Building& building) {
    EXPECT_EQ(building.truth().faults.size(), 1u);
    return building.truth().faults.front();
}

/// A building of the plan whose only fault, a slip of reading, happens in that round.
Building withSlip(BuildingPlan plan, FaultKind kind, int round) {
    plan.faults = {kind};
    for (std::uint64_t seed = 1;; ++seed) {
        Building building(plan, seed);
        if (onlyFault(building).round == round) {
            return building;
        }
    }
}

TEST(RandomNumbersTest, uniformAndNormalNumbersHaveTheirMoments) {
    // Mean and variance of the distributions; four standard errors of 40,000 draws.
    RandomNumbers random{7, 8};
    constexpr int kDraws = 40000;
    double sum = 0;
    double squares = 0;
    double uniform = 0;
    for (int i = 0; i < kDraws; ++i) {
        const double score = random.normalScore();
        sum += score;
        squares += score * score;
        uniform += random.uniformFraction();
    }
    EXPECT_NEAR(sum / kDraws, 0, 4 / std::sqrt(kDraws));
    EXPECT_NEAR(squares / kDraws, 1, 4 * std::sqrt(2.0 / kDraws));
    EXPECT_NEAR(uniform / kDraws, 0.5, 4 * std::sqrt(1.0 / 12 / kDraws));
}

TEST(RandomNumbersTest, streamsFollowFromAllTheirKeys) {
    EXPECT_EQ(RandomNumbers({1, 2}).next(), RandomNumbers({1, 2}).next());
    EXPECT_NE(RandomNumbers({1, 2}).next(), RandomNumbers({2, 1}).next());
    EXPECT_NE(RandomNumbers({1}).next(), RandomNumbers({1, 0}).next());
}

TEST(BuildingTest, theSameSeedGivesTheSameBuildingAndReadings) {
    const Building one(twelve(), 17);
    const Building same(twelve(), 17);
    const Building other(twelve(), 18);
    ASSERT_EQ(one.design().branches().size(), 15u);
    for (std::size_t i = 0; i < one.design().branches().size(); ++i) {
        EXPECT_EQ(branchOf(one, i), branchOf(same, i));
        const ReadingMoment moment{2, 1, 5};
        EXPECT_EQ(one.readDp({}, i, moment).dp, same.readDp({}, i, moment).dp);
    }
    EXPECT_NE(branchOf(one, 0).id, branchOf(other, 0).id);
}

TEST(BuildingTest, aLadderOfThreeFlowsAsFoldedByHand) {
    // Square laws: conductances 1/sqrt(k) add in parallel, resistances in series (common practice).
    const Building building(planOf(Difficulty::First), 5);
    const auto flows = project::designFlows(building.design());
    const double q1 = flows[0].si();
    const double q2 = flows[1].si();
    const double q3 = flows[2].si();
    const double carried[] = {q1 + q2 + q3, q2 + q3, q3};
    const double own[] = {q1, q2, q3};
    const auto parallel = [](double a, double b) {
        return std::pow(1 / std::sqrt(a) + 1 / std::sqrt(b), -2);
    };
    double run[3];
    double circuit[3];
    for (std::size_t i = 0; i < 3; ++i) {
        const TrueBranch& truth = building.truth().branches[i];
        const double kv =
            building.design().characteristicOf(branchOf(building, i))->coefficientFullyOpen().si();
        // Kv: m3/h at 1 bar for the reference density of 999.0 kg/m3.
        const double valve = 1e5 * building.design().fluid().density().si() / 999.0 * std::pow(3600 / kv, 2);
        run[i] = truth.runLoss.si() / (carried[i] * carried[i]);
        circuit[i] = truth.circuitLoss.si() / (own[i] * own[i]) + valve;
    }
    const double third = run[2] + circuit[2];
    const double second = run[1] + parallel(circuit[1], third);
    const double all = run[0] + parallel(circuit[0], second);
    const TrueState real = building.stateAt({});
    const double total = real.pumpFlow.si();
    EXPECT_NEAR(all * total * total / real.pumpRise.si(), 1, 1e-9);
    const double first = total * std::sqrt(second / circuit[0]) / (1 + std::sqrt(second / circuit[0]));
    EXPECT_NEAR(real.flows[0].si() / first, 1, 1e-9);
    const auto& curve = *building.design().pumpCurve(building.design().pumps()[0].id);
    const double table_Pa = building.design().fluid().pressure(curve.head(real.pumpFlow)).si();
    EXPECT_NEAR(real.pumpRise.si() / table_Pa, building.truth().pumpFactor, 1e-9);
}

TEST(BuildingTest, whereNothingIsWrongTheGaugesMeetThePumpsCurve) {
    for (std::uint64_t seed = 1; seed <= 5; ++seed) {
        for (const Difficulty sound : {Difficulty::First, Difficulty::Steady, Difficulty::Large}) {
            EXPECT_EQ(Building(planOf(sound), seed).truth().pumpFactor, 1) << seed;
        }
        EXPECT_NE(Building(planOf(Difficulty::Faulty), seed).truth().pumpFactor, 1) << seed;
    }
}

TEST(BuildingTest, readingsScatterAsTheMeterDoes) {
    const Building building(twelve(), 3);
    const std::size_t terminal = firstTerminal(building);
    const double real_Pa = building.stateAt({}).valveDrops[terminal].si();
    double squares = 0;
    constexpr int kLooks = 2000;
    for (int look = 1; look <= kLooks; ++look) {
        const double read_Pa = building.readDp({}, terminal, {1, look, 0}).dp.value.si();
        EXPECT_NEAR(std::remainder(read_Pa, 50), 0, 1e-6);
        squares += std::pow(read_Pa / real_Pa - 1, 2);
    }
    // 1 % of reading and a resolution of 50 Pa, uniformly distributed (JCGM 100:2008, 4.3.7).
    const double expected = std::hypot(0.01, 50 / std::sqrt(12.0) / real_Pa);
    EXPECT_NEAR(std::sqrt(squares / kLooks) / expected, 1, 4 / std::sqrt(2.0 * kLooks));
}

TEST(BuildingTest, throttlingOneValveGivesTheOthersMore) {
    const Building building(twelve(), 3);
    const std::size_t terminal = firstTerminal(building);
    LoopState state;
    state.settings[branchOf(building, terminal).id] = quantity::Setting::si(1);
    const TrueState before = building.stateAt({});
    const TrueState after = building.stateAt(state);
    for (const std::size_t other : building.design().tree().terminals()) {
        if (other == terminal) {
            EXPECT_LT(after.flows[other], before.flows[other]);
        } else {
            EXPECT_GT(after.flows[other], before.flows[other]);
        }
    }
}

TEST(BuildingTest, aShutValveShowsAllThatStandsThere) {
    const Building building(twelve(), 3);
    const std::size_t terminal = firstTerminal(building);
    LoopState state;
    state.closed.push_back(branchOf(building, terminal).id);
    const TrueState real = building.stateAt(state);
    EXPECT_EQ(real.flows[terminal].si(), 0);
    EXPECT_GT(real.valveDrops[terminal], building.stateAt({}).valveDrops[terminal]);
    EXPECT_LT(real.valveDrops[terminal], real.pumpRise);
    LoopState shut;
    shut.settings[branchOf(building, terminal).id] = quantity::Setting::si(0);
    EXPECT_EQ(building.stateAt(shut).valveDrops[terminal], real.valveDrops[terminal]);
}

TEST(BuildingTest, tableErrorsBendTheIndicatedFlowOnly) {
    BuildingPlan plan = twelve();
    plan.tableBias = Ratio::si(0.02);
    plan.tableTilt = Ratio::si(0.04);
    const Building building(plan, 9);
    LoopState state;
    for (const std::size_t terminal : building.design().tree().terminals()) {
        state.settings[branchOf(building, terminal).id] = quantity::Setting::si(2);
        const TrueState real = building.stateAt(state);
        const TrueBranch& truth = building.truth().branches[terminal];
        const double expected = 1 / truth.tableBiasFactor / std::exp(0.5 * truth.tableTilt_ratio);
        EXPECT_NEAR(building.indicatedFlow(state, real, terminal) / real.flows[terminal], expected, 1e-9);
    }
}

TEST(BuildingTest, otherExponentsPassThroughTheDesignPoint) {
    BuildingPlan plan = planOf(Difficulty::First);
    plan.shape = {1};
    const Building square(plan, 4);
    plan.coilExponent = 1.85;
    plan.runExponent = 1.85;
    const Building other(plan, 4);
    const double design = project::designFlows(square.design())[0].si();
    // Where more than design flows, a lower exponent loses less and lets still more through.
    const double flow = square.stateAt({}).flows[0].si();
    const double changed = other.stateAt({}).flows[0].si();
    EXPECT_GT((changed - flow) * (flow - design), 0);
}

TEST(BuildingTest, slipsHappenOnceAtOnePlace) {
    const Building building = withSlip(twelve(), FaultKind::DpDoubled, 1);
    const PlantedFault& fault = onlyFault(building);
    const double real_Pa = building.stateAt({}).valveDrops[fault.branch].si();
    EXPECT_NEAR(building.readDp({}, fault.branch, {1, 1, 0}).dp.value.si() / real_Pa, 2, 0.15);
    EXPECT_NEAR(building.readDp({}, fault.branch, {1, 2, 0}).dp.value.si() / real_Pa, 1, 0.08);
    EXPECT_NEAR(building.readDp({}, fault.branch, {2, 1, 0}).dp.value.si() / real_Pa, 1, 0.08);
}

TEST(BuildingTest, aMisreadHandleIsSeenAtTheSecondLook) {
    const Building building = withSlip(twelve(), FaultKind::SettingMisread, 1);
    const PlantedFault& fault = onlyFault(building);
    LoopState stands;
    stands.settings[branchOf(building, fault.branch).id] = quantity::Setting::si(3);
    const double real_Pa = building.stateAt(stands, {2, 1, 0}).valveDrops[fault.branch].si();
    const DpAnswer first = building.readDp({}, fault.branch, {1, 1, 0});
    EXPECT_NEAR(first.dp.value.si() / real_Pa, 1, 0.05);
    EXPECT_FALSE(first.settingSeen);
    const DpAnswer second = building.readDp({}, fault.branch, {1, 2, 0});
    ASSERT_TRUE(second.settingSeen);
    EXPECT_EQ(second.settingSeen->si(), 3);
    // Noted where it stands, it is off no more.
    const DpAnswer third = building.readDp(stands, fault.branch, {1, 3, 0, true});
    EXPECT_NEAR(third.dp.value.si() / real_Pa, 1, 0.05);
    EXPECT_FALSE(third.settingSeen);
}

TEST(BuildingTest, aStrainerClogsWithTheReadingsTaken) {
    BuildingPlan plan = twelve();
    plan.faults = {FaultKind::CloggingStrainer};
    const Building building(plan, 2);
    const std::size_t branch = onlyFault(building).branch;
    const double before = building.stateAt({}, {1, 1, 0}).flows[branch].si();
    const double after = building.stateAt({}, {1, 1, 12}).flows[branch].si();
    EXPECT_LT(after, 0.95 * before);
}

TEST(BuildingTest, airAndAControlValveTakeFlowFromTheirCircuit) {
    for (const FaultKind kind : {FaultKind::AirInCoil, FaultKind::ControlValve}) {
        BuildingPlan plan = twelve();
        const Building sound(plan, 2);
        plan.faults = {kind};
        const Building faulty(plan, 2);
        const std::size_t branch = onlyFault(faulty).branch;
        EXPECT_LT(faulty.stateAt({}).flows[branch], sound.stateAt({}).flows[branch] * 0.9);
    }
}

TEST(BuildingTest, handlesAreSetInStepsOnTheirScale) {
    const Building building(twelve(), 3);
    const std::size_t terminal = firstTerminal(building);
    EXPECT_NEAR(building.onScale(quantity::Setting::si(2.13), terminal).si(), 2.15, 1e-12);
    EXPECT_EQ(building.onScale(quantity::Setting::si(7), terminal).si(), 4);
    EXPECT_EQ(building.onScale(quantity::Setting::si(-1), terminal).si(), 0);
}

TEST(OutcomeTest, aLoopInProportionNeedsTheHeadOfItsLeastSuppliedTerminal) {
    const Building building(planOf(Difficulty::First), 5);
    const Outcome found = outcomeOf(building, {});
    EXPECT_TRUE(found.hasOpenMemberInEveryGroup);
    EXPECT_GT(found.worstTrue.si(), 0.02);
    EXPECT_NEAR(found.worstTrue.si(), found.worstIndicated.si(), 1e-12);
    ASSERT_TRUE(found.headNeeded);
    // Square laws: the head needed goes with the square of what is missing (affinity laws).
    const TrueState real = building.stateAt({});
    const double head_m = building.design().fluid().head(real.pumpRise).si();
    EXPECT_NEAR(found.headNeeded->si(), head_m / std::pow(found.lowestOfDesign.si(), 2), 1e-6 * head_m);
    LoopState shut;
    for (const std::size_t terminal : building.design().tree().terminals()) {
        shut.settings[branchOf(building, terminal).id] = quantity::Setting::si(2);
    }
    EXPECT_FALSE(outcomeOf(building, shut).hasOpenMemberInEveryGroup);
    shut.settings[branchOf(building, 0).id] = quantity::Setting::si(0);
    EXPECT_FALSE(outcomeOf(building, shut).headNeeded);
}

}  // namespace
}  // namespace ww::practice
