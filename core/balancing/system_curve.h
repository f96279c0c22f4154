// The system curve through a duty point, H = k Q^2, and what the index circuit says about it. For the pump
// chart.
#pragma once

#include "core/balancing/assessment.h"
#include "core/balancing/counted_curve.h"
#include "core/balancing/excess_head.h"

namespace ww::balancing {

/// One round's operating point and the curve through the origin and it.
struct SystemCurve {
    int roundNumber = 0;
    VolumeFlow flow;
    Head head;
    std::optional<Head> headUncertainty;
    std::optional<VolumeFlow> flowUncertainty;
    /// Head of the square-law curve at another flow.
    Head at(VolumeFlow other) const { return head * ((other / flow) * (other / flow)); }
};

/// The duty of a round: flow from the sum of terminals where it is complete, else from the pump curve; head
/// from the gauges, else from the pump curve at that flow. Nothing where neither is known. `headFactor`: on
/// the head of the pump curve (CountedCurve).
std::optional<SystemCurve> systemCurve(const project::Project& project, const Assessment& assessment,
                                       Ratio headFactor = Ratio::si(1));

/// Pump action that brings the total flow to design on this system curve, by the affinity laws.
struct PumpProposal {
    double speedFraction = 1.0;                ///< new speed over the speed of the round
    std::optional<quantity::Length> impeller;  ///< trimmed diameter, where the present one is known
    bool isBelowMinimumImpeller = false;
    Head headAtDesign;                ///< needed at design flow
    Head headAvailable;               ///< the pump makes as it is, at design flow, by the curve that counts
    ExcessHead excess;                ///< of it over headAtDesign, at the speed of the round
    std::optional<Ratio> powerRatio;  ///< shaft power after over before, cube law
};
/// Nothing where the duty or the pump curve is not known, or the curve is not trusted. `counted`: what
/// countedCurve() says of this round.
std::optional<PumpProposal> pumpProposal(const project::Project& project, const Assessment& assessment,
                                         const CountedCurve& counted);
std::optional<PumpProposal> pumpProposal(const project::Project& project, const Assessment& assessment);

}  // namespace ww::balancing
