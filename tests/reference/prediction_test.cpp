// Two loops whose every state follows exactly from the square law H = k Q^2 and the pump H = 60 - 0.0012 Q^2
// (ft, gpm): computed by hand from these laws (own derivation); tolerance 0.05 % of flow.
#include "core/balancing/prediction.h"

#include <gtest/gtest.h>

#include "tests/support/counting_ids.h"
#include "tests/support/small_loop.h"

namespace ww::balancing {
namespace {

using project::Decimal;
using quantity::Unit;
using support::Circuit;
using support::kFeetPerPsi;
using support::loop;

void setCv(const project::Project& project, LoopState& state, const char* tag, double cv) {
    const project::Branch& branch = *project.branchTagged(tag);
    const auto setting =
        project.characteristicOf(branch)->settingFor(quantity::FlowCoefficient::from(cv, Unit::Cv));
    ASSERT_TRUE(setting.has_value());
    state.settings[branch.id] = *setting;
}

void expectFlows(const project::Project& project, const LoopState& state, std::vector<double> flows_gpm,
                 double total_gpm, double head_ft) {
    const PredictionResult result = predict(project, state);
    ASSERT_TRUE(result.prediction.has_value());
    for (std::size_t i = 0; i < flows_gpm.size(); ++i) {
        EXPECT_NEAR(result.prediction->branches[i].flow.in(Unit::GallonPerMinute), flows_gpm[i],
                    5e-4 * flows_gpm[i])
            << project.branches()[i].tag;
    }
    EXPECT_NEAR(result.prediction->pumpFlow.in(Unit::GallonPerMinute), total_gpm, 5e-4 * total_gpm);
    EXPECT_NEAR(project.fluid().head(result.prediction->pumpRise).in(Unit::Foot), head_ft, 5e-4 * head_ft);
}

TEST(Prediction, throttlingOneCircuitAfterAnotherMovesAllOthers) {
    const project::Project project = loop(support::lastCircuitIsIndex());
    LoopState state;
    expectFlows(project, state, {30.75, 36.92, 32.89, 25.23}, 125.780, 41.015);
    setCv(project, state, "T3", 10.686);
    expectFlows(project, state, {31.40, 38.17, 26.89, 26.89}, 123.344, 41.743);
    setCv(project, state, "T2", 13.624);
    expectFlows(project, state, {32.04, 33.30, 27.75, 27.75}, 120.834, 42.479);
    setCv(project, state, "T1", 6.897);
    expectFlows(project, state, {23.09, 34.64, 28.87, 28.87}, 115.470, 44.000);
    state.speedFraction = 0.86603;
    expectFlows(project, state, {20, 30, 25, 25}, 100.0, 33.0);
}

TEST(Prediction, closingACircuitMovesThoseDownstreamOfItAlike) {
    const project::Project project = loop(support::lastCircuitIsIndex());
    LoopState state;
    setCv(project, state, "T3", 10.686);
    setCv(project, state, "T2", 13.624);
    setCv(project, state, "T1", 6.897);
    LoopState nearClosed = state;
    nearClosed.closed = {project.branchTagged("T1")->id};
    const PredictionResult first = predict(project, nearClosed);
    for (std::size_t i = 1; i < 4; ++i) {
        EXPECT_NEAR(first.prediction->branches[i].ofDesign->si(), 1.2599, 7e-4);
    }
    EXPECT_EQ(first.prediction->branches[0].flow.si(), 0.0);
    // With T1 shut its take-off stands at the pump's head less the run's loss, 8 ft at 100 gpm.
    const double total_gpm = first.prediction->pumpFlow.in(Unit::GallonPerMinute);
    const double available_ft =
        project.fluid().head(first.prediction->pumpRise).in(Unit::Foot)-8.0 * total_gpm * total_gpm / 1e4;
    EXPECT_NEAR(project.fluid().head(*first.prediction->branches[0].valveDrop).in(Unit::Foot), available_ft,
                0.01);
    LoopState farClosed = state;
    farClosed.closed = {project.branchTagged("T4")->id};
    const PredictionResult last = predict(project, farClosed);
    EXPECT_NEAR(last.prediction->branches[0].ofDesign->si(), 1.2631, 7e-4);
    EXPECT_NEAR(last.prediction->branches[1].ofDesign->si(), 1.3160, 7e-4);
    EXPECT_NEAR(last.prediction->branches[2].ofDesign->si(), 1.4215, 8e-4);
}

TEST(Prediction, anIndexUpstreamOfItsNeighboursNeedsSeveralPasses) {
    // Valve fully open in every circuit; added resistance of a throttled one, ft/gpm^2, as the equivalent Cv.
    const std::vector<Circuit> circuits{
        {"T1", 20, 28, 100, 8}, {"T2", 30, 12, 100, 3}, {"T3", 25, 9, 100, 2}, {"T4", 25, 8, 100, 1}};
    const project::Project project = loop(circuits);
    const auto cvFor = [](double added) { return std::sqrt(kFeetPerPsi / (kFeetPerPsi / 1e4 + added)); };
    LoopState state;
    const auto expectPercent = [&](std::vector<double> percent, double total_gpm, double head_ft) {
        std::vector<double> flows;
        for (std::size_t i = 0; i < 4; ++i) {
            flows.push_back(circuits[i].design_gpm * percent[i] / 100);
        }
        expectFlows(project, state, flows, total_gpm, head_ft);
    };
    expectPercent({97.83, 132.91, 138.82, 138.82}, 128.848, 40.078);
    setCv(project, state, "T4", cvFor(0.0173982));
    expectPercent({101.21, 140.00, 150.39, 101.21}, 125.141, 41.208);
    setCv(project, state, "T3", cvFor(0.0204864));
    expectPercent({105.63, 149.07, 105.63, 110.64}, 119.914, 42.745);
    setCv(project, state, "T2", cvFor(0.0142606));
    expectPercent({110.79, 110.79, 112.94, 118.29}, 113.204, 44.622);
    // Exact valve losses at design flow: 13, 14 and 14 ft; then the pump at 0.89443 of its speed.
    setCv(project, state, "T2", cvFor(13.0 / 900));
    setCv(project, state, "T3", cvFor(14.0 / 625));
    setCv(project, state, "T4", cvFor(14.0 / 625));
    state.speedFraction = 0.89443;
    expectPercent({100, 100, 100, 100}, 100.0, 36.0);
}

TEST(Prediction, everythingShutIsADeadHeadedPump) {
    const project::Project project = loop(support::lastCircuitIsIndex());
    LoopState state;
    for (const project::Branch& branch : project.branches()) {
        state.closed.push_back(branch.id);
    }
    const PredictionResult result = predict(project, state);
    ASSERT_TRUE(result.prediction.has_value());
    EXPECT_EQ(result.prediction->pumpFlow.si(), 0.0);
    EXPECT_NEAR(project.fluid().head(result.prediction->pumpRise).in(Unit::Foot), 60.0, 1e-6);
    EXPECT_FALSE(result.prediction->branches[0].share.has_value());
}

TEST(Prediction, aStoppedPumpMovesNothing) {
    const project::Project project = loop(support::lastCircuitIsIndex());
    LoopState state;
    state.speedFraction = 0;
    const PredictionResult result = predict(project, state);
    ASSERT_TRUE(result.prediction.has_value());
    EXPECT_EQ(result.prediction->branches[2].flow.si(), 0.0);
}

TEST(Prediction, aSettingOffTheScaleAndABlankLossAreNamed) {
    project::Project project = loop(support::lastCircuitIsIndex());
    project::Branch branch = *project.branchTagged("T2");
    branch.circuitLoss.reset();
    project.put(branch);
    LoopState state;
    state.settings[project.branchTagged("T3")->id] = quantity::Setting::si(4.5);
    const PredictionResult result = predict(project, state);
    EXPECT_FALSE(result.prediction.has_value());
    ASSERT_EQ(result.faults.size(), 2u);
    EXPECT_TRUE(result.faults[0].is(kModelCircuitUnknown));
    EXPECT_EQ(result.faults[0].subject, "T2");
    EXPECT_TRUE(result.faults[1].is(kModelSettingOutside));
    EXPECT_EQ(result.faults[1].subject, "T3");
}

TEST(Prediction, equalCircuitsOnReverseReturnTakeNearlyEqualFlows) {
    // With equal circuits and segments, reverse return is symmetric about its middle (common practice, no
    // source).
    std::vector<Circuit> circuits;
    for (const char* tag : {"T1", "T2", "T3", "T4", "T5"}) {
        circuits.push_back({tag, 20, 20, 40, 2});
    }
    project::Project direct = loop(circuits);
    support::CountingIds ids;
    project::Branch main;
    main.id.bytes[0] = 99;
    main.tag = "main";
    main.kind = project::BranchKind::None;
    main.returns = project::ReturnKind::Reverse;
    project::Project reverse = direct;
    reverse.put(main);
    for (const project::Branch& branch : direct.branches()) {
        project::Branch moved = branch;
        moved.parent = main.id;
        // Segments as pipes of equal resistance, 2 ft at 100 gpm each way; before the first take-off both
        // carry all.
        const double carried = 20.0 * (5 - branch.position);
        const double back = branch.position == 0 ? 100.0 : 20.0 * branch.position;
        moved.runLoss = quantity::measuredDifference(
            Decimal::fromNumber(2.0 * (carried * carried + back * back) / 1e4, 6), Unit::Foot,
            direct.fluid().density());
        reverse.put(moved);
    }
    const PredictionResult result = predict(reverse, {});
    ASSERT_TRUE(result.prediction.has_value());
    const auto& branches = result.prediction->branches;
    EXPECT_NEAR(branches[0].flow / branches[4].flow, 1.0, 1e-6);
    EXPECT_NEAR(branches[1].flow / branches[3].flow, 1.0, 1e-6);
    EXPECT_LT(branches[2].flow, branches[0].flow);
}

}  // namespace
}  // namespace ww::balancing
