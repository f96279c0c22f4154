#include "ui/schematic/schematic_signs.h"

#include <QPainterPath>

namespace ww::ui::schematic {

void paintPipe(QPainter& painter, const QLineF& pipe, bool isDouble, const theme::Tokens& tokens) {
    const double width = tokens.isDaylight ? 2.5 : 1.8;
    painter.setPen(
        QPen(isDouble ? tokens.ink : tokens.rule, isDouble ? 1.6 : width, Qt::SolidLine, Qt::FlatCap));
    if (!isDouble) {
        painter.drawLine(pipe);
        return;
    }
    painter.setPen(QPen(tokens.paper, 5));
    painter.drawLine(pipe);
    painter.setPen(QPen(tokens.ink, 1.6, Qt::SolidLine, Qt::FlatCap));
    const QPointF aside = pipe.dx() == 0 ? QPointF(2.0, 0) : QPointF(0, 2.0);
    painter.drawLine(pipe.translated(aside));
    painter.drawLine(pipe.translated(-aside));
}

void paintValve(QPainter& painter, QPointF middle, bool isDown, double openFraction,
                const theme::Tokens& tokens) {
    painter.save();
    painter.translate(middle);
    if (isDown) {
        painter.rotate(90);
    }
    QPainterPath bow;
    bow.moveTo(-10, -7);
    bow.lineTo(10, 7);
    bow.lineTo(10, -7);
    bow.lineTo(-10, 7);
    bow.closeSubpath();
    painter.setPen(QPen(tokens.ink, 1.4));
    painter.setBrush(tokens.paper);
    painter.drawPath(bow);
    const double reach = 10 * openFraction;
    QPainterPath wedge;
    wedge.moveTo(0, 0);
    wedge.lineTo(reach, 7 * openFraction);
    wedge.lineTo(reach, -7 * openFraction);
    wedge.closeSubpath();
    wedge.moveTo(0, 0);
    wedge.lineTo(-reach, 7 * openFraction);
    wedge.lineTo(-reach, -7 * openFraction);
    wedge.closeSubpath();
    painter.fillPath(wedge, tokens.ink);
    painter.restore();
}

void paintUnit(QPainter& painter, QPointF middle, const theme::Tokens& tokens) {
    painter.setPen(QPen(tokens.ink, 1.4));
    painter.setBrush(tokens.paper);
    painter.drawRect(QRectF(middle - QPointF(4, 4), QSizeF(8, 8)));
}

void paintPump(QPainter& painter, QPointF middle, const theme::Tokens& tokens) {
    painter.setPen(QPen(tokens.ink, 2));
    painter.setBrush(tokens.paper);
    painter.drawEllipse(middle, 14, 14);
    QPainterPath arrow;
    arrow.moveTo(middle + QPointF(-6, -9));
    arrow.lineTo(middle + QPointF(13, 0));
    arrow.lineTo(middle + QPointF(-6, 9));
    painter.drawPath(arrow);
}

}  // namespace ww::ui::schematic
