#include "ui/widgets/place_area.h"

#include <QApplication>

#include "ui/widgets/laid_out_later.h"

namespace ww::ui {

PlaceArea::PlaceArea(QWidget* parent) : QScrollArea(parent) {
    setWidgetResizable(true);
    setFrameShape(NoFrame);
    setFocusPolicy(Qt::NoFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    // What has the keys is seen.
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) {
        if (now != nullptr && widget() != nullptr && widget()->isAncestorOf(now)) {
            constexpr int kMargin = 12;
            if (now->height() + 2 * kMargin < viewport()->height()) {
                ensureWidgetVisible(now, 0, kMargin);
            } else {
                // Of what is higher than the place its beginning is enough.
                const QPoint top = now->mapTo(widget(), QPoint(0, 0));
                ensureVisible(top.x(), top.y(), 0, kMargin);
            }
        }
    });
}

void PlaceArea::take(QWidget* place) {
    setWidget(laidOutLater(place));
}

}  // namespace ww::ui
