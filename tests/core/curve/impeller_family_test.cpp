#include "core/curve/impeller_family.h"

#include <gtest/gtest.h>

namespace ww::curve {
namespace {

using quantity::Unit;

Length mm(double number) {
    return Length::from(number, Unit::Millimetre);
}

VolumeFlow m3h(double number) {
    return VolumeFlow::from(number, Unit::CubicMetrePerHour);
}

/// Rows of H = (D/200)^2 shutoff - 0.01 Q^2 for one diameter: a casing that obeys H ~ D^2 at shutoff.
void addRows(std::vector<PumpPoint>& points, double diameter_mm) {
    const double shutoff_m = 20 * diameter_mm * diameter_mm / 40000;
    for (const double flow_m3h : {0.0, 10.0, 20.0, 30.0}) {
        PumpPoint point;
        point.impeller = mm(diameter_mm);
        point.flow = m3h(flow_m3h);
        point.head = Head::si(shutoff_m - 0.01 * flow_m3h * flow_m3h);
        point.efficiency = Ratio::si(0.4 + 0.001 * (diameter_mm - 150) + 0.002 * flow_m3h);
        points.push_back(point);
    }
}

std::vector<PumpPoint> rowsOf(std::initializer_list<double> diameters) {
    std::vector<PumpPoint> points;
    for (const double diameter : diameters) {
        addRows(points, diameter);
    }
    return points;
}

ImpellerFamily family(std::initializer_list<double> diameters) {
    return ImpellerFamily::make(rowsOf(diameters)).value();
}

TEST(ImpellerFamily, sortsItsCurvesByDiameter) {
    const auto pump = family({200, 160, 180});
    ASSERT_EQ(pump.members().size(), 3u);
    EXPECT_EQ(pump.members()[0].diameter, mm(160));
    EXPECT_EQ(pump.members()[2].diameter, mm(200));
    EXPECT_NEAR(pump.members().back().curve.shutoffHead().si(), 20, 1e-12);
}

// By hand: between 160 mm (12.8 m) and 200 mm (20 m) sqrt(H) is linear in D, so 180 mm has 16.2 m.
TEST(ImpellerFamily, findsTheDiameterFromTheShutoffHead) {
    const auto pump = family({160, 200});
    const auto estimate = pump.diameterForShutoff(Head::si(16.2));
    EXPECT_NEAR(estimate.diameter.in(Unit::Millimetre), 180, 1e-9);
    EXPECT_FALSE(estimate.isBeyondFamily);
    EXPECT_NEAR(pump.diameterForShutoff(Head::si(20)).diameter.in(Unit::Millimetre), 200, 1e-9);
    EXPECT_FALSE(pump.diameterForShutoff(Head::si(20)).isBeyondFamily);
    EXPECT_FALSE(pump.diameterForShutoff(Head::si(12.8)).isBeyondFamily);
}

TEST(ImpellerFamily, scalesTheNearestCurveBeyondItsEnds) {
    const auto pump = family({160, 200});
    const auto small = pump.diameterForShutoff(Head::si(20 * 0.49));
    EXPECT_NEAR(small.diameter.in(Unit::Millimetre), 140, 1e-9);
    EXPECT_TRUE(small.isBeyondFamily);
    const auto single = family({200}).diameterForShutoff(Head::si(16.2));
    EXPECT_NEAR(single.diameter.in(Unit::Millimetre), 180, 1e-9);
    EXPECT_TRUE(single.isBeyondFamily);
}

TEST(ImpellerFamily, givesTheCurveOfAnyDiameter) {
    const auto pump = family({160, 200});
    const auto between = pump.curveOf(mm(180));
    EXPECT_NEAR(between.shutoffHead().si(), 16.2, 1e-9);
    EXPECT_GT(between.head(m3h(20)).si(), pump.members()[0].curve.head(m3h(20)).si());
    EXPECT_LT(between.head(m3h(20)).si(), pump.members()[1].curve.head(m3h(20)).si());
    EXPECT_NEAR(between.efficiency(m3h(0))->si(), 0.43, 1e-9);
    EXPECT_EQ(pump.curveOf(mm(160)).head(m3h(7)), pump.members()[0].curve.head(m3h(7)));
    const auto below = pump.curveOf(mm(80));
    EXPECT_NEAR(below.shutoffHead().si(), 12.8 / 4, 1e-12);
    EXPECT_NEAR(below.lastFlow().in(Unit::CubicMetrePerHour), 15, 1e-12);
}

TEST(ImpellerFamily, mixesCurvesDownToZeroHead) {
    std::vector<PumpPoint> points;
    for (const auto& [diameter, shutoff] : {std::pair{100.0, 9.0}, std::pair{120.0, 16.0}}) {
        for (const double part : {0.0, 0.5, 1.0}) {
            PumpPoint point;
            point.impeller = mm(diameter);
            point.flow = m3h(diameter / 10 * part);
            point.head = Head::si(shutoff * (1 - part * part));
            points.push_back(point);
        }
    }
    const auto curve = ImpellerFamily::make(points).value().curveOf(mm(110));
    EXPECT_NEAR(curve.shutoffHead().si(), 12.25, 1e-9);
    EXPECT_NEAR(curve.lastFlow().in(Unit::CubicMetrePerHour), 11, 1e-9);
    EXPECT_NEAR(curve.head(curve.lastFlow()).si(), 0, 1e-9);
}

TEST(ImpellerFamily, saysWhatIsWrongWithItsRows) {
    const auto sentence = [](std::vector<PumpPoint> points) {
        return base::englishWithSubject(ImpellerFamily::make(std::move(points)).fault());
    };
    EXPECT_EQ(sentence({}), "points of the pump curve: 0; give at least two of falling head");
    auto points = rowsOf({160, 200});
    points[2].impeller.reset();
    EXPECT_EQ(sentence(points),
              "the row at 20 m3/h has no impeller diameter; give one on every row of a family of curves or "
              "on none");
    points = rowsOf({160, 200});
    points[0].impeller = mm(-160);
    EXPECT_EQ(sentence(points),
              "the impeller diameter at 0 m3/h is -160 mm; it must be above 0, correct this row");
    points = rowsOf({160, 200});
    points[1].head = Head::si(14);
    EXPECT_EQ(
        sentence(points),
        "160 mm: the head rises from 12.8 m to 14 m between 0 m3/h and 10 m3/h; check these points, the "
        "duty is not "
        "unique on a rising curve");
    points = rowsOf({160, 200});
    for (PumpPoint& point : points) {
        point.impeller = mm(360) - *point.impeller;
    }
    EXPECT_EQ(sentence(points),
              "the curve of the 160 mm impeller does not lie below that of the 200 mm impeller; check the "
              "diameters "
              "of these rows");
}

}  // namespace
}  // namespace ww::curve
