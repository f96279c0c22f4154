// Where everything stands at the sizes, scales, displays, text sizes and languages that the program is made
// for. The sizes are those of two common laptop screens (1366 x 768 and 1920 x 1080) divided by the scale of
// the desktop, less a title bar and, at full scale, a panel.
#include <gtest/gtest.h>

#include "core/exchange/job_folder.h"
#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/each_page.h"
#include "tests/ui/support/layout_faults.h"
#include "tests/ui/support/spoken.h"

namespace ww::ui {
namespace {

using support::DeskWindow;

struct Screen {
    const char* name;
    int width;
    int height;
    double textPoints;
    bool hasLargeTargets;
    const char* language;
};

class Layout : public testing::TestWithParam<Screen> {
  protected:
    /// Faults of every page of every place in the display that is shown.
    static QString faultsOf(DeskWindow& desk) {
        QString all;
        support::eachPage(desk.window, [&](const QString& page) {
            for (const QString& fault : support::settledFaults(desk.window)) {
                all += QString("\n%1: %2").arg(page, fault);
            }
        });
        return all;
    }
};

TEST_P(Layout, nothingIsCutOutsideItsFrameOrScrolledSideways) {
    const Screen& screen = GetParam();
    const support::Spoken spoken(screen.language);
    support::CountingIds ids;
    const exchange::ImportPlan job =
        exchange::readJobFolder(WW_SOURCE_DIR "/sample_projects/clinic_cooling", ids);
    ASSERT_TRUE(job.isAcceptable());
    DeskWindow desk(job.edit, false);
    desk.window.setTextPoints(screen.textPoints);
    if (screen.hasLargeTargets) {
        desk.window.commands().largeTargets->trigger();
    }
    // Dark differs from Office in its colors alone.
    for (const auto display : {theme::Display::Office, theme::Display::Daylight}) {
        desk.window.setDisplay(display);
        const QSize size(screen.width, screen.height);
        desk.window.resize(size);
        // A window manager takes its time.
        ASSERT_TRUE(QTest::qWaitFor([&] { return desk.window.size() == size; }, 3000))
            << "the window does not fit";
        QTest::qWait(50);
        const QString faults = faultsOf(desk);
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

std::vector<Screen> screens() {
    std::vector<Screen> all;
    for (const char* language : {"en", "de", "es", "fr"}) {
        all.insert(all.end(), {{"laptop", 1366, 694, 10.0, false, language},
                               {"laptopAt125Percent", 1093, 577, 10.0, false, language},
                               {"laptopAt150Percent", 911, 482, 10.0, false, language},
                               {"laptopAt200Percent", 683, 354, 10.0, false, language},
                               {"deskAt200Percent", 960, 510, 10.0, false, language},
                               {"laptopAt14Points", 1366, 694, 14.0, false, language},
                               {"laptopWithLargeTargets", 1366, 694, 10.0, true, language}});
    }
    return all;
}

INSTANTIATE_TEST_SUITE_P(Screens, Layout, testing::ValuesIn(screens()), [](const auto& info) {
    return std::string(info.param.name) + '_' + info.param.language;
});

}  // namespace
}  // namespace ww::ui
