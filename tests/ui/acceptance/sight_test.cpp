// What must be in sight at the sizes, scales and text sizes that the program is made for, on a job that was
// worked with: nothing that the hand needs is scrolled for, no box scrolls within another.
#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QScrollBar>

#include "tests/ui/support/screens.h"
#include "tests/ui/support/spoken.h"
#include "tests/ui/support/worked_practice.h"
#include "ui/places/adjust/adjust_place.h"
#include "ui/places/report/report_place.h"
#include "ui/places/system/system_place.h"

namespace ww::ui {
namespace {

/// On these the figures are read from two meters away; a larger scale makes smaller ones as large.
constexpr const char* kAtFullScale[] = {"laptop", "laptopAt125Percent", "laptopAt20Points",
                                        "laptopWithDesktopFontOf14Points", "laptopWithLargeTargets"};

bool isAtFullScale(const support::Screen& screen) {
    return std::any_of(std::begin(kAtFullScale), std::end(kAtFullScale),
                       [&](const char* name) { return std::string_view(name) == screen.name; });
}

bool isInSight(const QWidget& control) {
    return control.isVisible() && control.visibleRegion().boundingRect() == control.rect();
}

/// Shows Adjust with its first valve in hand, when what is learned of the loop is shown.
void showAdjust(support::ScreenWindow& shown) {
    shown.desk.window.showPlace(MainWindow::Adjust);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !shown.desk.window.advisor().isComputing(); }, 20000));
    QTest::qWait(60);
    shown.desk.window.adjust()->takeFocus();
    QTest::qWait(20);
}

class Sight : public testing::TestWithParam<std::tuple<support::Screen, const char*>> {};

TEST_P(Sight, inAdjustTheHandSeesAllThatItNeeds) {
    const auto& [screen, language] = GetParam();
    const support::Spoken spoken(language);
    support::ScreenWindow shown(screen, support::workedPractice());
    ASSERT_TRUE(shown.show(theme::Display::Office));
    showAdjust(shown);
    AdjustPlace& place = *shown.desk.window.adjust();
    std::vector<const QWidget*> needed{place.field(), place.findChild<WordSign*>()};
    for (const BigFigure* figure : place.findChildren<BigFigure*>()) {
        needed.push_back(figure);
        EXPECT_TRUE(!isAtFullScale(screen) || !figure->isSmall()) << figure->accessibleName().toStdString();
    }
    for (const QPushButton* button : place.findChildren<QPushButton*>()) {
        needed.push_back(button);
    }
    ASSERT_EQ(needed.size(), 6U) << "field, word, setting, aim, reading, holding";
    for (const QWidget* each : needed) {
        EXPECT_TRUE(isInSight(*each)) << each->accessibleName().toStdString();
    }
}

TEST_P(Sight, aBoxThatScrollsStandsInNoOther) {
    const auto& [screen, language] = GetParam();
    const support::Spoken spoken(language);
    support::ScreenWindow shown(screen, support::workedPractice());
    ASSERT_TRUE(shown.show(theme::Display::Office));
    const auto scrolls = [](const QScrollArea& area) {
        return area.isVisible() && area.verticalScrollBar()->maximum() > 0;
    };
    for (int page = MainWindow::Job; page <= MainWindow::Report; ++page) {
        shown.desk.window.showPlace(static_cast<MainWindow::Place>(page));
        QTest::qWait(150);
        for (const QScrollArea* area : shown.desk.window.findChildren<QScrollArea*>()) {
            for (const QWidget* up = area->parentWidget(); scrolls(*area) && up != nullptr;
                 up = up->parentWidget()) {
                const auto* outer = qobject_cast<const QScrollArea*>(up);
                EXPECT_TRUE(outer == nullptr || !scrolls(*outer))
                    << "place " << page + 1 << ": " << area->accessibleName().toStdString();
            }
        }
    }
}

TEST_P(Sight, theFieldThatFindsABranchHasItsName) {
    const auto& [screen, language] = GetParam();
    const support::Spoken spoken(language);
    support::ScreenWindow shown(screen, support::workedPractice());
    ASSERT_TRUE(shown.show(theme::Display::Daylight));
    shown.desk.window.showPlace(MainWindow::System);
    shown.desk.window.commands().findValve->trigger();
    QTest::qWait(60);
    const auto labels = shown.desk.window.system()->findChildren<QLabel*>();
    const bool isSeen = std::any_of(labels.begin(), labels.end(), [](const QLabel* label) {
        QRect words(QPoint(0, 0), label->sizeHint());
        words.moveCenter(label->rect().center());
        return label->buddy() != nullptr && label->buddy()->inherits("QLineEdit") && label->isVisible() &&
               label->visibleRegion().contains(words.intersected(label->rect()));
    });
    EXPECT_TRUE(isSeen);
}

INSTANTIATE_TEST_SUITE_P(Screens, Sight,
                         testing::Combine(testing::ValuesIn(support::kScreens), testing::Values("en", "de")),
                         [](const auto& info) {
                             return std::string(std::get<0>(info.param).name) + '_' + std::get<1>(info.param);
                         });

// At twice the scale a laptop has half of the usual window.
TEST(FirstStart, takesNoMoreThanTheScreenHas) {
    const support::TemporaryFolder folder;
    support::FixedClock clock;
    support::CountingIds ids{1};
    Preferences preferences(QString::fromStdString(folder.file("settings.ini")), Preferences::kLeastPoints);
    const MainWindow window(Desk{clock, ids, "A. Fields", "LT-1"}, preferences);
    const QSize screen = window.screen()->availableSize();
    EXPECT_EQ(window.size(), window.size().boundedTo(screen)) << screen.width() << 'x' << screen.height();
}

TEST(Adjust, scrollsNotOnALaptop) {
    for (const char* language : {"en", "de", "es", "fr"}) {
        const support::Spoken spoken(language);
        support::ScreenWindow shown(support::kScreens.front(), support::workedPractice());
        ASSERT_TRUE(shown.show(theme::Display::Office));
        showAdjust(shown);
        const QWidget* viewport = shown.desk.window.adjust()->parentWidget();
        const auto* area = qobject_cast<const QScrollArea*>(viewport->parentWidget());
        ASSERT_NE(area, nullptr);
        EXPECT_EQ(area->verticalScrollBar()->maximum(), 0) << language;
    }
}

// What was worked with says other words than a job that was only read.
TEST(WorkedPractice, isWholeOnEachPage) {
    for (const char* language : {"en", "de"}) {
        const support::Spoken spoken(language);
        for (const support::Screen& screen : support::kScreens) {
            support::ScreenWindow shown(screen, support::workedPractice());
            ASSERT_TRUE(shown.show(theme::Display::Office));
            const QString faults = shown.faults();
            EXPECT_TRUE(faults.isEmpty()) << language << ' ' << screen.name << faults.toStdString();
        }
    }
}

}  // namespace
}  // namespace ww::ui
