// The head of a pump from its gauges, with every part of it shown. Not for flows (flow_estimate.h).
#pragma once

#include <optional>

#include "core/base/result.h"
#include "core/curve/pump_curve.h"
#include "core/quantity/shown_units.h"

namespace ww::energy {

using quantity::Density;
using quantity::GaugePressure;
using quantity::Head;
using quantity::Length;
using quantity::PressureDifference;
using quantity::VolumeFlow;

inline constexpr base::MessageForm kDischargeBelowSuction{
    "pump_discharge_below_suction",
    "the discharge gauge shows {1} less than the suction gauge; swap the readings, or check that the "
    "pump "
    "turns the right way and its valves are open"};
inline constexpr base::MessageForm kNoPumpPressure{
    "pump_no_pressure", "neither both gauges nor their difference was read; read suction and discharge"};
inline constexpr base::MessageForm kGaugeHeightMissing{
    "pump_gauge_height_missing",
    "two gauges were read but their heights are not known, so no correction for height is made; enter the "
    "heights, or read both taps with one gauge"};
inline constexpr base::MessageForm kBoreMissing{
    "pump_bore_missing",
    "the pipe diameters at the taps are not both known, so no velocity head is counted; enter them"};
inline constexpr base::MessageForm kHeadNotPositive{
    "pump_head_not_positive",
    "with its corrections the head is {1}; check the gauge heights and the zero reading"};

/// Where a pump's gauges stand and how wide the pipe is there.
struct GaugeStation {
    std::optional<Length> suctionHeight;  ///< gauge centre above a common datum, hoses full
    std::optional<Length> dischargeHeight;
    std::optional<Length> suctionBore;  ///< inside diameter at the tap
    std::optional<Length> dischargeBore;
};

/// What the gauges showed at one moment.
struct GaugeReading {
    std::optional<GaugePressure> suction;
    std::optional<GaugePressure> discharge;
    /// Discharge less suction read as one value: one gauge moved between the taps or a differential gauge.
    /// It needs no correction for height, and goes before the two gauges.
    std::optional<PressureDifference> rise;
};

/// The head and its parts, m of the flowing fluid: total = pressure + zero + elevation + velocity.
struct PumpHead {
    Head pressure;   ///< discharge less suction as read
    Head zero;       ///< less what the gauges differed by with the pump off
    Head elevation;  ///< discharge gauge above suction gauge; 0 with one gauge
    Head velocity;   ///< (Vd^2 - Vs^2)/2g; 0 without flow
    Head total;
    bool hasElevation = true;  ///< false where a rise was read, which needs none
    bool isElevationKnown = true;
    bool isVelocityKnown = true;
};

/// How the gauges differ with the pump off and the water at rest, corrected for their heights: discharge less
/// suction plus the height of the discharge gauge over the suction gauge. A perfect pair gives 0. Nothing
/// where the pressures were not read.
std::optional<PressureDifference> gaugeZero(const GaugeReading& atRest, const GaugeStation& station,
                                            Density density);

/// V^2/2g of the mean speed in a round pipe; the bore is above 0.
Head velocityHead(VolumeFlow flow, Length bore);

/// H = (pd - ps)/(rho g) - zero + (zd - zs) + (Vd^2 - Vs^2)/2g (Karassik et al., Pump Handbook, chapter on
/// pump testing). Without a flow (shutoff) there is no velocity head. Fault: no pressures, or discharge below
/// suction.
base::Result<PumpHead> pumpHead(const GaugeReading& reading, const GaugeStation& station,
                                std::optional<PressureDifference> zero, std::optional<VolumeFlow> flow,
                                Density density, const quantity::ShownUnits& units = {});

/// pumpHead() of a running pump whose flow was not measured: the velocity heads are those of the flow that
/// the curve gives at the head itself.
base::Result<PumpHead> pumpHeadOnCurve(const GaugeReading& reading, const GaugeStation& station,
                                       std::optional<PressureDifference> zero, const curve::PumpCurve& curve,
                                       curve::PumpState state, Density density,
                                       const quantity::ShownUnits& units = {});

}  // namespace ww::energy
