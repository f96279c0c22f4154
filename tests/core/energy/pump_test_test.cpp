// A pump's test sheet: heads with their parts, flows with closure, impeller, power, suction, and bad
// readings.

#include "core/energy/pump_test.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/support/faults.h"
#include "tests/support/us_units.h"

namespace ww::energy {
namespace {

using project::PumpPoint;
using support::ft;
using support::gpm;
using support::has;
using support::hp;
using support::inch;
using support::kTradeWater;
using support::psi;
using support::rpm;

/// Efficiency 0.75 - ((Q - 100)/200)^2: best at 100 gpm.
curve::PumpCurve pumpCurve() {
    std::vector<curve::PumpPoint> points;
    for (double flow_gpm = 0; flow_gpm <= 160; flow_gpm += 10) {
        curve::PumpPoint point;
        const double off = (flow_gpm - 100) / 200;
        point.flow = gpm(flow_gpm);
        point.head = ft(60 - 0.0012 * flow_gpm * flow_gpm);
        point.efficiency = Ratio::si(0.75 - off * off);
        point.npshRequired = ft(6);
        points.push_back(point);
    }
    return curve::PumpCurve::make(points).value();
}

/// psi between the gauges for a head of trade water.
double psiOf(double head_ft) {
    return quantity::pressureOf(ft(head_ft), kTradeWater).in(quantity::Unit::Psi);
}

class PumpTestSheetTest : public testing::Test {
  protected:
    PumpTestSheetTest() : m_curve(pumpCurve()) {
        m_input.curve = &m_curve;
        m_input.statedImpeller = inch(9.5);
        m_input.ratedSpeed = rpm(1750);
        m_input.density = kTradeWater;
        m_input.vapour = AbsolutePressure::from(0.256, quantity::Unit::Psi);
        m_input.station = {inch(0), inch(0), inch(3), inch(3)};
    }

    PumpTestPoint& add(PumpPoint kind, double suction_psi, double discharge_psi) {
        PumpTestPoint point;
        point.kind = kind;
        point.gauges = {psi(suction_psi), psi(discharge_psi), {}};
        point.speed = rpm(1750);
        m_input.points.push_back(point);
        return m_input.points.back();
    }

    curve::PumpCurve m_curve;
    PumpTestInput m_input;
};

TEST_F(PumpTestSheetTest, zeroHeightAndVelocityEachShown) {
    // Computed by hand. Discharge gauge 2 ft above the suction gauge: at rest a perfect pair shows 2 ft less
    // there. It reads 0.5 psi too much, so the zero is 0.5 psi.
    m_input.station = {inch(0), inch(24), inch(3), inch(2)};
    add(PumpPoint::Static, 12, 12 - psiOf(2) + 0.5);
    PumpTestPoint& point = add(PumpPoint::FullOpen, 10, 30);
    point.meter = FlowValue{gpm(100), gpm(2)};
    const PumpTestSheet sheet = evaluate(m_input);
    EXPECT_NEAR(sheet.gaugeZero->in(quantity::Unit::Psi), 0.5, 1e-9);
    const PumpHead& head = *sheet.points[1].head;
    EXPECT_NEAR(quantity::pressureOf(head.pressure, kTradeWater).in(quantity::Unit::Psi), 20, 1e-9);
    EXPECT_NEAR(quantity::pressureOf(head.zero, kTradeWater).in(quantity::Unit::Psi), -0.5, 1e-9);
    EXPECT_NEAR(head.elevation.in(quantity::Unit::Foot), 2, 1e-9);
    EXPECT_NEAR(head.velocity.si(), (velocityHead(gpm(100), inch(2)) - velocityHead(gpm(100), inch(3))).si(),
                1e-12);
    EXPECT_NEAR(head.total.si(), (head.pressure + head.zero + head.elevation + head.velocity).si(), 1e-12);
    EXPECT_EQ(sheet.points[1].flowWay, FlowWay::Meter);
}

TEST_F(PumpTestSheetTest, impellerFromShutoff) {
    // Computed by hand: 60 ft at 9.5 in; 53.74 ft measured: 9.5 sqrt(53.74/60) = 8.991 in, as 92 and 82.4 ft
    // do.
    add(PumpPoint::Shutoff, 10, 10 + psiOf(60 * 82.4 / 92));
    add(PumpPoint::FullOpen, 10, 10 + psiOf(40));
    const PumpTestSheet sheet = evaluate(m_input);
    EXPECT_NEAR(sheet.impeller->diameter.in(quantity::Unit::Inch), 8.991, 0.0005);
    EXPECT_TRUE(sheet.isImpellerSuspect);
    EXPECT_TRUE(has(sheet.findings, kImpellerSuspect));
    // The flow comes from the curve of the impeller found.
    const double part = std::sqrt(82.4 / 92);
    EXPECT_NEAR(sheet.points[1].curveFlow->flow.si(),
                m_curve.flowAtHead(ft(40), {.diameterFraction = part})->si(), 1e-5);
}

TEST_F(PumpTestSheetTest, shutoffAtAnotherSpeedIsTakenToRated) {
    PumpTestPoint& point = add(PumpPoint::Shutoff, 10, 10 + psiOf(60 * 0.81));
    point.speed = rpm(1575);
    const PumpTestSheet sheet = evaluate(m_input);
    EXPECT_NEAR(sheet.points[0].headAtRatedSpeed->in(quantity::Unit::Foot), 60, 1e-6);
    EXPECT_FALSE(sheet.isImpellerSuspect);
}

TEST_F(PumpTestSheetTest, threeFlowsAndTheirClosure) {
    PumpTestPoint& point = add(PumpPoint::FullOpen, 10, 10 + psiOf(48));
    point.riseUncertainty = quantity::pressureOf(ft(0.5), kTradeWater);
    point.meter = FlowValue{gpm(104), gpm(2)};
    point.branches = FlowValue{gpm(92), gpm(3)};
    const PumpPointResult result = evaluate(m_input).points[0];
    EXPECT_NEAR(result.curveFlow->flow.in(quantity::Unit::GallonPerMinute), 100, 0.01);
    EXPECT_NEAR(result.curveFlow->low.in(quantity::Unit::GallonPerMinute), std::sqrt((60 - 48.5) / 0.0012),
                0.05);
    EXPECT_NEAR(result.curveFlow->high.in(quantity::Unit::GallonPerMinute), std::sqrt((60 - 47.5) / 0.0012),
                0.05);
    ASSERT_EQ(result.closures.size(), 3U);
    for (const FlowClosure& closure : result.closures) {
        if (closure.one == FlowWay::Meter && closure.other == FlowWay::Branches) {
            EXPECT_NEAR(closure.score.si(), 12 / std::sqrt(4.0 + 9.0), 1e-9);
        }
    }
    EXPECT_TRUE(has(result.findings, kClosureWide));
    EXPECT_NEAR(result.ofBestFlow->si(), 1.04, 0.001);
}

TEST_F(PumpTestSheetTest, flatCurveGivesAnInterval) {
    PumpTestPoint& point = add(PumpPoint::Running, 10, 10 + psiOf(59.5));
    point.riseUncertainty = quantity::pressureOf(ft(1), kTradeWater);
    const PumpPointResult result = evaluate(m_input).points[0];
    EXPECT_TRUE(result.curveFlow->isFlat);
    EXPECT_EQ(result.curveFlow->low.si(), 0);
    EXPECT_TRUE(has(result.findings, kCurveFlat));
}

TEST_F(PumpTestSheetTest, velocityHeadFollowsTheCurvesOwnFlow) {
    m_input.station = {inch(0), inch(0), inch(3), inch(1.5)};
    add(PumpPoint::FullOpen, 10, 10 + psiOf(45));
    const PumpPointResult result = evaluate(m_input).points[0];
    EXPECT_NEAR(m_curve.head(*result.flow).si(), result.head->total.si(), 1e-6);
    EXPECT_GT(result.head->velocity.si(), 0);
}

TEST_F(PumpTestSheetTest, powerAndEfficiency) {
    m_input.plate.power = hp(3);
    m_input.plate.efficiency = Ratio::si(0.85);
    PumpTestPoint& point = add(PumpPoint::FullOpen, 10, 10 + psiOf(48));
    point.meter = FlowValue{gpm(100), gpm(2)};
    point.motor.inputPower = Power::si(1500);
    const PumpPointResult result = evaluate(m_input).points[0];
    // Computed by hand: 100 * 48 / 3960 = 1.2121 hp of water; 1500 W * 0.85 = 1.7098 hp: 70.9 %.
    EXPECT_NEAR(result.efficiency->si(), 0.709, 0.001);
    EXPECT_NEAR(result.wireToWater->si(), 0.709 * 0.85, 0.001);
}

TEST_F(PumpTestSheetTest, suctionMargin) {
    add(PumpPoint::FullOpen, -9, -9 + psiOf(48));
    const PumpPointResult result = evaluate(m_input).points[0];
    EXPECT_NEAR(result.npshRequired->in(quantity::Unit::Foot), 6, 1e-9);
    EXPECT_LT(*result.npshMargin, ft(8));
    EXPECT_NEAR(result.npshMargin->si(), (*result.npshAvailable - ft(6)).si(), 1e-12);
    m_input.points.clear();
    add(PumpPoint::FullOpen, -12, -12 + psiOf(48));
    EXPECT_TRUE(has(evaluate(m_input).points[0].findings, kNpshShort));
}

TEST_F(PumpTestSheetTest, badReadingsGiveFindingsAndNoNumbers) {
    add(PumpPoint::FullOpen, 30, 10);
    add(PumpPoint::FullOpen, 10, 10 + psiOf(70));
    add(PumpPoint::FullOpen, 10, 10 + psiOf(20));
    PumpTestPoint& amps = add(PumpPoint::FullOpen, 10, 10 + psiOf(48));
    amps.motor.amps = {quantity::Current::si(5)};
    const PumpTestSheet sheet = evaluate(m_input);
    EXPECT_FALSE(sheet.points[0].head.has_value());
    EXPECT_FALSE(sheet.points[0].flow.has_value());
    EXPECT_TRUE(has(sheet.points[0].findings, kDischargeBelowSuction));
    EXPECT_FALSE(sheet.points[1].flow.has_value());
    EXPECT_TRUE(has(sheet.points[1].findings, kHeadAboveShutoff));
    // The last point of the curve is 29.28 ft at 160 gpm.
    EXPECT_FALSE(sheet.points[2].flow.has_value());
    EXPECT_TRUE(has(sheet.points[2].findings, kHeadBelowCurve));
    EXPECT_FALSE(sheet.points[3].motor.shaft().has_value());
    EXPECT_TRUE(has(sheet.points[3].findings, kAmpsWithoutVolts));
}

TEST_F(PumpTestSheetTest, headWithFlowBelowShutoff) {
    add(PumpPoint::Shutoff, 10, 10 + psiOf(50));
    add(PumpPoint::FullOpen, 10, 10 + psiOf(51));
    EXPECT_TRUE(has(evaluate(m_input).points[1].findings, kHeadAboveTestShutoff));
}

TEST(ShutoffAdviceTest, whoMayNot) {
    const curve::PumpCurve radial = pumpCurve();
    ShutoffCase pump;
    pump.curve = &radial;
    pump.speed = rpm(1750);
    // Computed by hand: 1750 sqrt(100) / 48^0.75 = 960 (rpm, gpm, ft), a radial pump.
    EXPECT_NEAR(2733 * typeNumber(radial, rpm(1750))->si(), 960, 3);
    EXPECT_NEAR(bestEfficiencyFlow(radial)->in(quantity::Unit::GallonPerMinute), 100, 0.5);
    const ShutoffAdvice ordinary = shutoffAdvice(pump);
    EXPECT_FALSE(ordinary.isForbidden);
    EXPECT_TRUE(has(ordinary.cautions, kShutoffHow));
    EXPECT_TRUE(has(ordinary.cautions, kShutoffBear)) << "pressure and heat are told before how it is done";
    pump.speed = rpm(9000);
    EXPECT_TRUE(has(shutoffAdvice(pump).cautions, kShutoffHighSpecificSpeed));
    EXPECT_TRUE(shutoffAdvice(pump).isForbidden);
    pump.speed = rpm(1750);
    pump.guardsSource = true;
    EXPECT_TRUE(shutoffAdvice(pump).isForbidden);
    EXPECT_FALSE(has(shutoffAdvice(pump).cautions, kShutoffHow));
    EXPECT_FALSE(shutoffAdvice(pump).isNever) << "whoever runs the plant may agree";
    pump = {};
    pump.isPositiveDisplacement = true;
    EXPECT_TRUE(shutoffAdvice(pump).isNever);
    EXPECT_TRUE(has(shutoffAdvice(pump).cautions, kShutoffDisplacement));
    pump = {};
    pump.temperature = Temperature::from(180, quantity::Unit::Fahrenheit);
    pump.motor = Power::si(75000);
    const ShutoffAdvice hot = shutoffAdvice(pump);
    EXPECT_TRUE(has(hot.cautions, kShutoffHot) && has(hot.cautions, kShutoffLarge) &&
                has(hot.cautions, kShutoffUnknown));
}

TEST(ShutoffAdviceTest, powerThatRisesTowardsShutoff) {
    const double kPower_hp[] = {8, 7, 6, 6, 7};
    std::vector<curve::PumpPoint> points;
    for (int i = 0; i <= 4; ++i) {
        curve::PumpPoint point;
        point.flow = gpm(100.0 * i);
        point.head = ft(40 - 5.0 * i);
        point.power = hp(kPower_hp[i]);
        points.push_back(point);
    }
    const curve::PumpCurve axial = curve::PumpCurve::make(points).value();
    ASSERT_TRUE(bestEfficiencyFlow(axial).has_value());
    ShutoffCase pump;
    pump.curve = &axial;
    EXPECT_TRUE(has(shutoffAdvice(pump).cautions, kShutoffPowerRises));
    EXPECT_TRUE(shutoffAdvice(pump).isForbidden);
}

}  // namespace
}  // namespace ww::energy
