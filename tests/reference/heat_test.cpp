// Heat carried by water, from the density and the heat capacity that the fluid gives.

#include <gtest/gtest.h>

#include <cmath>

#include "core/fluid/fluid.h"

namespace ww::fluid {
namespace {

using quantity::Ratio;
using quantity::Unit;
using quantity::VolumeFlow;

constexpr double kWattsPerBtuHour = 0.29307107;  // International Table Btu (NIST SP 811)

Fluid water(double temperature, Unit unit) {
    return Fluid::make(FluidKind::Water, Ratio::si(0), Temperature::from(temperature, unit)).value();
}

double heat_W(const Fluid& fluid, double flow_gpm, double difference_F) {
    return VolumeFlow::from(flow_gpm, Unit::GallonPerMinute).si() * fluid.density().si() *
           fluid.specificHeat().si() * difference_F / 1.8;
}

TEST(Heat, fiftyGallonsByTenDegrees) {
    // The trade's factor of 500: 50 gpm and 10 F carry 250,000 Btu/h, 73.27 kW; with IAPWS-IF97 at 60 F
    // 250,200 Btu/h.
    const double found_W = heat_W(water(60, Unit::Fahrenheit), 50, 10);
    EXPECT_NEAR(found_W / kWattsPerBtuHour, 250200, 200);
    EXPECT_NEAR(found_W / 1000, 73.27, 0.1);
}

TEST(Heat, aCoilOfAnArticle) {
    // Public article on the temperature difference of coils: 0.191 L/s between 82 and 71 C at 4.2 kJ/(kg K)
    // and 1 kg/L is 8.82 kW; hot water is 2.6 % lighter.
    const Fluid hot = water(76.5, Unit::Celsius);
    const double found_W = 0.191e-3 * hot.density().si() * hot.specificHeat().si() * 11;
    EXPECT_NEAR(found_W / 1000, 8.82 * 0.974, 0.03);
    EXPECT_NEAR(0.191 * 4.2 * 11, 8.82, 0.005);
}

TEST(Heat, theCapacityOfHotWater) {
    // Hundy, Trott and Welch, an air heater on water at 85/74 C: cp 4.187 kJ/(kg K); IAPWS-IF97 says 0.2 %
    // more.
    EXPECT_NEAR(water(79.5, Unit::Celsius).specificHeat().si(), 4187, 0.003 * 4187);
}

TEST(Heat, flowForAnAirHandler) {
    // Computed: 4000 cfm of air raised by 40 F (factor 1.08) on 20 F of water (factor 500): 17.28 gpm; the
    // heat of that flow with the fluid's own figures is that of the air within 0.2 %.
    const double air_W = 1.08 * 4000 * 40 * kWattsPerBtuHour;
    EXPECT_NEAR(heat_W(water(60, Unit::Fahrenheit), 17.28, 20) / air_W, 1, 0.002);
}

TEST(Heat, whatTheThermometersLeaveOpen) {
    // Computed: two sensors of 0.5 F each leave a flow taken from 20 F open by 3.54 %, from 10 F by 7.07 %.
    const double both_F = std::hypot(0.5, 0.5);
    EXPECT_NEAR(both_F / 20, 0.0354, 0.00005);
    EXPECT_NEAR(both_F / 10, 0.0707, 0.00005);
}

TEST(Heat, primaryAndSecondaryMix) {
    // Computed: 1000 gpm of primary at 44 F, secondary 800 gpm returning at 56 F: the primary returns at 53.6
    // F; with 800 and 1000 gpm the secondary is supplied at 46.4 F. The heat that the loads take is that of
    // both ways.
    const Fluid cold = water(50, Unit::Fahrenheit);
    EXPECT_NEAR(heat_W(cold, 1000, 53.6 - 44), heat_W(cold, 800, 56 - 44), 1e-6);
    EXPECT_NEAR(heat_W(cold, 800, 56 - 44), heat_W(cold, 1000, 56 - 46.4), 1e-6);
}

}  // namespace
}  // namespace ww::fluid
