// Where everything stands at the sizes, scales, displays, text sizes and languages that the program is made
// for.
#include <gtest/gtest.h>

#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTabBar>
#include <QTableView>
#include <tuple>

#include "tests/ui/support/screens.h"
#include "tests/ui/support/spoken.h"
#include "tests/ui/support/written_runs.h"
#include "ui/charts/chart_view.h"
#include "ui/delegates/wrapped_item.h"
#include "ui/places/pump/pump_place.h"
#include "ui/places/report/report_place.h"
#include "ui/places/walk/note_panel.h"

namespace ww::ui {
namespace {

using support::DeskWindow;

class Layout : public testing::TestWithParam<std::tuple<support::Screen, const char*>> {};

TEST_P(Layout, nothingIsCutOutsideItsFrameOrScrolledSideways) {
    const auto& [screen, language] = GetParam();
    const support::Spoken spoken(language);
    support::ScreenWindow shown(screen);
    for (const theme::Display display : support::kDisplays) {
        ASSERT_TRUE(shown.show(display)) << "the window does not fit";
        const QString faults = shown.faults();
        EXPECT_TRUE(faults.isEmpty()) << theme::name(display).toStdString() << faults.toStdString();
    }
}

TEST(LargeTargets, leaveEachPageWholeOnTheSmallestScreen) {
    for (const char* language : {"en", "de", "es", "fr"}) {
        const support::Spoken spoken(language);
        support::ScreenWindow shown(support::kSmallestForGloves);
        ASSERT_TRUE(shown.show(theme::Display::Office));
        const QString faults = shown.faults();
        EXPECT_TRUE(faults.isEmpty()) << language << faults.toStdString();
    }
}

TEST(TextSize, isThatOfTheDesktopUntilAnotherIsChosen) {
    DeskWindow desk(support::walkJob(), true, 14.0);
    EXPECT_DOUBLE_EQ(desk.grid().font().pointSizeF(), 14.0);
    desk.window.setTextPoints(12.0);
    EXPECT_DOUBLE_EQ(desk.grid().font().pointSizeF(), 12.0);
    desk.window.commands().normalText->trigger();
    EXPECT_DOUBLE_EQ(desk.grid().font().pointSizeF(), 14.0);
}

TEST(TextSize, isThatOfTheDisplayFromTheStart) {
    DeskWindow desk;
    EXPECT_DOUBLE_EQ(desk.grid().font().pointSizeF(), 10.0);
    desk.window.setDisplay(theme::Display::Daylight);
    EXPECT_DOUBLE_EQ(desk.grid().font().pointSizeF(), 11.0);
    desk.window.setDisplay(theme::Display::Office);
    EXPECT_DOUBLE_EQ(desk.grid().font().pointSizeF(), 10.0);
}

/// Whether all of a control is in sight.
bool isWhollySeen(const QWidget& control) {
    return control.isVisible() && control.visibleRegion().boundingRect() == control.rect();
}

// WCAG 2.2, 1.4.4 asks for text of twice the size without loss of function. What a place is left or ended
// with must not be scrolled for.
TEST(LargerText, whatPagesAreChosenAndReportsAreWrittenWithStaysInSight) {
    constexpr double kPoints = Preferences::kMostPoints;
    support::ScreenWindow shown(support::kScreens.front());
    shown.desk.window.setTextPoints(kPoints);
    ASSERT_TRUE(shown.show(theme::Display::Office));
    support::eachPage(shown.desk.window, [&](const QString& page) {
        QTest::qWait(60);
        // To the end of the page and back.
        for (const bool isEnd : {true, false}) {
            for (QScrollArea* area : shown.desk.window.findChildren<QScrollArea*>()) {
                area->verticalScrollBar()->setValue(isEnd ? area->verticalScrollBar()->maximum() : 0);
            }
            QTest::qWait(0);
            const MainWindow::Place place = shown.desk.window.place();
            if (place == MainWindow::Pump) {
                const auto* chooser = shown.desk.window.pump()->chooser();
                const auto* tabs = shown.desk.window.pump()->findChild<QTabBar*>();
                EXPECT_TRUE(isWhollySeen(*chooser) || isWhollySeen(*tabs)) << page.toStdString();
            }
            for (const auto* chart : shown.desk.window.findChildren<charts::ChartView*>()) {
                constexpr int kLeastChart = 300;
                const bool isFigure = place == MainWindow::Pump || place == MainWindow::Review;
                EXPECT_TRUE(!isFigure || !chart->isVisible() || chart->height() >= kLeastChart)
                    << page.toStdString() << ": a chart of " << chart->height();
            }
            if (place == MainWindow::Report) {
                int seen = 0;
                for (const auto* button : shown.desk.window.report()->findChildren<QPushButton*>()) {
                    const QString words = button->text().remove('&');
                    const bool isOfFile = words.startsWith("Export Unsigned") || words.startsWith("Verify");
                    seen += isOfFile && isWhollySeen(*button) ? 1 : 0;
                }
                EXPECT_EQ(seen, 2) << "Export Unsigned Draft, Verify a Report";
            }
        }
    });
}

TEST(NotesOfAValve, areWholeInEachLanguage) {
    for (const char* language : {"en", "de", "es", "fr"}) {
        const support::Spoken spoken(language);
        support::ScreenWindow shown(support::kScreens.front());
        ASSERT_TRUE(shown.show(theme::Display::Office));
        shown.desk.window.showPlace(MainWindow::Walk);
        shown.desk.window.walk()->editNote();
        const QStringList faults = support::settledFaults(shown.desk.window);
        EXPECT_TRUE(faults.isEmpty()) << language << ": " << faults.join('\n').toStdString();
    }
}

// What has just come in sight is not laid out when it takes the keys.
TEST(LargerText, theNoteThatIsWrittenIsInSightWithItsHead) {
    const support::Spoken spoken("de");
    support::ScreenWindow shown(support::kScreens.front());
    shown.desk.window.setTextPoints(Preferences::kMostPoints);
    ASSERT_TRUE(shown.show(theme::Display::Office));
    shown.desk.window.showPlace(MainWindow::Walk);
    shown.desk.window.walk()->editNote();
    QTest::qWait(60);
    ASSERT_NE(qobject_cast<QLineEdit*>(QApplication::focusWidget()), nullptr);
    EXPECT_TRUE(isWhollySeen(*QApplication::focusWidget()));
    const auto* head = shown.desk.window.walk()->findChild<NotePanel*>()->findChild<QLabel*>("panel_title");
    ASSERT_NE(head, nullptr);
    EXPECT_TRUE(isWhollySeen(*head));
}

TEST(LargerText, reachesTitlesThatAreThereAlready) {
    support::ScreenWindow shown(support::kScreens.front());
    ASSERT_TRUE(shown.show(theme::Display::Office));
    shown.desk.window.showPlace(MainWindow::Report);
    QTest::qWait(0);
    const auto* title = shown.desk.window.report()->findChild<QLabel*>("place_title");
    ASSERT_NE(title, nullptr);
    for (const double points : {20.0, 10.0}) {
        shown.desk.window.setTextPoints(points);
        QTest::qWait(0);
        EXPECT_NEAR(title->font().pointSizeF(), 1.2 * points, 0.1);
    }
}

TEST(LargerText, isWholeInTheValveTablesOfEachLanguage) {
    for (const char* language : {"en", "de", "es", "fr"}) {
        const support::Spoken spoken(language);
        support::ScreenWindow shown(support::kScreens.front());
        shown.desk.window.setTextPoints(Preferences::kMostPoints);
        ASSERT_TRUE(shown.show(theme::Display::Office));
        shown.desk.window.commands().valveTables->trigger();
        const QStringList faults = support::settledFaults(shown.desk.window);
        EXPECT_TRUE(faults.isEmpty()) << language << ": " << faults.join('\n').toStdString();
    }
}

TEST(WalkGrid, keepsAllItsColumnsOnALaptopInEachLanguage) {
    for (const char* language : {"en", "de", "es", "fr"}) {
        const support::Spoken spoken(language);
        support::ScreenWindow shown(support::kScreens.front());
        for (const theme::Display display : support::kDisplays) {
            ASSERT_TRUE(shown.show(display));
            shown.desk.window.showPlace(MainWindow::Walk);
            QTest::qWait(20);
            for (int column = 0; column < WalkModel::ColumnCount; ++column) {
                EXPECT_FALSE(shown.desk.grid().isColumnHidden(column))
                    << language << ", column " << column << ", " << theme::name(display).toStdString();
            }
            EXPECT_TRUE(shown.desk.grid().leftOut().isEmpty()) << language;
        }
    }
}

// On a narrower screen letters become narrow first; what then has no room stands beside the grid.
TEST(WalkGrid, saysBesideItWhatItHasNoRoomFor) {
    support::ScreenWindow shown(support::kScreens[1]);
    ASSERT_TRUE(shown.show(theme::Display::Daylight));
    WalkGrid& grid = shown.desk.grid();
    shown.desk.window.showPlace(MainWindow::Walk);
    QTest::qWait(0);
    ASSERT_TRUE(grid.isColumnHidden(WalkModel::Target));
    const auto* beside = support::named<QLabel>(*shown.desk.window.walk(), "What the grid has no room for");
    ASSERT_NE(beside, nullptr);
    EXPECT_TRUE(beside->isVisible());
    for (const int row : {0, 3}) {
        grid.goToRow(row, false);
        const QString target = shown.desk.model().index(row, WalkModel::Target).data().toString();
        ASSERT_FALSE(target.isEmpty());
        EXPECT_TRUE(beside->text().contains(QString("Target %1 %").arg(target).replace(' ', QChar::Nbsp)))
            << beside->text().toStdString();
    }
}

class Lists : public testing::TestWithParam<std::tuple<double, const char*>> {};

/// What a list wrote that ends in dots which none of its names has.
QStringList cutNames(QAbstractItemView& list) {
    constexpr QChar kDots(0x2026);
    const QAbstractItemModel& model = *list.model();
    for (int row = 0; row < model.rowCount(); ++row) {
        for (int column = 0; column < model.columnCount(); ++column) {
            if (model.index(row, column).data().toString().contains(kDots)) {
                return {};
            }
        }
    }
    return support::writtenRuns(list).filter(kDots);
}

TEST_P(Lists, showEachNameWhole) {
    const auto& [points, language] = GetParam();
    const support::Spoken spoken(language);
    support::ScreenWindow shown(support::kScreens.front());
    shown.desk.window.setTextPoints(points);
    ASSERT_TRUE(shown.show(theme::Display::Office));
    int lists = 0;
    support::eachPage(shown.desk.window, [&](const QString& page) {
        // Lists are laid out again a tenth of a second after their width changed.
        QTest::qWait(150);
        for (QAbstractItemView* list : shown.desk.window.findChildren<QAbstractItemView*>()) {
            const bool isList = qobject_cast<const QListView*>(list) != nullptr ||
                                (shown.desk.window.place() == MainWindow::Review &&
                                 qobject_cast<QTableView*>(list) != nullptr);
            if (!list->isVisible() || !isList || list->model() == nullptr) {
                continue;
            }
            ++lists;
            const QStringList cut = cutNames(*list);
            EXPECT_TRUE(cut.isEmpty()) << page.toStdString() << ", " << list->accessibleName().toStdString()
                                       << ": " << cut.join(" | ").toStdString();
        }
    });
    EXPECT_GE(lists, 7) << "the list of places stands on every page";
}

INSTANTIATE_TEST_SUITE_P(Sizes, Lists,
                         testing::Combine(testing::Values(10.0, 20.0), testing::Values("en", "de")),
                         [](const auto& info) {
                             return std::string(std::get<0>(info.param) > 10 ? "larger_" : "usual_") +
                                    std::get<1>(info.param);
                         });

TEST(WrappedItem, hasTheHeightOfItsNameInEveryWidth) {
    QListWidget list;
    list.setWordWrap(true);
    list.setItemDelegate(new WrappedItem(&list));
    list.addItem("Page 8\n9 Every reading as typed");
    list.addItem("Messstellenverzeichnisfortschreibung");
    list.show();
    for (int width = 60; width <= 260; width += 10) {
        list.resize(width, 300);
        QTest::qWait(150);
        EXPECT_TRUE(cutNames(list).isEmpty()) << width;
        QString written = support::writtenRuns(list).join(QString());
        QString whole = list.item(0)->text() + list.item(1)->text();
        for (QString* words : {&written, &whole}) {
            words->remove(' ').remove('\n').remove(QChar(QChar::LineSeparator));
        }
        EXPECT_EQ(written.toStdString(), whole.toStdString()) << width;
        for (int row = 0; row < list.count(); ++row) {
            EXPECT_LE(list.visualItemRect(list.item(row)).width(), list.viewport()->width()) << width;
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Screens, Layout,
                         testing::Combine(testing::ValuesIn(support::kScreens),
                                          testing::Values("en", "de", "es", "fr")),
                         [](const auto& info) {
                             return std::string(std::get<0>(info.param).name) + '_' + std::get<1>(info.param);
                         });

}  // namespace
}  // namespace ww::ui
