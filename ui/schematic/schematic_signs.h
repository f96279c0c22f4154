// The signs of a one-line diagram, in units of its scene: what the diagram and its key share. Not for the
// shapes of states (theme/state_shape.h).
#pragma once

#include <QLineF>
#include <QPainter>

#include "ui/theme/theme.h"

namespace ww::ui::schematic {

/// A pipe; on the index circuit a double line.
void paintPipe(QPainter& painter, const QLineF& pipe, bool isDouble, const theme::Tokens& tokens);
/// A balancing valve round a point, filled from its waist outward as far as it is open, 0 to 1; in a pipe
/// that goes right or down.
void paintValve(QPainter& painter, QPointF middle, bool isDown, double openFraction,
                const theme::Tokens& tokens);
/// The unit that a circuit serves, where it turns back into the return.
void paintUnit(QPainter& painter, QPointF middle, const theme::Tokens& tokens);
/// The pump, which delivers to the right.
void paintPump(QPainter& painter, QPointF middle, const theme::Tokens& tokens);

}  // namespace ww::ui::schematic
