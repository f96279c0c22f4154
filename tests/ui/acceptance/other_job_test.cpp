// A window goes over from one job to another, whatever page is shown: nothing of the one before is drawn or
// told of the next. The rule is this project's own.
#include <gtest/gtest.h>

#include "core/exchange/job_folder.h"
#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/each_page.h"

namespace ww::ui {
namespace {

using support::DeskWindow;

project::Edit sampleJob(const std::string& name) {
    support::CountingIds ids;
    return exchange::readJobFolder(std::string(WW_SOURCE_DIR "/sample_projects/") + name, ids).edit;
}

/// Lets everything that is computed beside the screen end.
void settle(DeskWindow& desk) {
    EXPECT_TRUE(QTest::qWaitFor([&] { return !desk.window.advisor().isComputing(); }, 20'000));
    QTest::qWait(0);
}

/// Jobs of many branches, devices and pumps, and of few; of one that was never read nothing is learned.
std::vector<project::Edit> jobsInTurn() {
    support::WalkJobOptions few;
    few.terminals = 2;
    support::WalkJobOptions unread;
    unread.terminals = 3;
    unread.hasSurvey = false;
    const project::Edit many = sampleJob("clinic_cooling");
    return {support::walkJob(few), many, support::walkJob(unread), many};
}

TEST(OtherJob, takesThePlaceOfTheOneBeforeOnEveryPage) {
    int pages = 0;
    DeskWindow first(sampleJob("clinic_cooling"), false);
    support::eachPage(first.window, [&](const QString&) { ++pages; });
    for (int wanted = 0; wanted < pages; ++wanted) {
        DeskWindow desk(sampleJob("clinic_cooling"), false);
        int page = 0;
        support::eachPage(desk.window, [&](const QString& name) {
            if (page++ != wanted) {
                return;
            }
            SCOPED_TRACE(name.toStdString());
            settle(desk);
            int files = 0;
            for (const project::Edit& job : jobsInTurn()) {
                const std::string file = desk.folder.file("job" + std::to_string(files++) + ".wwj");
                ASSERT_TRUE(desk.bridge().create(QString::fromStdString(file), job).ok());
                settle(desk);
            }
            desk.bridge().close();
            settle(desk);
        });
    }
}

}  // namespace
}  // namespace ww::ui
