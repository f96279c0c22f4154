// States of branches and the verdict of a round. Not for numbers (round_numbers.h) nor for findings
// (checks/).
#pragma once

#include "core/balancing/detail/doubts.h"
#include "core/balancing/round_memory.h"

namespace ww::balancing::detail {

/// The round before this one that is no witness round, null where there is none.
const project::Round* previousRound(const project::Project& project, const project::Round& round);

/// The round before the judged one, computed when something first asks for it.
class Before {
  public:
    /// `project` is the job of today: the round before has a design of its own. A null round has none before
    /// it. What `memory` keeps is not computed again; null where nothing is kept.
    Before(const project::Project& project, const project::Round* round, RoundMemory* memory);
    /// Null where there is no round before.
    const RoundNumbers* numbers();

  private:
    const project::Project& m_project;
    const project::Round* m_round;
    RoundMemory* m_memory;
    std::optional<project::Project> m_then;  ///< the job as the round before is judged, where not as today
    std::optional<RoundNumbers> m_own;       ///< where nothing is kept
};

/// Whether a share lies within the matching band of the job.
bool isWithinBand(const project::Project& project, Ratio ofTarget);

/// Gives every branch its state. `isDoubtful` by branch.
void fillStates(const project::Project& project, RoundNumbers& numbers, Before& before,
                const std::vector<bool>& isDoubtful);

/// The name of a group: the tag of its parent, or of the first pump for the branches fed there ("-" without
/// one).
std::string groupName(const project::Project& project, const GroupResult& group);
/// "2.5" and "4": where a valve stands and where it is fully open; "?" where it is not known.
std::vector<std::string> placeOfValve(const project::Project& project, const BranchResult& branch);
/// Set where the valve of a branch on the index circuit throttles.
std::optional<base::Fault> indexThrottledFault(const project::Project& project, const RoundNumbers& numbers,
                                               std::size_t branch);
/// Set where every valve of a group with a known reference throttles.
std::optional<base::Fault> groupShutFault(const project::Project& project, const RoundNumbers& numbers,
                                          const GroupResult& group);

/// Fills verdict and reasons from states, numbers and findings that are there already. `judging` are the
/// findings whose errors count.
void fillVerdict(const project::Project& project, const RoundNumbers& numbers,
                 const std::vector<const Finding*>& judging, Assessment& out);

}  // namespace ww::balancing::detail
