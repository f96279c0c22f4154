// Targets too small or too close to touch with a glove.
#pragma once

#include <QSize>
#include <QString>
#include <QStringList>
#include <QWidget>

namespace ww::support {

/// Every visible target (button, field, choice and what it offers, tab, menu, list item, row) below `least`,
/// and every two of them closer together than `gap`; device-independent pixels. Items and rows of one list or
/// table stand beside one another. Rows of a table in the main window count where they are typed into, in a
/// dialog where they can be chosen.
QStringList targetFaults(const QWidget& window, QSize least, int gap);

}  // namespace ww::support
