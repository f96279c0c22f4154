#include "ui/widgets/place_area.h"

#include <QApplication>
#include <QPointer>
#include <QTimer>
#include <algorithm>

#include "ui/widgets/laid_out_later.h"

namespace ww::ui {
namespace {

constexpr const char* kSeenWith = "seen_with";

/// The part of an area that a control takes, with the words that are seen together with it where the area has
/// room for both.
QRect partOf(const QScrollArea& area, const QWidget& control) {
    const auto placed = [&area](const QWidget& widget) {
        return QRect(widget.mapTo(area.widget(), QPoint(0, 0)), widget.size());
    };
    const auto words = control.property(kSeenWith).value<QPointer<QWidget>>();
    if (words != nullptr && area.widget()->isAncestorOf(words)) {
        const QRect both = placed(control) | placed(*words);
        if (both.height() <= area.viewport()->height()) {
            return both;
        }
    }
    return placed(control);
}

/// Scrolls an area until what has the keys is in sight; of what is higher than the area its beginning.
void showIn(QScrollArea& area, const QWidget& widget) {
    constexpr int kMargin = 12;
    const QRect part = partOf(area, widget);
    const int across = -area.widget()->x();
    const int spare = area.viewport()->height() - part.height();
    if (spare >= 0) {
        // ensureWidgetVisible() is content with the place of the cursor in a field.
        area.ensureVisible(across, part.center().y(), 0,
                           part.height() / 2 + 1 + std::min(kMargin, spare / 2));
    } else {
        area.ensureVisible(across, part.top(), 0, kMargin);
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
        showInAll(*now);
        // What has just come in sight is not laid out yet.
        QTimer::singleShot(0, now, [this, now] {
            if (now->hasFocus() && widget() != nullptr && widget()->isAncestorOf(now)) {
                showInAll(*now);
            }
        });
    });
}

void PlaceArea::showInAll(const QWidget& control) {
    for (QWidget* up = control.parentWidget(); up != parentWidget(); up = up->parentWidget()) {
        if (auto* area = qobject_cast<QScrollArea*>(up); area != nullptr && area->widget() != nullptr) {
            showIn(*area, control);
        }
    }
}

void seeTogether(QWidget& control, QWidget& words) {
    control.setProperty(kSeenWith, QVariant::fromValue(QPointer<QWidget>(&words)));
}

void PlaceArea::take(QWidget* place) {
    setWidget(laidOutLater(place));
}

}  // namespace ww::ui
