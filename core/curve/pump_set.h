// Several pumps that work as one: in parallel their flows add at one head, in series their heads add at one
// flow. Not for the loop they work on (hydraulics/).
#pragma once

#include <optional>
#include <vector>

#include "core/curve/pump_curve.h"

namespace ww::curve {

enum class PumpJoint { Parallel, Series };

/// One pump of a set.
struct PumpMember {
    PumpCurve curve;
    PumpState state;
};

/// At least one pump, each in parallel behind a check valve: above its shutoff head it gives nothing.
class PumpSet {
  public:
    PumpSet(std::vector<PumpMember> members, PumpJoint joint);

    const std::vector<PumpMember>& members() const { return m_members; }
    PumpJoint joint() const { return m_joint; }
    /// The same pumps at another speed: a factor above 0 on the speed of each.
    PumpSet atSpeed(double speedFactor) const;

    /// Head at a flow of 0 or more; nothing where parallel pumps cannot give that flow at any head.
    std::optional<Head> head(VolumeFlow flow) const;
    /// Flow at a head; nothing above the shutoff head of the set.
    std::optional<VolumeFlow> flowAtHead(Head head) const;
    Head shutoffHead() const;
    /// Whether every pump stands within the points of its curve at this flow of the set.
    bool isWithinPoints(VolumeFlow flow) const;

    /// Shaft power of all together with a fluid of this density; nothing where a table says nothing.
    std::optional<Power> shaftPower(VolumeFlow flow, Density density) const;
    /// Power into the water over shaft power; nothing where that is unknown or no water moves.
    std::optional<Ratio> efficiency(VolumeFlow flow, Density density) const;

    /// The flow of each pump at a flow of the set, beside members(); empty where it cannot be given.
    std::vector<VolumeFlow> flowsOfMembers(VolumeFlow flow) const;

  private:
    VolumeFlow sumAtHead(Head head) const;

    std::vector<PumpMember> m_members;
    PumpJoint m_joint;
};

/// A pump's curve after its impeller was cut to this fraction of its diameter (above 0), as a table of its
/// own: H ~ D^2, Q ~ D^exponent, P ~ D^(2 + exponent), NPSH required as it stood. Exponent 1 is the usual
/// first estimate, 2 a second published form for small cuts (from memory).
PumpCurve trimmedCurve(const PumpCurve& curve, double diameterFraction, double flowExponent = 1.0);

/// A pump's curve with its head at every flow times this factor (above 0), as a table of its own: a pump that
/// is worn or off its table keeps its shape (common practice, no source). Its efficiency stays, so power goes
/// with the head.
PumpCurve withHeads(const PumpCurve& curve, Ratio factor);

}  // namespace ww::curve
