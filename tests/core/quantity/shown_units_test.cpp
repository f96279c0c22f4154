// How computed heads are written. Own cases.
#include "core/quantity/shown_units.h"

#include <gtest/gtest.h>

namespace ww::quantity {
namespace {

TEST(HeadDigits, areThoseOfTheUnitForEveryValue) {
    EXPECT_EQ(headDigits(Head::from(0.0373, Unit::Metre), Unit::Metre), "0.04");
    EXPECT_EQ(headDigits(Head::from(1.25, Unit::Metre), Unit::Metre), "1.25");
    EXPECT_EQ(headDigits(Head::from(12.7, Unit::Metre), Unit::Metre), "12.70");
    EXPECT_EQ(headDigits(Head::from(0.0373, Unit::Foot), Unit::Foot), "0.0");
    EXPECT_EQ(headDigits(Head::from(41.25, Unit::Foot), Unit::Foot).size(), 4U);
    EXPECT_EQ(headDigits(Head::from(-0.001, Unit::Metre), Unit::Metre), "0.00") << "no sign of nothing";
    EXPECT_EQ(headDigits(Head::from(-0.5, Unit::Metre), Unit::Metre), "-0.50");
}

TEST(HeadDigits, standWithTheirUnitInASentence) {
    ShownUnits units;
    EXPECT_EQ(units.written(Head::from(2.446, Unit::Metre)), "2.45 m");
    units.head = Unit::Foot;
    EXPECT_EQ(units.written(Head::from(33.46, Unit::Foot)), "33.5 ft");
}

}  // namespace
}  // namespace ww::quantity
