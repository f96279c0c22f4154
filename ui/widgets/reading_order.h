// The order in which Tab goes through a window: that in which a person reads it. Not for what a key does
// inside a widget.
#pragma once

#include <QWidget>
#include <vector>

namespace ww::ui {

/// What Tab stops at in `page` as it stands now, in the order in which its layouts place it: line by line,
/// one column after the other. What is hidden or disabled is left out; of buttons that exclude one another
/// the checked one is a stop, or the first where none is.
std::vector<QWidget*> stopsInReadingOrder(QWidget& page);

/// Gives the keys to the stop of `window` that follows what has them, or comes before it where not
/// `isForward`; the last is followed by the first. False where there is no other stop.
bool goToNextStop(QWidget& window, bool isForward);

/// Gives the keys to the next part of `page` behind what has them: to the next list, table, diagram, chart or
/// bar of tabs in reading order. False where none follows, or the keys are elsewhere.
bool goToNextPart(QWidget& page);

/// Makes `second` the stop after `first`, wherever layouts place it. `first` must live as long as `second`.
void stopAfter(QWidget& first, QWidget& second);

}  // namespace ww::ui
