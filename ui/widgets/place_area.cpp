#include "ui/widgets/place_area.h"

#include <QApplication>

#include "ui/widgets/laid_out_later.h"

namespace ww::ui {

PlaceArea::PlaceArea(QWidget* place, QWidget* parent) : QScrollArea(parent) {
    setWidget(laidOutLater(place));
    setWidgetResizable(true);
    setFrameShape(NoFrame);
    setFocusPolicy(Qt::NoFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    // What has the keys is seen.
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) {
        if (now != nullptr && widget()->isAncestorOf(now)) {
            constexpr int kMargin = 12;
            ensureWidgetVisible(now, 0, kMargin);
        }
    });
}

}  // namespace ww::ui
