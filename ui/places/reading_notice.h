// What is said right after a reading was stored. Not for deciding whether it is doubtful (core/balancing).
#pragma once

#include "ui/workbook_bridge.h"

namespace ww::ui {

/// Raises the first doubt about the counting reading of a branch as a message, with the fix that one key
/// takes where there is one. Where there is no doubt it says that readings name nobody, or clears the
/// message.
void tellDoubt(WorkbookBridge& bridge, const base::Id& branch);

}  // namespace ww::ui
