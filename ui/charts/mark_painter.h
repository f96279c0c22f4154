// Draws the marks of a chart and finds places for their names that cover nothing. Not for axes and lines
// (chart_painter.h).
#pragma once

#include "ui/charts/chart_painter.h"

namespace ww::ui::charts {

/// Numbered discs beside or on their points, crosses, dots, and the bars of their uncertainty.
void paintMarks(QPainter& painter, const QRectF& plot, const ChartFigure& figure, const ChartStyle& style);
/// The names of lines at their ends, and those of design points.
void paintNames(QPainter& painter, const QRectF& plot, const ChartFigure& figure, const ChartStyle& style);

}  // namespace ww::ui::charts
