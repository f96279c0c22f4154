// The flow of one branch from one reading, and how uncertain it is. Not for shares (round_numbers.h).
#pragma once

#include "core/balancing/assessment.h"
#include "core/balancing/detail/round_readings.h"

namespace ww::balancing::detail {

/// Standard uncertainty of a valve's coefficient where its table does not state one: 5 % (BS 7350, wide open;
/// the same is common for limiters, from memory).
inline constexpr double kUsualValveAccuracy = 0.05;
/// A dp that no valve table and no instrument limits is readable from here on: 1 kPa (common practice, no
/// source; the trade's usual minimum signal).
inline constexpr PressureDifference kUsualReadableMinimum = PressureDifference::si(1000);
/// An instrument reads a dp from ten times its absolute accuracy on: there that part makes 5 % of the flow.
inline constexpr double kFloorsToReadable = 10;
/// How finely a handle's scale is read (common practice, no source): a tenth of a turn, a degree, a percent.
/// A setting written with more places was read that finely.
double scaleDivisionFraction(project::Scale scale);

/// The dp below which a reading at this branch is not readable: the higher of what the valve's table and the
/// instrument's absolute accuracy say; kUsualReadableMinimum where neither says anything. A self-acting
/// branch's own range is not a readable minimum.
PressureDifference readableMinimum(const project::Branch& branch, const project::ValveModel* valve,
                                   const project::Instrument* instrument);

/// Standard uncertainty of a dp as read: the stated accuracy of reading, the absolute part, and the last
/// written place over the square root of 12 (a rectangular distribution, JCGM 100:2008, 4.3.7). Stated
/// accuracies are taken as standard uncertainties as they stand (common practice, no source).
PressureDifference dpUncertainty(const quantity::Measured<PressureDifference>& dp, PressureDifference mean,
                                 const project::Instrument* instrument, quantity::Density density);

/// A flow with its two uncertainties. Absent: the readings do not give one.
struct BranchFlow {
    FlowSource source = FlowSource::None;
    std::optional<VolumeFlow> flow;
    std::optional<VolumeFlow> low;
    std::optional<VolumeFlow> high;
    VolumeFlow uncertainty;         ///< all parts
    VolumeFlow readingUncertainty;  ///< the part that varies when read again: instrument, digits, repeats
};

/// Flow of a branch from what was read: its valve's dp at `setting`, else the flow read directly. A negative
/// dp gives a backward flow. Below the readable minimum the flow is a range (two standard uncertainties of dp
/// either way, the absolute part taken as a tenth of the minimum where no instrument says it). A limiter or
/// pressure-independent valve keeps its design flow over its dp range; outside it passes like a fixed
/// orifice. Too little straight pipe at a hand valve (straight_pipe.h) makes the flow less certain, not the
/// reading.
BranchFlow branchFlow(const project::Project& project, const project::Branch& branch,
                      const BranchReadings& readings, std::optional<Setting> setting);

using project::isSelfActing;

/// Where the dp of a self-acting valve stands in its range: -1 below, 0 within (or no range known), 1 above.
int placeInRange(const project::ValveModel* valve, PressureDifference dp);

}  // namespace ww::balancing::detail
