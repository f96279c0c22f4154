// What a person sees and keeps where the disk takes nothing more. The source of these checks is the
// interaction design of this project. tests/faults/full_disk_test.sh runs them again on a disk of four
// megabytes.
#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <cstdlib>
#include <optional>
#include <utility>

#include "tests/support/full_disk.h"
#include "tests/support/temporary_folder.h"
#include "tests/ui/support/desk_window.h"

namespace ww::ui {
namespace {

using support::DeskWindow;
using support::FullDisk;
using support::TemporaryFolder;

/// A folder of a disk that has room, beside the small one.
const char* otherDisk() {
    return std::getenv("WW_OTHER_DISK");
}

// A full disk stands for any file that takes nothing more.
TEST(FullDisk, whatCouldNotBeStoredGoesAlongWhenACopyIsSavedElsewhere) {
    DeskWindow desk({.terminals = 6});
    const base::Id second = desk.project().branchTagged("B-02")->id;
    auto* button = desk.window.findChild<QPushButton*>("save_elsewhere");
    ASSERT_NE(button, nullptr);
    EXPECT_FALSE(button->isVisible());
    std::optional<FullDisk> full(std::in_place, 4096);
    desk.key(Qt::Key_Home, Qt::ControlModifier);
    desk.enter("20.1");
    EXPECT_TRUE(button->isVisible());
    EXPECT_FALSE(desk.bridge().storeDp(second, "30.2").ok());
    if (FullDisk::small() == nullptr) {
        full.reset();  // The limit is one of every disk.
    }
    ASSERT_TRUE(desk.bridge().notStored().has_value());
    EXPECT_TRUE(desk.window.notice().contains("only in memory")) << desk.window.notice().toStdString();
    EXPECT_TRUE(desk.window.notice().contains("Save a Copy Elsewhere"));
    bool isInStrip = false;
    for (const QLabel* label : desk.window.findChildren<QLabel*>()) {
        isInStrip =
            isInStrip || (label->accessibleName() == "Stored" && label->text().startsWith("Not stored"));
    }
    EXPECT_TRUE(isInStrip);
    const TemporaryFolder elsewhere(FullDisk::small() == nullptr ? std::filesystem::temp_directory_path()
                                                                 : std::filesystem::path(otherDisk()));
    ASSERT_TRUE(desk.bridge().goOnIn(QString::fromStdString(elsewhere.file("copy.wwj"))).ok());
    EXPECT_EQ(desk.bridge().file().toStdString(), elsewhere.file("copy.wwj"));
    EXPECT_EQ(desk.stored("B-01"), "20.1 kPa");
    EXPECT_EQ(desk.stored("B-02"), "30.2 kPa");
    EXPECT_FALSE(desk.bridge().notStored().has_value());
    EXPECT_TRUE(workbook::verify(elsewhere.file("copy.wwj"))->isIntact);
}

TEST(FullDisk, whereRoomIsMadeAgainEnterStores) {
    DeskWindow desk({.terminals = 3});
    desk.key(Qt::Key_Home, Qt::ControlModifier);
    {
        const FullDisk full(4096);
        desk.enter("20.1");
        EXPECT_TRUE(desk.bridge().notStored().has_value());
        EXPECT_EQ(desk.storedCount(), 0);
    }
    // What was typed stands in its cell.
    desk.key(Qt::Key_Return);
    EXPECT_EQ(desk.stored("B-01"), "20.1 kPa");
    desk.enter("30.2");
    EXPECT_EQ(desk.stored("B-02"), "30.2 kPa");
    EXPECT_FALSE(desk.bridge().notStored().has_value());
    EXPECT_TRUE(workbook::verify(desk.bridge().file().toStdString())->isIntact);
}

}  // namespace
}  // namespace ww::ui
