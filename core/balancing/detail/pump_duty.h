// What a round says about the pumps: head from gauges, flow from the curve. Not for the decision (energy/).
#pragma once

#include "core/balancing/assessment.h"

namespace ww::balancing::detail {

/// The reading of a pump that counts in a round, null where there is none.
const project::PumpReading* countingPumpReading(const project::Project& project, const base::Id& round,
                                                const base::Id& pump);

/// Whether a pump read like this ran in the loop as it stands: neither at rest, nor against a shut or
/// throttled discharge.
bool isDuty(project::PumpPoint point);

/// One entry for every pump that runs or was read in the round. Head: the gauge rise, else discharge minus
/// suction, over density and gravity (gauges at one height, equal pipe sizes: no velocity head). The speed of
/// an earlier round stands where this one gives none.
std::vector<PumpDuty> pumpDuties(const project::Project& project, const project::Round& round);

/// The rise of a pump as read: the gauge rise, else discharge less suction; and its standard uncertainty.
struct PumpRise {
    PressureDifference value;
    PressureDifference uncertainty;
};
/// Nothing where the gauges were not both read.
std::optional<PumpRise> riseOf(const project::Project& project, const project::PumpReading& reading);

/// Flow that all running pumps of a round give together at a head, side by side or one behind the other, from
/// their curves; nothing where one has no curve or both joints are mixed. `speedFactor` multiplies the speed
/// of each.
std::optional<VolumeFlow> flowOfPumps(const project::Project& project, const std::vector<PumpDuty>& pumps,
                                      Head head, double speedFactor);
/// Head at which the running pumps together give a flow; nothing where one has no curve or the flow is beyond
/// them.
std::optional<Head> headOfPumps(const project::Project& project, const std::vector<PumpDuty>& pumps,
                                VolumeFlow flow, double speedFactor);

}  // namespace ww::balancing::detail
