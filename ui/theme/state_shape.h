// The shape of a branch's state, painted so that it can be told without colour. Not for the word beside it
// (ui/text).
#pragma once

#include <QPainter>
#include <QRectF>

#include "core/balancing/assessment.h"
#include "ui/theme/theme.h"

namespace ww::ui::theme {

/// Paints the shape of `state` into the largest square in the middle of `box`, on a grid of 16 by 16.
/// `isOver` turns the triangles of Drifted and AtStop upwards (Short and Over have their own direction). The
/// painter comes back as it was.
void paintState(QPainter& painter, const QRectF& box, balancing::State state, bool isOver,
                const Tokens& tokens);

/// The colour that goes with a state: ink where there is nothing left to do.
QColor stateColor(balancing::State state, bool isOver, const Tokens& tokens);
/// The tint behind a row in this state; paper where there is none.
QColor stateTint(balancing::State state, bool isOver, const Tokens& tokens);

}  // namespace ww::ui::theme
