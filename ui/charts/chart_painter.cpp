#include "ui/charts/chart_painter.h"

#include <QFontMetricsF>
#include <algorithm>

namespace ww::ui::charts {
namespace {

constexpr double kDisc = 8.5;

double nameWidth(const ChartFigure& figure, const QFontMetricsF& metrics) {
    double widest = 0;
    for (const Line& line : figure.lines) {
        widest = std::max(widest, metrics.horizontalAdvance(line.name));
    }
    return widest;
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
    if (line.role == LineRole::OneOfMany || line.role == LineRole::Singled) {
        const double radius = (line.role == LineRole::Singled ? 3.0 : 1.6) * style.pixel;
        painter.setBrush(penOf(line.role, style).color());
        painter.setPen(Qt::NoPen);
        for (const QPointF& point : polygon) {
            painter.drawEllipse(point, radius, radius);
        }
    }
}

void paintMark(QPainter& painter, QPointF at, QSizeF error, const PointMark& mark, const ChartStyle& style) {
    const double px = style.pixel;
    painter.setPen(QPen(style.tokens.ink, 1.3 * px));
    const double cap = 3.5 * px;
    if (error.width() > 0) {
        painter.drawLine(at - QPointF(error.width(), 0), at + QPointF(error.width(), 0));
        for (const double side : {-1.0, 1.0}) {
            const QPointF end = at + QPointF(side * error.width(), 0);
            painter.drawLine(end - QPointF(0, cap), end + QPointF(0, cap));
        }
    }
    if (error.height() > 0) {
        painter.drawLine(at - QPointF(0, error.height()), at + QPointF(0, error.height()));
        for (const double side : {-1.0, 1.0}) {
            const QPointF end = at + QPointF(0, side * error.height());
            painter.drawLine(end - QPointF(cap, 0), end + QPointF(cap, 0));
        }
    }
    const QFontMetricsF metrics(style.font);
    if (mark.kind == MarkKind::Duty) {
        const double radius = kDisc * px;
        painter.setBrush(style.tokens.paper);
        painter.setPen(QPen(style.tokens.ink, 1.8 * px));
        painter.drawEllipse(at, radius, radius);
        QFont number = style.font;
        number.setBold(true);
        const QFontMetricsF bold(number);
        painter.setFont(number);
        painter.setPen(style.tokens.ink);
        painter.drawText(at + QPointF(-bold.horizontalAdvance(mark.name) / 2, bold.capHeight() / 2),
                         mark.name);
        painter.setFont(style.font);
        return;
    }
    if (mark.kind == MarkKind::Design) {
        const double arm = 7 * px;
        painter.setPen(QPen(style.tokens.ink, 2.4 * px));
        painter.drawLine(at - QPointF(arm, arm), at + QPointF(arm, arm));
        painter.drawLine(at - QPointF(arm, -arm), at + QPointF(arm, -arm));
        painter.setPen(style.tokens.ink);
        painter.drawText(
            at + QPointF(-metrics.horizontalAdvance(mark.name) / 2, arm + 2 * px + metrics.ascent()),
            mark.name);
        return;
    }
    painter.setPen(Qt::NoPen);
    painter.setBrush(style.tokens.ink);
    painter.drawEllipse(at, 3 * px, 3 * px);
}

/// Boxes that a name must not cover.
std::vector<QRectF> boxesOfMarks(const QRectF& plot, const ChartFigure& figure, const ChartStyle& style) {
    std::vector<QRectF> boxes;
    for (const PointMark& mark : figure.marks) {
        const double radius = (kDisc + 2) * style.pixel;
        boxes.emplace_back(place(mark.at, plot, figure) - QPointF(radius, radius),
                           QSizeF(2 * radius, 2 * radius));
    }
    return boxes;
}

void paintNames(QPainter& painter, const QRectF& plot, const ChartFigure& figure, const ChartStyle& style) {
    const QFontMetricsF metrics(style.font);
    std::vector<QRectF> taken = boxesOfMarks(plot, figure, style);
    painter.setFont(style.font);
    for (const Line& line : figure.lines) {
        if (line.name.isEmpty() || line.points.empty()) {
            continue;
        }
        const QPointF end = place(line.points.back(), plot, figure);
        QRectF box(end.x() + 6 * style.pixel, end.y() - metrics.height() / 2,
                   metrics.horizontalAdvance(line.name), metrics.height());
        const auto isTaken = [&taken, &box] {
            return std::any_of(taken.begin(), taken.end(),
                               [&box](const QRectF& other) { return other.intersects(box); });
        };
        // Up to four lines further down, then as many up from the end: names stay near their lines.
        const double step = metrics.height();
        for (const int shift : {0, 1, -1, 2, -2, 3, -3}) {
            box.moveTop(end.y() - metrics.height() / 2 + shift * step);
            if (!isTaken()) {
                break;
            }
        }
        taken.push_back(box);
        const QColor color = penOf(line.role, style).color();
        painter.setPen(color == style.tokens.rule ? style.tokens.soft : color);
        painter.drawText(QPointF(box.left(), box.top() + metrics.ascent()), line.name);
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
    painter.drawText(QPointF(plot.left() - 16 * style.pixel - metrics.horizontalAdvance(figure.rowLabel), y),
                     figure.rowLabel);
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
    if (!figure.rowLabel.isEmpty()) {
        left = std::max(left, metrics.horizontalAdvance(figure.rowLabel) + 12 * style.pixel);
    }
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
        case LineRole::Proposed:
            pen = QPen(style.tokens.shortShare, 2.0 * px);
            pen.setDashPattern({7, 3.5});
            break;
        case LineRole::FirstSystem:
            pen = QPen(style.tokens.rule, 1.8 * px);
            pen.setDashPattern({1.2, 2.4});
            break;
        case LineRole::LastSystem:
            pen = QPen(style.tokens.over, 1.5 * px);
            break;
        case LineRole::OneOfMany:
            pen = QPen(style.tokens.rule, 0.9 * px);
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
    painter.setFont(style.font);
    for (const PointMark& mark : figure.marks) {
        const QPointF at = place(mark.at, plot, figure);
        const QPointF corner = place(mark.at + QPointF(mark.errorX, mark.errorY), plot, figure);
        paintMark(painter, at, QSizeF(corner.x() - at.x(), at.y() - corner.y()), mark, style);
    }
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
