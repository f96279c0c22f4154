#include "ui/theme/state_shape.h"

#include <QPainterPath>
#include <algorithm>

namespace ww::ui::theme {
namespace {

using balancing::State;

/// Point down; `isOver` mirrors it to point up, in the same box.
QPolygonF triangle(QPointF left, QPointF right, QPointF tip, bool isOver) {
    QPolygonF polygon{left, right, tip};
    if (isOver) {
        for (QPointF& point : polygon) {
            point.setY(left.y() + tip.y() - point.y());
        }
    }
    return polygon;
}

void paintRing(QPainter& painter, const QColor& color) {
    // Dash lengths are counted in pen widths.
    QPen pen(color, 2.0);
    pen.setCapStyle(Qt::FlatCap);
    pen.setDashPattern({1.6, 1.6});
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(QPointF(8, 8), 6, 6);
}

void paintSolid(QPainter& painter, const QColor& color, bool isOver) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(color);
    painter.drawPolygon(triangle({1, 2}, {15, 2}, {8, 15}, isOver));
}

void paintDrifted(QPainter& painter, const QColor& color, bool isOver) {
    QPen pen(color, 1.6);
    pen.setJoinStyle(Qt::MiterJoin);
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    const QPolygonF outline = triangle({1, 2}, {15, 2}, {8, 15}, isOver);
    painter.drawPolygon(outline);
    painter.setPen(Qt::NoPen);
    painter.setBrush(color);
    painter.drawEllipse((outline[0] + outline[1] + outline[2]) / 3.0, 2, 2);
}

void paintAtStop(QPainter& painter, const QColor& color, bool isOver) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(color);
    painter.drawPolygon(triangle({3.8, 3}, {12.2, 3}, {8, 13}, isOver));
    painter.drawRect(QRectF(0.5, 1, 2.5, 14));
    painter.drawRect(QRectF(13, 1, 2.5, 14));
}

void paintDoubtful(QPainter& painter, const Tokens& tokens, const QColor& color) {
    const QRectF square(1.5, 1.5, 13, 13);
    painter.setPen(QPen(color, 1.0));
    // Lines at 45 degrees, 4 apart across them, cut at the square by hand: a clip would not print as a
    // vector.
    const double step = 4.0 * 1.41421356;
    for (double sum = square.left() + square.top() + step / 2; sum < square.right() + square.bottom();
         sum += step) {
        const double x0 = std::max(square.left(), sum - square.bottom());
        const double x1 = std::min(square.right(), sum - square.top());
        painter.drawLine(QPointF(x0, sum - x0), QPointF(x1, sum - x1));
    }
    painter.setPen(QPen(color, 1.5));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(square);
    painter.setPen(Qt::NoPen);
    painter.setBrush(tokens.paper);
    painter.drawRect(QRectF(4.5, 3, 7, 10));
    // The question mark is drawn, not set: a shape must look the same with every font.
    QPainterPath mark;
    mark.moveTo(5.9, 6.1);
    mark.cubicTo(5.9, 2.9, 10.2, 2.9, 10.2, 6.0);
    mark.cubicTo(10.2, 7.9, 8.0, 7.6, 8.0, 9.6);
    QPen pen(color, 1.8);
    pen.setCapStyle(Qt::FlatCap);
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(mark);
    painter.setPen(Qt::NoPen);
    painter.setBrush(color);
    painter.drawRect(QRectF(7.0, 10.7, 2, 2));
}

}  // namespace

QColor stateColor(State state, bool isOver, const Tokens& tokens) {
    switch (state) {
        case State::NotRead:
            return tokens.rule;
        case State::Short:
            return tokens.shortShare;
        case State::Over:
            return tokens.over;
        case State::OnShare:
            return tokens.ink;
        case State::Drifted:
        case State::AtStop:
            return isOver ? tokens.over : tokens.shortShare;
        case State::Doubtful:
            break;
    }
    return tokens.doubt;
}

QColor stateTint(State state, bool isOver, const Tokens& tokens) {
    switch (state) {
        case State::NotRead:
        case State::OnShare:
            return tokens.paper;
        case State::Short:
            return tokens.tintShort;
        case State::Over:
            return tokens.tintOver;
        case State::Drifted:
        case State::AtStop:
            return isOver ? tokens.tintOver : tokens.tintShort;
        case State::Doubtful:
            break;
    }
    return tokens.tintDoubt;
}

void paintState(QPainter& painter, const QRectF& box, State state, bool isOver, const Tokens& tokens) {
    const double side = std::min(box.width(), box.height());
    const QColor color = stateColor(state, isOver, tokens);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(box.center() - QPointF(side / 2, side / 2));
    painter.scale(side / 16.0, side / 16.0);
    switch (state) {
        case State::NotRead:
            paintRing(painter, color);
            break;
        case State::Short:
            paintSolid(painter, color, false);
            break;
        case State::Over:
            paintSolid(painter, color, true);
            break;
        case State::OnShare:
            painter.setPen(Qt::NoPen);
            painter.setBrush(color);
            painter.drawEllipse(QPointF(8, 8), 7, 7);
            break;
        case State::Drifted:
            paintDrifted(painter, color, isOver);
            break;
        case State::AtStop:
            paintAtStop(painter, color, isOver);
            break;
        case State::Doubtful:
            paintDoubtful(painter, tokens, color);
            break;
    }
    painter.restore();
}

}  // namespace ww::ui::theme
