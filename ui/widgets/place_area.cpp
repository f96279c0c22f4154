#include "ui/widgets/place_area.h"

#include <QApplication>
#include <algorithm>

#include "ui/widgets/laid_out_later.h"

namespace ww::ui {
namespace {

/// Scrolls an area until what has the keys is in sight; of what is higher than the area its beginning.
void showIn(QScrollArea& area, QWidget& widget) {
    constexpr int kMargin = 12;
    const int spare = area.viewport()->height() - widget.height();
    if (spare >= 0) {
        // ensureWidgetVisible() is content with the place of the cursor in a field.
        const QPoint center = widget.mapTo(area.widget(), widget.rect().center());
        area.ensureVisible(center.x(), center.y(), 0, widget.height() / 2 + 1 + std::min(kMargin, spare / 2));
    } else {
        const QPoint top = widget.mapTo(area.widget(), QPoint(0, 0));
        area.ensureVisible(top.x(), top.y(), 0, kMargin);
    }
}

}  // namespace

PlaceArea::PlaceArea(QWidget* parent) : PatientArea(parent) {
    setWidgetResizable(true);
    setFrameShape(NoFrame);
    setFocusPolicy(Qt::NoFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    // What has the keys is seen, also in an area within this one.
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) {
        if (now == nullptr || widget() == nullptr || !widget()->isAncestorOf(now)) {
            return;
        }
        for (QWidget* up = now->parentWidget(); up != parentWidget(); up = up->parentWidget()) {
            if (auto* area = qobject_cast<QScrollArea*>(up); area != nullptr && area->widget() != nullptr) {
                showIn(*area, *now);
            }
        }
    });
}

void PlaceArea::take(QWidget* place) {
    setWidget(laidOutLater(place));
}

}  // namespace ww::ui
