// When a widget is refreshed: once it is seen, and not before.

#include "ui/widgets/shown_refresh.h"

#include <gtest/gtest.h>

#include <QHBoxLayout>

namespace ww::ui {
namespace {

/// Wants to be refreshed whenever it gets another size, as a grid that fits its columns does.
class Fitting : public QWidget {
  public:
    explicit Fitting(QWidget* parent)
        : QWidget(parent), refresh(new ShownRefresh(this, [this] { ++times; })) {}

    int times = 0;
    ShownRefresh* refresh;

  protected:
    void resizeEvent(QResizeEvent*) override { refresh->want(); }
};

class ShownRefreshTest : public testing::Test {
  protected:
    ShownRefreshTest() {
        (new QHBoxLayout(&m_window))->addWidget(m_widget);
        m_window.resize(300, 200);
    }

    QWidget m_window;
    Fitting* m_widget = new Fitting(&m_window);
};

TEST_F(ShownRefreshTest, isDoneOnceWhenTheWidgetIsShownFirst) {
    m_widget->refresh->want();
    EXPECT_EQ(m_widget->times, 0);
    m_window.show();
    EXPECT_EQ(m_widget->times, 1) << "the sizes it is given on the way do not count";
}

TEST_F(ShownRefreshTest, isDoneAtOnceWhileTheWidgetIsShown) {
    m_window.show();
    m_widget->refresh->want();
    EXPECT_EQ(m_widget->times, 2);
}

TEST_F(ShownRefreshTest, waitsWhileTheWidgetIsHiddenAndIsDoneWhenItIsShownAgain) {
    m_window.show();
    m_widget->hide();
    m_widget->refresh->want();
    m_widget->refresh->want();
    EXPECT_EQ(m_widget->times, 1);
    m_widget->show();
    EXPECT_EQ(m_widget->times, 2);
    m_window.hide();
    m_widget->refresh->want();
    EXPECT_EQ(m_widget->times, 2) << "hidden with its window";
    m_window.show();
    EXPECT_EQ(m_widget->times, 3);
}

TEST_F(ShownRefreshTest, isDoneAgainBehindOneThatWantsAnother) {
    std::vector<int> order;
    int depth = 0;
    QWidget shown;
    ShownRefresh* refresh = nullptr;
    refresh = new ShownRefresh(&shown, [&] {
        ++depth;
        order.push_back(depth);
        if (order.size() == 1) {
            refresh->want();
        }
        --depth;
    });
    shown.show();
    EXPECT_EQ(order, (std::vector<int>{1, 1})) << "one behind the other";
}

TEST_F(ShownRefreshTest, endsWhereEachWantsAnother) {
    int times = 0;
    QWidget shown;
    ShownRefresh* refresh = nullptr;
    refresh = new ShownRefresh(&shown, [&] {
        ++times;
        refresh->want();
    });
    shown.show();
    EXPECT_LE(times, 5);
}

}  // namespace
}  // namespace ww::ui
