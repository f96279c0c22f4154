#include "core/quantity/unit.h"

#include <gtest/gtest.h>

#include <set>
#include <string>

#include "core/quantity/quantity.h"

namespace ww::quantity {
namespace {

/// Writes a number in a unit into the quantity of its dimension and reads it back.
double thereAndBack(double number, Unit unit) {
    switch (dimension(unit)) {
        case Dimension::Flow:
            return VolumeFlow::from(number, unit).in(unit);
        case Dimension::Pressure:
            return PressureDifference::from(number, unit).in(unit);
        case Dimension::Length:
            return Head::from(number, unit).in(unit);
        case Dimension::FlowCoefficient:
            return FlowCoefficient::from(number, unit).in(unit);
        case Dimension::Temperature:
            return Temperature::from(number, unit).in(unit);
        case Dimension::Power:
            return Power::from(number, unit).in(unit);
        case Dimension::RotationalSpeed:
            return RotationalSpeed::from(number, unit).in(unit);
        case Dimension::Voltage:
            return Voltage::from(number, unit).in(unit);
        case Dimension::Current:
            return Current::from(number, unit).in(unit);
        case Dimension::Fraction:
            return Ratio::from(number, unit).in(unit);
        case Dimension::Duration:
            return Duration::from(number, unit).in(unit);
        case Dimension::Scale:
            return Setting::from(number, unit).in(unit);
    }
    return 0;
}

TEST(Unit, everyUnitComesBackAsItWent) {
    for (const UnitRow& unit : unitTable()) {
        for (const double number : {-40.0, 0.0, 0.001, 1.0, 52.7, 123456.0}) {
            // A temperature passes through an offset of some hundred kelvin, which costs it a digit or two.
            const double tolerance = 1e-15 * std::max(std::abs(number), unit.offset) * 8;
            EXPECT_NEAR(thereAndBack(number, unit.unit), number, tolerance) << unit.symbol;
        }
    }
}

TEST(Unit, everyRowHasASymbolOfItsOwnAndASource) {
    std::set<std::pair<Dimension, std::string>> seen;
    for (const UnitRow& unit : unitTable()) {
        EXPECT_FALSE(unit.symbol.empty());
        EXPECT_FALSE(unit.source.empty()) << unit.symbol;
        EXPECT_GT(unit.factor, 0) << unit.symbol;
        EXPECT_TRUE(seen.insert({unit.dimension, std::string(unit.symbol)}).second) << unit.symbol;
        EXPECT_EQ(unitFromSymbol(unit.symbol, unit.dimension), unit.unit) << unit.symbol;
        EXPECT_EQ(row(unit.unit).symbol, unit.symbol);
    }
}

TEST(Unit, symbolsAreReadInAnyCase) {
    EXPECT_EQ(unitFromSymbol("GPM", Dimension::Flow), Unit::GallonPerMinute);
    EXPECT_EQ(unitFromSymbol("inh2o", Dimension::Pressure), Unit::InchOfWater);
    EXPECT_EQ(unitFromSymbol("KPA", Dimension::Pressure), Unit::Kilopascal);
    EXPECT_FALSE(unitFromSymbol("kPa", Dimension::Flow));
    EXPECT_FALSE(unitFromSymbol("", Dimension::Flow));
    EXPECT_FALSE(unitFromSymbol("gp", Dimension::Flow));
}

TEST(Quantity, refusesAUnitOfAnotherKind) {
    EXPECT_THROW((void)VolumeFlow::from(1, Unit::Psi), base::ContractBreach);
    EXPECT_THROW((void)PressureDifference::from(1, Unit::Foot), base::ContractBreach);
    EXPECT_THROW((void)Temperature::from(1, Unit::Bar), base::ContractBreach);
    EXPECT_THROW((void)Temperature().in(Unit::Metre), base::ContractBreach);
}

TEST(Quantity, pointsOfTemperatureAndPressureSubtractToDifferences) {
    const TemperatureDifference rise =
        Temperature::from(82, Unit::Celsius) - Temperature::from(71, Unit::Celsius);
    EXPECT_NEAR(rise.in(Unit::Celsius), 11, 1e-12);
    EXPECT_NEAR(rise.in(Unit::Fahrenheit), 19.8, 1e-12);
    const PressureDifference made = GaugePressure::from(70, Unit::Psi) - GaugePressure::from(30, Unit::Psi);
    EXPECT_NEAR(made.in(Unit::Psi), 40, 1e-12);
    EXPECT_DOUBLE_EQ((GaugePressure::si(100) + PressureDifference::si(20)).si(), 120);
    EXPECT_DOUBLE_EQ((AbsolutePressure::si(100) - PressureDifference::si(20)).si(), 80);
}

// p = rho g h, standard gravity 9.80665 m/s2 (CGPM 1901): 10 m of 1000 kg/m3 are 98.0665 kPa.
TEST(Quantity, headsAndPressuresMeetInTheDensity) {
    EXPECT_DOUBLE_EQ(pressureOf(Head::si(10), Density::si(1000)).in(Unit::Kilopascal), 98.0665);
    EXPECT_DOUBLE_EQ(headOf(PressureDifference::si(98066.5), Density::si(1000)).si(), 10);
    EXPECT_DOUBLE_EQ(headOf(PressureDifference::si(98066.5), Density::si(500)).si(), 20);
}

}  // namespace
}  // namespace ww::quantity
