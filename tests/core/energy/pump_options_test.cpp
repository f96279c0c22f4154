// What can be done about excess head: power, diameters, speeds, limits and cautions.

#include "core/energy/pump_options.h"

#include <gtest/gtest.h>

#include "tests/support/faults.h"
#include "tests/support/us_units.h"

namespace ww::energy {
namespace {

using support::ft;
using support::gpm;
using support::has;
using support::hp;
using support::inch;
using support::kTradeWater;
using support::rpm;

/// H = 60 - 0.0012 Q^2 (ft, gpm) at 70 % everywhere.
curve::PumpCurve sixtyFootPump(bool hasEfficiency = true) {
    std::vector<curve::PumpPoint> points;
    for (double flow_gpm = 0; flow_gpm <= 160; flow_gpm += 10) {
        curve::PumpPoint point;
        point.flow = gpm(flow_gpm);
        point.head = ft(60 - 0.0012 * flow_gpm * flow_gpm);
        if (hasEfficiency) {
            point.efficiency = Ratio::si(0.70);
        }
        points.push_back(point);
    }
    return curve::PumpCurve::make(points).value();
}

curve::PumpSet one(curve::PumpCurve curve) {
    return {{{std::move(curve), {}}}, curve::PumpJoint::Parallel};
}

PumpOptionsInput inputFor(const curve::PumpSet& set, double flow_gpm, double required_ft) {
    PumpOptionsInput input;
    input.set = &set;
    input.designFlow = gpm(flow_gpm);
    input.requiredHead = ft(required_ft);
    input.density = kTradeWater;
    input.impeller = inch(8.5);
    input.fullSpeed = rpm(1750);
    input.hasDrive = true;
    return input;
}

const PumpOption& find(const PumpOptions& options, PumpAction action) {
    for (const PumpOption& option : options.options) {
        if (option.action == action) {
            return option;
        }
    }
    throw std::runtime_error("no such option");
}

TEST(PumpOptionsTest, loopOfThirtyThreeFeet) {
    // Computed by hand from H = 60 - 0.0012 Q^2, 33 ft at 100 gpm, 70 %: 48 ft and 1.7316 hp throttled; speed
    // 0.86603, 1.1905 hp; 8.5 in becomes 7.361 in.
    const curve::PumpSet set = one(sixtyFootPump());
    const PumpOptions found = pumpOptions(inputFor(set, 100, 33));
    EXPECT_NEAR(found.headAvailable->in(quantity::Unit::Foot), 48, 0.001);
    EXPECT_NEAR(found.excess->in(quantity::Unit::Foot), 15.0, 0.001);
    ASSERT_EQ(found.options.size(), 3U);
    const PumpOption& throttle = find(found, PumpAction::Throttle);
    EXPECT_NEAR(throttle.shaft->in(quantity::Unit::Horsepower), 1.7316, 0.0017);
    EXPECT_NEAR(throttle.throttled.in(quantity::Unit::Foot), 15.0, 0.001);
    EXPECT_TRUE(has(throttle.cautions, kThrottleWastes));
    const PumpOption& slow = find(found, PumpAction::Slow);
    EXPECT_NEAR(slow.ratio.si(), 0.86603, 0.00001);
    EXPECT_NEAR(slow.speed->in(quantity::Unit::RevolutionPerMinute), 1750 * 0.86603, 0.02);
    EXPECT_NEAR(slow.shaft->in(quantity::Unit::Horsepower), 1.1905, 0.0012);
    EXPECT_NEAR(slow.head.in(quantity::Unit::Foot), 33, 1e-6);
    const PumpOption& trim = find(found, PumpAction::Trim);
    EXPECT_NEAR(trim.impeller->in(quantity::Unit::Inch), 7.361, 0.0005);
    // Three quarters of the cut of 1.139 in: 7.646 in.
    EXPECT_NEAR(trim.firstCut->in(quantity::Unit::Inch), 8.5 - 0.75 * (8.5 - 7.3612), 0.0005);
    EXPECT_GT(*trim.headAfterFirstCut, ft(33));
    EXPECT_TRUE(has(trim.cautions, kTrimOvershoots));
    EXPECT_TRUE(trim.isAllowed);
}

TEST(PumpOptionsTest, anUnknownImpellerIsTrimmedByItsRatio) {
    const curve::PumpSet set = one(sixtyFootPump());
    PumpOptionsInput input = inputFor(set, 100, 33);
    input.impeller.reset();
    const PumpOptions found = pumpOptions(input);
    const PumpOption& trim = find(found, PumpAction::Trim);
    ASSERT_TRUE(has(trim.cautions, kTrimUnknownImpeller));
    for (const base::Fault& caution : trim.cautions) {
        if (caution.is(kTrimUnknownImpeller)) {
            EXPECT_EQ(caution.arguments.front(), quantity::percentDigits(trim.ratio.si(), 3));
        }
    }
}

TEST(PumpOptionsTest, practiceExampleOfThreeCircuits) {
    // Common practice, no source: 1800 gpm at 64 ft takes about 36 hp, slowed or trimmed to 1500 gpm at 54 ft
    // about 25 hp; the curve goes through (1500, 70), (1760, 65) and (1800, 64). Within 3 % by the affinity
    // laws.
    std::vector<curve::PumpPoint> points(4);
    points[0] = {gpm(0), ft(84), {}, {}, {}, {}};
    points[1] = {gpm(1500), ft(70), Ratio::si(0.80), {}, {}, {}};
    points[2] = {gpm(1760), ft(65), Ratio::si(0.80), {}, {}, {}};
    points[3] = {gpm(1800), ft(64), Ratio::si(0.80), {}, {}, {}};
    const curve::PumpSet set = one(curve::PumpCurve::make(points).value());
    EXPECT_NEAR(set.shaftPower(gpm(1800), kTradeWater)->in(quantity::Unit::Horsepower), 36, 0.03 * 36);
    const PumpOptions found = pumpOptions(inputFor(set, 1500, 54));
    EXPECT_NEAR(found.excess->in(quantity::Unit::Foot), 16, 1e-6);
    EXPECT_NEAR(find(found, PumpAction::Slow).shaft->in(quantity::Unit::Horsepower), 25, 0.03 * 25);
    EXPECT_NEAR(find(found, PumpAction::Trim).shaft->in(quantity::Unit::Horsepower), 25, 0.03 * 25);
}

TEST(PumpOptionsTest, yearlyEnergyAndMoney) {
    // Computed by hand: 1.7316 hp through 85 % over 4000 h: 1.7316 * 0.7457 / 0.85 * 4000 = 6076.5 kWh; 0.15
    // a kWh.
    const curve::PumpSet set = one(sixtyFootPump());
    PumpOptionsInput input = inputFor(set, 100, 33);
    input.terms.load = {{quantity::Duration::si(4000 * 3600.0), Ratio::si(1)}};
    input.terms.motorEfficiency = Ratio::si(0.85);
    input.terms.driveEfficiency = Ratio::si(0.96);
    input.terms.price = pricePerKilowattHour(*base::Decimal::parse("0.15"));
    const PumpOptions found = pumpOptions(input);
    const PumpOption& throttle = find(found, PumpAction::Throttle);
    EXPECT_NEAR(throttle.energy->si() / kKilowattHour.si(), 6076.5, 6);
    EXPECT_NEAR(throttle.cost->si(), 911.5, 1);
    const PumpOption& slow = find(found, PumpAction::Slow);
    EXPECT_NEAR(slow.energy->si() / kKilowattHour.si(), 1.1905 * 0.745700 / 0.85 / 0.96 * 4000, 5);
}

TEST(PumpOptionsTest, loadProfileRidesTheCurveOrHoldsAHead) {
    // Computed by hand at half flow, 50 gpm: on its curve 57 ft; slowed to hold 10 ft at the sensor 10 + 23/4
    // ft.
    const curve::PumpSet set = one(sixtyFootPump());
    EnergyTerms terms;
    terms.load = {{quantity::Duration::si(3600), Ratio::si(0.5)}};
    terms.motorEfficiency = Ratio::si(1);
    terms.heldHead = ft(10);
    const auto riding = yearlyEnergy(set, PartLoad::RidesCurve, gpm(100), ft(33), kTradeWater, terms, false);
    const auto holding = yearlyEnergy(set, PartLoad::HoldsHead, gpm(100), ft(33), kTradeWater, terms, false);
    const auto hour_J = [](double head_ft) {
        return shaftPower(gpm(50), ft(head_ft), kTradeWater, Ratio::si(0.70)).si() * 3600;
    };
    EXPECT_NEAR(riding->si(), hour_J(57), 1e-4 * hour_J(57));
    EXPECT_NEAR(holding->si(), hour_J(15.75), 1e-4 * hour_J(15.75));
}

TEST(PumpOptionsTest, noEfficiencyNoPower) {
    const curve::PumpSet set = one(sixtyFootPump(false));
    const PumpOptions found = pumpOptions(inputFor(set, 100, 33));
    ASSERT_EQ(found.options.size(), 3U);
    for (const PumpOption& option : found.options) {
        EXPECT_FALSE(option.shaft.has_value());
        EXPECT_FALSE(option.energy.has_value());
    }
    EXPECT_TRUE(has(found.findings, kEfficiencyUnknown));
    // As measured at the duty.
    PumpOptionsInput input = inputFor(set, 100, 33);
    input.terms.measuredEfficiency = Ratio::si(0.70);
    EXPECT_NEAR(find(pumpOptions(input), PumpAction::Slow).shaft->in(quantity::Unit::Horsepower), 1.1905,
                0.0012);
}

TEST(PumpOptionsTest, trimBelowTheLeastDiameter) {
    const curve::PumpSet set = one(sixtyFootPump());
    PumpOptionsInput input = inputFor(set, 100, 33);
    input.impellerMinimum = inch(7.5);
    const PumpOptions byMaker = pumpOptions(input);
    EXPECT_FALSE(find(byMaker, PumpAction::Trim).isAllowed);
    EXPECT_TRUE(has(find(byMaker, PumpAction::Trim).cautions, kTrimBelowMinimum));
    // US DOE, Pumping Systems Tip Sheet 7: not below 75 % of the largest impeller; 7.361 in of 10 in is 73.6
    // %.
    input = inputFor(set, 100, 33);
    input.impellerMaximum = inch(10);
    EXPECT_TRUE(has(find(pumpOptions(input), PumpAction::Trim).cautions, kTrimBelowShare));
}

TEST(PumpOptionsTest, speedLimits) {
    const curve::PumpSet set = one(sixtyFootPump());
    PumpOptionsInput input = inputFor(set, 60, 8);
    input.minimumSpeed = Ratio::si(0.5);
    const PumpOption slow = find(pumpOptions(input), PumpAction::Slow);
    EXPECT_FALSE(slow.isAllowed);
    EXPECT_TRUE(has(slow.cautions, kSlowBelowMinimum));
    EXPECT_TRUE(has(slow.cautions, kSlowLosesEfficiency));
    input = inputFor(set, 100, 33);
    input.hasDrive = false;
    EXPECT_TRUE(has(find(pumpOptions(input), PumpAction::Slow).cautions, kSlowNeedsDrive));
}

TEST(PumpOptionsTest, nothingToTakeAway) {
    const curve::PumpSet set = one(sixtyFootPump());
    // 50 ft wanted, 48 ft made: a speed above 100 % is no option.
    const PumpOptions weak = pumpOptions(inputFor(set, 100, 50));
    EXPECT_TRUE(weak.options.empty());
    ASSERT_TRUE(has(weak.findings, kPumpTooSmall));
    EXPECT_EQ(weak.findings.front().arguments.back(), quantity::ShownUnits{}.written(ft(50 - 48)))
        << "by how much it is short";
    const PumpOptions beyond = pumpOptions(inputFor(set, 170, 10));
    EXPECT_TRUE(beyond.options.empty());
    EXPECT_FALSE(beyond.headAvailable.has_value());
    EXPECT_TRUE(has(beyond.findings, kDutyBeyondCurve));
    const PumpOptions fits = pumpOptions(inputFor(set, 100, 48));
    ASSERT_EQ(fits.options.size(), 3U);
    EXPECT_NEAR(find(fits, PumpAction::Slow).ratio.si(), 1, 1e-6);
}

TEST(PumpOptionsTest, pairsAreTrimmedAlike) {
    const curve::PumpSet pair({{sixtyFootPump(), {}}, {sixtyFootPump(), {}}}, curve::PumpJoint::Parallel);
    const PumpOptions found = pumpOptions(inputFor(pair, 200, 33));
    const PumpOption& trim = find(found, PumpAction::Trim);
    EXPECT_TRUE(has(trim.cautions, kTrimPairAlike));
    // Each carries half: the same factors as one pump at 100 gpm.
    EXPECT_NEAR(trim.ratio.si(), 0.86603, 0.00001);
    EXPECT_NEAR(trim.shaft->in(quantity::Unit::Horsepower), 2 * 1.1905, 0.0024);
    const curve::PumpSet series({{sixtyFootPump(), {}}, {sixtyFootPump(), {}}}, curve::PumpJoint::Series);
    EXPECT_NEAR(find(pumpOptions(inputFor(series, 100, 66)), PumpAction::Slow).ratio.si(), 0.86603, 0.00001);
}

TEST(PumpOptionsTest, secondFormOfTheTrimLaw) {
    // Computed by hand with Q ~ D^2 and H ~ D^2: H = 60 d^2 - 0.0012 Q^2 / d^2 through (100, 33): with s =
    // d^2, 60 s^2 - 33 s - 12 = 0, s = 0.8, d = 0.89443.
    const curve::PumpSet set = one(sixtyFootPump());
    PumpOptionsInput input = inputFor(set, 100, 33);
    input.trimFlowExponent = 2;
    EXPECT_NEAR(find(pumpOptions(input), PumpAction::Trim).ratio.si(), 0.89443, 0.0001);
}

TEST(PumpOptionsTest, familyGoesBeforeTheLaw) {
    std::vector<curve::PumpPoint> points;
    for (const double diameter : {8.5, 7.5}) {
        for (double flow_gpm = 0; flow_gpm <= 160; flow_gpm += 20) {
            curve::PumpPoint point;
            // The smaller impeller loses more than the law says: 44 ft at shutoff where D^2 gives 46.7.
            const double shutoff_ft = diameter == 8.5 ? 60 : 44;
            point.flow = gpm(flow_gpm);
            point.head = ft(shutoff_ft - 0.0012 * flow_gpm * flow_gpm);
            point.impeller = inch(diameter);
            points.push_back(point);
        }
    }
    const auto family = curve::ImpellerFamily::make(points).value();
    const curve::PumpSet set = one(family.curveOf(inch(8.5)));
    PumpOptionsInput input = inputFor(set, 100, 33);
    input.family = &family;
    const PumpOptions found = pumpOptions(input);
    const PumpOption& trim = find(found, PumpAction::Trim);
    EXPECT_GT(*trim.impeller, inch(7.361));
    EXPECT_LT(*trim.impeller, inch(8.5));
    EXPECT_NEAR(trim.head.in(quantity::Unit::Foot), 33, 1e-6);
}

}  // namespace
}  // namespace ww::energy
