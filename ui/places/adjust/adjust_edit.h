// What is typed at a valve in hand, as edits of the job. Not for carrying them out.
#pragma once

#include <QString>

#include "core/balancing/adjusting.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {

/// What the next typed dp is.
enum class TypedDp { Try, RepeatedTry, Reference, ShutValve };

/// Stores a typed dp at a branch: at `setting` where it is a try. Refused: text that is no number, and what
/// balancing/adjusting.h refuses.
base::Outcome storeTyped(WorkbookBridge& bridge, const base::Id& branch, const QString& text, TypedDp what,
                         const base::Decimal& setting, bool isHold);
/// The newest try becomes the one at which the valve is left.
base::Outcome holdTyped(WorkbookBridge& bridge, const base::Id& branch, const base::Decimal& setting);

}  // namespace ww::ui
