// Where names are written on a chart. That nothing strikes them out is a decision of this project.
#include <gtest/gtest.h>

#include <QImage>

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

}  // namespace
}  // namespace ww::ui::charts
