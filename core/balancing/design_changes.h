// Says what was changed in design and limits after a round was closed. Not for judging by what held then
// (assess.h).
#pragma once

#include <vector>

#include "core/base/fault.h"
#include "core/project/project.h"

namespace ww::balancing {

inline constexpr base::MessageForm kBranchesAdded{"branches_added_after_round",
                                                  "branches added after round {1} was closed: {2}; rounds up "
                                                  "to {1} are judged without them: read a new round"};
inline constexpr base::MessageForm kDesignChanged{"design_changed_after_round",
                                                  "design flows changed after round {1} was closed: {2}; "
                                                  "rounds up to {1} are judged by those before: read a "
                                                  "new round"};
inline constexpr base::MessageForm kLimitsChanged{
    "limits_changed_after_round",
    "limits changed after round {1} was closed: share ±{2} %, was ±{3} %; of design {4} to {5} %, was {6} to "
    "{7} %; rounds up to {1} are judged by those before"};
inline constexpr base::MessageForm kLimitsChangedAccepted{
    "limits_changed_after_acceptance",
    "limits changed after round {1} was closed: share ±{2} %, was ±{3} %; of design {4} to {5} %, was {6} to "
    "{7} %; round {1} was accepted by those before"};

/// One sentence for each kind of change after each closed round numbered `first` to `last`, in their order;
/// flows as entered, "Σ" for the sum of what a branch feeds. Empty where design and limits stand.
std::vector<base::Fault> changesOf(const project::Project& project, int first, int last);

/// What changed after the round of this number was closed, up to now.
std::vector<base::Fault> changesSince(const project::Project& project, int round);

}  // namespace ww::balancing
