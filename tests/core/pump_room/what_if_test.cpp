// What a zone more or less does to a balanced loop, against loops of the square law computed by hand.

#include "core/pump_room/what_if.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/support/faults.h"
#include "tests/support/pump_loop.h"
#include "tests/support/us_units.h"

namespace ww::pump_room {
namespace {

using project::Project;
using quantity::Unit;
using support::gpm;
using support::has;
using support::typedAs;

/// The four circuits with every valve at its proportional setting, as planned: T1, T2 and T3 throttled by 13,
/// 6 and 7 ft at design flow (setting 3 of the table), T4 open.
Project balanced() {
    Project project = support::pumpLoop();
    const double kAdded_ft[] = {13, 6, 7, 0};
    for (std::size_t i = 0; i < 4; ++i) {
        project::Branch branch = project.branches()[i];
        project::ValveModel valve = project.valves().at(*branch.valve);
        branch.setting = base::Decimal::fromNumber(kAdded_ft[i] > 0 ? 3 : 4, 0);
        if (kAdded_ft[i] > 0) {
            const double flow_gpm = branch.designFlow->digits.value();
            const double open_psi = std::pow(flow_gpm / valve.rows.back().coefficient.value(), 2);
            const double set_psi = open_psi + kAdded_ft[i] / support::kFeetPerPsi;
            valve.rows.insert(valve.rows.begin() + 1,
                              {base::Decimal::fromNumber(3, 0),
                               base::Decimal::fromNumber(flow_gpm / std::sqrt(set_psi), 9)});
        }
        project.put(valve);
        project.put(branch);
    }
    return project;
}

balancing::Prediction predicted(const Project& project, const balancing::LoopState& state) {
    balancing::PredictionResult result = balancing::predict(project, state);
    EXPECT_TRUE(result.prediction.has_value());
    return std::move(result.prediction).value_or(balancing::Prediction{});
}

project::Branch fifthLike(const Project& project, const char* like) {
    project::Branch added = *project.branchTagged(like);
    added.id = support::idOf(9);
    added.tag = "T5";
    added.position = 9;
    added.setting.reset();
    return added;
}

TEST(WhatIfTest, firstCircuitTakenAway) {
    // Computed by hand: with T1 closed at full speed T2, T3 and T4 take 37.797, 31.4975 and 31.4975 gpm; the
    // main to T1's take-off stays. 80 gpm then need 8 (80/100)^2 + 4 + 4 + 3 + 14 = 30.12 ft.
    const Project project = balanced();
    const WhatIf answer = whatIf(project, {RemoveBranch{project.branchTagged("T1")->id}});
    ASSERT_TRUE(answer.faults.empty());
    ASSERT_EQ(answer.project.branches().size(), 3U);
    EXPECT_EQ(project.branches().size(), 4U) << "the job itself stays";
    const double kFlows_gpm[] = {37.797, 31.4975, 31.4975};
    for (std::size_t i = 0; i < 3; ++i) {
        const project::Branch* branch = answer.project.branchTagged("T" + std::to_string(i + 2));
        ASSERT_NE(branch, nullptr);
        const ZoneBranch& found = answer.branches[answer.project.branches().indexOf(branch->id)];
        EXPECT_NEAR(found.flowBefore.in(Unit::GallonPerMinute), kFlows_gpm[i], 5e-4 * kFlows_gpm[i]);
    }
    EXPECT_NEAR(answer.requiredHead->in(Unit::Foot), 30.12, 0.02);
    EXPECT_TRUE(answer.canPump);
    EXPECT_LT(answer.speedFraction->si(), 0.86603);
    EXPECT_TRUE(has(answer.findings, kZoneLossesMoved));
}

TEST(WhatIfTest, zoneAddedAndRebalanced) {
    const Project project = balanced();
    project::Branch added = fifthLike(project, "T3");
    added.runLoss =
        quantity::measuredDifference(*base::Decimal::parse("1"), Unit::Foot, project.fluid().density());
    const WhatIf answer = whatIf(project, {AddBranch{added}});
    ASSERT_TRUE(answer.faults.empty());
    ASSERT_EQ(answer.branches.size(), 5U);
    EXPECT_GT(answer.branches[4].flowBefore.si(), 0);
    EXPECT_FALSE(answer.branches[4].present.has_value());
    const balancing::Prediction before = predicted(project, balancing::stateOfLastRound(project));
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_LT(answer.branches[i].flowBefore, before.branches[i].flow) << "every other circuit loses";
    }
    balancing::LoopState state;
    for (const ZoneBranch& branch : answer.branches) {
        if (branch.setting) {
            state.settings[answer.project.branches()[branch.branch].id] = *branch.setting;
        }
    }
    const balancing::Prediction after = predicted(answer.project, state);
    for (const balancing::BranchPrediction& branch : after.branches) {
        EXPECT_NEAR(branch.ofTarget->si(), 1, 1e-6) << "a solve at the new settings gives every share";
    }
    EXPECT_EQ(answer.edit.put.size(), 5U) << "the new branch, and four whose runs carry more";
}

TEST(WhatIfTest, pipesStayWhenADesignFlowChanges) {
    const Project project = balanced();
    const WhatIf answer = whatIf(project, {ChangeFlow{project.branchTagged("T4")->id,
                                                      typedAs<VolumeFlow>("50", Unit::GallonPerMinute)}});
    ASSERT_TRUE(answer.faults.empty());
    const balancing::Prediction before = predicted(project, balancing::stateOfLastRound(project));
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_NEAR(answer.branches[i].flowBefore / before.branches[i].flow, 1, 1e-6);
    }
    EXPECT_TRUE(has(answer.findings, kZoneShort)) << "T4 takes far less than its new design flow";
    EXPECT_FALSE(answer.canPump)
        << "125 gpm: the pump makes 41.25 ft, the last circuit needs four times its loss";
    EXPECT_TRUE(has(answer.findings, kZonePumpShort));
    EXPECT_FALSE(answer.speedFraction.has_value());
}

TEST(WhatIfTest, indexMovesAndReportsGoStale) {
    Project project = balanced();
    project::Round round;
    round.id = support::idOf(7);
    round.number = 3;
    project.put(round);
    const WhatIf answer = whatIf(project, {RemoveBranch{project.branchTagged("T4")->id}});
    EXPECT_TRUE(has(answer.findings, kZoneStale));
    EXPECT_TRUE(has(answer.findings, kZoneIndexMoves));
    EXPECT_EQ(answer.formerIndexPath, std::vector<Id>{project.branchTagged("T4")->id});
    EXPECT_EQ(answer.canMotor, true);
    EXPECT_EQ(answer.edit.erase.size(), 1U);
}

TEST(WhatIfTest, learnedResistancesHoldAsWell) {
    const Project project = balanced();
    balancing::Resistances learned;
    for (std::size_t i = 0; i < 4; ++i) {
        const project::Branch& branch = project.branches()[i];
        const double kCarried_gpm[] = {100, 80, 50, 25};
        const auto square = [](double loss_Pa, double flow_gpm) {
            const double flow_m3s = gpm(flow_gpm).si();
            return balancing::Resistance::si(loss_Pa / (flow_m3s * flow_m3s));
        };
        learned[branch.id].run = square(branch.runLoss->value.si(), kCarried_gpm[i]);
        learned[branch.id].circuit =
            square(branch.circuitLoss->value.si(), branch.designFlow->digits.value());
    }
    const std::vector<ZoneChange> change{RemoveBranch{project.branchTagged("T2")->id}};
    const WhatIf byDesign = whatIf(project, change);
    const WhatIf byLearning = whatIf(project, change, learned);
    EXPECT_FALSE(byDesign.isFromLearned);
    EXPECT_TRUE(byLearning.isFromLearned);
    for (std::size_t i = 0; i < 3; ++i) {
        EXPECT_NEAR(byLearning.branches[i].flowBefore / byDesign.branches[i].flowBefore, 1, 1e-6);
    }
}

TEST(WhatIfTest, whatCannotBe) {
    const Project project = balanced();
    EXPECT_TRUE(has(whatIf(project, {}).faults, kZoneNothing));
    EXPECT_TRUE(has(whatIf(project, {RemoveBranch{support::idOf(99)}}).faults, kZoneUnknown));
    EXPECT_TRUE(has(whatIf(project, {AddBranch{*project.branchTagged("T1")}}).faults, kZoneExists));
    const ZoneChange none =
        ChangeFlow{project.branchTagged("T1")->id, typedAs<VolumeFlow>("0", Unit::GallonPerMinute)};
    EXPECT_TRUE(has(whatIf(project, {none}).faults, kZoneFlow));
    project::Branch added = fifthLike(project, "T3");
    added.circuitLoss.reset();
    EXPECT_TRUE(has(whatIf(project, {AddBranch{added}}).faults, balancing::kModelCircuitUnknown));
}

}  // namespace
}  // namespace ww::pump_room
