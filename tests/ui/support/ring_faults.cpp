#include "tests/ui/support/ring_faults.h"

#include <QAbstractItemView>
#include <QAbstractScrollArea>
#include <QImage>
#include <QPixmap>
#include <QTabBar>
#include <QTest>
#include <functional>

#include "tests/ui/support/color_math.h"

namespace ww::support {
namespace {

constexpr double kLeastRatio = 3.0;
constexpr int kLeastThickness = 2;
/// The ring lies in this many pixels from the edge: a frame of up to 2 px that was there before, and itself.
constexpr int kDeepest = 6;
/// At each end of a side, where corners are round.
constexpr int kCorner = 4;

/// The longest run of pixels, from the edge inwards, that differ enough.
int thickness(const std::function<bool(int depth)>& differs) {
    int longest = 0;
    int run = 0;
    for (int depth = 0; depth < kDeepest; ++depth) {
        run = differs(depth) ? run + 1 : 0;
        longest = std::max(longest, run);
    }
    return longest;
}

/// A part of a window, without and with the keys in a control.
struct Painted {
    QRect area;
    QImage without;
    QImage with;

    /// Of a point of the window.
    bool differs(const QPoint& at) const {
        const QRgb before = without.pixel(at - area.topLeft());
        const QRgb after = with.pixel(at - area.topLeft());
        return before != after && contrastRatio(QColor(before), QColor(after)) >= kLeastRatio;
    }
};

/// How many places along a side have no ring; `along` leads along the side, `inwards` into the control.
int bare(const Painted& painted, const QPoint& start, int length, const QPoint& along,
         const QPoint& inwards) {
    int count = 0;
    for (int i = kCorner; i < length - kCorner; ++i) {
        const auto differs = [&](int depth) { return painted.differs(start + i * along + depth * inwards); };
        count += thickness(differs) < kLeastThickness ? 1 : 0;
    }
    return count;
}

/// Faults of the sides of `whole` that are in sight in `seen`; both in the window.
QString sideFaults(const Painted& painted, const QRect& whole, const QRect& seen) {
    constexpr QPoint kRight(1, 0);
    constexpr QPoint kDown(0, 1);
    QStringList faults;
    const auto check = [&](const char* name, bool isSeen, const QPoint& start, int length,
                           const QPoint& along, const QPoint& inwards) {
        if (!isSeen) {
            return;
        }
        if (const int missing = bare(painted, start, length, along, inwards); missing > 0) {
            faults << QString("%1 %2 of %3 px").arg(name).arg(missing).arg(length);
        }
    };
    check("top", seen.top() == whole.top(), seen.topLeft(), seen.width(), kRight, kDown);
    check("bottom", seen.bottom() == whole.bottom(), seen.bottomLeft(), seen.width(), kRight, -kDown);
    check("left", seen.left() == whole.left(), seen.topLeft(), seen.height(), kDown, kRight);
    check("right", seen.right() == whole.right(), seen.topRight(), seen.height(), kDown, -kRight);
    return faults.isEmpty() ? QString() : "no ring at " + faults.join(", ");
}

/// Where the ring may be: around the control, or around the part of it that the keys are in.
QList<QRect> ringedParts(const QWidget& control) {
    QList<QRect> parts{control.rect()};
    if (const auto* tabs = qobject_cast<const QTabBar*>(&control)) {
        parts << tabs->tabRect(tabs->currentIndex());
    } else if (const auto* view = qobject_cast<const QAbstractItemView*>(&control);
               view != nullptr && view->currentIndex().isValid()) {
        parts << view->visualRect(view->currentIndex()).translated(view->viewport()->pos());
    }
    return parts;
}

/// The room that what scrolls around a control has for it.
QSize roomFor(const QWidget& window, const QWidget& control) {
    QSize room = window.size();
    for (const QWidget* up = control.parentWidget(); up != nullptr && up != &window;
         up = up->parentWidget()) {
        const auto* area = qobject_cast<const QAbstractScrollArea*>(up->parentWidget());
        if (area != nullptr && area->viewport() == up) {
            room = room.boundedTo(up->size());
        }
    }
    return room;
}

/// The part of a box in a control that no parent cuts off.
QRect clipped(const QWidget& control, QRect box) {
    QPoint offset;
    for (const QWidget* at = &control; at->parentWidget() != nullptr && !at->isWindow();
         at = at->parentWidget()) {
        offset += at->pos();
        box &= at->parentWidget()->rect().translated(-offset);
    }
    return box;
}

QString partFault(const Painted& painted, const QWidget& window, const QWidget& control, const QRect& part) {
    const QRect inSight = clipped(control, part);
    const QSize room = roomFor(window, control);
    const bool isHigher = part.height() > room.height();
    if (inSight.isEmpty() || (isHigher ? inSight.top() != part.top() : inSight != part)) {
        return QString("%1x%2 of it, only %3x%4 in sight")
            .arg(part.width())
            .arg(part.height())
            .arg(inSight.width())
            .arg(inSight.height());
    }
    const auto inWindow = [&](const QRect& box) {
        return QRect(control.mapTo(&window, box.topLeft()), box.size());
    };
    return sideFaults(painted, inWindow(part), inWindow(inSight));
}

/// Where the control lies in the window, as far as it is in it.
QRect placeOf(const QWidget& window, const QWidget& control) {
    return QRect(control.mapTo(&window, QPoint()), control.size()) & window.rect();
}

/// Without the keys, which another has, and with them.
Painted paintedIn(const QRect& area, QWidget& window, QWidget& control) {
    Painted painted{area, window.grab(area).toImage(), {}};
    control.setFocus(Qt::OtherFocusReason);
    QTest::qWait(0);
    painted.with = window.grab(area).toImage();
    return painted;
}

}  // namespace

QList<QWidget*> tabStops(const QWidget& window) {
    QList<QWidget*> stops;
    for (QWidget* widget = window.nextInFocusChain(); widget != nullptr && widget != &window;
         widget = widget->nextInFocusChain()) {
        if (widget->isVisible() && widget->isEnabled() && widget->window() == &window &&
            widget->focusProxy() == nullptr && (widget->focusPolicy() & Qt::TabFocus) == Qt::TabFocus) {
            stops << widget;
        }
    }
    return stops;
}

QString ringFault(QWidget& window, QWidget& control) {
    // What scrolls to show the control has done so before the first picture.
    control.setFocus(Qt::OtherFocusReason);
    QTest::qWait(0);
    window.setFocus(Qt::OtherFocusReason);
    QTest::qWait(0);
    const QRect place = placeOf(window, control);
    Painted painted = paintedIn(place, window, control);
    if (placeOf(window, control) != place) {
        window.setFocus(Qt::OtherFocusReason);
        QTest::qWait(0);
        painted = paintedIn(window.rect(), window, control);
    }
    if (!control.hasFocus()) {
        return "it does not take the keys";
    }
    QStringList faults;
    for (const QRect& part : ringedParts(control)) {
        const QString found = partFault(painted, window, control, part);
        if (found.isEmpty()) {
            return {};
        }
        faults << found;
    }
    return faults.join("; ");
}

}  // namespace ww::support
