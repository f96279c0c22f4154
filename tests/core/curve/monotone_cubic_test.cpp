#include "core/curve/monotone_cubic.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <random>

#include "core/base/expects.h"

namespace ww::curve {
namespace {

MonotoneCubic through(std::initializer_list<std::pair<double, double>> points) {
    std::vector<double> abscissas;
    std::vector<double> ordinates;
    for (const auto& [abscissa, ordinate] : points) {
        abscissas.push_back(abscissa);
        ordinates.push_back(ordinate);
    }
    return {abscissas, ordinates};
}

TEST(MonotoneCubic, onePointIsAConstant) {
    const auto curve = through({{2, 7}});
    EXPECT_EQ(curve.value(-3), 7);
    EXPECT_EQ(curve.value(50), 7);
    EXPECT_EQ(curve.slope(2), 0);
    EXPECT_TRUE(curve.covers(2));
    EXPECT_FALSE(curve.covers(2.1));
    EXPECT_FALSE(MonotoneCubic().covers(0));
}

TEST(MonotoneCubic, twoPointsAreAStraightLine) {
    const auto curve = through({{1, 10}, {3, 4}});
    for (const double x : {-2.0, 1.0, 1.7, 3.0, 8.0}) {
        EXPECT_NEAR(curve.value(x), 13 - 3 * x, 1e-13);
        EXPECT_NEAR(curve.slope(x), -3, 1e-14);
        EXPECT_NEAR(curve.inverse(13 - 3 * x), x, 1e-14);
    }
}

// By hand: points of y = x^2 at 1, 2, 4; every slope is the parabola's own, so the curve is the parabola.
TEST(MonotoneCubic, isExactForAParabola) {
    const auto curve = through({{1, 1}, {2, 4}, {4, 16}});
    EXPECT_NEAR(curve.value(3), 9, 1e-14);
    EXPECT_NEAR(curve.slope(3), 6, 1e-14);
    EXPECT_NEAR(curve.value(1.5), 2.25, 1e-14);
    EXPECT_NEAR(curve.inverse(9), 3, 1e-15);
    EXPECT_NEAR(curve.value(5), 16 + 8, 1e-13) << "straight on with slope 8";
    EXPECT_NEAR(curve.inverse(24), 5, 1e-14);
    EXPECT_NEAR(curve.inverse(-1), 0, 1e-14) << "straight back with slope 2";
}

// F. N. Fritsch and R. E. Carlson, SIAM J. Numer. Anal. 17 (1980) 238, Table 1: radiochemical data on which a
// cubic spline overshoots. The monotone cubic stays between neighbours.
TEST(MonotoneCubic, keepsTheRadiochemicalDataMonotone) {
    const auto curve = through({{7.99, 0},
                                {8.09, 2.76429e-5},
                                {8.19, 4.37498e-2},
                                {8.7, 0.169183},
                                {9.2, 0.469428},
                                {10, 0.943740},
                                {12, 0.998636},
                                {15, 0.999919},
                                {20, 0.999994}});
    double before = 0;
    for (double x = 7.99; x <= 20; x += 0.01) {
        EXPECT_GE(curve.value(x), before - 1e-15) << x;
        EXPECT_LE(curve.value(x), 0.999994 + 1e-15) << x;
        before = curve.value(x);
    }
}

TEST(MonotoneCubic, turnsOnlyAtAPoint) {
    const auto curve = through({{0, 0}, {1, 0.5}, {2, 0.7}, {3, 0.6}, {4, 0.2}});
    EXPECT_EQ(curve.slope(2), 0);
    for (double x = 0; x <= 4; x += 0.01) {
        EXPECT_LE(curve.value(x), 0.7 + 1e-15);
        EXPECT_GE(curve.value(x), 0);
    }
}

TEST(MonotoneCubic, aLevelPieceIsLevel) {
    const auto curve = through({{0, 0}, {1, 2}, {2, 2}, {3, 5}});
    EXPECT_EQ(curve.value(1.5), 2);
    EXPECT_EQ(curve.slope(1.5), 0);
    EXPECT_EQ(curve.inverse(2), 1);
}

TEST(MonotoneCubic, valueAndSlopeHaveNoStepAtAPoint) {
    std::mt19937 random(238);
    std::uniform_real_distribution<double> step(0.05, 1);
    for (int i = 0; i < 500; ++i) {
        std::array<double, 7> x{};
        std::array<double, 7> y{};
        for (std::size_t k = 1; k < x.size(); ++k) {
            x[k] = x[k - 1] + step(random);
            y[k] = y[k - 1] - step(random);
        }
        const MonotoneCubic curve(x, y);
        for (const double knot : x) {
            EXPECT_NEAR(curve.value(knot - 1e-9), curve.value(knot + 1e-9), 1e-7);
            EXPECT_NEAR(curve.slope(knot - 1e-9), curve.slope(knot + 1e-9), 1e-4);
        }
    }
}

TEST(MonotoneCubic, brokenContractsAreCaught) {
    EXPECT_THROW(through({}), base::ContractBreach);
    EXPECT_THROW(through({{1, 1}, {1, 2}}), base::ContractBreach);
    EXPECT_THROW(through({{2, 1}, {1, 2}}), base::ContractBreach);
    EXPECT_THROW(through({{0, 1}, {1, std::nan("")}}), base::ContractBreach);
    EXPECT_THROW((void)MonotoneCubic().value(1), base::ContractBreach);
}

}  // namespace
}  // namespace ww::curve
