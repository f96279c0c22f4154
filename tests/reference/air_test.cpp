// Air in solution against IAPWS G7-04 and handbook values.

#include "core/energy/air_in_water.h"

#include <gtest/gtest.h>

#include <cmath>

namespace ww::energy {
namespace {

using quantity::Unit;

/// mL of air at 0 C and 1 atm a litre of water.
double airAt(double temperature_C, double gauge_kPa) {
    const auto held = airHeld(AbsolutePressure::from(101.325 + gauge_kPa, Unit::Kilopascal),
                              Temperature::from(temperature_C, Unit::Celsius));
    EXPECT_TRUE(held.ok());
    return held.ok() ? 1000 * held->si() : 0;
}

TEST(AirInWater, henryConstants) {
    // IAPWS G7-04, table 3: ln(k_H / 1 GPa) at 300 K: nitrogen 2.1716, oxygen 1.5024.
    EXPECT_NEAR(henryLogRatio(Gas::Nitrogen, Temperature::si(300))->si(), 2.1716, 0.0003);
    EXPECT_NEAR(henryLogRatio(Gas::Oxygen, Temperature::si(300))->si(), 1.5024, 0.0003);
}

TEST(AirInWater, tableOfSolubility) {
    // Computed with another program of IAPWS G7-04 and IF97.
    struct Case {
        double temperature_C;
        double gauge_kPa;
        double air_mL;
    };
    for (const Case& one : {Case{10, 0, 22.8}, Case{10, 600, 159.5}, Case{20, 0, 18.8}, Case{50, 300, 52.0},
                            Case{80, 200, 29.7}, Case{90, 0, 3.6}, Case{90, 600, 73.3}}) {
        EXPECT_NEAR(airAt(one.temperature_C, one.gauge_kPa), one.air_mL, 0.06)
            << one.temperature_C << " C, " << one.gauge_kPa << " kPa";
    }
}

TEST(AirInWater, handbook) {
    // CRC Handbook of Chemistry and Physics, from memory: air at 1 atm: 18.7 mL/L at 20 C, 15.6 at 30 C.
    EXPECT_NEAR(airAt(20, 0), 18.7, 0.03 * 18.7);
    EXPECT_NEAR(airAt(30, 0), 15.6, 0.03 * 15.6);
}

TEST(AirInWater, boilingWaterHoldsNone) {
    EXPECT_EQ(airHeld(AbsolutePressure::si(90000), Temperature::from(100, Unit::Celsius))->si(), 0);
    EXPECT_FALSE(airHeld(AbsolutePressure::si(101325), Temperature::from(-5, Unit::Celsius)).ok());
}

}  // namespace
}  // namespace ww::energy
