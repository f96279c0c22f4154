// What is said right after a reading was stored. Not for deciding whether it is doubtful (core/balancing).
#pragma once

#include "ui/loop_advisor.h"

namespace ww::ui {

inline constexpr base::MessageForm kRoundOpenedByTry{
    "round_opened_by_try", "round {1} opened; close it (Ctrl+Shift+W) once its valves are held and read"};

/// Raises the first doubt about the counting reading of a branch as a message, with the fix that one key
/// takes where there is one, and that the reading opened a round where it did. Where there is no doubt it says
/// that readings name nobody, or clears the message. What the learned loop advises otherwise is not said. True
/// where there is a doubt.
bool tellDoubt(WorkbookBridge& bridge, const LoopAdvisor& advisor, const base::Id& branch,
               bool hasOpenedRound = false);

}  // namespace ww::ui
