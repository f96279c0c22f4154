// The affinity laws read backwards: by which factor speed or impeller must change to reach a head or a duty.
// Holds for points of similar flow only: a loop without static head. Not for choosing speed or trim
// (energy/).
#pragma once

#include <optional>

#include "core/curve/pump_curve.h"

namespace ww::curve {

/// Speed or diameter factor between two similar points: sqrt(wanted / present), from H ~ n^2 and H ~ D^2
/// (Karassik et al., Pump Handbook). Both heads above 0.
double affinityFactor(Head present, Head wanted);

/// Flow at which the parabola of similar points through (flow, head), H' = head (Q'/flow)^2, meets the curve.
/// Both above 0. May lie beyond the curve's last point: ask range().
VolumeFlow similarFlow(const PumpCurve& curve, VolumeFlow flow, Head head);

/// Factor on speed or diameter that brings the curve through (flow, head): flow over similarFlow(). Below 1
/// where the curve stands above the point. The full factor tends to cut too much from an impeller (errors up
/// to 15 to 20 % of the change; common practice), so an impeller is cut by 70 to 80 % of it and tested again.
double affinityFactor(const PumpCurve& curve, VolumeFlow flow, Head head);

/// Impeller diameter from a head at shutoff, given the head there of a known diameter: D sqrt(H / H known).
Length impellerFromShutoff(Length known, Head headOfKnown, Head measured);

}  // namespace ww::curve
