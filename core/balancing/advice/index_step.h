// Which valves to open further so that a balanced round proves its index circuit. Not for the proof itself
// (index_proof.h) nor for the shares (advice.h).
#pragma once

#include <vector>

#include "core/balancing/assessment.h"
#include "core/balancing/hydraulic_model.h"

namespace ww::balancing {

inline constexpr base::MessageForm kIndexPathToOpen{
    "index_path_to_open",
    "lies on the index circuit at {1}; open it fully to {2}, or the index is not proved"};
inline constexpr base::MessageForm kOpensForIndex{
    "opens_for_index",
    "{3} below it takes {4} % of design, the index {5} {6} %; open it from {1} to {2}, then read"};

/// A valve to open further.
struct IndexStep {
    std::size_t branch = 0;  ///< index into Project::branches()
    Setting setting;         ///< to turn it to, above where it stands
    base::Fault why;         ///< subject: the tag
};

/// At most so many are named; every one is turned and read before the next.
inline constexpr std::size_t kMostIndexSteps = 8;

/// What the proof of the index circuit lacks in a round whose terminals are all on share: a valve of its path
/// that is not fully open, or the nearest throttled valve above a fully open terminal that takes less of
/// design than the index, or no more than the readings tell. Opened by as few marks (`steps`, by branch) as
/// the loop, solved in `state`, needs to lift that terminal above the index by what the readings
/// tell, else at least to it. Nothing for a valve whose turn would bring a terminal out of the band, and none
/// at all where the index is proved or not known. The assessment is of `project`, as `state` stands. Common
/// practice, no source. Pure.
std::vector<IndexStep> indexSteps(const project::Project& project, const Assessment& assessment,
                                  const LoopState& state, const Resistances& resistances,
                                  const std::vector<Setting>& steps);

/// Those that are left to turn, from the last round that was read in one state. What was turned since is done
/// with; none where another valve was turned since.
std::vector<IndexStep> indexStepsLeft(const project::Project& project, const LoopState& present,
                                      const Resistances& resistances, const std::vector<Setting>& steps);

}  // namespace ww::balancing
