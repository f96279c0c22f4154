#include "core/fluid/fluid.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/fluid/glycol_polynomial.h"

namespace ww::fluid {
namespace {

using quantity::Unit;

Temperature celsius(double number) {
    return Temperature::from(number, Unit::Celsius);
}

Ratio percent(double number) {
    return Ratio::from(number, Unit::Percent);
}

TEST(Fluid, isWaterAt20CelsiusUnlessSaidOtherwise) {
    const Fluid fluid;
    EXPECT_EQ(fluid.kind(), FluidKind::Water);
    EXPECT_DOUBLE_EQ(fluid.temperature().in(Unit::Celsius), 20);
    // IAPWS-IF97 at 0.3 MPa and 293.15 K, to the digits of a usual table.
    EXPECT_NEAR(fluid.density().si(), 998.30, 0.005);
    EXPECT_DOUBLE_EQ(fluid.freezingPoint().in(Unit::Celsius), 0);
}

TEST(Fluid, kinematicViscosityIsDynamicOverDensity) {
    const Fluid fluid;
    EXPECT_DOUBLE_EQ(fluid.kinematicViscosity().si(), fluid.viscosity().si() / fluid.density().si());
}

TEST(Fluid, headAndPressureAreEachOthersInverse) {
    const Fluid fluid = *Fluid::make(FluidKind::PropyleneGlycol, percent(30), celsius(40));
    const Head head = Head::si(12.5);
    EXPECT_DOUBLE_EQ(fluid.head(fluid.pressure(head)).si(), head.si());
    // p = rho g h, by definition; standard gravity 9.80665 m/s2 (CGPM 1901).
    EXPECT_DOUBLE_EQ(fluid.pressure(head).si(), fluid.density().si() * 9.80665 * 12.5);
}

TEST(Fluid, refusesTemperaturesOutsideTheFormulation) {
    for (const double temperature : {-0.1, 150.1, std::nan("")}) {
        const auto water = Fluid::make(FluidKind::Water, Ratio(), celsius(temperature));
        ASSERT_FALSE(water.ok()) << temperature;
        EXPECT_TRUE(water.fault().is(kFluidTemperatureOutside));
    }
    for (const double temperature : {-45.1, 100.1, std::nan("")}) {
        const auto glycol = Fluid::make(FluidKind::EthyleneGlycol, percent(60), celsius(temperature));
        ASSERT_FALSE(glycol.ok()) << temperature;
        EXPECT_TRUE(glycol.fault().is(kFluidTemperatureOutside));
    }
    EXPECT_EQ(base::english(Fluid::make(FluidKind::Water, Ratio(), celsius(160)).fault()),
              "160 C is outside the range of water, 0 C to 150 C; correct the temperature");
    quantity::ShownUnits units;
    units.temperature = Unit::Fahrenheit;
    EXPECT_EQ(base::english(Fluid::make(FluidKind::Water, Ratio(), celsius(160), units).fault()),
              "320 F is outside the range of water, 32 F to 302 F; correct the temperature");
}

TEST(Fluid, acceptsItsLimitsInAnyUnit) {
    EXPECT_TRUE(Fluid::make(FluidKind::Water, Ratio(), Temperature::from(32, Unit::Fahrenheit)).ok());
    EXPECT_TRUE(Fluid::make(FluidKind::Water, Ratio(), Temperature::from(302, Unit::Fahrenheit)).ok());
    EXPECT_TRUE(
        Fluid::make(FluidKind::EthyleneGlycol, percent(60), Temperature::from(-49, Unit::Fahrenheit)).ok());
    EXPECT_TRUE(
        Fluid::make(FluidKind::PropyleneGlycol, percent(60), Temperature::from(212, Unit::Fahrenheit)).ok());
}

TEST(Fluid, refusesConcentrationsOutsideTheFormulation) {
    for (const FluidKind kind : {FluidKind::EthyleneGlycol, FluidKind::PropyleneGlycol}) {
        EXPECT_TRUE(Fluid::make(kind, percent(61), celsius(20)).fault().is(kFluidConcentrationOutside));
        EXPECT_TRUE(Fluid::make(kind, percent(-1), celsius(20)).fault().is(kFluidConcentrationOutside));
        EXPECT_TRUE(
            Fluid::make(kind, Ratio::si(std::nan("")), celsius(20)).fault().is(kFluidConcentrationOutside));
    }
    EXPECT_EQ(base::english(Fluid::make(FluidKind::Water, percent(30), celsius(20)).fault()),
              "30 % by mass is outside the range of water, 0 to 0 %; correct the concentration");
}

TEST(Fluid, refusesAMixtureBelowItsFreezingPoint) {
    const auto frozen = Fluid::make(FluidKind::EthyleneGlycol, percent(30), celsius(-20));
    ASSERT_FALSE(frozen.ok());
    EXPECT_EQ(
        base::english(frozen.fault()),
        "-20 C is below the freezing point -14.58 C of this mixture; correct temperature or concentration");
    EXPECT_TRUE(Fluid::make(FluidKind::EthyleneGlycol, percent(30), celsius(-14)).ok());
}

// Physics: a loop must stay liquid, so density falls and vapour pressure rises without a step over the whole
// range.
TEST(Fluid, waterGoesOnSmoothlyAbove100Celsius) {
    double density = 1e9;
    double viscosity = 1e9;
    double vapour = 0;
    for (double temperature = 4; temperature <= 150; temperature += 0.5) {
        const Fluid fluid = *Fluid::make(FluidKind::Water, Ratio(), celsius(temperature));
        EXPECT_LT(fluid.density().si(), density);
        EXPECT_LT(fluid.viscosity().si(), viscosity);
        EXPECT_GT(fluid.vapourPressure().si(), vapour);
        if (temperature > 4) {
            EXPECT_LT(density - fluid.density().si(), 0.6) << temperature;
        }
        density = fluid.density().si();
        viscosity = fluid.viscosity().si();
        vapour = fluid.vapourPressure().si();
    }
}

// Physics of the mixture: more glycol is denser, thicker, carries less heat, freezes lower, boils later.
TEST(Fluid, glycolChangesEveryPropertyTheWayItMust) {
    for (const FluidKind kind : {FluidKind::EthyleneGlycol, FluidKind::PropyleneGlycol}) {
        for (double temperature = 0; temperature <= 80; temperature += 10) {
            for (double concentration = 5; concentration <= 60; concentration += 5) {
                const Fluid less = *Fluid::make(kind, percent(concentration - 5), celsius(temperature));
                const Fluid more = *Fluid::make(kind, percent(concentration), celsius(temperature));
                EXPECT_GT(more.density().si(), less.density().si());
                EXPECT_GT(more.viscosity().si(), less.viscosity().si());
                EXPECT_LT(more.specificHeat().si(), less.specificHeat().si());
                EXPECT_LT(more.freezingPoint().si(), less.freezingPoint().si());
                EXPECT_LT(more.vapourPressure().si(), less.vapourPressure().si());
            }
        }
    }
}

// Raoult's law by hand: 30 % ethylene glycol by mass is (70/18.015)/(70/18.015 + 30/62.068) = 0.88937 water
// by mole.
TEST(Fluid, waterOfAGlycolMixtureByMole) {
    EXPECT_NEAR(glycolWaterMoleFraction(Glycol::Ethylene, percent(30)).si(), 0.88937, 5e-6);
    EXPECT_DOUBLE_EQ(glycolWaterMoleFraction(Glycol::Propylene, percent(0)).si(), 1.0);
}

}  // namespace
}  // namespace ww::fluid
