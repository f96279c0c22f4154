// The way that Tab goes through a window, and whether a person would read it so. Not for what a key does
// inside a control.
#pragma once

#include <QList>
#include <QString>
#include <QWidget>

namespace ww::support {

/// What has the keys, one after the other, as Tab (or Shift+Tab) is pressed until the first has them again;
/// at most 300 presses. Tables that keep Tab for their cells are left with Ctrl+Tab.
QList<QWidget*> wayRound(Qt::KeyboardModifiers shift);

/// What stands before what comes before it on a way, as names; empty where a person reads it so. Parts that
/// stand in columns side by side are read one column after the other.
QString orderFaults(const QList<QWidget*>& way);

}  // namespace ww::support
