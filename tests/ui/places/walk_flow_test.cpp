// A walk past a branch whose valve has no table: its flow is typed, measured otherwise. The source of these
// checks is the interaction design of this project.
#include <gtest/gtest.h>

#include <QClipboard>

#include "tests/ui/support/desk_window.h"
#include "ui/history_dialog.h"

namespace ww::ui {
namespace {

using support::DeskWindow;

/// Six terminals, B-02 without a valve; its flow was read in the survey.
project::Edit jobWithoutTable() {
    project::Edit content = support::walkJob({.terminals = 6});
    base::Id bare;
    for (project::AnyRecord& record : content.put) {
        auto* branch = std::get_if<project::Branch>(&record);
        if (branch != nullptr && branch->tag == "B-02") {
            branch->valve.reset();
            branch->setting.reset();
            branch->kind = project::BranchKind::None;
            bare = branch->id;
        }
    }
    for (project::AnyRecord& record : content.put) {
        auto* reading = std::get_if<project::Reading>(&record);
        if (reading != nullptr && reading->branch == bare) {
            reading->dp.reset();
            reading->setting.reset();
            reading->flow = quantity::measured<quantity::VolumeFlow>(*base::Decimal::parse("1.50"),
                                                                     quantity::Unit::CubicMetrePerHour);
        }
    }
    return content;
}

struct FlowDesk : DeskWindow {
    FlowDesk() : DeskWindow(jobWithoutTable(), true) {}

    base::Id bare() { return project().branchTagged("B-02")->id; }
    const project::Reading* reading() {
        return balancing::countingReading(project(), project().lastRound()->id, bare());
    }
    std::string flow() {
        const project::Reading* counting = reading();
        return counting != nullptr && counting->flow ? counting->flow->text() : "";
    }
    QString shown(int column) { return model().index(1, column).data().toString(); }
};

TEST(WalkFlow, isTypedWhereTheValveHasNoTable) {
    FlowDesk desk;
    desk.enter("20.1");
    EXPECT_EQ(desk.currentTag(), "B-02");
    EXPECT_EQ(desk.currentColumn(), WalkModel::Flow);
    desk.enter("1.62");
    EXPECT_EQ(desk.flow(), "1.62 m3/h");
    EXPECT_EQ(desk.stored("B-02"), "") << "no dp";
    EXPECT_EQ(desk.shown(WalkModel::Flow), "1.62");
    EXPECT_EQ(desk.shown(WalkModel::Dp), "");
    EXPECT_FALSE(desk.shown(WalkModel::OfTarget).isEmpty());
    EXPECT_EQ(desk.currentTag(), "B-03");
    EXPECT_EQ(desk.currentColumn(), WalkModel::Dp);
    EXPECT_FALSE(desk.reading()->instrument) << "the dp meter in hand did not read it";
    EXPECT_TRUE(
        desk.model().index(1, WalkModel::Flow).data(Qt::AccessibleTextRole).toString().contains("1.62"));
    desk.key(Qt::Key_Return, Qt::ShiftModifier);
    EXPECT_EQ(desk.currentColumn(), WalkModel::Flow);
    EXPECT_EQ(DeskWindow::dialogCount(), 0);
}

TEST(WalkFlow, keepsTheUnitThatWasTypedAndRefusesAPressure) {
    FlowDesk desk;
    desk.grid().goToRow(1, false);
    desk.enter("0.45l");
    EXPECT_EQ(desk.flow(), "0.45 L/s");
    EXPECT_EQ(desk.shown(WalkModel::Flow), "1.62") << "in the unit of the column";
    EXPECT_EQ(desk.model().index(1, WalkModel::Flow).data(Qt::EditRole).toString(), "0.45 L/s");
    desk.grid().goToRow(1, false);
    desk.enter("20 kPa");
    EXPECT_TRUE(desk.grid().isEditing());
    desk.key(Qt::Key_Escape);
    EXPECT_EQ(desk.flow(), "0.45 L/s");
}

TEST(WalkFlow, isUndoneByNameAndShownInTheHistory) {
    FlowDesk desk;
    desk.grid().goToRow(1, false);
    desk.enter("1.62");
    EXPECT_EQ(desk.bridge().workbook()->journal().back().label, "flow 1.62 m3/h, B-02");
    desk.grid().goToRow(1, false);
    desk.enter("1.70");
    EXPECT_EQ(desk.flow(), "1.70 m3/h");
    HistoryDialog dialog(desk.bridge(), desk.bare());
    EXPECT_TRUE(dialog.values()->row(0).cells.join(' ').contains("1.70"));
    ASSERT_TRUE(desk.bridge().undo().ok());
    EXPECT_EQ(desk.flow(), "1.62 m3/h");
    ASSERT_TRUE(desk.bridge().undo().ok());
    EXPECT_EQ(desk.flow(), "");
}

TEST(WalkFlow, thatCannotBeReadIsMarkedLikeADp) {
    FlowDesk desk;
    desk.grid().goToRow(1, false);
    desk.enter("x");
    ASSERT_NE(desk.reading(), nullptr);
    EXPECT_TRUE(desk.reading()->cannotBeRead);
    EXPECT_EQ(desk.shown(WalkModel::Flow), "not readable");
    EXPECT_EQ(desk.currentTag(), "B-03");
}

TEST(WalkFlow, aPastedColumnTakesItInItsTurn) {
    FlowDesk desk;
    QApplication::clipboard()->setText("20.1\n1.62\n22.3");
    desk.grid().goToRow(0, false);
    desk.window.walk()->paste();
    EXPECT_EQ(desk.stored("B-01"), "20.1 kPa");
    EXPECT_EQ(desk.flow(), "1.62 m3/h");
    EXPECT_EQ(desk.stored("B-03"), "22.3 kPa");
}

TEST(WalkFlow, isTypedOnTheCardOfOneValveToo) {
    FlowDesk desk;
    desk.window.resize(683, 384);
    QTest::qWait(0);
    ASSERT_TRUE(desk.window.walk()->isCard());
    desk.grid().goToRow(1, false);
    desk.window.walk()->takeFocus();
    desk.enter("1.62");
    EXPECT_EQ(desk.flow(), "1.62 m3/h");
    EXPECT_EQ(desk.currentTag(), "B-03");
    desk.enter("20.1");
    EXPECT_EQ(desk.stored("B-03"), "20.1 kPa");
}

TEST(WalkFlow, saysThatTheMethodIsMissingUntilItIsNoted) {
    FlowDesk desk;
    QString told;
    QObject::connect(&desk.bridge(), &WorkbookBridge::messageRaised, &desk.window,
                     [&](const base::Fault& fault) { told = QString::fromUtf8(fault.code().data()); });
    desk.grid().goToRow(1, false);
    desk.enter("1.62");
    EXPECT_EQ(told, "flow_without_method");
    ASSERT_TRUE(desk.bridge().setNote(desk.bare(), "by ultrasound").ok());
    told.clear();
    desk.grid().goToRow(1, false);
    desk.enter("1.63");
    EXPECT_EQ(told, "") << "the note goes on with the correction";
}

}  // namespace
}  // namespace ww::ui
