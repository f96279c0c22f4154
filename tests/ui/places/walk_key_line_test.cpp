// The line of keys below the place Walk names what acts at the moment. The source of these checks is the
// interaction design of this project.
#include <gtest/gtest.h>

#include <QLabel>

#include "tests/ui/support/desk_window.h"
#include "ui/places/walk/walk_place.h"

namespace ww::ui {
namespace {

using support::DeskWindow;

TEST(WalkPlace, theKeyLineNamesTheKeysOfThePanelThatIsOpen) {
    DeskWindow desk;
    EXPECT_TRUE(desk.keyLine().contains("next valve"));
    desk.window.walk()->beginClosing();
    QTest::qWait(0);  // the line follows what has the keys
    EXPECT_FALSE(desk.keyLine().contains("reason"))
        << "nothing is typed yet: " << desk.keyLine().toStdString();
    EXPECT_TRUE(desk.keyLine().contains("Esc back to the grid")) << desk.keyLine().toStdString();
    EXPECT_FALSE(desk.keyLine().contains("next valve"));
    desk.type("blocked");
    QTest::qWait(0);
    EXPECT_TRUE(desk.keyLine().contains("Enter stores the reason")) << desk.keyLine().toStdString();
}

TEST(WalkPlace, theKeyLineOffersOnlyWhatActs) {
    const auto says = [](const DeskWindow& desk, const char* words) {
        return desk.keyLine().contains(words);
    };
    DeskWindow fresh({.hasSurvey = false}, false);
    EXPECT_TRUE(says(fresh, "Ctrl+Shift+N opens round 1")) << fresh.keyLine().toStdString();
    EXPECT_FALSE(says(fresh, "digits")) << fresh.keyLine().toStdString();
    DeskWindow closed(support::WalkJobOptions{}, false);
    EXPECT_TRUE(says(closed, "opens the next round")) << closed.keyLine().toStdString();
    EXPECT_TRUE(says(closed, "correct the reading")) << closed.keyLine().toStdString();
    EXPECT_FALSE(says(closed, "cannot read")) << closed.keyLine().toStdString();
    DeskWindow open;
    EXPECT_TRUE(says(open, "next valve"));
    EXPECT_FALSE(says(open, "Ctrl+R")) << "nothing is read here yet: " << open.keyLine().toStdString();
    EXPECT_FALSE(says(open, "Ctrl+L")) << "no practice job: " << open.keyLine().toStdString();
    open.enter("20.0");
    open.key(Qt::Key_Return, Qt::ShiftModifier);
    EXPECT_TRUE(says(open, "Ctrl+R")) << open.keyLine().toStdString();
    EXPECT_TRUE(says(open, "Ctrl+Z"));
    open.bridge().close();
    EXPECT_TRUE(says(open, "Ctrl+O")) << open.keyLine().toStdString();
    EXPECT_FALSE(says(open, "Ctrl+Z") || says(open, "Ctrl+J")) << open.keyLine().toStdString();
}

TEST(WalkPlace, theKeyLineClosesTheRoundOnceNothingIsOpen) {
    DeskWindow desk({.terminals = 3});
    for (const std::string& reading : support::walkReadings(desk.project())) {
        desk.enter(QString::fromStdString(reading));
    }
    desk.window.walk()->beginClosing();
    QTest::qWait(0);
    EXPECT_TRUE(desk.keyLine().contains("Enter closes the round")) << desk.keyLine().toStdString();
    EXPECT_FALSE(desk.keyLine().contains("reason")) << desk.keyLine().toStdString();
}

}  // namespace
}  // namespace ww::ui
