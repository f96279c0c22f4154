// Affinity and trim of pumps against published examples.

#include "core/curve/pump_curve.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/curve/affinity.h"
#include "core/curve/impeller_family.h"
#include "tests/support/us_units.h"

namespace ww::curve {
namespace {

using quantity::Unit;
using support::ft;
using support::gpm;
using support::inch;

/// A falling curve through one known point; its other points play no part in that point's affinity.
PumpCurve curveThrough(VolumeFlow flow, Head head, Power power) {
    std::vector<PumpPoint> points(3);
    for (std::size_t i = 0; i < 3; ++i) {
        const double part = 0.5 + 0.5 * static_cast<double>(i);
        points[i].flow = flow * part;
        points[i].head = head * (1.2 - 0.2 * part * part);
        points[i].power = power * (0.4 + 0.6 * part);
    }
    return PumpCurve::make(points).value();
}

/// H = 60 - 0.0012 Q^2 in ft and gpm.
PumpCurve sixtyFootPump() {
    std::vector<PumpPoint> points;
    for (const double flow_gpm : {0.0, 20.0, 50.0, 100.0, 150.0, 200.0}) {
        PumpPoint point;
        point.flow = gpm(flow_gpm);
        point.head = ft(60 - 0.0012 * flow_gpm * flow_gpm);
        points.push_back(point);
    }
    return PumpCurve::make(points).value();
}

TEST(Affinity, fromTwoPoleToFourPoleSpeed) {
    // Technical Paper 410, Flow of Fluids, example 7.33: 400 gpm, 126 ft, 17.5 hp at 3500 rpm, run at 1700
    // rpm.
    const auto curve = curveThrough(gpm(400), ft(126), Power::from(17.5, Unit::Horsepower));
    const PumpState state{.speedFraction = 1700.0 / 3500};
    EXPECT_NEAR((gpm(400) * state.speedFraction).in(Unit::GallonPerMinute), 194.29, 0.005);
    EXPECT_NEAR(curve.head(gpm(400) * state.speedFraction, state).in(Unit::Foot), 29.726, 0.0005);
    EXPECT_NEAR(curve.flowAtHead(ft(29.726), state)->in(Unit::GallonPerMinute), 194.29, 0.05);
    EXPECT_NEAR(curve.shaftPower(gpm(194.2857), kPumpTableDensity, state)->in(Unit::Horsepower), 2.0053,
                0.00005);
}

TEST(Affinity, from1800To1500Rpm) {
    // Common practice guide, inputs 1000 gpm, 150 ft, 50 hp; outputs computed by hand.
    const auto curve = curveThrough(gpm(1000), ft(150), Power::from(50, Unit::Horsepower));
    const PumpState state{.speedFraction = 1500.0 / 1800};
    EXPECT_NEAR(curve.head(gpm(833.333), state).in(Unit::Foot), 104.17, 0.005);
    EXPECT_NEAR(curve.flowAtHead(ft(104.1667), state)->in(Unit::GallonPerMinute), 833.3, 0.05);
    EXPECT_NEAR(curve.shaftPower(gpm(833.333), kPumpTableDensity, state)->in(Unit::Horsepower), 28.94, 0.005);
}

TEST(Affinity, at80PercentSpeed) {
    // Common practice guide: 450 gpm, 120 ft; 80 % speed gives 360 gpm, 76.8 ft, 0.512 of the power.
    const auto curve = curveThrough(gpm(450), ft(120), Power::si(1000));
    const PumpState state{.speedFraction = 0.8};
    EXPECT_NEAR(curve.head(gpm(360), state).in(Unit::Foot), 76.8, 1e-9);
    EXPECT_NEAR(curve.shaftPower(gpm(360), kPumpTableDensity, state)->si(), 512, 1e-9);
}

TEST(Trim, tenPercentOffTheDiameter) {
    // Trade magazine WaterWorld, 6 October 2009: head -19 %, power -27.1 %.
    const auto curve = curveThrough(gpm(450), ft(120), Power::si(1000));
    const PumpState state{.diameterFraction = 0.9};
    EXPECT_NEAR(curve.head(gpm(405), state) / ft(120), 1 - 0.19, 1e-12);
    EXPECT_NEAR(curve.shaftPower(gpm(405), kPumpTableDensity, state)->si(), 1000 - 271, 1e-9);
}

TEST(Affinity, speedForASmallerHead) {
    // Schaschke, Fluid Mechanics: Worked Examples for Engineers, example 9.10 p. 255: 34 m at 1200 rpm to 23
    // m.
    EXPECT_NEAR(1200 * affinityFactor(Head::si(34), Head::si(23)), 987.0, 0.1);
    const auto curve = curveThrough(VolumeFlow::si(0.0066), Head::si(34), Power::si(3000));
    const VolumeFlow similar = VolumeFlow::si(0.0066 * 987.0 / 1200);
    EXPECT_NEAR(1200 * affinityFactor(curve, similar, Head::si(23)), 987.0, 0.1);
}

TEST(Trim, from165To125Feet) {
    // US DOE Pumping Systems Tip Sheet 7, Trim or Replace Impellers (2006), figures from memory: 14 in, 165
    // to 125 ft.
    EXPECT_NEAR(impellerFromShutoff(inch(14), ft(165), ft(125)).in(Unit::Inch), 12.185, 0.0005);
}

TEST(Affinity, bringsAnOverflowingLoopToDesign) {
    // Computed by hand: H = 60 - 0.0012 Q^2 on a loop of 33 ft at 100 gpm runs at 115.470 gpm; 1/1.15470 =
    // 0.86603, and an 8.5 in impeller becomes 7.361 in.
    const auto curve = sixtyFootPump();
    EXPECT_NEAR(similarFlow(curve, gpm(100), ft(33)).in(Unit::GallonPerMinute), 115.470, 0.0005);
    const double factor = affinityFactor(curve, gpm(100), ft(33));
    EXPECT_NEAR(factor, 0.86603, 0.5e-5);
    EXPECT_NEAR(8.5 * factor, 7.361, 0.0005);
    EXPECT_NEAR(curve.head(gpm(100), {.speedFraction = factor}).in(Unit::Foot), 33, 1e-9);
}

TEST(Impeller, fromTheHeadAtShutoff) {
    // Computed by hand: 92 ft at 9.5 in, 82.4 ft measured: 9.5 sqrt(82.4/92) = 8.991 in.
    EXPECT_NEAR(impellerFromShutoff(inch(9.5), ft(92), ft(82.4)).in(Unit::Inch), 8.991, 0.0005);
    std::vector<PumpPoint> points(2);
    points[0] = {.flow = gpm(0),
                 .head = ft(92),
                 .efficiency = {},
                 .power = {},
                 .npshRequired = {},
                 .impeller = inch(9.5)};
    points[1] = {.flow = gpm(200),
                 .head = ft(70),
                 .efficiency = {},
                 .power = {},
                 .npshRequired = {},
                 .impeller = inch(9.5)};
    const auto family = ImpellerFamily::make(points).value();
    EXPECT_NEAR(family.diameterForShutoff(ft(82.4)).diameter.in(Unit::Inch), 8.991, 0.0005);
}

}  // namespace
}  // namespace ww::curve
