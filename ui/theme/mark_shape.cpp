#include "ui/theme/mark_shape.h"

#include "ui/theme/state_shape.h"

namespace ww::ui::theme {

void paintMark(QPainter& painter, const QRectF& box, ww::report::Mark mark, const Tokens& tokens) {
    using ww::report::Mark;
    if (mark == Mark::None) {
        return;
    }
    if (mark == Mark::Open) {
        Tokens inked = tokens;
        inked.doubt = tokens.ink;
        paintState(painter, box, balancing::State::Doubtful, false, inked);
        return;
    }
    const auto at = [&box](double x, double y) {
        return QPointF(box.left() + x * box.width(), box.top() + y * box.height());
    };
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    QPen pen(tokens.ink, box.width() * 0.17);
    pen.setCapStyle(Qt::FlatCap);
    pen.setJoinStyle(Qt::MiterJoin);
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    if (mark == Mark::Pass) {
        painter.drawPolyline(QPolygonF{at(0.08, 0.55), at(0.38, 0.85), at(0.94, 0.14)});
    } else {
        painter.drawLine(at(0.12, 0.12), at(0.88, 0.88));
        painter.drawLine(at(0.12, 0.88), at(0.88, 0.12));
    }
    painter.restore();
}

}  // namespace ww::ui::theme
