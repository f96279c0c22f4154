// Where names are written on a chart. That nothing strikes them out is a decision of this project.
#include <gtest/gtest.h>

#include <QImage>

#include "ui/charts/chart_painter.h"
#include "ui/charts/mark_painter.h"

namespace ww::ui::charts {
namespace {

/// The rows of pixels that the names of a figure take, on an otherwise empty sheet.
std::pair<int, int> rowsOfNames(const ChartFigure& figure, const QRectF& plot) {
    QImage sheet(500, 300, QImage::Format_RGB32);
    sheet.fill(Qt::white);
    QPainter painter(&sheet);
    ChartStyle style{theme::tokens(theme::Display::Daylight), QFont(QStringLiteral("DejaVu Sans")), 1.0};
    style.font.setPixelSize(14);
    paintNames(painter, plot, figure, style);
    painter.end();
    std::pair<int, int> rows{sheet.height(), -1};
    for (int y = 0; y < sheet.height(); ++y) {
        for (int x = 0; x < sheet.width(); ++x) {
            if (sheet.pixelColor(x, y) != Qt::white) {
                rows = {std::min(rows.first, y), y};
            }
        }
    }
    return rows;
}

TEST(ChartNames, noLineOfTheGridStrikesANameOut) {
    const QRectF plot(50, 20, 400, 250);
    ChartFigure figure;
    figure.x = {QStringLiteral("Flow"), 0, 15, 5, 0};
    figure.y = {QStringLiteral("Head"), 0, 20, 5, 0};
    for (const double end : {5.0, 10.0, 15.0, 20.0}) {
        figure.lines = {{LineRole::LastSystem, QStringLiteral("system, round 3"), {{0, 0}, {10, end}}}};
        const auto [first, last] = rowsOfNames(figure, plot);
        ASSERT_GE(last, first) << "a name is written";
        for (const double tick : figure.y.ticks()) {
            const double line = place({0, tick}, plot, figure).y();
            EXPECT_TRUE(line < first || line > last)
                << end << ": " << first << " to " << last << ", grid at " << line;
        }
        EXPECT_LT(std::abs((first + last) / 2.0 - place({10, end}, plot, figure).y()), 30) << "near its end";
    }
}

/// What a hand paints on an otherwise empty sheet.
template <class Paint>
QImage painted(Paint paint) {
    QImage sheet(500, 320, QImage::Format_RGB32);
    sheet.fill(Qt::white);
    QPainter painter(&sheet);
    ChartStyle style{theme::tokens(theme::Display::Daylight), QFont(QStringLiteral("DejaVu Sans")), 1.0};
    style.font.setPixelSize(14);
    paint(painter, style);
    return sheet;
}

TEST(ChartNames, noNameLiesOnANumberOfAnAxis) {
    const QRectF plot(50, 20, 400, 250);
    ChartFigure figure;
    figure.x = {QStringLiteral("Flow"), 0, 15, 5, 0};
    figure.y = {QStringLiteral("Head"), 0, 20, 5, 0};
    for (const double flow : {0.0, 0.5, 4.0, 5.0, 9.0, 14.5}) {
        figure.lines = {{LineRole::LastSystem, QStringLiteral("system"), {{0, 0.2}, {flow, 0.2}}}};
        figure.marks = {{MarkKind::Design, {flow, 0}, 0, 0, QStringLiteral("design")}};
        const QImage names = painted(
            [&](QPainter& painter, const ChartStyle& style) { paintNames(painter, plot, figure, style); });
        const QImage numbers = painted(
            [&](QPainter& painter, const ChartStyle& style) { paintScales(painter, plot, figure, style); });
        int named = 0;
        int covered = 0;
        for (int y = 0; y < names.height(); ++y) {
            for (int x = 0; x < names.width(); ++x) {
                const bool isNamed = names.pixelColor(x, y) != Qt::white;
                named += isNamed ? 1 : 0;
                covered += isNamed && numbers.pixelColor(x, y) != Qt::white ? 1 : 0;
            }
        }
        EXPECT_GT(named, 0);
        EXPECT_EQ(covered, 0) << "flow " << flow;
    }
}

}  // namespace
}  // namespace ww::ui::charts
