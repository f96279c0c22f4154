// Whether a person sees which control has the keys: the ring around it, as painted. Not for what the keys do.
#pragma once

#include <QList>
#include <QString>
#include <QWidget>

namespace ww::support {

/// Every control of a window that Tab may stop at, in the order of the window's chain of keys.
QList<QWidget*> tabStops(const QWidget& window);

/// What is wrong with the ring of a control, empty where nothing is. The window is painted with the keys
/// elsewhere and with the keys here; along each whole side of the control (or of the tab, or of the cell or
/// item in hand of a list) pixels in a line of at least two must differ by 3:1. All sides must be in sight
/// where the control has room in the window; of a higher one its top.
QString ringFault(QWidget& window, QWidget& control);

}  // namespace ww::support
