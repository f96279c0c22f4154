// The shape beside the word at a valve in hand: open, close, hold, read again, at stop. Told without color.
// Not for the word itself (ui/text).
#pragma once

#include <QPainter>
#include <QRectF>

#include "core/balancing/aim.h"
#include "ui/theme/theme.h"

namespace ww::ui::theme {

/// Paints the shape into the largest square in the middle of `box`: arrows apart for open, arrows together
/// for close, else the shape of the state that says the same. The painter comes back as it was.
void paintAimWord(QPainter& painter, const QRectF& box, balancing::AimWord word, const Tokens& tokens);

/// The color that goes with it: ink where there is nothing to turn.
QColor aimWordColor(balancing::AimWord word, const Tokens& tokens);

}  // namespace ww::ui::theme
