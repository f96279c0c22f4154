// The duty that the whole loop makes with other pumps, solved. Not for the affinity laws (energy/).
#pragma once

#include <optional>
#include <vector>

#include "core/balancing/hydraulic_model.h"
#include "core/curve/pump_set.h"
#include "core/hydraulics/solve_summary.h"

namespace ww::pump_room {

using quantity::Head;
using quantity::PressureDifference;
using quantity::Ratio;
using quantity::VolumeFlow;

/// The duty of an option as the whole loop makes it, with every valve at its proportional setting.
struct ConfirmedDuty {
    VolumeFlow flow;
    Head head;             ///< of the pumps
    Ratio flowDifference;  ///< solved over wanted less 1
    Ratio headDifference;  ///< solved over the option's head less 1
    hydraulics::SolveSummary summary;
};

/// The job's loop with every valve at the exact setting of its proportional balance; pumps are changed by
/// solve().
class BalancedLoop {
  public:
    /// Running pumps as the project marks them, at full speed.
    BalancedLoop(const project::Project& project, const balancing::Resistances& learned);

    bool isUsable() const { return m_faults.empty(); }
    /// What prevents it; subject: a tag.
    const std::vector<base::Fault>& faults() const { return m_faults; }

    /// The loop with these pumps, in the order of the project's running ones, and a discharge valve that
    /// takes `throttled` at `wantedFlow`. Nothing where the loop or the pumps cannot be built.
    std::optional<ConfirmedDuty> solve(const curve::PumpSet& pumps, Head throttled, VolumeFlow wantedFlow,
                                       Head wantedHead) const;

  private:
    const project::Project* m_project;
    const balancing::Resistances* m_learned;
    balancing::LoopState m_state;
    std::vector<base::Fault> m_faults;
};

}  // namespace ww::pump_room
