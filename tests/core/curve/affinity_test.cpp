#include "core/curve/affinity.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace ww::curve {
namespace {

using quantity::Unit;

PumpCurve fallingParabola(double shutoff_m, double perSquare, double last_m3h, int pieces) {
    std::vector<PumpPoint> points;
    for (int i = 0; i <= pieces; ++i) {
        const double flow_m3h = last_m3h * i / pieces;
        PumpPoint point;
        point.flow = VolumeFlow::from(flow_m3h, Unit::CubicMetrePerHour);
        point.head = Head::si(shutoff_m - perSquare * flow_m3h * flow_m3h);
        points.push_back(point);
    }
    return PumpCurve::make(points).value();
}

// By hand: H = 20 - 0.01 Q^2 and the parabola through (20, 6), H = 0.015 Q^2, meet where 0.025 Q^2 = 20: Q
// = 28.284.
TEST(Affinity, aSimilarFlowLiesWhereParabolaAndCurveMeet) {
    const auto curve = fallingParabola(20, 0.01, 40, 8);
    const VolumeFlow target = VolumeFlow::from(20, Unit::CubicMetrePerHour);
    const VolumeFlow similar = similarFlow(curve, target, Head::si(6));
    EXPECT_NEAR(similar.in(Unit::CubicMetrePerHour), std::sqrt(800), 1e-9);
    EXPECT_NEAR(affinityFactor(curve, target, Head::si(6)), 20 / std::sqrt(800), 1e-12);
}

TEST(Affinity, theFactorBringsTheCurveThroughTheDuty) {
    std::mt19937 random(11);
    std::uniform_real_distribution<double> anywhere(0.05, 1.6);
    const auto curve = fallingParabola(20, 0.01, 40, 5);
    for (int i = 0; i < 500; ++i) {
        const VolumeFlow flow = VolumeFlow::from(40 * anywhere(random), Unit::CubicMetrePerHour);
        const Head head = Head::si(20 * anywhere(random));
        const double factor = affinityFactor(curve, flow, head);
        EXPECT_NEAR(curve.head(flow, {.speedFraction = factor}) / head, 1, 1e-12);
        EXPECT_NEAR(curve.head(flow, {.diameterFraction = factor}) / head, 1, 1e-12);
    }
}

TEST(Affinity, aPointOfTheCurveNeedsNoChange) {
    const auto curve = fallingParabola(20, 0.01, 40, 5);
    const VolumeFlow flow = VolumeFlow::from(23, Unit::CubicMetrePerHour);
    EXPECT_NEAR(affinityFactor(curve, flow, curve.head(flow)), 1, 1e-14);
}

TEST(Affinity, headsBelowZeroAreABrokenContract) {
    const auto curve = fallingParabola(20, 0.01, 40, 5);
    EXPECT_THROW((void)affinityFactor(Head::si(0), Head::si(1)), base::ContractBreach);
    EXPECT_THROW((void)similarFlow(curve, VolumeFlow::si(0), Head::si(1)), base::ContractBreach);
}

}  // namespace
}  // namespace ww::curve
