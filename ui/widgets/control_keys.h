// The keys that act in a control while it has the keys of the keyboard, by its kind. Not for what a place or
// a command of the window does.
#pragma once

#include <QWidget>

#include "ui/widgets/key_hints.h"

namespace ww::ui {

/// The keys of a table, a field, a choice, a button, a list or an area that scrolls; none of other kinds.
KeyHints controlKeys(const QWidget& control);

/// Whether undo takes back what is typed in the control, so that the window's own undo waits.
bool undoesItsOwn(const QWidget& control);

}  // namespace ww::ui
