// Tab goes through a place as a person reads it. Not for what a key does inside a widget.
#pragma once

#include <QWidget>

namespace ww::ui {

/// Lets Tab go through everything a page holds in the order in which its layouts place it: line by line, one
/// column after the other, the pages of tabs and stacks one by one. To be called again when parts were added.
void tabInReadingOrder(QWidget& page);

}  // namespace ww::ui
