// Draws a chart figure with a painter: on paper as vectors, and the marks and names over a chart on the
// screen. Not for numbers (chart_figure.h).
#pragma once

#include <QFont>
#include <QPainter>
#include <QRectF>

#include "ui/charts/chart_figure.h"
#include "ui/theme/theme.h"

namespace ww::ui::charts {

struct ChartStyle {
    theme::Tokens tokens;
    QFont font;          ///< with a pixel size in the painter's units
    double pixel = 1.0;  ///< one pixel of the screen in the painter's units
};

/// Where the axes stand inside a chart of this size, with room for names at the right.
QRectF plotArea(const QRectF& box, const ChartFigure& figure, const ChartStyle& style);
/// The place of a point of the figure.
QPointF place(QPointF point, const QRectF& plot, const ChartFigure& figure);

/// The pen of a line: width and dash tell the roles apart without colour.
QPen penOf(LineRole role, const ChartStyle& style);

/// Numbers at the ticks and the titles of the axes.
void paintScales(QPainter& painter, const QRectF& plot, const ChartFigure& figure, const ChartStyle& style);
/// Numbered discs, crosses and bars, the names at line ends, and the row under the axis.
void paintMarksAndNames(QPainter& painter, const QRectF& plot, const ChartFigure& figure,
                        const ChartStyle& style);

/// The whole chart without its sentence. No transparency, no clipping.
void paintChart(QPainter& painter, const QRectF& box, const ChartFigure& figure, const ChartStyle& style);

}  // namespace ww::ui::charts
