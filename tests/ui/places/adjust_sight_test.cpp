// What is in sight in the place Adjust, how large, and that it stays where it is. The source of these checks
// is the interaction design of this project.
#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QImage>
#include <QPushButton>
#include <algorithm>

#include "tests/ui/support/adjust_desk.h"
#include "ui/places/adjust/adjust_words.h"

namespace ww::ui {
namespace {

using support::AdjustDesk;

/// Whether it lies in a view of the place that scrolls: there it may move, the view itself may not.
bool scrolls(const QWidget* widget, const QWidget& place) {
    for (const QWidget* at = widget->parentWidget(); at != &place; at = at->parentWidget()) {
        if (at->inherits("QAbstractScrollArea")) {
            return true;
        }
    }
    return false;
}

std::vector<QRect> shapesIn(QWidget& place) {
    std::vector<QRect> all;
    for (const QWidget* widget : place.findChildren<QWidget*>()) {
        if (widget->isVisible() && !scrolls(widget, place)) {
            all.emplace_back(widget->mapTo(&place, QPoint(0, 0)), widget->size());
        }
    }
    return all;
}

TEST_F(AdjustDesk, nothingMovesBetweenTries) {
    const auto before = shapesIn(place());
    EXPECT_GT(before.size(), 20U);
    for (const char* typed : {"300", "45.6", "0.2", "12"}) {
        m_desk.enter(typed);
        EXPECT_TRUE(shapesIn(place()) == before) << typed;
        m_desk.key(Qt::Key_Down);
        EXPECT_TRUE(shapesIn(place()) == before) << typed;
        settle();
        EXPECT_TRUE(shapesIn(place()) == before) << typed;
    }
}

TEST_F(AdjustDesk, standsAsBeforeAfterLargerTextAndLargeTargets) {
    settle();
    const auto before = shapesIn(place());
    MainWindow& window = m_desk.window;
    window.setTextPoints(20.0);
    QTest::qWait(50);
    window.commands().largeTargets->trigger();
    QTest::qWait(50);
    window.commands().normalText->trigger();
    QTest::qWait(50);
    window.commands().largeTargets->trigger();
    QTest::qWait(50);
    settle();
    EXPECT_TRUE(shapesIn(place()) == before);
}

TEST_F(AdjustDesk, theAimDigitsAreAsTallAsTheyMustBe) {
    // 22 arc minutes at two meters on a 14 inch panel: 57 px, own calculation.
    BigFigure figure("Aim");
    figure.setTokens(theme::tokens(theme::Display::Daylight));
    figure.show("52.3", {}, false);
    figure.resize(figure.sizeHint());
    QImage image(figure.size(), QImage::Format_ARGB32);
    image.fill(Qt::white);
    figure.render(&image);
    int top = image.height();
    int bottom = 0;
    // Below the head line: the digits alone.
    for (int y = QFontMetrics(figure.font()).height() + 1; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            if (qGray(image.pixel(x, y)) < 96) {
                top = std::min(top, y);
                bottom = std::max(bottom, y);
            }
        }
    }
    EXPECT_GE(bottom - top + 1, 57);
}

TEST_F(AdjustDesk, aimReadingWordAndSettingAreInSightTogether) {
    std::vector<QWidget*> shown;
    for (BigFigure* figure : place().findChildren<BigFigure*>()) {
        shown.push_back(figure);
    }
    ASSERT_EQ(shown.size(), 3U) << "setting, aim and reading";
    shown.push_back(place().findChild<WordSign*>());
    for (const QWidget* widget : shown) {
        EXPECT_EQ(widget->visibleRegion().boundingRect(), widget->rect())
            << widget->accessibleName().toStdString();
    }
}

TEST_F(AdjustDesk, theFieldsAndHoldingAreInSightInLargeText) {
    m_desk.window.setTextPoints(15.0);  // 150 % on a laptop of 1366 x 768
    QTest::qWait(0);
    std::vector<QWidget*> shown{place().field(), place().findChild<WordSign*>()};
    for (QPushButton* button : place().findChildren<QPushButton*>()) {
        if (button->text().remove('&').startsWith("Hold Here")) {
            shown.push_back(button);
        }
    }
    for (BigFigure* figure : place().findChildren<BigFigure*>()) {
        shown.push_back(figure);
    }
    ASSERT_EQ(shown.size(), 6U) << "field, word, holding, setting, aim and reading";
    for (const QWidget* widget : shown) {
        EXPECT_EQ(widget->visibleRegion().boundingRect(), widget->rect())
            << widget->accessibleName().toStdString();
    }
}

// What is read has one way to be written.
TEST_F(AdjustDesk, showsTheDigitsOfAReadingAsTaken) {
    place().takeFocus();
    const double aim_kPa = place().valve().row()->dp.in(quantity::Unit::Kilopascal);
    const QString typed = QString::number(aim_kPa, 'f', 2);
    m_desk.enter(typed);
    ASSERT_TRUE(place().valve().last().has_value());
    EXPECT_EQ(readNumber(m_desk.bridge(), *place().valve().last()), typed);
    EXPECT_TRUE(triesWords(m_desk.bridge(), place().valve()).contains(typed));
    place().readAgain();
    m_desk.enter(QString::number(aim_kPa + 0.2, 'f', 2));
    const ValveReading& mean = *place().valve().last();
    EXPECT_EQ(readNumber(m_desk.bridge(), mean), dpNumber(m_desk.bridge(), mean.dp)) << "a computed value";
}

TEST_F(AdjustDesk, showsFiveNeighborsAndTheAimOfEach) {
    m_desk.key(Qt::Key_PageDown);
    const auto& rows = place().valve().rows();
    ASSERT_EQ(rows.size(), 5U);
    for (std::size_t i = 1; i < rows.size(); ++i) {
        EXPECT_GT(rows[i].setting, rows[i - 1].setting);
        EXPECT_LT(rows[i].dp, rows[i - 1].dp);  // the wider the valve, the less dp for the same flow
    }
    AimStripModel model(m_desk.bridge(), place().valve());
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    EXPECT_EQ(model.currentColumn(), 2);
    const QString spoken = model.index(AimStripModel::AimRow, 2).data(Qt::AccessibleTextRole).toString();
    EXPECT_TRUE(spoken.contains("setting 3") && spoken.contains("aim kPa")) << spoken.toStdString();
    EXPECT_FALSE(basisWords(m_desk.bridge(), place().valve()).front().isEmpty());
}

// The largest text on a small screen: the field, the word and holding are in sight without scrolling.
TEST_F(AdjustDesk, theFieldsAndTheWordAreInSightInTheLargestText) {
    m_desk.window.resize(1000, 600);
    m_desk.window.setTextPoints(20.0);
    QTest::qWait(0);
    place().takeFocus();
    QTest::qWait(0);
    std::vector<const QWidget*> shown{place().field(), place().findChild<WordSign*>()};
    for (const QPushButton* button : place().findChildren<QPushButton*>()) {
        shown.push_back(button);
    }
    ASSERT_EQ(shown.size(), 3U) << "field, word and holding";
    for (const QWidget* widget : shown) {
        EXPECT_EQ(widget->visibleRegion().boundingRect(), widget->rect())
            << widget->accessibleName().toStdString();
    }
    // With room again the parts stand as they did.
    m_desk.window.setTextPoints(10.0);
    m_desk.window.resize(1366, 768);
    QTest::qWait(0);
    EXPECT_LT(place().findChild<QTableView*>()->mapTo(&place(), QPoint()).y(),
              place().field()->mapTo(&place(), QPoint()).y());
}

// 150 % of text and more on a small screen: every note is whole.
TEST_F(AdjustDesk, noWordsAreCutInTheLargestText) {
    m_desk.window.resize(1000, 600);
    for (const double points : {15.0, 18.0, 20.0}) {
        m_desk.window.setTextPoints(points);
        QTest::qWait(0);
        m_desk.enter("300");
        settle();
        QTest::qWait(0);
        for (const WholeLabel* label : place().findChildren<WholeLabel*>()) {
            if (label->isVisible()) {
                EXPECT_GE(label->height(), label->heightForWidth(label->width()))
                    << points << ' ' << label->accessibleName().toStdString();
            }
        }
    }
}

// Where five neighbors have no room, those nearest to the handle stay, also at its stop.
TEST_F(AdjustDesk, theSettingInHandStaysInSightOnTheSmallestScreenWithLargeTargets) {
    m_desk.window.commands().largeTargets->trigger();
    m_desk.window.resize(683, 354);
    QTest::qWait(50);
    ASSERT_TRUE(m_desk.window.pad()->isVisible());
    const auto* strip = place().findChild<QTableView*>();
    const auto* model = qobject_cast<AimStripModel*>(strip->model());
    ASSERT_NE(model, nullptr);
    int hidden = 0;
    for (int turns = 0; turns < 4; ++turns) {
        ASSERT_GE(model->currentColumn(), 0);
        EXPECT_FALSE(strip->isColumnHidden(model->currentColumn())) << setting();
        hidden += strip->isColumnHidden(0) || strip->isColumnHidden(AimStripModel::kColumns - 1) ? 1 : 0;
        place().takeFocus();
        m_desk.key(Qt::Key_PageDown);
    }
    EXPECT_EQ(hidden, 4) << "there is no room for five";
}

}  // namespace
}  // namespace ww::ui
