#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSignalSpy>
#include <QStackedWidget>

#include "tests/ui/support/pump_rig.h"
#include "ui/charts/chart_view.h"
#include "ui/places/pump/pump_place.h"
#include "ui/places/report/report_place.h"

namespace ww::ui {
namespace {

using support::Rig;
using support::textsOf;

template <class Place>
void showAt(Place& place, QSize size) {
    place.setTokens(theme::tokens(theme::Display::Daylight));
    place.resize(size);
    place.show();
    for (int i = 0; i < 3; ++i) {
        QApplication::processEvents();
    }
}

/// Widgets that reach over their parent's edge, or labels that need more room than they have.
int clippedIn(const QWidget& root) {
    int clipped = 0;
    for (const QWidget* child : root.findChildren<QWidget*>()) {
        const auto* label = qobject_cast<const QLabel*>(child);
        if (label != nullptr && label->isVisibleTo(&root) && label->wordWrap() &&
            label->heightForWidth(label->width()) > label->height() + 1) {
            ADD_FAILURE() << "clipped: " << label->text().toStdString();
            ++clipped;
        }
    }
    return clipped;
}

TEST(PumpPlace, saysWhatToDoWhileThereIsNothing) {
    Rig rig;
    PumpPlace place(rig.bridge, rig.pumps, rig.rounds);
    showAt(place, {1254, 606});
    EXPECT_TRUE(textsOf(place).contains("No workbook is open"));
    support::DemoOptions options;
    options.hasPump = false;
    options.hasRounds = false;
    rig.open(support::demoProject(options));
    ASSERT_TRUE(rig.waitForPumps());
    EXPECT_TRUE(textsOf(place).contains("Enter two points of the pump's curve"));
}

TEST(PumpPlace, showsDutyProposalAndIndexCheck) {
    Rig rig;
    rig.open(support::demoProject());
    PumpPlace place(rig.bridge, rig.pumps, rig.rounds);
    showAt(place, {1254, 606});
    ASSERT_TRUE(rig.waitForPumps());
    const QString texts = textsOf(place);
    EXPECT_TRUE(texts.contains("T6 at 4.0 of 4.0")) << texts.toStdString();
    EXPECT_TRUE(texts.contains("Q design")) << texts.toStdString();
    EXPECT_TRUE(texts.contains("qualified people")) << texts.toStdString();
    EXPECT_EQ(clippedIn(place), 0);
}

/// The charts of a page that can be seen.
int chartsInSight(const QWidget& page) {
    int count = 0;
    for (const charts::ChartView* chart : page.findChildren<charts::ChartView*>()) {
        count += chart->isVisible() ? 1 : 0;
    }
    return count;
}

TEST(PumpPlace, theCurvesSayThatTheyAreBeingComputed) {
    Rig rig;
    rig.open(support::demoProject());
    PumpPlace place(rig.bridge, rig.pumps, rig.rounds);
    showAt(place, {1254, 606});
    ASSERT_TRUE(rig.waitForPumps());
    PumpPage& curves = *place.page(PumpPlace::Curves);
    EXPECT_FALSE(textsOf(curves).contains("The pumps are being computed."));
    EXPECT_GT(chartsInSight(curves), 0);
    curves.show(nullptr);
    EXPECT_TRUE(textsOf(curves).contains("The pumps are being computed."));
    EXPECT_EQ(chartsInSight(curves), 0) << "nothing of another job beside it";
    curves.show(rig.pumps.picture().get());
    EXPECT_FALSE(textsOf(curves).contains("The pumps are being computed."));
    EXPECT_GT(chartsInSight(curves), 0);
}

TEST(PumpPlace, theCurvesTakeTheRoundsThatWereJudged) {
    Rig rig;
    rig.open(support::demoProject());
    std::vector<const balancing::Assessment*> judged;
    for (const project::Round& round : rig.bridge.project().rounds()) {
        judged.push_back(&rig.rounds.of(round.id));
    }
    PumpPlace place(rig.bridge, rig.pumps, rig.rounds);
    showAt(place, {1254, 606});
    ASSERT_TRUE(rig.waitForPumps());
    EXPECT_TRUE(textsOf(place).contains("T6 at 4.0 of 4.0"));
    for (std::size_t i = 0; i < judged.size(); ++i) {
        EXPECT_EQ(&rig.rounds.of(rig.bridge.project().rounds()[i].id), judged[i]) << "kept, not judged anew";
    }
}

TEST(PumpPlace, chartTurnsIntoItsTable) {
    Rig rig;
    rig.open(support::demoProject());
    PumpPlace place(rig.bridge, rig.pumps, rig.rounds);
    showAt(place, {1254, 606});
    ASSERT_TRUE(rig.waitForPumps());
    const auto views = place.page(PumpPlace::Curves)->findChildren<charts::ChartView*>();
    ASSERT_EQ(views.size(), 2);
    place.toggleTable();
    EXPECT_TRUE(views[0]->isTableShown() != views[1]->isTableShown());
}

TEST(ReportPlace, listsPagesAndChecks) {
    Rig rig;
    rig.open(support::demoProject());
    ReportPlace place(rig.bridge);
    showAt(place, {1254, 606});
    const auto* list = place.findChild<QListWidget*>();
    ASSERT_NE(list, nullptr);
    EXPECT_GE(list->count(), 5);
    const QString texts = textsOf(place);
    EXPECT_TRUE(texts.contains("All 6 terminals were read in the last round")) << texts.toStdString();
    EXPECT_TRUE(texts.contains("The index circuit is known and fully open")) << texts.toStdString();
    EXPECT_EQ(clippedIn(place), 0);
}

TEST(ReportPlace, aMissingRoundLeadsToTheWalk) {
    Rig rig;
    support::DemoOptions options;
    options.hasRounds = false;
    rig.open(support::demoProject(options));
    ReportPlace place(rig.bridge);
    showAt(place, {1254, 606});
    QSignalSpy wanted(place.ready(), &ReadyList::placeWanted);
    for (QPushButton* button : place.findChildren<QPushButton*>()) {
        if (button->text() == "To Walk") {
            button->click();
        }
    }
    ASSERT_EQ(wanted.size(), 1);
    EXPECT_EQ(wanted[0][0].value<ReadyList::Target>(), ReadyList::Target::Walk);
}

TEST(ReportPlace, exportsTwiceTheSameBytes) {
    Rig rig;
    rig.open(support::demoProject());
    ReportPlace place(rig.bridge);
    showAt(place, {1254, 606});
    ASSERT_TRUE(place.exportTo(rig.folder.file("a.pdf")).ok());
    EXPECT_TRUE(textsOf(place).contains("Written: "));
    rig.clock.advance(std::chrono::hours(5));
    ASSERT_TRUE(place.exportTo(rig.folder.file("b.pdf")).ok());
    EXPECT_EQ(rig.folder.read("a.pdf"), rig.folder.read("b.pdf"));
    EXPECT_FALSE(place.exportTo(rig.folder.path() / "no" / "c.pdf").ok());
    EXPECT_TRUE(textsOf(place).contains("choose a folder"));
}

}  // namespace
}  // namespace ww::ui
