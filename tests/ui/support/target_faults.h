// Targets too small or too close to touch with a glove.
#pragma once

#include <QSize>
#include <QString>
#include <QStringList>
#include <QWidget>

namespace ww::support {

/// Every visible target (button, field, choice, tab, menu, list item) below `least`, and every two of them
/// closer together than `gap`; device-independent pixels. Rows of one table are one target.
QStringList targetFaults(const QWidget& window, QSize least, int gap);

}  // namespace ww::support
