// How well the real flows of a practice building are shared out in one state. Not for readings (building.h)
// nor for what was found about the building (comparison.h).
#pragma once

#include <optional>

#include "core/practice/building.h"

namespace ww::practice {

/// Shares over target shares, of the terminals; and what the pump would have to make.
struct Outcome {
    Ratio worstTrue;       ///< largest |share / target - 1|, by true flows
    Ratio worstIndicated;  ///< the same by what a reader without noise reads with the valve tables
    Ratio spread;          ///< largest of the groups: largest minus smallest of target, by true flows
    Ratio lowestOfDesign;  ///< least flow over design flow of a terminal
    bool hasOpenMemberInEveryGroup = false;  ///< some valve of every group with valves stands fully open
    /// The head that gives the least supplied terminal exactly its design flow with these settings; nothing
    /// where a terminal is shut.
    std::optional<quantity::Head> headNeeded;
};

/// `state` as it would be read after `takenBefore` readings; slips of reading play no part.
Outcome outcomeOf(const Building& building, const LoopState& state, int takenBefore = 0);

}  // namespace ww::practice
