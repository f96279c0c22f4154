// What is in sight on the pages of the place Pump: columns that have room, words that are not cut, the scale
// of a plot. The source of these checks is the interaction design of this project.
#include <gtest/gtest.h>

#include <QHeaderView>

#include "tests/ui/support/pump_pages.h"
#include "ui/charts/chart_view.h"
#include "ui/places/pump/device_page.h"
#include "ui/places/pump/pressure_page.h"
#include "ui/places/pump/section_page.h"

namespace ww::ui {
namespace {

using support::PumpPages;
using support::textsOf;

TEST_F(PumpPages, devicesHideTheLastColumnsWhereTheyHaveNoRoom) {
    DevicePage devices(m_rig.bridge);
    devices.setTokens(theme::tokens(theme::Display::Daylight));
    devices.setMetrics(theme::metrics(11, false));
    const EntryTable& table = *devices.table();
    const int all = table.model()->columnCount();
    const auto shown = [&] {
        std::vector<int> columns;
        for (int column = 0; column < all; ++column) {
            if (!table.isColumnHidden(column)) {
                columns.push_back(column);
            }
        }
        return columns;
    };
    const auto widthShown = [&] {
        int width = 0;
        for (const int column : shown()) {
            width += table.columnWidth(column);
        }
        return width;
    };
    devices.resize(360, 420);
    devices.setVisible(true);
    QTest::qWait(50);
    const std::vector<int> first = shown();
    ASSERT_LT(first.size(), std::size_t(all)) << "not narrow enough";
    EXPECT_EQ(first.front(), 0);
    EXPECT_EQ(first.back(), int(first.size()) - 1) << "the last ones are hidden";
    EXPECT_LE(widthShown(), table.viewport()->width());
    EXPECT_TRUE(devices.others()->isVisible());
    devices.others()->setChecked(true);
    EXPECT_EQ(shown().size(), 1 + std::size_t(all) - first.size());
    EXPECT_EQ(shown().front(), 0) << "the tag stays";
    EXPECT_EQ(shown().back(), all - 1);
    devices.resize(1600, 420);
    QTest::qWait(50);
    EXPECT_EQ(shown().size(), std::size_t(all));
    EXPECT_FALSE(devices.others()->isVisible());
    EXPECT_LE(widthShown(), table.viewport()->width());
}

TEST_F(PumpPages, tabPassesOverColumnsThatAreHidden) {
    DevicePage devices(m_rig.bridge);
    devices.setMetrics(theme::metrics(10, false));
    devices.resize(1600, 420);
    devices.setVisible(true);
    QTest::qWait(50);
    EntryTable& table = *devices.table();
    table.setColumnHidden(2, true);
    table.beginEdit(table.model()->index(0, 1));
    QTest::keyClick(table.editor(), Qt::Key_Tab);
    EXPECT_EQ(table.currentIndex().column(), 3);
    EXPECT_TRUE(table.isEditing());
    QTest::keyClick(table.editor(), Qt::Key_Tab, Qt::ShiftModifier);
    EXPECT_EQ(table.currentIndex().column(), 1);
}

/// A place as low as it may be leaves its page what that needs, under tabs and under a chooser that stay.
TEST_F(PumpPages, leaveThePageItsLeastHeight) {
    for (const bool isNarrow : {false, true}) {
        m_place.setNarrow(isNarrow);
        for (int index = 0; index < PumpPlace::PageCount; ++index) {
            auto& shown = page<PumpPage>(static_cast<PumpPlace::Page>(index));
            QTest::qWait(20);
            m_place.resize(m_place.width(), m_place.minimumSizeHint().height());
            QTest::qWait(20);
            EXPECT_GE(shown.height(), shown.leastHeight(m_place.width()))
                << shown.accessibleName().toStdString() << (isNarrow ? ", chooser" : ", tabs");
            EXPECT_GE(m_place.height(), m_place.minimumSizeHint().height());
        }
    }
}

TEST_F(PumpPages, whatIsNotSeenIsGivenUpForANewLookAndMadeAnew) {
    auto& shown = page<SectionPage>(PumpPlace::ReadAndSet);
    const QString words = textsOf(shown);
    const auto parts = [&] { return shown.view()->findChildren<QLabel*>().size(); };
    ASSERT_GT(parts(), 1);
    m_place.forgetUnseen();
    EXPECT_GT(parts(), 1) << "what is seen stays";
    page<DevicePage>(PumpPlace::Devices);
    m_place.forgetUnseen();
    EXPECT_EQ(parts(), 0);
    page<SectionPage>(PumpPlace::ReadAndSet);
    EXPECT_EQ(textsOf(shown).toStdString(), words.toStdString());
}

/// What does not fit on the pages: words that are cut, heads of columns, tabs.
TEST_F(PumpPages, nothingIsClippedAtTheSmallestScreen) {
    for (int index = 0; index < PumpPlace::PageCount; ++index) {
        auto& shown = page<PumpPage>(static_cast<PumpPlace::Page>(index));
        QTest::qWait(20);
        SCOPED_TRACE(shown.accessibleName().toStdString());
        EXPECT_LE(shown.minimumSizeHint().width(), 1254);
        for (const QLabel* label : shown.findChildren<QLabel*>()) {
            if (label->isVisible() && label->wordWrap()) {
                EXPECT_LE(label->heightForWidth(label->width()), label->height() + 1)
                    << label->text().toStdString();
            }
        }
        for (const SectionTable* table : shown.findChildren<SectionTable*>()) {
            const QFontMetrics metrics(table->horizontalHeader()->font());
            for (int column = 0; table->isVisible() && column < table->model()->columnCount(); ++column) {
                const QString head = table->model()->headerData(column, Qt::Horizontal).toString();
                for (const QString& word : head.split(QRegularExpression("\\s"))) {
                    EXPECT_LE(metrics.horizontalAdvance(word), table->columnWidth(column) - 6)
                        << word.toStdString();
                }
            }
        }
    }
}

// Round steps that count whole elements, and pressures that are there: our own rule for this plot.
TEST_F(PumpPages, thePressurePlotHasAScaleOfItsOwnPressures) {
    auto& shown = page<PressurePage>(PumpPlace::Pressure);
    ASSERT_TRUE(QTest::qWaitFor([&] { return shown.findChild<charts::ChartView*>() != nullptr; }, 3000));
    const charts::ChartFigure& figure = shown.findChild<charts::ChartView*>()->figure();
    EXPECT_TRUE(figure.y.title.contains("kPa")) << figure.y.title.toStdString();
    EXPECT_GE(figure.x.step, 1.0);
    EXPECT_EQ(figure.x.decimals, 0);
    double least = figure.lines.front().points.front().y();
    double most = least;
    for (const charts::Line& line : figure.lines) {
        for (const QPointF& point : line.points) {
            least = std::min(least, point.y());
            most = std::max(most, point.y());
        }
    }
    EXPECT_LE(figure.y.least, least);
    EXPECT_GE(figure.y.most, most);
    EXPECT_GE(figure.y.least, std::min(0.0, least) - figure.y.step) << "no pressures that nobody has";
    EXPECT_GE(figure.y.ticks().size(), 4U);
    EXPECT_LE(figure.y.ticks().size(), 9U);
}

}  // namespace
}  // namespace ww::ui
