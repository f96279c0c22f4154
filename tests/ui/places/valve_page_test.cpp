// Valve tables typed and pasted: what stands in the job after each key, and one step back for each. Points
// from the valve of tests/support/walk_job.h; the rest is this program's own.
#include "ui/places/system/valve_page.h"

#include <gtest/gtest.h>

#include <QClipboard>
#include <QDialog>
#include <QLabel>
#include <QPushButton>
#include <QTimer>

#include "tests/support/demo_project.h"
#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/pump_rig.h"
#include "ui/job_files.h"
#include "ui/places/system/system_place.h"

namespace ww::ui {
namespace {

class ValvePages : public testing::Test {
  protected:
    void SetUp() override {
        const base::Outcome made = m_rig.bridge.create(QString::fromStdString(m_rig.folder.file("new.wwj")),
                                                       emptyJob(m_rig.bridge.newId(), "New"));
        ASSERT_TRUE(made.ok()) << base::english(made.fault());
        m_place.resize(1200, 600);
        m_place.show();
        m_place.activateWindow();
        QTest::qWait(0);
        m_place.showValves(true);
    }
    void type(const QString& text) {
        QTest::keyClicks(QApplication::focusWidget(), text);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    }
    /// Each key where the one before left the keys, then Enter.
    static void enter(const QString& text) {
        for (const QChar c : text) {
            QTest::keyClick(QApplication::focusWidget(), c.toLatin1());
        }
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    }
    const project::Project& job() { return m_rig.bridge.project(); }

    support::Rig m_rig;
    SystemPlace m_place{m_rig.bridge};
    ValvePage& m_page = *m_place.valves();
};

TEST_F(ValvePages, aBlankJobTakesAWholeTableByTheKeyboard) {
    ASSERT_TRUE(m_page.addValve());
    for (const char* text : {"V", "25", "turns", "Kv", "3 kPa", "100 kPa", "5"}) {
        type(text);
    }
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    m_page.points()->table()->setFocus();
    m_page.points()->table()->beginEdit(m_page.points()->model()->index(0, 0));
    for (const char* text : {"1", "2.10", "2.5", "5.00", "4", "8.70"}) {
        type(text);
    }
    ASSERT_EQ(job().valves().size(), 1U);
    const project::ValveModel& valve = job().valves()[0];
    EXPECT_EQ(valve.model, "V");
    EXPECT_EQ(valve.size, "25");
    EXPECT_EQ(valve.coefficientUnit, quantity::Unit::Kv);
    EXPECT_EQ(valve.minimumDp->text(), "3 kPa");
    EXPECT_EQ(valve.accuracy->text(), "5 %");
    ASSERT_EQ(valve.rows.size(), 3U);
    EXPECT_EQ(valve.rows[1].coefficient.text(), "5.00");
    EXPECT_EQ(m_page.chart()->figure().lines.size(), 1U);
    ASSERT_TRUE(m_rig.bridge.undo().ok());
    EXPECT_EQ(job().valves()[0].rows.size(), 2U);
}

TEST_F(ValvePages, enterGoesThroughAPointAndOnToTheNext) {
    ASSERT_TRUE(m_page.addValve());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    EntryTable& points = *m_page.points()->table();
    points.setFocus();
    points.setCurrentIndex(points.model()->index(0, 0));
    for (const char* text : {"1", "2.10", "2.5", "5.00", "4", "8.70"}) {
        enter(text);
    }
    const auto& rows = job().valves()[0].rows;
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(rows[1].setting.text(), "2.5");
    EXPECT_EQ(rows[1].coefficient.text(), "5.00");
    EXPECT_EQ(points.currentIndex(), points.model()->index(3, 0)) << "a new row";
    QTest::keyClick(&points, Qt::Key_Return, Qt::ShiftModifier);
    EXPECT_EQ(points.currentIndex(), points.model()->index(2, 1));
}

TEST_F(ValvePages, aPointThatIsBegunIsToldAndStaysWithItsModel) {
    ASSERT_TRUE(m_page.addValve());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    QString told;
    QObject::connect(&m_rig.bridge, &WorkbookBridge::messageRaised,
                     [&](const base::Fault& fault) { told = QString::fromStdString(base::english(fault)); });
    EntryTable& points = *m_page.points()->table();
    points.setFocus();
    points.setCurrentIndex(points.model()->index(0, 1));
    enter("5.0");
    EXPECT_TRUE(told.contains("Cv or Kv 5.0")) << told.toStdString();
    EXPECT_TRUE(told.contains("no Setting")) << told.toStdString();
    EXPECT_EQ(points.currentIndex(), points.model()->index(0, 0)) << "what is missing";
    told.clear();
    m_page.models()->setFocus();
    EXPECT_TRUE(told.contains("no Setting")) << told.toStdString();
    ASSERT_TRUE(m_page.addValve());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    EXPECT_EQ(points.model()->index(0, 1).data().toString(), "");
    m_page.models()->setCurrentIndex(m_page.models()->model()->index(0, 0));
    EXPECT_EQ(points.model()->index(0, 1).data().toString(), "5.0");
}

TEST_F(ValvePages, nothingThereIsSaidAndNotRemoved) {
    auto* removal = m_page.points()->findChild<QPushButton*>();
    // Words stand in the place of the drawing, none below it.
    const auto isSaid = [&](const char* words) {
        int seen = 0;
        for (const QLabel* label : m_page.chart()->findChildren<QLabel*>()) {
            seen += label->isVisible() ? 1 : 0;
        }
        const auto* empty = m_page.chart()->findChild<QLabel*>("empty_state");
        return seen == 1 && empty->isVisible() && empty->text().contains(words);
    };
    QTest::qWait(10);
    EXPECT_TRUE(isSaid("No valve model"));
    EXPECT_FALSE(removal->isEnabled());
    ASSERT_TRUE(m_page.addValve());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    EXPECT_TRUE(isSaid("No points yet"));
    m_page.points()->table()->setFocus();
    EXPECT_FALSE(removal->isEnabled());
    EXPECT_TRUE(removal->toolTip().contains("no row")) << removal->toolTip().toStdString();
    ASSERT_TRUE(m_page.pastePoints("1\t2\n4\t8\n"));
    EXPECT_FALSE(isSaid("fully open")) << "the sentence stands below the drawing";
    m_page.points()->table()->setCurrentIndex(m_page.points()->model()->index(1, 0));
    EXPECT_TRUE(removal->isEnabled());
    removal->click();
    EXPECT_EQ(job().valves()[0].rows.size(), 1U);
}

TEST_F(ValvePages, twoPastedColumnsAreOneStep) {
    ASSERT_TRUE(m_page.addValve());
    ASSERT_TRUE(m_page.pastePoints("turns\tKv\r\n1\t2,10\r\n2.5\t5.0\r\n4\t8.7\r\n"));
    ASSERT_EQ(job().valves()[0].rows.size(), 3U);
    EXPECT_EQ(job().valves()[0].rows[0].coefficient.text(), "2.10");
    QString told;
    QObject::connect(&m_rig.bridge, &WorkbookBridge::messageRaised,
                     [&](const base::Fault& fault) { told = QString::fromStdString(base::english(fault)); });
    EXPECT_FALSE(m_page.pastePoints("1\t5\n2\t3\n"));
    EXPECT_TRUE(told.startsWith("nothing was pasted: ")) << told.toStdString();
    EXPECT_TRUE(told.contains("falls from 5 to 3")) << told.toStdString();
    EXPECT_FALSE(m_page.pastePoints("1\t5\n2\tx\n"));
    EXPECT_TRUE(told.contains("line 2")) << told.toStdString();
    EXPECT_FALSE(m_page.pastePoints("1\n2\n"));
    EXPECT_EQ(job().valves()[0].rows.size(), 3U);
    ASSERT_TRUE(m_rig.bridge.undo().ok());
    EXPECT_TRUE(job().valves()[0].rows.empty());
}

TEST_F(ValvePages, whatCannotBeIsRefused) {
    ASSERT_TRUE(m_page.addValve());
    RecordTableModel* model = qobject_cast<RecordTableModel*>(m_page.models()->model());
    ASSERT_NE(model, nullptr);
    EXPECT_FALSE(model->store(model->index(0, 0), "").ok());
    EXPECT_FALSE(model->store(model->index(0, 3), "Xv").ok());
    ASSERT_TRUE(model->store(model->index(0, 4), "10 kPa").ok());
    EXPECT_FALSE(model->store(model->index(0, 5), "9 kPa").ok());
    EXPECT_EQ(m_page.chart()->figure().sentence.contains("range of dp"), true);
}

TEST_F(ValvePages, aModelThatABranchHasStays) {
    ASSERT_TRUE(m_page.addValve());
    ASSERT_TRUE(m_page.pastePoints("1\t2\n4\t8\n"));
    project::Branch branch;
    branch.id = m_rig.bridge.newId();
    branch.tag = "T1";
    branch.kind = project::BranchKind::Manual;
    branch.valve = job().valves()[0].id;
    branch.designFlow =
        quantity::measured<quantity::VolumeFlow>(*base::Decimal::parse("1"), quantity::Unit::LitrePerSecond);
    ASSERT_TRUE(m_rig.bridge.apply({"branch", {branch}, {}, true}).ok());
    EXPECT_FALSE(m_page.removeValve());
    EXPECT_EQ(job().valves().size(), 1U);
    ASSERT_TRUE(m_rig.bridge.undo().ok());
    EXPECT_TRUE(m_page.removeValve());
    EXPECT_EQ(job().valves().size(), 0U);
}

/// Presses Ctrl+V in a window, closes the import it opens, and returns the title of that.
QString pastedInto(support::DeskWindow& desk, const QString& text) {
    QApplication::clipboard()->setText(text);
    QString title;
    QTimer::singleShot(0, &desk.window, [&title] {
        if (auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget())) {
            title = dialog->windowTitle();
            dialog->reject();
        }
    });
    desk.key(Qt::Key_V, Qt::ControlModifier);
    desk.window.activateWindow();
    QTest::qWait(10);
    return title;
}

TEST(PasteIntoSystem, opensTheRowsThatThePageTakes) {
    support::DeskWindow desk;
    desk.window.showPlace(MainWindow::System);
    EXPECT_NE(pastedInto(desk, "tag\tparent\nZ1\t\n"), "") << "branches";
    desk.key(Qt::Key_V, Qt::ControlModifier | Qt::AltModifier);
    EXPECT_NE(pastedInto(desk, "model\tsize\nV\t25\n"), "") << "valve models";
}

TEST(PasteIntoSystem, takesTheFirstBranchesOfAnEmptyJob) {
    support::CountingIds ids(5'000'000);
    support::DeskWindow desk(emptyJob(ids.next(), "New"), false);
    desk.window.showPlace(MainWindow::System);
    EXPECT_NE(pastedInto(desk, "tag\tparent\nZ1\t\n"), "");
}

TEST(PasteIntoSystem, putsPointsInTheTableThatHasTheKeys) {
    support::DeskWindow desk;
    desk.window.showPlace(MainWindow::System);
    desk.key(Qt::Key_V, Qt::ControlModifier | Qt::AltModifier);
    auto* page = desk.window.findChild<ValvePage*>();
    ASSERT_NE(page, nullptr);
    page->points()->table()->setFocus();
    EXPECT_EQ(pastedInto(desk, "1\t2\n4\t8\n"), "");
    EXPECT_EQ(desk.project().valves()[0].rows.size(), 2U);
}

TEST(CopyFromTables, takesTheCellInHand) {
    support::DeskWindow desk;
    desk.window.showPlace(MainWindow::System);
    auto* table = desk.window.findChild<SystemPlace*>()->table();
    table->setCurrentIndex(table->model()->index(1, SystemModel::Tag));
    table->setFocus();
    desk.key(Qt::Key_C, Qt::ControlModifier);
    EXPECT_EQ(QApplication::clipboard()->text(), table->currentIndex().data().toString());
}

}  // namespace
}  // namespace ww::ui
