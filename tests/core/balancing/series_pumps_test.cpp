// Two pumps one behind the other: the head that counts is their sum, on the curve, on the gauges and in what
// the readings teach. The loop is of the square law.

#include <gtest/gtest.h>

#include <cmath>

#include "core/balancing/assess.h"
#include "core/balancing/learning/learned_loop.h"
#include "core/balancing/prediction.h"
#include "core/balancing/system_curve.h"
#include "tests/support/pump_loop.h"

namespace ww::balancing {
namespace {

using quantity::Unit;

/// A survey with every valve open, read without error from the loop as it is; each pump's gauges show `rise`
/// of all that both make.
project::Project surveyed(project::PumpArrangement arrangement, double rise) {
    project::Project project = support::pumpLoop();
    support::addTwin(project, arrangement, support::idOf(2));
    const auto solved = predict(project, stateOfLastRound(project));
    EXPECT_TRUE(solved.prediction.has_value());
    project::Round round;
    round.id = support::idOf(3);
    round.number = 1;
    round.state = project::RoundState::Closed;
    project.put(round);
    std::uint8_t next = 10;
    int sequence = 1;
    const auto typed = [](double psi) {
        return quantity::measured<PressureDifference>(base::Decimal::fromNumber(psi, 6), Unit::Psi);
    };
    for (const BranchPrediction& branch : solved.prediction->branches) {
        project::Reading reading;
        reading.id = support::idOf(next++);
        reading.round = round.id;
        reading.branch = project.branches()[branch.branch].id;
        reading.sequence = sequence++;
        reading.dp = typed(branch.valveDrop->in(Unit::Psi));
        project.put(reading);
    }
    for (const project::Pump& pump : project.pumps()) {
        project::PumpReading reading;
        reading.id = support::idOf(next++);
        reading.round = round.id;
        reading.pump = pump.id;
        reading.sequence = sequence++;
        reading.gaugeRise = typed(solved.prediction->pumpRise.in(Unit::Psi)*rise);
        project.put(reading);
    }
    return project;
}

TEST(SeriesPumps, headsAddOnGaugesAndCurve) {
    // Computed by hand: twins in series make 120 - 0.0024 Q^2 ft; side by side each makes the whole head.
    const project::Project series = surveyed(project::PumpArrangement::Series, 0.5);
    const auto duty = systemCurve(series, assessLast(series));
    ASSERT_TRUE(duty.has_value());
    const double flow_gpm = duty->flow.in(Unit::GallonPerMinute);
    EXPECT_NEAR(duty->head.in(Unit::Foot), 120 - 0.0024 * flow_gpm * flow_gpm, 0.15);
    const auto proposal = pumpProposal(series, assessLast(series));
    ASSERT_TRUE(proposal.has_value());
    EXPECT_NEAR(proposal->headAvailable.in(Unit::Foot), 120 - 0.0024 * 100 * 100, 0.1);
    const project::Project parallel = surveyed(project::PumpArrangement::Parallel, 1);
    const auto beside = pumpProposal(parallel, assessLast(parallel));
    ASSERT_TRUE(beside.has_value());
    EXPECT_NEAR(beside->headAvailable.in(Unit::Foot), 60 - 0.0012 * 50 * 50, 0.1);
}

TEST(SeriesPumps, readingsTeachTheLoopAsItIs) {
    // Readings without error leave the design as it is and the factor on the pumps' curve at 1.
    for (const auto arrangement : {project::PumpArrangement::Series, project::PumpArrangement::Parallel}) {
        const bool isSeries = arrangement == project::PumpArrangement::Series;
        const project::Project project = surveyed(arrangement, isSeries ? 0.5 : 1);
        const LearnedLoop learned = learn(project);
        ASSERT_EQ(learned.outcome, LoopLearnOutcome::Learned);
        EXPECT_FALSE(learned.isMisfit);
        EXPECT_NEAR(learned.present.pumpCurveFactor, 1, 0.01) << (isSeries ? "series" : "parallel");
        const auto design = predict(project, learned.present);
        const auto found = predict(project, learned.present, learned.resistances);
        ASSERT_TRUE(design.prediction && found.prediction);
        EXPECT_NEAR(found.prediction->pumpFlow / design.prediction->pumpFlow, 1, 0.01)
            << (isSeries ? "series" : "parallel");
    }
}

}  // namespace
}  // namespace ww::balancing
