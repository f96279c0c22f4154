#include "core/curve/pump_curve.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

namespace ww::curve {
namespace {

using quantity::Unit;

VolumeFlow perHour(double number) {
    return VolumeFlow::from(number, Unit::CubicMetrePerHour);
}

Head m(double number) {
    return Head::si(number);
}

std::vector<PumpPoint> rows(std::initializer_list<std::pair<double, double>> flowsAndHeads) {
    std::vector<PumpPoint> points;
    for (const auto& [flow, head] : flowsAndHeads) {
        PumpPoint point;
        point.flow = perHour(flow);
        point.head = m(head);
        points.push_back(point);
    }
    return points;
}

PumpCurve curveOf(std::initializer_list<std::pair<double, double>> flowsAndHeads) {
    return PumpCurve::make(rows(flowsAndHeads)).value();
}

PumpCurve parabola(double shutoff_m, double perSquare, std::initializer_list<double> flows) {
    std::vector<PumpPoint> points;
    for (const double flow : flows) {
        PumpPoint point;
        point.flow = perHour(flow);
        point.head = m(shutoff_m - perSquare * flow * flow);
        points.push_back(point);
    }
    return PumpCurve::make(points).value();
}

TEST(PumpCurve, passesThroughItsPointsInAnyOrder) {
    const auto curve = curveOf({{20, 15}, {0, 20}, {10, 18.5}, {30, 9}});
    for (const PumpPoint& point : curve.points()) {
        EXPECT_NEAR(curve.head(point.flow).si(), point.head.si(), 1e-13);
    }
    EXPECT_DOUBLE_EQ(curve.shutoffHead().si(), 20);
    EXPECT_EQ(curve.lastFlow(), perHour(30));
}

// A centrifugal pump's curve is near a parabola; the slopes are taken from parabolas, so it comes back
// exactly, but for the least slope kept at shutoff (largest error 1/6750 of the first piece's fall, 0.2 m of
// 20 m here).
TEST(PumpCurve, reproducesAParabola) {
    const auto curve = parabola(20, 0.01, {0, 4, 10, 17, 30});
    for (double flow = 4; flow <= 30; flow += 0.25) {
        EXPECT_NEAR(curve.head(perHour(flow)).si(), 20 - 0.01 * flow * flow, 1e-12);
        EXPECT_NEAR(curve.headSlope(perHour(flow)), -0.02 * flow * 3600, 1e-9);
    }
    for (double flow = 0; flow <= 4; flow += 0.25) {
        EXPECT_NEAR(curve.head(perHour(flow)).si(), 20 - 0.01 * flow * flow, 0.16 / 6749);
    }
}

TEST(PumpCurve, goesOnStraightBeyondItsLastPoint) {
    const auto curve = parabola(20, 0.01, {0, 10, 20, 30});
    const double slope_mPerM3h = -0.02 * 30;
    EXPECT_NEAR(curve.head(perHour(35)).si(), 11 + 5 * slope_mPerM3h, 1e-12);
    EXPECT_NEAR(curve.runOut().in(Unit::CubicMetrePerHour), 30 + 11 / 0.6, 1e-12);
    EXPECT_NEAR(curve.head(curve.runOut()).si(), 0, 1e-12);
    EXPECT_EQ(curve.range(perHour(30)), CurveRange::WithinPoints);
    EXPECT_EQ(curve.range(perHour(30.01)), CurveRange::BeyondLastPoint);
    EXPECT_NEAR(curve.flowAtHead(m(5))->in(Unit::CubicMetrePerHour), 40, 1e-12);
}

TEST(PumpCurve, goesOnStraightDownToZeroFlow) {
    const auto curve = curveOf({{10, 18}, {20, 14}});
    EXPECT_NEAR(curve.shutoffHead().si(), 22, 1e-12);
    EXPECT_EQ(curve.range(perHour(5)), CurveRange::BelowShutoffFlow);
    EXPECT_EQ(curve.range(perHour(10)), CurveRange::WithinPoints);
    EXPECT_NEAR(curve.flowAtHead(m(20))->in(Unit::CubicMetrePerHour), 5, 1e-12);
}

TEST(PumpCurve, givesNoFlowAboveItsShutoffHead) {
    const auto curve = curveOf({{0, 20}, {10, 18.5}, {30, 9}});
    EXPECT_FALSE(curve.flowAtHead(m(20.001)));
    EXPECT_EQ(curve.flowAtHead(curve.shutoffHead()), VolumeFlow::si(0));
    const PumpState slow{0.83, 0.97};
    const auto flow = curve.flowAtHead(curve.shutoffHead(slow), slow);
    ASSERT_TRUE(flow);
    EXPECT_NEAR(flow->si(), 0, 1e-12 * curve.lastFlow().si());
}

// Affinity laws as in Karassik et al., Pump Handbook: Q ~ n D, H ~ n^2 D^2, P ~ n^3 D^3.
TEST(PumpCurve, followsTheAffinityLaws) {
    auto points = rows({{0, 20}, {10, 18.5}, {20, 15}, {30, 9}});
    for (PumpPoint& point : points) {
        point.power = Power::si(600 + 20 * point.flow.in(Unit::CubicMetrePerHour));
        point.npshRequired = Head::si(1 + 0.1 * point.flow.in(Unit::CubicMetrePerHour));
    }
    const auto curve = PumpCurve::make(points).value();
    const PumpState state{0.8, 0.9};
    const double scale = 0.72;
    for (const double flow : {0.0, 4.0, 17.0, 29.0, 33.0}) {
        EXPECT_NEAR(curve.head(perHour(flow * scale), state).si(),
                    curve.head(perHour(flow)).si() * scale * scale, 1e-12);
        EXPECT_NEAR(curve.headSlope(perHour(flow * scale), state), curve.headSlope(perHour(flow)) * scale,
                    1e-8);
    }
    const double full_W = curve.shaftPower(perHour(20), kPumpTableDensity)->si();
    EXPECT_NEAR(full_W, 1000, 1e-9);
    EXPECT_NEAR(curve.shaftPower(perHour(20 * scale), kPumpTableDensity, state)->si(),
                1000 * std::pow(scale, 3), 1e-9);
    EXPECT_NEAR(curve.efficiency(perHour(20 * scale), state)->si(), curve.efficiency(perHour(20))->si(),
                1e-12);
    EXPECT_NEAR(curve.npshRequired(perHour(20 * scale), state)->si(), 3 * 0.64, 1e-12);
    EXPECT_NEAR(curve.runOut(state) / curve.runOut(), scale, 1e-12);
    EXPECT_NEAR(curve.lastFlow(state) / curve.lastFlow(), scale, 1e-12);
    EXPECT_NEAR(curve.flowAtHead(m(15 * scale * scale), state)->in(Unit::CubicMetrePerHour), 20 * scale,
                1e-10);
}

// P = rho g Q H / efficiency, by definition.
TEST(PumpCurve, powerAndEfficiencyFollowFromEachOther) {
    auto withEfficiency = rows({{0, 20}, {10, 18.5}, {20, 15}, {30, 9}});
    const double efficiencies[] = {0, 0.55, 0.7, 0.6};
    for (std::size_t i = 0; i < 4; ++i) {
        withEfficiency[i].efficiency = Ratio::si(efficiencies[i]);
    }
    const auto curve = PumpCurve::make(withEfficiency).value();
    EXPECT_DOUBLE_EQ(curve.efficiency(perHour(20))->si(), 0.7);
    const Density glycol = Density::si(1040);
    EXPECT_NEAR(curve.shaftPower(perHour(20), glycol)->si(), 1040 * 9.80665 * 20 / 3600 * 15 / 0.7, 1e-9);
    EXPECT_FALSE(curve.shaftPower(perHour(0), glycol)) << "0 over 0 says nothing";
    EXPECT_FALSE(curve.efficiency(perHour(31)));
    EXPECT_FALSE(curve.npshRequired(perHour(20)));

    auto withPower = rows({{0, 20}, {10, 18.5}, {20, 15}, {30, 9}});
    withPower[1].power = Power::si(900);
    withPower[2].power = Power::si(1167);
    const auto other = PumpCurve::make(withPower).value();
    EXPECT_NEAR(other.efficiency(perHour(20))->si(), 998.2 * 9.80665 * 20 / 3600 * 15 / 1167, 1e-12);
    EXPECT_NEAR(other.shaftPower(perHour(20), Density::si(998.2 / 2))->si(), 1167 / 2.0, 1e-9);
    EXPECT_FALSE(other.shaftPower(perHour(5), glycol));
    EXPECT_FALSE(other.efficiency(perHour(25)));
}

TEST(PumpCurve, saysWhatIsWrongWithATable) {
    const auto sentence = [](std::vector<PumpPoint> points) {
        return base::english(PumpCurve::make(std::move(points)).fault());
    };
    EXPECT_EQ(sentence(rows({{0, 20}})), "points of the pump curve: 1; give at least two of falling head");
    EXPECT_EQ(
        sentence(rows({{0, 20}, {10, 21}, {20, 15}})),
        "the head rises from 20 m to 21 m between 0 m3/h and 10 m3/h; check these points, the duty is not "
        "unique on "
        "a rising curve");
    EXPECT_EQ(
        sentence(rows({{0, 20}, {10, 20}, {20, 15}})),
        "the head stays at 20 m between 0 m3/h and 10 m3/h; write one more digit or leave one of the rows "
        "out, the "
        "duty is not unique on a level curve");
    EXPECT_EQ(sentence(rows({{0, 20}, {10, 18}, {10, 17}})),
              "flow 10 m3/h stands twice in the pump curve; keep one row");
    EXPECT_EQ(sentence(rows({{-1, 20}, {10, 18}})),
              "the pump curve has flow -1 m3/h with head 20 m; neither may be below zero, correct this row");
    auto points = rows({{0, 20}, {10, 18}});
    points[1].efficiency = Ratio::si(70);
    EXPECT_EQ(sentence(points),
              "the efficiency at 10 m3/h is 7000 %; it must lie between 0 and 100 %, correct this row");
    points = rows({{0, 20}, {10, 18}});
    points[0].power = Power::si(0);
    EXPECT_EQ(sentence(points), "the power at 0 m3/h is 0 kW; it must be above 0, correct this row");
    points = rows({{0, 20}, {10, 18}});
    points[0].npshRequired = Head::si(-2);
    EXPECT_EQ(sentence(points),
              "the NPSH required at 0 m3/h is -2 m; it must not be below zero, correct this row");
}

TEST(PumpCurve, doubtsASharpBend) {
    EXPECT_TRUE(curveOf({{0, 20}, {10, 18.5}, {20, 15}, {30, 9}}).doubts().empty());
    const auto doubts = curveOf({{0, 20}, {10, 19.8}, {20, 15}, {30, 14.9}}).doubts();
    ASSERT_EQ(doubts.size(), 2u);
    EXPECT_EQ(base::english(doubts[0]),
              "the pump curve bends sharply at 10 m3/h (its slope changes by a factor of 24); check this "
              "point for a "
              "slip");
    EXPECT_TRUE(doubts[1].is(kPumpKinked));
}

TEST(PumpCurve, aPumpAtRestIsABrokenContract) {
    const auto curve = curveOf({{0, 20}, {10, 18.5}});
    EXPECT_THROW((void)curve.head(perHour(1), {.speedFraction = 0}), base::ContractBreach);
    EXPECT_THROW((void)curve.head(perHour(1), {.diameterFraction = -1}), base::ContractBreach);
}

/// 2 to 12 points; steps of flow and of head differ by up to twenty times.
PumpCurve randomCurve(std::mt19937& random) {
    std::uniform_int_distribution<int> count(2, 12);
    std::uniform_real_distribution<double> step(0.05, 1.0);
    std::vector<PumpPoint> points(static_cast<std::size_t>(count(random)));
    double flow = step(random) > 0.5 ? 0 : step(random);
    double head = 30;
    for (PumpPoint& point : points) {
        point.flow = perHour(flow);
        point.head = m(head);
        flow += 3 * step(random);
        head -= 2 * step(random);
    }
    return PumpCurve::make(points).value();
}

TEST(PumpCurve, fallsEverywhereAndNeverOvershoots) {
    std::mt19937 random(1700);
    for (int i = 0; i < 500; ++i) {
        const auto curve = randomCurve(random);
        for (std::size_t k = 1; k < curve.points().size(); ++k) {
            const PumpPoint& left = curve.points()[k - 1];
            const PumpPoint& right = curve.points()[k];
            double before = left.head.si() + 1e-12;
            for (int part = 0; part <= 40; ++part) {
                const VolumeFlow flow = left.flow + (right.flow - left.flow) * (part / 40.0);
                const double now = curve.head(flow).si();
                ASSERT_LT(now, before) << "curve " << i;
                ASSERT_GE(now, right.head.si() - 1e-12) << "curve " << i;
                ASSERT_LT(curve.headSlope(flow), 0) << "curve " << i;
                before = now;
            }
        }
    }
}

TEST(PumpCurve, flowAtHeadIsTheInverseOfHead) {
    std::mt19937 random(1701);
    std::uniform_real_distribution<double> anywhere(0, 1.3);
    for (int i = 0; i < 500; ++i) {
        const auto curve = randomCurve(random);
        const PumpState state{0.5 + 0.5 * anywhere(random), 0.9};
        for (int k = 0; k < 20; ++k) {
            const VolumeFlow flow = curve.lastFlow(state) * anywhere(random);
            const auto back = curve.flowAtHead(curve.head(flow, state), state);
            ASSERT_TRUE(back) << "curve " << i;
            EXPECT_NEAR(*back / curve.lastFlow(state), flow / curve.lastFlow(state), 1e-10) << "curve " << i;
        }
    }
}

TEST(PumpCurve, headSlopeIsTheDerivative) {
    std::mt19937 random(1702);
    std::uniform_real_distribution<double> anywhere(0.01, 0.99);
    const PumpState state{0.85, 0.95};
    for (int i = 0; i < 500; ++i) {
        const auto curve = randomCurve(random);
        for (std::size_t k = 1; k < curve.points().size(); ++k) {
            const VolumeFlow left = curve.points()[k - 1].flow * (0.85 * 0.95);
            const VolumeFlow span = curve.points()[k].flow * (0.85 * 0.95) - left;
            const VolumeFlow flow = left + span * anywhere(random);
            const VolumeFlow step = span * 1e-5;
            const double difference =
                (curve.head(flow + step, state) - curve.head(flow - step, state)).si() / (2 * step.si());
            EXPECT_NEAR(curve.headSlope(flow, state), difference, 1e-5 * (1 + std::abs(difference)))
                << "curve " << i;
        }
    }
}

}  // namespace
}  // namespace ww::curve
