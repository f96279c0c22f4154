// The balanced loop of square laws, computed by hand from H = k Q^2 and the pump H = 60 - 0.0012 Q^2 (ft,
// gpm; own derivation), and properties that hold for every loop.
#include "core/balancing/advice/proportional_balance.h"

#include <gtest/gtest.h>

#include <random>

#include "core/balancing/prediction.h"
#include "tests/support/field_job.h"
#include "tests/support/small_loop.h"

namespace ww::balancing {
namespace {

using quantity::Unit;
using support::loop;

double feetOf(const project::Project& project, PressureDifference dp) {
    return project.fluid().head(dp).in(Unit::Foot);
}

TEST(ProportionalBalance, takesTheDifferenceAtEveryValveButThatOfTheIndex) {
    const project::Project project = loop(support::lastCircuitIsIndex());
    const BalanceResult result = proportionalBalance(project, {});
    ASSERT_TRUE(result.balance.has_value());
    const ProportionalBalance& balance = *result.balance;
    const double expectedCv[] = {6.897, 13.624, 10.686, 14.0};
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_NEAR(balance.branches[i].coefficient->in(Unit::Cv), expectedCv[i], 5e-4 * expectedCv[i]);
        EXPECT_EQ(balance.branches[i].isReference, i == 3);
    }
    EXPECT_EQ(balance.branches[3].reach, BalanceReach::FullyOpen);
    EXPECT_EQ(balance.indexPath, std::vector<std::size_t>{3});
    EXPECT_NEAR(balance.totalFlow.in(Unit::GallonPerMinute), 115.470, 0.06);
    EXPECT_NEAR(feetOf(project, balance.pumpRise), 44.0, 0.022);
    EXPECT_NEAR(balance.ofDesign.si(), 1.15470, 6e-4);
    EXPECT_NEAR(feetOf(project, balance.neededAtDesign), 33.0, 0.017);
    EXPECT_NEAR(feetOf(project, balance.availableAtDesign), 48.0, 0.01);
    // 0.86603 of the speed: 36 + ... the pump's 60 n^2 - 0.0012 Q^2 is 33 at 100 gpm.
    const BuiltModel built = hydraulicModel(project, {});
    const auto speed = speedFractionFor(*built.model, {}, balance.designFlow, balance.neededAtDesign);
    ASSERT_TRUE(speed.has_value());
    EXPECT_NEAR(speed->si(), 0.86603, 5e-4);
}

TEST(ProportionalBalance, anIndexUpstreamOfItsNeighboursIsFoundAtOnce) {
    const project::Project project =
        loop({{"T1", 20, 28, 100, 8}, {"T2", 30, 12, 100, 3}, {"T3", 25, 9, 100, 2}, {"T4", 25, 8, 100, 1}});
    const BalanceResult result = proportionalBalance(project, {});
    ASSERT_TRUE(result.balance.has_value());
    const ProportionalBalance& balance = *result.balance;
    EXPECT_EQ(balance.indexPath, std::vector<std::size_t>{0});
    EXPECT_NEAR(balance.totalFlow.in(Unit::GallonPerMinute), 111.804, 0.06);
    EXPECT_NEAR(feetOf(project, balance.pumpRise), 45.0, 0.022);
    EXPECT_NEAR(feetOf(project, balance.neededAtDesign), 36.0, 0.018);
    // 13, 14 and 14 ft are added at the valves of T2, T3 and T4 at design flow.
    const double added_ft[] = {0, 13, 14, 14};
    const double square = balance.ofDesign.si() * balance.ofDesign.si();
    for (std::size_t i = 1; i < 4; ++i) {
        const double design_gpm = project.branches()[i].designFlow->digits.value();
        const double open_ft = support::kFeetPerPsi * design_gpm * design_gpm / 1e4;
        EXPECT_NEAR(feetOf(project, *balance.branches[i].valveDrop) / square, added_ft[i] + open_ft, 0.01);
    }
}

/// Risers with and without valves, one of them in reverse return, with random losses.
project::Project randomLoop(unsigned seed, bool hasRiserValves) {
    std::mt19937 random(seed);
    const auto number = [&](double low, double high) {
        return base::Decimal::fromNumber(low + (high - low) * static_cast<double>(random()) / 4294967296.0, 3)
            .text();
    };
    support::FieldJob job;
    const base::Id large = job.valve({{"0", "0.02"}, {"1", "3"}, {"2", "9"}, {"3", "18"}, {"4", "28"}});
    const base::Id small = job.valve({{"0", "0.001"}, {"1", "0.5"}, {"2", "1.6"}, {"3", "3.2"}, {"4", "5"}});
    job.pump("P-1", {{"0", "14"}, {"10", "13"}, {"20", "10"}, {"30", "5"}});
    for (int riser = 1; riser <= 3; ++riser) {
        const std::string tag = "R" + std::to_string(riser);
        job.branch(tag, "", "", hasRiserValves ? std::optional(large) : std::nullopt,
                   hasRiserValves ? project::BranchKind::Manual : project::BranchKind::None);
        job.change(job.project().branches().at(job.idOf(tag)), [&](project::Branch& branch) {
            branch.runLoss = job.pressure(number(2, 8));
            branch.circuitLoss = job.pressure(number(1, 3));
            branch.returns = riser == 2 ? project::ReturnKind::Reverse : project::ReturnKind::Direct;
        });
        for (int i = 1; i <= 4; ++i) {
            const std::string own = tag + "-" + std::to_string(i);
            job.branch(own, tag, number(0.6, 1.9), small);
            job.change(job.project().branches().at(job.idOf(own)), [&](project::Branch& branch) {
                branch.runLoss = job.pressure(number(0.5, 3));
                branch.circuitLoss = job.pressure(number(5, 25));
            });
        }
    }
    return job.project();
}

TEST(ProportionalBalance, itsExactSettingsGiveEveryTerminalItsShare) {
    for (unsigned seed = 1; seed <= 20; ++seed) {
        SCOPED_TRACE(seed);
        const project::Project project = randomLoop(seed, seed % 2 == 0);
        const BalanceResult result = proportionalBalance(project, {});
        ASSERT_TRUE(result.balance.has_value());
        LoopState state;
        for (const BalancedBranch& branch : result.balance->branches) {
            ASSERT_NE(branch.reach, BalanceReach::BelowScale);
            if (branch.setting) {
                state.settings[project.branches()[branch.branch].id] = *branch.setting;
            }
        }
        const PredictionResult predicted = predict(project, state);
        ASSERT_TRUE(predicted.prediction.has_value());
        for (const std::size_t terminal : project.tree().terminals()) {
            EXPECT_NEAR(predicted.prediction->branches[terminal].ofTarget->si(), 1.0, 1e-7);
        }
        EXPECT_NEAR(predicted.prediction->pumpFlow / result.balance->totalFlow, 1.0, 1e-7);
        // Every valve on the index path stands open, and every group has a member whose valve does.
        for (const std::size_t branch : result.balance->indexPath) {
            EXPECT_TRUE(result.balance->branches[branch].reach == BalanceReach::FullyOpen ||
                        !project.branches()[branch].valve);
        }
    }
}

TEST(ProportionalBalance, leavesSelfActingValvesOutAndKeepsTheStartOfTheirRange) {
    support::FieldJob job;
    const base::Id valve = job.valve({{"0", "0.001"}, {"2", "1.6"}, {"4", "5"}});
    const base::Id limiter = job.valve({});
    job.change(job.project().valves().at(limiter),
               [&](project::ValveModel& model) { model.minimumDp = job.pressure("20"); });
    job.pump("P-1", {{"0", "14"}, {"5", "12"}, {"10", "8"}});
    job.branch("A", "", "1.0", valve);
    job.branch("L", "", "1.5", limiter, project::BranchKind::Limiter);
    job.branch("B", "", "1.0", valve);
    for (const char* tag : {"A", "L", "B"}) {
        job.change(job.project().branches().at(job.idOf(tag)), [&](project::Branch& branch) {
            branch.runLoss = job.pressure("2");
            branch.circuitLoss = job.pressure("10");
        });
    }
    const BalanceResult result = proportionalBalance(job.project(), {});
    ASSERT_TRUE(result.balance.has_value());
    EXPECT_EQ(result.balance->branches[1].reach, BalanceReach::SelfActing);
    EXPECT_NEAR(result.balance->branches[1].flow.in(Unit::CubicMetrePerHour), 1.5, 1e-12);
    LoopState state;
    for (const std::size_t i : {0U, 2U}) {
        ASSERT_TRUE(result.balance->branches[i].setting.has_value());
        state.settings[job.project().branches()[i].id] = *result.balance->branches[i].setting;
    }
    const PredictionResult predicted = predict(job.project(), state);
    const auto& branches = predicted.prediction->branches;
    EXPECT_NEAR(branches[0].ofDesign->si(), branches[2].ofDesign->si(), 2e-3);
    EXPECT_NEAR(branches[0].ofDesign->si(), result.balance->ofDesign.si(), 2e-3);
}

TEST(ProportionalBalance, saysWhatPreventsIt) {
    support::FieldJob job;
    EXPECT_FALSE(proportionalBalance(job.project(), {}).balance.has_value());
    const project::Project project = loop(support::lastCircuitIsIndex());
    LoopState stopped;
    stopped.speedFraction = 0;
    const BalanceResult result = proportionalBalance(project, stopped);
    ASSERT_EQ(result.faults.size(), 1U);
    EXPECT_TRUE(result.faults.front().is(kBalanceNoFlow));
}

}  // namespace
}  // namespace ww::balancing
