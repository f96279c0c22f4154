// How the faults of a window name what they are found at.
#pragma once

#include <QString>
#include <QWidget>

namespace ww::support {

/// The kind of a widget, what it says of itself, and the part of the desktop that it lies in.
QString nameOf(const QWidget& widget);
/// Whether a widget is a part of one of Qt's own, which lays it out itself.
bool isInner(const QWidget& widget);

}  // namespace ww::support
