// The classical predictions of the next setting, for work without a model of the loop: matching one circuit
// to the reference of its group. Not for the settings of a whole loop (advice.h).
#pragma once

#include <optional>

#include "core/balancing/assessment.h"

namespace ww::balancing {

using quantity::FlowCoefficient;
using quantity::Resistance;

// All flows, dp and resistances of one prediction are of one moment. A circuit takes H = K q^2 from the two
// pipe nodes that feed it, K being its own path and its valve. Own derivation; square laws throughout.

/// The whole resistance that brings a circuit to the reference's ratio r: h / (r q design)^2. `nodeDrop` h
/// and r are of one moment. Exact for two circuits on the same nodes, as both then move alike. All above 0.
Resistance resistanceToMatch(PressureDifference nodeDrop, Ratio referenceOfDesign, VolumeFlow design);

/// A try at one valve: its resistance, the flow it gave and the reference's flow at the same moment.
struct MatchTry {
    Resistance valve;
    VolumeFlow flow;
    VolumeFlow reference;
};

/// The circuit's own path without its valve, from two tries at different settings: with
/// rho = (s2/s1)^2 (q1/q2)^2 it is (K2 - rho K1)/(rho - 1). Nothing where the tries do not tell it: equal
/// settings, or readings that would make it negative.
std::optional<Resistance> pathFromTwoTries(const MatchTry& first, const MatchTry& second);

/// The valve's resistance that brings the circuit to the reference's ratio, from two tries. Nothing where
/// they do not tell it, or where even a fully open valve would be too much.
std::optional<Resistance> valveToMatch(const MatchTry& first, const MatchTry& second, VolumeFlow design,
                                       VolumeFlow referenceDesign);

/// The rule of thumb that takes the dp across the valve as constant: coefficient times wanted over present
/// flow. It closes too little, as the valve's part of the circuit grows while it is closed; good only where
/// the valve takes most of the circuit's dp.
FlowCoefficient coefficientAtConstantDrop(FlowCoefficient present, Ratio wantedOverPresent);

/// Pump speed over present speed once a group is matched: one over the reference's ratio (square law, loop
/// without static head). The ratio must be above 0.
Ratio speedRatioAfterMatching(Ratio referenceOfDesign);

/// The member to match to instead of the reference: the last matchable one, where the reference stands
/// upstream of it. Throttling an upstream circuit changes those after it relative to it, so matching them to
/// it one after another does not end in one pass; regulate the last one to the reference's ratio and match
/// the others to the last (common practice, no source). Nothing where the reference is the last itself or is
/// not known.
std::optional<std::size_t> workingReference(const Assessment& assessment, const GroupResult& group);

}  // namespace ww::balancing
