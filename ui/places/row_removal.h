// The button that takes the row in hand out of a table: when it may be pressed, and what is said where no row
// is in hand. Not for taking it out.
#pragma once

#include <QPushButton>

#include "core/base/fault.h"

namespace ww::ui {

inline constexpr base::MessageForm kNoRowInHand{"no_row_in_hand",
                                                "no row is in hand; go to the row to remove first"};

/// Enables `button` where its table `holds` a row and `isWritable`; otherwise its tool tip and its
/// description say why not.
void offerRemoval(QPushButton& button, bool isWritable, bool holds);

}  // namespace ww::ui
