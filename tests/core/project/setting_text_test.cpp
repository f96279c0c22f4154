// How settings are written. Source: own decision; scales are read to a tenth of a turn or a whole degree or
// percent (common practice).
#include "core/project/setting_text.h"

#include <gtest/gtest.h>

namespace ww::project {
namespace {

std::string written(Scale scale, double setting) {
    return writtenSetting(scale, quantity::Setting::si(setting)).text();
}

TEST(SettingText, hasTheDecimalsOfTheScale) {
    EXPECT_EQ(written(Scale::Turns, 4), "4.0");
    EXPECT_EQ(written(Scale::Turns, 2.5), "2.5");
    EXPECT_EQ(written(Scale::Turns, 0), "0.0");
    EXPECT_EQ(written(Scale::Degrees, 45), "45");
    EXPECT_EQ(written(Scale::Percent, 100), "100");
}

TEST(SettingText, hasMoreWhereItStandsBetweenTwoMarks) {
    EXPECT_EQ(written(Scale::Turns, 2.35), "2.35");
    EXPECT_EQ(written(Scale::Turns, 3.639), "3.639");
    EXPECT_EQ(written(Scale::Turns, 7.0 / 3.0), "2.333");
    EXPECT_EQ(written(Scale::Degrees, 22.5), "22.5");
    EXPECT_EQ(written(Scale::Turns, 0.1 + 0.2), "0.3") << "the noise of computing is no place on a scale";
}

}  // namespace
}  // namespace ww::project
