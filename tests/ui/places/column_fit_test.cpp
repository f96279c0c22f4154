// How columns share the room of a table. The expected widths are worked by hand.
#include "ui/places/column_fit.h"

#include <gtest/gtest.h>

namespace ww::ui {
namespace {

using Widths = std::vector<int>;

TEST(ColumnFit, whatIsLeftOverGoesToTheFillingColumn) {
    EXPECT_EQ(sharedOut(Widths{20, 30}, std::vector<double>{40, 50}, 120, 1), (Widths{40, 80}));
}

TEST(ColumnFit, whereRoomIsShortEachGivesUpItsPart) {
    // Of 20 and 60 px beyond the least there is room for half.
    EXPECT_EQ(sharedOut(Widths{20, 30}, std::vector<double>{40, 90}, 90, 0), (Widths{30, 60}));
}

TEST(ColumnFit, noColumnIsNarrowerThanItsLeast) {
    EXPECT_EQ(sharedOut(Widths{20, 30}, std::vector<double>{40, 50}, 10, 0), (Widths{20, 30}));
}

}  // namespace
}  // namespace ww::ui
