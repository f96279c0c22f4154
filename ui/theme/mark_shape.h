// The shape of a passed, failed or open check. Not for states of branches (state_shape.h).
#pragma once

#include <QPainter>

#include "core/report/report.h"
#include "ui/theme/theme.h"

namespace ww::ui::theme {

/// A tick, a cross or a question in a square, in ink; nothing for Mark::None. The painter comes back as it
/// was.
void paintMark(QPainter& painter, const QRectF& box, ww::report::Mark mark, const Tokens& tokens);

}  // namespace ww::ui::theme
