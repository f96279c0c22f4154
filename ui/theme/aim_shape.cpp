#include "ui/theme/aim_shape.h"

#include "ui/theme/state_shape.h"

namespace ww::ui::theme {

using balancing::AimWord;
using balancing::State;

QColor aimWordColor(AimWord word, const Tokens& tokens) {
    switch (word) {
        case AimWord::Open:
            return tokens.shortShare;
        case AimWord::Close:
            return tokens.over;
        case AimWord::Hold:
            return tokens.ink;
        case AimWord::ReadAgain:
            return tokens.doubt;
        case AimWord::AtStop:
            break;
    }
    return tokens.over;
}

void paintAimWord(QPainter& painter, const QRectF& box, AimWord word, const Tokens& tokens) {
    switch (word) {
        case AimWord::Hold:
            paintState(painter, box, State::OnShare, false, tokens);
            return;
        case AimWord::ReadAgain:
            paintState(painter, box, State::Doubtful, false, tokens);
            return;
        case AimWord::AtStop:
            paintState(painter, box, State::AtStop, true, tokens);
            return;
        case AimWord::Open:
        case AimWord::Close:
            break;
    }
    // Two arrows on a line, on a grid of 16 by 16: apart for open, together for close.
    const double side = std::min(box.width(), box.height());
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(box.center() - QPointF(side / 2, side / 2));
    painter.scale(side / 16.0, side / 16.0);
    painter.setPen(Qt::NoPen);
    painter.setBrush(aimWordColor(word, tokens));
    if (word == AimWord::Open) {
        painter.drawPolygon(QPolygonF{{6.5, 2}, {6.5, 14}, {0, 8}});
        painter.drawPolygon(QPolygonF{{9.5, 2}, {9.5, 14}, {16, 8}});
    } else {
        painter.drawPolygon(QPolygonF{{0, 2}, {0, 14}, {6.5, 8}});
        painter.drawPolygon(QPolygonF{{16, 2}, {16, 14}, {9.5, 8}});
        painter.drawRect(QRectF(7.25, 2, 1.5, 12));
    }
    painter.restore();
}

}  // namespace ww::ui::theme
