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
/// earlier round stands where this one gives none. `sum`: of the flows of all terminals, where all were read.
std::vector<PumpDuty> pumpDuties(const project::Project& project, const project::Round& round,
                                 std::optional<VolumeFlow> sum = {});

/// The rise of a pump: its total head (energy::pumpHead) times density and gravity, and the standard
/// uncertainty of the gauges. Gauge heights, the last reading with the pump off and the pipes' diameters
/// count where they are known; the velocity heads are those of the flow read, else of `sum`, the flow of all
/// terminals, else of the flow that the curve gives.
struct PumpRise {
    PressureDifference value;
    PressureDifference uncertainty;
};
/// Nothing where the gauges were not both read, or discharge shows less than suction.
std::optional<PumpRise> riseOf(const project::Project& project, const project::PumpReading& reading,
                               std::optional<VolumeFlow> sum = {});

/// Head of a pump against a shut valve over that of its curve at the speed it was read at.
struct ShutoffRatio {
    Ratio ofCurve;
    Ratio uncertainty;              ///< standard, of the gauges
    std::optional<base::Id> gauge;  ///< that it was read with
};
/// By the last standing shutoff reading of a pump up to a round; nothing where there is none or no curve.
std::optional<ShutoffRatio> shutoffRatio(const project::Project& project, const project::Pump& pump,
                                         int upToRound);

/// Accuracy of a gauge that nobody names, or that states none: 2 % of reading (usual for gauges and
/// transducers, from memory), so that it counts as no better than one that states its own.
inline constexpr double kUsualGaugeAccuracy = 0.02;
/// Whether a pump was read with an instrument that states its accuracy.
bool isGaugeStated(const project::Project& project, const project::PumpReading& reading);
/// Standard uncertainty of discharge less suction as read: instrument (kUsualGaugeAccuracy where none states
/// its own) and digits of each; 0 without gauges.
PressureDifference riseUncertainty(const project::Project& project, const project::PumpReading& reading);
/// Where the gauges of a pump stand and how wide the pipe is there.
energy::GaugeStation gaugeStation(const project::Pump& pump);
/// What the gauges of a reading show.
energy::GaugeReading gaugesOf(const project::PumpReading& reading);

/// Flow that all running pumps of a round give together at a head, side by side or one behind the other, from
/// their curves; nothing where one has no curve or both joints are mixed. `speedFactor` multiplies the speed
/// of each, `headFactor` its head at every flow.
std::optional<VolumeFlow> flowOfPumps(const project::Project& project, const std::vector<PumpDuty>& pumps,
                                      Head head, double speedFactor, Ratio headFactor = Ratio::si(1));
/// Head at which the running pumps together give a flow; nothing where one has no curve or the flow is beyond
/// them.
std::optional<Head> headOfPumps(const project::Project& project, const std::vector<PumpDuty>& pumps,
                                VolumeFlow flow, double speedFactor, Ratio headFactor = Ratio::si(1));

}  // namespace ww::balancing::detail
