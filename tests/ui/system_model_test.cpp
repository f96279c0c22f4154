// The table of branches shows the design of today, whatever the last round is judged by. Own cases.
#include "ui/models/system_model.h"

#include <gtest/gtest.h>

#include "tests/support/counting_ids.h"
#include "tests/support/fixed_clock.h"
#include "tests/support/temporary_folder.h"
#include "tests/support/walk_job.h"

namespace ww::ui {
namespace {

TEST(SystemModel, showsTheDesignOfTodayAfterARoundIsClosed) {
    support::TemporaryFolder folder;
    support::FixedClock clock{"2026-03-05T09:00:00Z"};
    support::CountingIds ids{100000};
    WorkbookBridge bridge{Desk{clock, ids, "A. Fields", "LT-1"}};
    ASSERT_TRUE(
        bridge.create(QString::fromStdString(folder.file("job.wwj")), support::walkJob({.terminals = 6}))
            .ok());
    SystemModel model(bridge);
    const auto cell = [&](const char* tag, SystemModel::Column column) {
        const int row = model.rowOf(bridge.project().branchTagged(tag)->id);
        return model.index(row, column).data().toString().replace(QChar(0xA0), ' ');
    };
    const QString share = cell("B-01", SystemModel::TargetShare);
    project::Branch zone = *bridge.project().branchTagged("B-01");
    zone.id = bridge.newId();
    zone.tag = "Z-01";
    zone.designFlow =
        quantity::measured<quantity::VolumeFlow>(*base::Decimal::parse("8"), zone.designFlow->unit);
    const QString riser = cell("R1", SystemModel::Design);
    ASSERT_TRUE(bridge.apply({"zone", {zone}, {}, true}).ok());
    EXPECT_FALSE(bridge.assessment().branches[bridge.project().branches().indexOf(zone.id)].isInLoop);
    EXPECT_NE(cell("R1", SystemModel::Design), riser);
    EXPECT_NE(cell("B-01", SystemModel::TargetShare), share);
    EXPECT_NE(cell("Z-01", SystemModel::TargetShare), "0.0");
    ASSERT_TRUE(bridge.undo().ok());
    EXPECT_EQ(cell("R1", SystemModel::Design), riser);
    EXPECT_EQ(cell("B-01", SystemModel::TargetShare), share);
}

}  // namespace
}  // namespace ww::ui
