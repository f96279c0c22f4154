// What a round says about the pumps: head from gauges, flow from the curve. Not for the decision (energy/).
#pragma once

#include "core/balancing/assessment.h"
#include "core/energy/pump_head.h"

namespace ww::balancing::detail {

/// The reading of a pump that counts in a round, null where there is none.
const project::PumpReading* countingPumpReading(const project::Project& project, const base::Id& round,
                                                const base::Id& pump);

/// Whether a pump read like this ran in the loop as it stands: neither at rest, nor against a shut or
/// throttled discharge.
bool isDuty(project::PumpPoint point);

/// One entry for every pump that runs or was read in the round, with its total head (riseOf). The speed of an
/// earlier round stands where this one gives none.
std::vector<PumpDuty> pumpDuties(const project::Project& project, const project::Round& round);

/// The rise of a pump: its total head (energy::pumpHead) times density and gravity, and the standard
/// uncertainty of the gauges. Gauge heights, the last reading with the pump off and the pipes' diameters
/// count where they are known; the velocity heads are those of the flow read, else of the flow that the curve
/// gives.
struct PumpRise {
    PressureDifference value;
    PressureDifference uncertainty;
};
/// Nothing where the gauges were not both read, or discharge shows less than suction.
std::optional<PumpRise> riseOf(const project::Project& project, const project::PumpReading& reading);

/// Standard uncertainty of discharge less suction as read: instrument and digits of each; 0 without gauges.
PressureDifference riseUncertainty(const project::Project& project, const project::PumpReading& reading);
/// Where the gauges of a pump stand and how wide the pipe is there.
energy::GaugeStation gaugeStation(const project::Pump& pump);
/// What the gauges of a reading show.
energy::GaugeReading gaugesOf(const project::PumpReading& reading);

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
