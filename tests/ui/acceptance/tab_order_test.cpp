// The way of the keys through every page and every dialog: Tab reaches each control as a person reads it and
// comes back.
#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QSet>
#include <algorithm>
#include <vector>

#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/each_dialog.h"
#include "tests/ui/support/each_page.h"
#include "tests/ui/support/ring_faults.h"
#include "tests/ui/support/spoken_name.h"
#include "tests/ui/support/tab_way.h"
#include "ui/widgets/entry_table.h"
#include "ui/widgets/reading_order.h"

namespace ww::ui {
namespace {

using support::DeskWindow;

TEST(Access, tablesAreLeftWithF6AndWithCtrlTab) {
    DeskWindow desk;
    for (const auto place : {MainWindow::System, MainWindow::Walk}) {
        for (const bool isF6 : {true, false}) {
            desk.window.showPlace(place);
            QTest::qWait(20);
            const auto* table = qobject_cast<EntryTable*>(QApplication::focusWidget());
            ASSERT_NE(table, nullptr) << "place " << place + 1;
            desk.key(isF6 ? Qt::Key_F6 : Qt::Key_Tab, isF6 ? Qt::NoModifier : Qt::ControlModifier);
            EXPECT_NE(QApplication::focusWidget(), table) << "place " << place + 1;
            EXPECT_NE(QApplication::focusWidget(), nullptr);
        }
    }
}

/// The stops of a page once nothing more is made or taken away on it.
QList<QWidget*> settledStops(const QWidget& window) {
    constexpr int kTries = 20;
    constexpr int kPause_ms = 150;
    QList<QWidget*> stops;
    for (int i = 0; i < kTries; ++i) {
        const QList<QWidget*> before = stops;
        QTest::qWait(kPause_ms);
        stops = support::tabStops(window);
        if (stops == before) {
            break;
        }
    }
    return stops;
}

class TabOrder : public testing::TestWithParam<Qt::LayoutDirection> {
  protected:
    TabOrder() { QApplication::setLayoutDirection(GetParam()); }
    ~TabOrder() override { QApplication::setLayoutDirection(Qt::LeftToRight); }
};

// WCAG 2.2, 2.4.3 Focus Order. Parts that stand in columns side by side are read one column after the other.
TEST_P(TabOrder, isThatOfReadingOnEveryPageAndComesBack) {
    DeskWindow desk;
    support::eachPage(desk.window, [&](const QString& page) {
        SCOPED_TRACE(page.toStdString());
        const QList<QWidget*> stops = settledStops(desk.window);
        ASSERT_GE(stops.size(), 2);
        QWidget* first = *std::min_element(stops.begin(), stops.end(), [](const auto* a, const auto* b) {
            return a->mapToGlobal(QPoint(0, 0)).y() < b->mapToGlobal(QPoint(0, 0)).y();
        });
        first->setFocus(Qt::OtherFocusReason);
        const QList<QWidget*> way = support::wayRound(Qt::NoModifier);
        EXPECT_EQ(QApplication::focusWidget(), first) << "Tab does not come back";
        EXPECT_EQ(way.size(), stops.size()) << "each stop once";
        EXPECT_EQ(QSet<QWidget*>(way.begin(), way.end()), QSet<QWidget*>(stops.begin(), stops.end()));
        QList<QWidget*> back = support::wayRound(Qt::ShiftModifier);
        std::reverse(back.begin() + 1, back.end());
        EXPECT_EQ(back, way) << "Shift+Tab goes another way";
        // From what is read first on.
        const std::vector<QWidget*> read = stopsInReadingOrder(desk.window);
        EXPECT_TRUE(support::orderFaults(QList<QWidget*>(read.begin(), read.end())).isEmpty())
            << support::orderFaults(QList<QWidget*>(read.begin(), read.end())).toStdString();
        const qsizetype begin = way.indexOf(read.front());
        ASSERT_GE(begin, 0);
        EXPECT_EQ(way.mid(begin) + way.mid(0, begin), QList<QWidget*>(read.begin(), read.end()));
    });
}

/// Names, to be compared and told.
QStringList namesOf(const QList<QWidget*>& stops) {
    QStringList names;
    for (const QWidget* stop : stops) {
        names << support::spokenName(*stop);
    }
    return names;
}

/// Of choices that exclude one another one is a stop, the others are reached from it with the arrow keys.
bool isReachedByArrows(const QWidget& control) {
    const auto* button = qobject_cast<const QAbstractButton*>(&control);
    return button != nullptr && button->isCheckable() &&
           (button->autoExclusive() || button->group() != nullptr);
}

TEST_P(TabOrder, isThatOfReadingInEveryDialogAndComesBack) {
    DeskWindow desk(support::jobForDialogs(), false);
    support::eachDialog(desk, [&](QWidget& dialog) {
        SCOPED_TRACE(dialog.windowTitle().toStdString());
        static_cast<void>(settledStops(dialog));
        const std::vector<QWidget*> read = stopsInReadingOrder(dialog);
        const QList<QWidget*> stops(read.begin(), read.end());
        ASSERT_FALSE(stops.isEmpty());
        EXPECT_TRUE(support::orderFaults(stops).isEmpty()) << support::orderFaults(stops).toStdString();
        for (const QWidget* control : support::tabStops(dialog)) {
            EXPECT_TRUE(stops.contains(control) || isReachedByArrows(*control))
                << support::spokenName(*control).toStdString() << " is not reached";
        }
        stops.front()->setFocus(Qt::OtherFocusReason);
        ASSERT_EQ(QApplication::focusWidget(), stops.front());
        EXPECT_EQ(namesOf(support::wayRound(Qt::NoModifier)), namesOf(stops));
        stops.front()->setFocus(Qt::OtherFocusReason);
        QList<QWidget*> back = support::wayRound(Qt::ShiftModifier);
        std::reverse(back.begin() + 1, back.end());
        EXPECT_EQ(namesOf(back), namesOf(stops)) << "Shift+Tab goes another way";
    });
}

INSTANTIATE_TEST_SUITE_P(Directions, TabOrder, testing::Values(Qt::LeftToRight, Qt::RightToLeft),
                         [](const auto& info) {
                             return info.param == Qt::LeftToRight ? "leftToRight" : "rightToLeft";
                         });

}  // namespace
}  // namespace ww::ui
