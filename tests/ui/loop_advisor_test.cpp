// Learning beside the screen while readings are typed. The source of these checks is the
// interaction design of this project.
#include "ui/loop_advisor.h"

#include <gtest/gtest.h>

#include <QElapsedTimer>
#include <algorithm>

#include "tests/support/solved_job.h"
#include "tests/ui/support/desk_window.h"

namespace ww::ui {
namespace {

using support::DeskWindow;
using support::SolvedJob;

TEST(LoopAdvisor, theNewestStateWinsAndTheScreenStaysFree) {
    const SolvedJob job(60);
    DeskWindow desk(job.content(), true);
    const LoopAdvisor& advisor = desk.window.advisor();
    QElapsedTimer time;
    qint64 longest = 0;
    for (int i = 1; i <= 20; ++i) {
        time.start();
        desk.enter(QString::number(20 + i));
        QCoreApplication::processEvents();
        longest = std::max(longest, time.elapsed());
    }
    EXPECT_LT(longest, 500);
    time.start();
    while (advisor.isComputing() && time.elapsed() < 120'000) {
        QTest::qWait(5);
    }
    ASSERT_NE(advisor.picture(), nullptr);
    EXPECT_TRUE(advisor.isCurrent());
    // All that was typed is in what was learned.
    EXPECT_GE(advisor.picture()->learned.readings.size(), 80U);
    desk.bridge().close();
    EXPECT_EQ(advisor.picture(), nullptr);
}

}  // namespace
}  // namespace ww::ui
