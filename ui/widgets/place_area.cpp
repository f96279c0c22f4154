#include "ui/widgets/place_area.h"

#include <QApplication>

namespace ww::ui {

PlaceArea::PlaceArea(QWidget* place, QWidget* parent) : QScrollArea(parent) {
    // A place that is not shown yet need not be measured.
    place->setAttribute(Qt::WA_Resized);
    setWidget(place);
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
