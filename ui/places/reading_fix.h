// The cure that one key takes for a reading that does not fit what was learned of the loop. Not for finding
// such readings (core/balancing/learning).
#pragma once

#include <vector>

#include "core/balancing/learning/learned_loop.h"
#include "ui/loop_advisor.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {

/// The cure that what was learned offers for a reading that does not fit: the point
/// moved, other unit, other sign, other setting. Nothing where it only says that the valve is to be read
/// again.
struct LearnedFix {
    base::Id reading;
    std::optional<quantity::Measured<quantity::PressureDifference>> dp;
    std::optional<base::Decimal> setting;
};
std::optional<LearnedFix> learnedFix(const project::Project& project,
                                     const balancing::DoubtfulReading& doubtful);
base::Outcome takeLearnedFix(WorkbookBridge& bridge, const LearnedFix& fix);

/// The first reading of a branch that does not fit what was learned; null where all fit.
const balancing::DoubtfulReading* doubtfulAt(const LoopAdvisor& advisor, const project::Project& project,
                                             const base::Id& branch);
/// The readings of a round that do not fit what was learned and to which nobody gave a reason: they keep no
/// round open and are looked at before it is closed. Of branches that are open already (balancing::openItems)
/// none.
std::vector<const balancing::DoubtfulReading*> doubtsOf(const LoopAdvisor& advisor,
                                                        const project::Project& project,
                                                        const base::Id& round);
/// That nearly all readings of a round lie off alike (balancing::ShiftedRound), in words; empty where they do
/// not.
std::vector<base::Fault> shiftsOf(const LoopAdvisor& advisor, const project::Project& project,
                                  const base::Id& round);
/// Takes the fix that is offered for a branch: that of its counting reading, else that of what was learned.
/// Nothing where none is offered.
std::optional<base::Outcome> takeFixOf(WorkbookBridge& bridge, const LoopAdvisor& advisor,
                                       const base::Id& branch);

}  // namespace ww::ui
