// A loop whose valves are turned one after the other, with single links looked at in between: many states
// that differ by one valve each. Not for all flows of one state (solve.h).
#pragma once

#include <memory>
#include <optional>

#include "core/hydraulics/network.h"
#include "core/hydraulics/solution.h"

namespace ww::hydraulics {

/// Each turn folds anew only what the valve is part of, and each question unfolds only the way to its link,
/// so that both cost as much as the loop is deep, not as it is large. Turning a valve shut or open again, and
/// a loop in which a non-return flap is pressed shut, cost a whole solve. The answers are those of solve()
/// within its tolerances.
class StepwiseLoop {
  public:
    explicit StepwiseLoop(Network network);
    ~StepwiseLoop();
    StepwiseLoop(const StepwiseLoop&) = delete;
    StepwiseLoop& operator=(const StepwiseLoop&) = delete;

    /// A faulty element is a broken contract.
    void turn(const LinkChange& change);
    VolumeFlow flow(LinkIndex link);
    /// As Solution::drop.
    std::optional<PressureDifference> drop(LinkIndex link);

  private:
    class Folded;

    void catchUp();
    Folded* folded();
    const Solution& whole();

    Network m_network;  ///< without m_changes
    std::vector<LinkChange> m_changes;
    std::unique_ptr<Folded> m_folded;  ///< null: not made, or it cannot serve
    std::optional<Solution> m_whole;
    bool m_isFoldedTried = false;
};

}  // namespace ww::hydraulics
