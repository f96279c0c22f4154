// The decision about a pump on exact loops: required and excess head, options proved by a solve, the code.
// The loops are of the square law, computed by hand.

#include "core/pump_room/pump_decision.h"
#include "core/balancing/assess.h"
#include "core/pump_room/test_sheet.h"

#include <gtest/gtest.h>

#include <cmath>
#include <stdexcept>

#include "tests/support/demo_project.h"
#include "tests/support/faults.h"
#include "tests/support/pump_loop.h"
#include "tests/support/us_units.h"

namespace ww::pump_room {
namespace {

using energy::PumpAction;
using project::Project;
using quantity::Unit;
using support::ft;
using support::gpm;
using support::has;
using support::typedAs;

const DecidedOption& find(const PumpDecision& decision, PumpAction action) {
    for (const DecidedOption& decided : decision.options) {
        if (decided.option.action == action) {
            return decided;
        }
    }
    throw std::runtime_error("no such option");
}

void expectConfirmed(const DecidedOption& decided) {
    ASSERT_TRUE(decided.confirmed.has_value());
    EXPECT_EQ(decided.confirmed->summary.outcome, hydraulics::SolveOutcome::Converged);
    EXPECT_LT(std::abs(decided.confirmed->flowDifference.si()), 1e-6);
    EXPECT_LT(std::abs(decided.confirmed->headDifference.si()), 1e-6);
}

TEST(PumpDecisionTest, fourCircuitsEndToEnd) {
    // Computed by hand: 8 + 4 + 4 + 3 + 14 ft round the last circuit, 33 ft at 100 gpm; the pump makes 48 ft
    // there: 15.0 ft of excess; speed 0.86603, power 1.7316 against 1.1905 hp at 70 %.
    const Project project = support::pumpLoop();
    const PumpDecision decision = decidePump(project);
    EXPECT_NEAR(decision.designFlow.in(Unit::GallonPerMinute), 100, 1e-9);
    ASSERT_TRUE(decision.counted.has_value());
    const RequiredHead& required = decision.required[*decision.counted];
    EXPECT_EQ(required.source, HeadSource::Design);
    EXPECT_NEAR(required.head.in(Unit::Foot), 33, 0.02);
    ASSERT_EQ(required.indexPath.size(), 1U);
    EXPECT_EQ(project.branches()[required.indexPath[0]].tag, "T4");
    EXPECT_NEAR(decision.excess->in(Unit::Foot), 15.0, 0.02);
    ASSERT_TRUE(decision.decidedExcess().has_value());
    EXPECT_EQ(decision.decidedExcess()->basis, balancing::ExcessBasis::IndexByDesign);
    EXPECT_EQ(decision.decidedExcess()->speed, balancing::ExcessSpeed::Full);
    EXPECT_EQ(decision.decidedExcess()->head.si(), decision.excess->si());
    const DecidedOption& throttle = find(decision, PumpAction::Throttle);
    const DecidedOption& slow = find(decision, PumpAction::Slow);
    const DecidedOption& trim = find(decision, PumpAction::Trim);
    EXPECT_NEAR(throttle.option.shaft->in(Unit::Horsepower), 1.7316, 0.0020);
    EXPECT_NEAR(slow.option.shaft->in(Unit::Horsepower), 1.1905, 0.0020);
    EXPECT_NEAR(slow.option.ratio.si(), 0.86603, 0.0003);
    EXPECT_NEAR(trim.option.impeller->in(Unit::Inch), 7.361, 0.003);
    expectConfirmed(throttle);
    expectConfirmed(slow);
    expectConfirmed(trim);
    EXPECT_EQ(decision.code.decision, energy::CodeDecision::ExemptSmallMotor) << "a motor of 2 hp";
    EXPECT_TRUE(decision.isCodeMet);
}

// 33 ft are needed at 100 gpm and the pump makes 48 ft there; its heads times 0.692 make 33.2 ft, 0.66 %
// more.
Project withPumpTimes(double factor) {
    Project project = support::pumpLoop();
    project::Pump pump = project.pumps()[0];
    for (project::PumpTableRow& row : pump.rows) {
        row.head = quantity::measured<Head>(
            base::Decimal::fromNumber(factor * row.head.value.in(Unit::Foot), 4), Unit::Foot);
    }
    project.put(pump);
    return project;
}

TEST(PumpDecisionTest, aPumpThatFitsIsLeftAsItIs) {
    EXPECT_FALSE(decidePump(support::pumpLoop()).isFitting());
    const PumpDecision decision = decidePump(withPumpTimes(0.692));
    ASSERT_GT(decision.excess->si(), 0);
    EXPECT_TRUE(decision.isFitting());
    EXPECT_EQ(decision.options.size(), 3U) << "what a command told stays";
}

// Times 0.68 it makes 32.6 ft, 1.1 % less than 33 ft; times 0.65 31.2 ft, 5.5 % less.
TEST(PumpDecisionTest, aPumpThatIsShortByLessThanCanBeToldIsUndecided) {
    const PumpDecision near = decidePump(withPumpTimes(0.68));
    ASSERT_LT(near.excess->si(), 0);
    EXPECT_TRUE(near.isShortUndecided());
    EXPECT_FALSE(near.isFitting());
    EXPECT_FALSE(support::has(near.findings, energy::kPumpTooSmall));
    const PumpDecision small = decidePump(withPumpTimes(0.65));
    EXPECT_FALSE(small.isShortUndecided());
    EXPECT_TRUE(support::has(small.findings, energy::kPumpTooSmall));
}

TEST(PumpDecisionTest, whatCanBeToldRestsOnTheUncertaintyOfTheNeed) {
    RequiredHead required;
    required.head = ft(30);
    EXPECT_FALSE(canBeTold(ft(0.5), required));
    EXPECT_TRUE(canBeTold(ft(0.7), required));
    EXPECT_TRUE(canBeTold(ft(-0.7), required));
    required.uncertainty = ft(1);
    EXPECT_FALSE(canBeTold(ft(0.7), required));
    EXPECT_TRUE(canBeTold(ft(1.1), required));
}

TEST(PumpDecisionTest, aLoopThatIsNotBalancedGivesAFirstLook) {
    const Project project = support::demoProject();
    const auto look = firstLook(project, balancing::assess(project, project.rounds()[0].id));
    ASSERT_TRUE(look.has_value());
    const std::string said = base::english(*look);
    EXPECT_NE(said.find("a first look: in round 1, "), std::string::npos) << said;
    // With every valve open the index is proved: that asks for no proof, but for shares beside it.
    EXPECT_NE(
        said.find("the index circuit is proved; leave the pump as it is until all are on share with the "
                  "index proved"),
        std::string::npos)
        << said;
}

TEST(PumpDecisionTest, learnedLossesGoBeforeDesign) {
    const Project project = support::pumpLoop();
    PumpDecisionOptions options;
    // The last circuit's own path takes 2 ft more than the papers say.
    const project::Branch* last = project.branchTagged("T4");
    const double flow_m3s = gpm(25).si();
    const double more_Pa = quantity::pressureOf(ft(2), project.fluid().density()).si();
    options.learned[last->id].circuit =
        balancing::Resistance::si((last->circuitLoss->value.si() + more_Pa) / (flow_m3s * flow_m3s));
    const PumpDecision decision = decidePump(project, options);
    ASSERT_EQ(decision.required.size(), 2U);
    EXPECT_EQ(decision.required[*decision.counted].source, HeadSource::Learned);
    EXPECT_NEAR(decision.required[*decision.counted].head.in(Unit::Foot), 35, 0.02);
    expectConfirmed(find(decision, PumpAction::Slow));
    options.source = HeadSource::Design;
    const PumpDecision byDesign = decidePump(project, options);
    EXPECT_NEAR(byDesign.required[*byDesign.counted].head.in(Unit::Foot), 33, 0.02);
    EXPECT_LT(find(byDesign, PumpAction::Slow).confirmed->flowDifference.si(), -0.01)
        << "the learned loop does not take design flow at that speed, and the solve says so";
}

TEST(PumpDecisionTest, twinPumpsInParallelAndInSeries) {
    // Computed by hand on the loop of 33 ft at 100 gpm. Parallel: each gives 50 gpm at 57 ft, n = sqrt((33 +
    // 0.0003 * 10000)/60) = 0.77460. Series: 96 ft, each gives 16.5 ft, n = sqrt(28.5/60) = 0.68920.
    Project parallel = support::pumpLoop();
    support::addTwin(parallel, project::PumpArrangement::Parallel, support::idOf(1));
    const PumpDecision side = decidePump(parallel);
    EXPECT_NEAR(side.excess->in(Unit::Foot), 24, 0.05);
    EXPECT_NEAR(find(side, PumpAction::Slow).option.ratio.si(), 0.77460, 0.0004);
    expectConfirmed(find(side, PumpAction::Slow));
    expectConfirmed(find(side, PumpAction::Throttle));
    EXPECT_TRUE(has(find(side, PumpAction::Trim).option.cautions, energy::kTrimPairAlike));
    Project series = support::pumpLoop();
    support::addTwin(series, project::PumpArrangement::Series, support::idOf(1));
    const PumpDecision chain = decidePump(series);
    EXPECT_NEAR(chain.excess->in(Unit::Foot), 63, 0.05);
    EXPECT_NEAR(find(chain, PumpAction::Slow).option.ratio.si(), 0.68920, 0.0004);
    expectConfirmed(find(chain, PumpAction::Slow));
    expectConfirmed(find(chain, PumpAction::Throttle));
    // One of the two alone is the single pump again.
    PumpDecisionOptions one;
    one.running = {parallel.pumps()[0].id};
    EXPECT_NEAR(decidePump(parallel, one).excess->in(Unit::Foot), 15, 0.05);
    project::Pump second = parallel.pumps()[1];
    second.arrangement = project::PumpArrangement::Series;
    parallel.put(second);
    EXPECT_TRUE(has(decidePump(parallel).findings, kRoomMixedJoint));
}

TEST(PumpDecisionTest, whatIsMissingIsSaid) {
    Project project = support::pumpLoop();
    project::Pump pump = project.pumps()[0];
    for (project::PumpTableRow& row : pump.rows) {
        row.efficiency.reset();
    }
    pump.motorEfficiency.reset();
    pump.motorPower.reset();
    project.put(pump);
    project::Job job = project.job();
    job.hoursPerYear.reset();
    project.put(job);
    const PumpDecision decision = decidePump(project);
    EXPECT_TRUE(has(decision.findings, energy::kEfficiencyUnknown));
    EXPECT_TRUE(has(decision.findings, kHoursUnknown));
    EXPECT_TRUE(has(decision.findings, kMotorEfficiencyUnknown));
    EXPECT_TRUE(has(decision.findings, kDutyUnknown));
    EXPECT_FALSE(decision.code.decision.has_value());
    EXPECT_FALSE(find(decision, PumpAction::Slow).option.shaft.has_value());
    EXPECT_NEAR(decision.excess->in(Unit::Foot), 15.0, 0.02) << "head needs no efficiency";
}

TEST(PumpDecisionTest, curveThatIsNone) {
    Project project = support::pumpLoop();
    project::Pump pump = project.pumps()[0];
    pump.rows.resize(1);
    project.put(pump);
    EXPECT_TRUE(has(decidePump(project).findings, kRoomNoCurve));
    EXPECT_FALSE(decidePump(project).excess.has_value());
    // A curve that rises.
    pump = support::pumpLoop().pumps()[0];
    std::swap(pump.rows[3].head, pump.rows[8].head);
    project.put(pump);
    EXPECT_TRUE(has(decidePump(project).findings, kRoomNoCurve));
}

TEST(PumpDecisionTest, speedReadAboveFull) {
    Project project = support::pumpLoop();
    project::Round round;
    round.id = support::idOf(7);
    round.number = 1;
    project.put(round);
    project::PumpReading reading;
    reading.id = support::idOf(8);
    reading.round = round.id;
    reading.pump = project.pumps()[0].id;
    reading.speed = typedAs<quantity::RotationalSpeed>("1900", Unit::RevolutionPerMinute);
    project.put(reading);
    EXPECT_TRUE(has(decidePump(project).findings, kSpeedAboveFull));
}

/// The demo job, whose gauges were made from its pump's curve, with losses and with that curve's heads times
/// this.
Project withCurve(double heads) {
    Project project = support::demoProject();
    for (project::Branch branch :
         std::vector<project::Branch>(project.branches().begin(), project.branches().end())) {
        branch.runLoss = typedAs<quantity::PressureDifference>("4", Unit::Kilopascal);
        branch.circuitLoss =
            typedAs<quantity::PressureDifference>(branch.parent ? "20" : "6", Unit::Kilopascal);
        project.put(branch);
    }
    project::Pump pump = project.pumps()[0];
    for (project::PumpTableRow& row : pump.rows) {
        row.head = quantity::measured<quantity::Head>(
            base::Decimal::fromNumber(heads * row.head.value.si(), 4), Unit::Metre);
    }
    project.put(pump);
    return project;
}

// A curve of a fifth more head is contradicted by the gauges: what counts is what they read, as if the curve
// had been right.
TEST(PumpDecisionTest, whereGaugesContradictTheCurveTheGaugesCount) {
    const PumpDecision right = decidePump(withCurve(1.0));
    EXPECT_FALSE(has(right.findings, balancing::kDutyApart));
    EXPECT_EQ(right.curve.basis, balancing::CurveBasis::Published);
    ASSERT_TRUE(right.headAvailable && right.excess);
    EXPECT_EQ(right.headPublished->si(), right.headAvailable->si());
    const PumpDecision wrong = decidePump(withCurve(1.2));
    EXPECT_TRUE(has(wrong.findings, balancing::kDutyApart));
    EXPECT_TRUE(has(wrong.findings, balancing::kCountsGauges));
    EXPECT_NEAR(wrong.curve.headFactor.si(), 1 / 1.2, 0.002);
    ASSERT_TRUE(wrong.headAvailable && wrong.excess);
    EXPECT_NEAR(wrong.headAvailable->si(), right.headAvailable->si(), 0.02);
    EXPECT_NEAR(wrong.headPublished->si(), 1.2 * right.headAvailable->si(), 0.01);
    EXPECT_NEAR(wrong.excess->si(), right.excess->si(), 0.02);
    for (const PumpAction action : {PumpAction::Slow, PumpAction::Trim}) {
        EXPECT_NEAR(find(wrong, action).option.ratio.si(), find(right, action).option.ratio.si(), 0.002);
        EXPECT_FALSE(find(wrong, action).confirmed.has_value()) << "no loop but the one that was read";
        EXPECT_TRUE(find(right, action).confirmed.has_value());
    }
}

// What the gauges make of the curve and what they make of the loop belong together: the speed that was read
// is right where it gives design flow.
TEST(PumpDecisionTest, theNeedIsReadByTheGaugesThatTheCurveGoesThrough) {
    PumpDecisionOptions options;
    const Project project = withCurve(1.1);
    options.learned[project.branchTagged("T1")->id].circuit =
        balancing::Resistance::si(20000 / std::pow(1.8 / 3600, 2));
    const PumpDecision right = decidePump(withCurve(1.0), options);
    EXPECT_EQ(right.required[*right.counted].source, HeadSource::Learned);
    const PumpDecision wrong = decidePump(project, options);
    const RequiredHead& counted = wrong.required[*wrong.counted];
    EXPECT_EQ(counted.source, HeadSource::Measured);
    EXPECT_EQ(counted.roundNumber, wrong.curve.roundNumber);
    // No static head: design flow over the flow that was read is the speed over the one it was read at.
    EXPECT_NEAR(find(wrong, PumpAction::Slow).option.ratio.si(), wrong.designFlow / wrong.duty->flow, 0.001);
}

// Head of a pump with another impeller, or of a wrong gauge: common practice, no source.
// A zone that came after the last round was closed is in no reading: what was balanced without it says
// nothing of the head that the loop with it needs.
TEST(PumpDecisionTest, aRoundThatDoesNotKnowALaterZoneMeasuresNoNeed) {
    Project project = withCurve(1.0);
    const auto isMeasured = [&] {
        const PumpDecision decision = decidePump(project, {});
        return std::any_of(decision.required.begin(), decision.required.end(),
                           [](const RequiredHead& head) { return head.source == HeadSource::Measured; });
    };
    ASSERT_TRUE(isMeasured());
    project::Branch zone = *project.branchTagged("T1");
    zone.id = support::CountingIds::numbered(990);
    zone.tag = "T9";
    for (const project::Round& round : project.rounds()) {
        zone.earlierDesigns.push_back({round.id, false, std::nullopt});
    }
    project.put(zone);
    EXPECT_FALSE(isMeasured());
}

TEST(PumpDecisionTest, whatCannotBeTrustedProposesNothing) {
    const PumpDecision decision = decidePump(withCurve(1.5));
    EXPECT_EQ(decision.curve.basis, balancing::CurveBasis::Untrusted);
    EXPECT_TRUE(has(decision.findings, balancing::kCurveImplausible));
    EXPECT_FALSE(decision.headAvailable || decision.excess || decision.presentExcess);
    EXPECT_TRUE(decision.options.empty());
    EXPECT_FALSE(decision.code.decision.has_value());
    EXPECT_TRUE(decision.duty.has_value()) << "what was read is told all the same";
}

// The gauges of two pumps say nothing of one that runs alone but how far their curve is off.
TEST(PumpDecisionTest, onePumpOfTwoHasTheFactorOfBoth) {
    Project project = withCurve(1.0);
    support::addTwin(project, project::PumpArrangement::Parallel, support::idOf(1));
    const PumpDecision both = decidePump(project);
    PumpDecisionOptions one;
    one.running = {project.pumps()[0].id};
    EXPECT_EQ(decidePump(project, one).curve.headFactor.si(), both.curve.headFactor.si());
    EXPECT_EQ(decidePump(project, one).curve.basis, both.curve.basis);
}

// The test sheet and the decision tell of one reading: total head and efficiency are the same number.
TEST(PumpDecisionTest, theDutyIsThatOfTheTestSheet) {
    Project project = withCurve(1.0);
    project::Pump pump = project.pumps()[0];
    pump.suctionDiameter = typedAs<quantity::Length>("82.5", Unit::Millimetre);
    pump.dischargeDiameter = typedAs<quantity::Length>("40.3", Unit::Millimetre);
    project.put(pump);
    const PumpDecision decision = decidePump(project);
    const PumpSheet sheet = pumpSheets(project).front();
    ASSERT_TRUE(decision.duty && sheet.sheet.points.back().head);
    EXPECT_GT(sheet.sheet.points.back().head->velocity.si(), 0.1);
    EXPECT_NEAR(decision.duty->head.si(), sheet.sheet.points.back().head->total.si(), 1e-9);
}

TEST(PumpDecisionTest, codeOfLargerMotors) {
    Project project = support::pumpLoop();
    project::Pump pump = project.pumps()[0];
    pump.motorPower = typedAs<Power>("15", Unit::Horsepower);
    project.put(pump);
    project::Job job = project.job();
    job.codeForm = project::CodeForm::PercentOnly;
    job.codeEdition = "State Energy Code 2024";
    job.codeClause = "4.7.2";
    project.put(job);
    // Computed by hand: 15 ft at 100 gpm and 70 %: 0.541 hp, against 5 % of 15 hp and of 7.5 hp.
    const PumpDecision small = decidePump(project);
    EXPECT_NEAR(small.code.excess->in(Unit::Horsepower), 0.541, 0.002);
    EXPECT_EQ(small.code.decision, energy::CodeDecision::ExemptSmallExcess);
    pump.motorPower = typedAs<Power>("7.5", Unit::Horsepower);
    project.put(pump);
    EXPECT_EQ(decidePump(project).code.decision, energy::CodeDecision::MustReduce);
    EXPECT_FALSE(decidePump(project).isCodeMet);
}

}  // namespace
}  // namespace ww::pump_room
