// The pumps of a job that work together, as one set. Not for their duty (pump_decision.h).
#pragma once

#include <optional>
#include <vector>

#include "core/base/fault.h"
#include "core/curve/pump_set.h"
#include "core/project/project.h"

namespace ww::pump_room {

using base::Id;

inline constexpr base::MessageForm kRoomNoPump{
    "pump_room_no_pump", "no pump is marked as running; mark the pumps that work together"};
inline constexpr base::MessageForm kRoomNoCurve{
    "pump_room_no_curve",
    "the pump has no usable curve; enter at least two points of falling head, with the flow of each"};
inline constexpr base::MessageForm kRoomMixedJoint{
    "pump_room_mixed_joint",
    "some running pumps stand in series and some in parallel; mark all alike, or test each set by itself"};

/// A set of pumps, or everything that prevents it.
struct RunningPumps {
    std::optional<curve::PumpSet> set;
    std::vector<std::size_t> pumps;   ///< indices into Project::pumps(), beside the set's members
    std::vector<base::Fault> faults;  ///< subject: the tag
};

/// All pumps marked as running at this part of rated speed; with `only`, those pumps instead. `headFactor`:
/// on their heads at every flow (balancing::CountedCurve).
RunningPumps runningPumps(const project::Project& project, double speedFraction = 1.0,
                          const std::vector<Id>& only = {},
                          quantity::Ratio headFactor = quantity::Ratio::si(1));

/// A copy of the job in which exactly these pumps run. Unknown ids are passed over.
project::Project withRunning(project::Project project, const std::vector<Id>& only);

}  // namespace ww::pump_room
