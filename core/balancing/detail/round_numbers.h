// Flows, shares, groups and index circuit of one round, before anything is judged.
// Not for states, findings or the verdict (judgment.h).
#pragma once

#include <span>

#include "core/balancing/detail/branch_flow.h"

namespace ww::balancing::detail {

/// One round in numbers. `branches` has everything but states.
struct RoundNumbers {
    const project::Round* round = nullptr;  ///< null: no round, design values only
    std::vector<BranchReadings> readings;   ///< by branch
    std::vector<EarlierReading> earlier;    ///< by branch
    std::vector<BranchResult> branches;
    std::vector<GroupResult> groups;
    IndexCircuit index;
    std::optional<VolumeFlow> total;
    VolumeFlow totalUncertainty;  ///< from the readingUncertainty of the terminals
    VolumeFlow totalDesign;
};

/// Computes them. Where a terminal has no flow, the reading of the nearest branch above it that has one
/// stands in for its group in the total. While gaps are filled and a terminal is missing everywhere, shares
/// are provisional: those that are known keep together their part of the design total.
RoundNumbers roundNumbers(const project::Project& project, const project::Round* round, LookBack lookBack);

/// The first part of them: what each branch was read to by itself. No sums of groups, no shares, no index.
RoundNumbers ownNumbers(const project::Project& project, const project::Round* round, LookBack lookBack);
/// The same anew for some branches of `numbers`, which must have a round.
void readAgain(const project::Project& project, LookBack lookBack, std::span<const std::size_t> branches,
               RoundNumbers& numbers);
/// The second part: sums, shares, groups and index from what each branch was read to.
void addUp(const project::Project& project, LookBack lookBack, RoundNumbers& numbers);

/// Whether a branch lets through all it can: its valve stands fully open, or it has none to throttle.
bool isUnthrottled(const project::Project& project, const BranchResult& branch);

/// Groups with spread and reference, top group first. The reference is the matchable member with the lowest
/// of design; a tie (1e-9) goes to the farther one. Once valves are throttled, the members of a matched group
/// differ by no more than the noise of their readings; so among the members within the matching band of the
/// lowest, one whose valve stands fully open is the reference (the lowest of these).
std::vector<GroupResult> groupResults(const project::Project& project,
                                      const std::vector<BranchResult>& branches);
/// Follows the references from the top group down to a terminal.
IndexCircuit indexCircuit(const project::Project& project, const std::vector<BranchResult>& branches,
                          const std::vector<GroupResult>& groups);

}  // namespace ww::balancing::detail
