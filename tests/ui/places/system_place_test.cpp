// What the place System offers beside its table: the zoom of the diagram, its key, and the way to a valve
// that has no table.
#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>

#include "tests/ui/support/desk_window.h"
#include "ui/places/system/system_place.h"
#include "ui/text/format.h"

namespace ww::ui {
namespace {

using support::DeskWindow;

QPushButton* buttonNamed(const QWidget& place, const QString& name) {
    for (QPushButton* button : place.findChildren<QPushButton*>()) {
        if (button->accessibleName() == name) {
            return button;
        }
    }
    return nullptr;
}

TEST(SystemPlace, buttonsZoomTheDiagramAndFitIt) {
    DeskWindow desk;
    desk.window.showPlace(MainWindow::System);
    QTest::qWait(0);
    SystemPlace& place = *desk.window.system();
    const auto zoom = [&] { return place.diagram()->transform().m11(); };
    const double fitted = zoom();
    QPushButton* larger = buttonNamed(place, "Show the diagram larger");
    QPushButton* smaller = buttonNamed(place, "Show the diagram smaller");
    QPushButton* fit = buttonNamed(place, "Fit the whole loop into the diagram");
    ASSERT_TRUE(larger != nullptr && smaller != nullptr && fit != nullptr);
    larger->click();
    EXPECT_NEAR(zoom(), 1.25 * fitted, 1e-9);
    smaller->setFocus();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    EXPECT_NEAR(zoom(), fitted, 1e-9);
    larger->click();
    fit->click();
    EXPECT_NEAR(zoom(), fitted, 1e-9);
    EXPECT_TRUE(place.key()->isVisible());
    place.toggleTable();
    EXPECT_FALSE(larger->isVisible()) << "nothing to zoom where the table stands alone";
    EXPECT_FALSE(place.key()->isVisible());
}

// The sums are those of the rows above them, also where the last round was closed before a branch came.
TEST(SystemPlace, theSumsAreOfTheDesignAsItStands) {
    support::DeskWindow desk({.terminals = 3}, false);
    desk.window.showPlace(MainWindow::System);
    const auto* place = desk.window.findChild<SystemPlace*>();
    ASSERT_NE(place, nullptr);
    const project::Branch before = *desk.project().branchTagged("B-01");
    project::Branch added = before;
    added.id = desk.ids.next();
    added.tag = "B-99";
    ASSERT_TRUE(desk.bridge().apply({"branch", {added}, {}, true}).ok());
    quantity::VolumeFlow total;
    for (const std::size_t terminal : desk.project().tree().terminals()) {
        total += project::designFlows(desk.project())[terminal];
    }
    bool isTold = false;
    for (const QLabel* label : place->findChildren<QLabel*>()) {
        const QString words = label->text();
        isTold = isTold || (words.contains("4 terminals") && words.contains("<b>100.0 %</b>") &&
                            words.contains("<b>" + text::flow(total, desk.project())));
    }
    EXPECT_TRUE(isTold);
}

TEST(SystemPlace, showGoesToTheFirstTerminalWithoutAValveTable) {
    DeskWindow desk;
    desk.window.showPlace(MainWindow::System);
    QTest::qWait(0);
    SystemPlace& place = *desk.window.system();
    QPushButton* show = buttonNamed(place, "Show the first terminal without a valve table");
    ASSERT_NE(show, nullptr);
    EXPECT_FALSE(show->isVisible()) << "every terminal has its table";
    for (const char* tag : {"B-07", "B-03"}) {
        project::Branch branch = *desk.window.bridge().project().branchTagged(tag);
        branch.valve.reset();
        project::Edit edit;
        edit.label = "valve";
        edit.put.emplace_back(branch);
        ASSERT_TRUE(desk.window.bridge().apply(edit).ok());
    }
    QTest::qWait(0);
    ASSERT_TRUE(show->isVisible());
    show->setFocus();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    EXPECT_EQ(desk.window.bridge().selectedBranch(), desk.window.bridge().project().branchTagged("B-03")->id);
    EXPECT_EQ(QApplication::focusWidget(), place.table());
    const QModelIndex cell = place.table()->currentIndex();
    EXPECT_EQ(cell.siblingAtColumn(SystemModel::Tag).data().toString(), "B-03");
    EXPECT_EQ(cell.column(), int(SystemModel::Valve));
}

TEST(SystemPlace, noBranchIsAddedBesideATextThatIsRefused) {
    DeskWindow desk;
    desk.window.showPlace(MainWindow::System);
    QTest::qWait(0);
    SystemPlace& place = *desk.window.system();
    const std::size_t before = desk.project().branches().size();
    const QModelIndex cell = place.table()->model()->index(0, SystemModel::Design);
    place.table()->setFocus();
    const QString wrong = "2.6 apples";
    place.table()->beginEdit(cell, &wrong);
    desk.key(Qt::Key_A, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(desk.project().branches().size(), before);
    EXPECT_EQ(place.table()->editedCell(), cell);
    EXPECT_TRUE(place.table()->editor()->hasFocus());
    EXPECT_TRUE(desk.window.notice().contains("apples")) << desk.window.notice().toStdString();
    // The letters of the walk are taken here too.
    place.table()->editor()->setText("2.6m");
    EXPECT_TRUE(place.table()->commitEdit()) << desk.window.notice().toStdString();
    EXPECT_TRUE(cell.data().toString().startsWith("2.6")) << cell.data().toString().toStdString();
    desk.key(Qt::Key_A, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(desk.project().branches().size(), before + 1);
}

TEST(SystemPlace, theRestOfABlindTextDoesNotReplaceWhatWaitsToBeMended) {
    DeskWindow desk;
    desk.window.showPlace(MainWindow::System);
    QTest::qWait(0);
    EntryTable& table = *desk.window.system()->table();
    const QModelIndex refused = table.model()->index(0, SystemModel::Design);
    const QModelIndex other = table.model()->index(1, SystemModel::Design);
    const QString before = other.data().toString();
    const QString wrong = "2.6 apples";
    table.setFocus();
    table.beginEdit(refused, &wrong);
    ASSERT_FALSE(table.commitEdit());
    QString first = "4";
    table.beginEdit(other, &first);  // as the first key of "4000" does it
    QTest::keyClicks(table.editor(), "000");
    EXPECT_EQ(table.editedCell(), refused);
    EXPECT_EQ(table.currentIndex(), refused) << "what is typed into is the cell that is shown as current";
    EXPECT_EQ(table.editor()->text(), "2.6 apples000");
    EXPECT_FALSE(table.commitEdit());
    EXPECT_EQ(other.data().toString(), before);
    table.cancelEdit();
}

}  // namespace
}  // namespace ww::ui
