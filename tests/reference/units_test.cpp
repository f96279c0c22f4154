// Conversion factors against NIST SP 811 (2008), Appendix B (from memory, checked with an independent units
// program).

#include <gtest/gtest.h>

#include "core/quantity/quantity.h"

namespace ww::quantity {
namespace {

double convert(PressureDifference dp, Unit unit) {
    return dp.in(unit);
}

PressureDifference pressure(double number, Unit unit) {
    return PressureDifference::from(number, unit);
}

PressureDifference columnOf(double number, Unit unit, double density) {
    return pressureOf(Head::from(number, unit), Density::si(density));
}

TEST(NistFactors, poundPerSquareInch) {
    EXPECT_NEAR(convert(pressure(1, Unit::Psi), Unit::Kilopascal), 6.894757, 0.5e-6);
}

TEST(NistFactors, conventionalWaterColumns) {
    EXPECT_NEAR(convert(pressure(12, Unit::InchOfWater), Unit::Kilopascal), 2.989067, 0.5e-6);
    EXPECT_NEAR(convert(pressure(1, Unit::FootOfWater), Unit::Psi), 0.4335275, 0.5e-7);
    EXPECT_NEAR(convert(pressure(1, Unit::InchOfWater), Unit::Pascal), 249.089, 0.5e-3);
    EXPECT_NEAR(convert(pressure(1, Unit::MillimetreOfWater), Unit::Pascal), 9.80665, 1e-12);
    EXPECT_NEAR(convert(pressure(1, Unit::Bar), Unit::Millibar), 1000, 1e-10);
}

// A column of a real liquid is a head times its density: water 999.972 kg/m3 at 39.2 F, 999.02 at 60 F;
// mercury 13 595.1 kg/m3 conventional, 13 595.08 at 32 F (NIST SP 811, footnotes of Appendix B.8).
TEST(NistFactors, columnsOfWaterAndMercuryAtATemperature) {
    EXPECT_NEAR(columnOf(1, Unit::Foot, 999.972).in(Unit::Kilopascal), 2.98898, 0.5e-5);
    EXPECT_NEAR(columnOf(1, Unit::Foot, 999.02).in(Unit::Kilopascal), 2.9861, 0.5e-4);
    EXPECT_NEAR(columnOf(1, Unit::Inch, 999.972).in(Unit::Pascal), 249.082, 0.5e-3);
    EXPECT_NEAR(columnOf(1, Unit::Inch, 999.02).in(Unit::Pascal), 248.84, 0.5e-2);
    EXPECT_NEAR(columnOf(1, Unit::Metre, 999.972).in(Unit::Kilopascal), 9.80638, 0.5e-5);
    EXPECT_NEAR(columnOf(1, Unit::Inch, 13595.1).in(Unit::Kilopascal), 3.386389, 0.5e-6);
    EXPECT_NEAR(columnOf(1, Unit::Inch, 13595.08).in(Unit::Kilopascal), 3.38638, 1e-5);
}

TEST(NistFactors, standardAtmosphere) {
    EXPECT_NEAR(convert(pressure(101.325, Unit::Kilopascal), Unit::Psi), 14.69595, 0.5e-5);
}

TEST(NistFactors, volumeFlow) {
    EXPECT_NEAR(VolumeFlow::from(1, Unit::GallonPerMinute).in(Unit::LitrePerSecond), 0.06309020, 0.5e-8);
    EXPECT_NEAR(VolumeFlow::from(1, Unit::GallonPerMinute).in(Unit::CubicMetrePerHour), 0.2271247, 0.5e-7);
    EXPECT_NEAR(VolumeFlow::from(1, Unit::CubicMetrePerHour).in(Unit::GallonPerMinute), 4.402868, 0.5e-6);
    EXPECT_NEAR(VolumeFlow::from(1, Unit::ImperialGallonPerMinute).in(Unit::LitrePerSecond), 0.07576817,
                0.5e-8);
    EXPECT_NEAR(VolumeFlow::from(1, Unit::CubicMetrePerSecond).in(Unit::LitrePerSecond), 1000, 1e-10);
}

TEST(NistFactors, power) {
    EXPECT_NEAR(Power::from(1, Unit::Horsepower).in(Unit::Watt), 745.6999, 0.5e-4);
}

TEST(NistFactors, temperaturePointsAndDifferences) {
    EXPECT_NEAR(TemperatureDifference::from(20, Unit::Fahrenheit).si(), 11.111, 0.5e-3);
    EXPECT_NEAR(Temperature::from(180, Unit::Fahrenheit).in(Unit::Celsius), 82.222, 0.5e-3);
    EXPECT_NEAR(Temperature::from(-40, Unit::Fahrenheit).in(Unit::Celsius), -40, 1e-12);
    EXPECT_NEAR(TemperatureDifference::from(10, Unit::Celsius).in(Unit::Fahrenheit), 18, 1e-12);
}

TEST(NistFactors, lengths) {
    EXPECT_DOUBLE_EQ(Length::from(1, Unit::Foot).si(), 0.3048);
    EXPECT_DOUBLE_EQ(Length::from(1, Unit::Inch).in(Unit::Millimetre), 25.4);
}

// 1 lb/ft3 = 16.01846 kg/m3: a fluid of that density makes a column of 144 ft at 1 psi, by the definition of
// the psi.
TEST(NistFactors, poundPerCubicFoot) {
    const Head column = headOf(pressure(1, Unit::Psi), Density::si(16.01846));
    EXPECT_NEAR(column.in(Unit::Foot), 144, 144 * 0.5e-5 / 16.01846);
}

// Common practice: 2.309 ft of 60 F water (999.0 kg/m3) per psi.
TEST(TradeFactors, feetOfWaterPerPsi) {
    EXPECT_NEAR(headOf(pressure(1, Unit::Psi), Density::si(999.0)).in(Unit::Foot), 2.309, 0.0005);
}

}  // namespace
}  // namespace ww::quantity
