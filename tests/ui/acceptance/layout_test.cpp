// Where everything stands at the sizes, scales, displays, text sizes and languages that the program is made
// for.
#include <gtest/gtest.h>

#include <tuple>

#include "tests/ui/support/screens.h"
#include "tests/ui/support/spoken.h"

namespace ww::ui {
namespace {

using support::DeskWindow;

class Layout : public testing::TestWithParam<std::tuple<support::Screen, const char*>> {};

TEST_P(Layout, nothingIsCutOutsideItsFrameOrScrolledSideways) {
    const auto& [screen, language] = GetParam();
    const support::Spoken spoken(language);
    support::ScreenWindow shown(screen);
    for (const theme::Display display : support::kDisplays) {
        ASSERT_TRUE(shown.show(display)) << "the window does not fit";
        const QString faults = shown.faults();
        EXPECT_TRUE(faults.isEmpty()) << theme::name(display).toStdString() << faults.toStdString();
    }
}

TEST(TextSize, isThatOfTheDisplayFromTheStart) {
    DeskWindow desk;
    EXPECT_DOUBLE_EQ(desk.grid().font().pointSizeF(), 10.0);
    desk.window.setDisplay(theme::Display::Daylight);
    EXPECT_DOUBLE_EQ(desk.grid().font().pointSizeF(), 11.0);
    desk.window.setDisplay(theme::Display::Office);
    EXPECT_DOUBLE_EQ(desk.grid().font().pointSizeF(), 10.0);
}

INSTANTIATE_TEST_SUITE_P(Screens, Layout,
                         testing::Combine(testing::ValuesIn(support::kScreens),
                                          testing::Values("en", "de", "es", "fr")),
                         [](const auto& info) {
                             return std::string(std::get<0>(info.param).name) + '_' + std::get<1>(info.param);
                         });

}  // namespace
}  // namespace ww::ui
