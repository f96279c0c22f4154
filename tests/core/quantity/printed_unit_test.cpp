// Units with the signs of print. Own cases.
#include "core/quantity/printed_unit.h"

#include <gtest/gtest.h>

namespace ww::quantity {
namespace {

TEST(PrintedUnit, hasTheSignsOfPrint) {
    EXPECT_EQ(printed(Unit::CubicMetrePerHour), "m³/h");
    EXPECT_EQ(printed(Unit::CubicMetrePerSecond), "m³/s");
    EXPECT_EQ(printed(Unit::InchOfWater), "inH₂O");
    EXPECT_EQ(printed(Unit::MillimetreOfWater), "mmH₂O");
    EXPECT_EQ(printed(Unit::FootOfWater), "ftH₂O");
    EXPECT_EQ(printed(Unit::Celsius), "°C");
    EXPECT_EQ(printed(Unit::Fahrenheit), "°F");
}

TEST(PrintedUnit, isTheSymbolForAnyOther) {
    EXPECT_EQ(printed(Unit::Kelvin), "K");
    EXPECT_EQ(printed(Unit::Metre), "m");
    EXPECT_EQ(printed(Unit::Percent), "%");
}

}  // namespace
}  // namespace ww::quantity
