#include "ui/charts/chart_painter.h"

#include <QFontMetricsF>
#include <algorithm>

#include "ui/charts/mark_painter.h"

namespace ww::ui::charts {
namespace {

double nameWidth(const ChartFigure& figure, const QFontMetricsF& metrics) {
    double widest = 0;
    for (const Line& line : figure.lines) {
        widest = std::max(widest, metrics.horizontalAdvance(line.name));
    }
    return widest;
}

/// Room left of the plot for the label of the row under the axis, clear of its first cell.
double rowRoom(const ChartFigure& figure, const QFontMetricsF& metrics, const ChartStyle& style) {
    if (figure.rowLabel.isEmpty()) {
        return 0;
    }
    const double half =
        figure.rowCells.isEmpty() ? 0 : metrics.horizontalAdvance(figure.rowCells.front()) / 2;
    return metrics.horizontalAdvance(figure.rowLabel) + half + 7 * style.pixel;
}

void paintBand(QPainter& painter, const QRectF& plot, const ChartFigure& figure, const ChartStyle& style) {
    if (!figure.band) {
        return;
    }
    const QPointF low = place({figure.x.least, figure.band->low}, plot, figure);
    const QPointF high = place({figure.x.most, figure.band->high}, plot, figure);
    painter.setPen(Qt::NoPen);
    painter.setBrush(style.tokens.panel);
    painter.drawRect(QRectF(QPointF(low.x(), high.y()), QPointF(high.x(), low.y())));
    painter.setPen(penOf(LineRole::Limit, style));
    painter.drawLine(QPointF(low.x(), low.y()), QPointF(high.x(), low.y()));
    painter.drawLine(QPointF(low.x(), high.y()), QPointF(high.x(), high.y()));
}

void paintAxes(QPainter& painter, const QRectF& plot, const ChartFigure& figure, const ChartStyle& style) {
    const QPen axis(style.tokens.rule, 1.2 * style.pixel);
    painter.setPen(QPen(style.tokens.rule, 0.4 * style.pixel));
    for (const double tick : figure.y.ticks()) {
        const QPointF at = place({figure.x.least, tick}, plot, figure);
        painter.drawLine(at, QPointF(plot.right(), at.y()));
    }
    painter.setPen(axis);
    painter.drawLine(plot.bottomLeft(), plot.bottomRight());
    painter.drawLine(plot.bottomLeft(), plot.topLeft());
}

void paintLine(QPainter& painter, const QRectF& plot, const ChartFigure& figure, const Line& line,
               const ChartStyle& style) {
    QPolygonF polygon;
    for (const QPointF& point : line.points) {
        polygon << place(point, plot, figure);
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(penOf(line.role, style));
    painter.drawPolyline(polygon);
    if (hasDots(line.role)) {
        const double radius = (line.role == LineRole::Singled ? 3.0 : 1.6) * style.pixel;
        painter.setBrush(penOf(line.role, style).color());
        painter.setPen(Qt::NoPen);
        for (const QPointF& point : polygon) {
            painter.drawEllipse(point, radius, radius);
        }
    }
}

void paintRow(QPainter& painter, const QRectF& plot, const ChartFigure& figure, const ChartStyle& style) {
    if (figure.rowLabel.isEmpty()) {
        return;
    }
    const QFontMetricsF metrics(style.font);
    const double y = plot.bottom() + 5 * style.pixel + metrics.height() + metrics.ascent();
    painter.setPen(style.tokens.ink);
    painter.setFont(style.font);
    painter.drawText(QPointF(plot.left() - rowRoom(figure, metrics, style), y), figure.rowLabel);
    const std::vector<double> ticks = figure.x.ticks();
    for (qsizetype i = 0; i < figure.rowCells.size() && i < static_cast<qsizetype>(ticks.size()); ++i) {
        const QPointF at = place({ticks[static_cast<std::size_t>(i)], figure.y.least}, plot, figure);
        painter.drawText(QPointF(at.x() - metrics.horizontalAdvance(figure.rowCells[i]) / 2, y),
                         figure.rowCells[i]);
    }
}

}  // namespace

QRectF plotArea(const QRectF& box, const ChartFigure& figure, const ChartStyle& style) {
    const QFontMetricsF metrics(style.font);
    double left = 0;
    for (const double tick : figure.y.ticks()) {
        left = std::max(left, metrics.horizontalAdvance(QString::number(tick, 'f', figure.y.decimals)));
    }
    left = std::max(left, rowRoom(figure, metrics, style));
    const double bottom = 5 * style.pixel + (figure.rowLabel.isEmpty() ? 2.2 : 3.2) * metrics.height();
    return box.adjusted(left + 9 * style.pixel, 1.6 * metrics.height(),
                        -std::max(nameWidth(figure, metrics) + 10 * style.pixel, 2 * metrics.height()),
                        -bottom);
}

QPointF place(QPointF point, const QRectF& plot, const ChartFigure& figure) {
    return {plot.left() + plot.width() * (point.x() - figure.x.least) / (figure.x.most - figure.x.least),
            plot.bottom() - plot.height() * (point.y() - figure.y.least) / (figure.y.most - figure.y.least)};
}

QPen penOf(LineRole role, const ChartStyle& style) {
    const double px = style.pixel * (style.tokens.isDaylight ? 1.2 : 1.0);
    QPen pen;
    pen.setCapStyle(Qt::FlatCap);
    switch (role) {
        case LineRole::PumpCurve:
            pen = QPen(style.tokens.ink, 2.5 * px);
            break;
        case LineRole::FirstPump:
            pen = QPen(style.tokens.soft, 1.2 * px);
            break;
        case LineRole::Proposed:
            pen = QPen(style.tokens.shortShare, 2.0 * px);
            pen.setDashPattern({7, 3.5});
            break;
        case LineRole::Trimmed:
            pen = QPen(style.tokens.doubt, 1.8 * px);
            pen.setDashPattern({6, 2.5, 1.2, 2.5});
            break;
        case LineRole::FirstSystem:
            pen = QPen(style.tokens.rule, 1.8 * px);
            pen.setDashPattern({1.2, 2.4});
            break;
        case LineRole::ReturnPipe:
            pen = QPen(style.tokens.ink, 2.5 * px);
            pen.setDashPattern({2.4, 1.2});
            break;
        case LineRole::LastSystem:
            pen = QPen(style.tokens.over, 1.5 * px);
            break;
        case LineRole::OneOfMany:
            pen = QPen(style.tokens.rule, 0.9 * px);
            break;
        case LineRole::Summary:
            pen = QPen(style.tokens.soft, 1.4 * px);
            pen.setDashPattern({6, 3});
            break;
        case LineRole::Singled:
            pen = QPen(style.tokens.ink, 1.8 * px);
            break;
        case LineRole::Limit:
            pen = QPen(style.tokens.soft, 1.0 * px);
            pen.setDashPattern({4, 3});
            break;
    }
    return pen;
}

void paintScales(QPainter& painter, const QRectF& plot, const ChartFigure& figure, const ChartStyle& style) {
    // A chart is not mirrored: what is written on it runs as its own letters do.
    painter.setLayoutDirection(Qt::LayoutDirectionAuto);
    const QFontMetricsF metrics(style.font);
    const double gap = 5 * style.pixel;
    painter.setFont(style.font);
    for (const double tick : figure.y.ticks()) {
        const QPointF at = place({figure.x.least, tick}, plot, figure);
        const QString text = QString::number(tick, 'f', figure.y.decimals);
        painter.setPen(style.tokens.soft);
        painter.drawText(
            QPointF(at.x() - gap - metrics.horizontalAdvance(text), at.y() + metrics.capHeight() / 2), text);
    }
    for (const double tick : figure.x.ticks()) {
        const QPointF at = place({tick, figure.y.least}, plot, figure);
        painter.setPen(QPen(style.tokens.rule, 1.2 * style.pixel));
        painter.drawLine(at, at + QPointF(0, 0.6 * gap));
        const QString text = QString::number(tick, 'f', figure.x.decimals);
        painter.setPen(style.tokens.soft);
        painter.drawText(at + QPointF(-metrics.horizontalAdvance(text) / 2, gap + metrics.ascent()), text);
    }
    painter.setPen(style.tokens.ink);
    painter.drawText(QPointF(plot.left(), plot.top() - gap - metrics.descent()), figure.y.title);
    const double below = figure.rowLabel.isEmpty() ? 2 : 3;
    painter.drawText(QPointF(plot.right() - metrics.horizontalAdvance(figure.x.title),
                             plot.bottom() + gap + below * metrics.height() - metrics.descent()),
                     figure.x.title);
}

void paintMarksAndNames(QPainter& painter, const QRectF& plot, const ChartFigure& figure,
                        const ChartStyle& style) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setLayoutDirection(Qt::LayoutDirectionAuto);
    painter.setFont(style.font);
    paintMarks(painter, plot, figure, style);
    paintNames(painter, plot, figure, style);
    paintRow(painter, plot, figure, style);
    painter.restore();
}

void paintChart(QPainter& painter, const QRectF& box, const ChartFigure& figure, const ChartStyle& style) {
    if (figure.isEmpty()) {
        return;
    }
    const QRectF plot = plotArea(box, figure, style);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paintBand(painter, plot, figure, style);
    paintAxes(painter, plot, figure, style);
    paintScales(painter, plot, figure, style);
    for (const Line& line : figure.lines) {
        paintLine(painter, plot, figure, line, style);
    }
    painter.restore();
    paintMarksAndNames(painter, plot, figure, style);
}

}  // namespace ww::ui::charts
