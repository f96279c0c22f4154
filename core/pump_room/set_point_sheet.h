// The worksheet of a variable-speed pump's dp set-point, from its record and the round it was found in. Not
// for the drive's settings.
#pragma once

#include <optional>
#include <vector>

#include "core/balancing/assessment.h"
#include "core/energy/dp_set_point.h"
#include "core/project/project.h"
#include "core/pump_room/device_list.h"

namespace ww::pump_room {

using quantity::PressureDifference;
using quantity::Ratio;
using quantity::VolumeFlow;

/// A point of the reset law.
struct SetPointAtFlow {
    VolumeFlow flow;
    PressureDifference computed;
    PressureDifference setPoint;
};

struct SetPointSheet {
    base::Id setPoint;                      ///< the record
    std::optional<energy::DpResetLaw> law;  ///< nothing where dp or flow is missing
    std::vector<SetPointAtFlow> points;     ///< at 20 to 120 % of design flow
    std::optional<Ratio> indexOfDesign;     ///< in the assessed round
    std::vector<base::Fault> findings;
    std::vector<std::pair<std::size_t, BranchPolicy>> policies;  ///< by branch: index and policy
};

inline constexpr base::MessageForm kSetPointDpMissing{
    "set_point_dp_missing", "the dp of the set-point is not entered; enter what the sensor read"};
inline constexpr base::MessageForm kSetPointFlowMissing{
    "set_point_flow_missing",
    "the set-point follows the flow, but the flow at which it was found is not entered; enter it"};
inline constexpr base::MessageForm kSetPointSelfActing{
    "set_point_self_acting",
    "the index is a self-acting valve: the set-point must leave it the start of its range, {1}; read its "
    "dp "
    "at this set-point"};

/// One sheet for every set-point of the job. `assessment` is of the round in which it was held.
std::vector<SetPointSheet> setPointSheets(const project::Project& project,
                                          const balancing::Assessment& assessment);

}  // namespace ww::pump_room
