// The curves of one pump casing with impellers of several diameters, and the diameters in between.
// Not for what to do about a pump (energy/); one curve alone with its affinity laws is a PumpCurve.
#pragma once

#include <vector>

#include "core/base/result.h"
#include "core/curve/pump_curve.h"

namespace ww::curve {

inline constexpr base::MessageForm kImpellerMissing{
    "impeller_missing",
    "the row at {1} has no impeller diameter; give one on every row of a family of curves or on none"};
inline constexpr base::MessageForm kImpellerNotPositive{
    "impeller_not_positive", "the impeller diameter at {1} is {2}; it must be above 0, correct this row"};
inline constexpr base::MessageForm kImpellerOrder{"impeller_order",
                                                  "the curve of the {1} impeller does not lie below that "
                                                  "of the {2} impeller; check the diameters of these "
                                                  "rows"};

/// A diameter found from a family, and whether it had to be taken beyond the family's smallest or largest
/// curve.
struct ImpellerEstimate {
    Length diameter;
    bool isBeyondFamily = false;
};

/// Curves of one casing by impeller diameter. Between two curves the diameter goes linearly with sqrt(head)
/// along a parabola of similar points: D = Da + (Db - Da)(sqrt H - sqrt Ha)/(sqrt Hb - sqrt Ha) (common
/// practice, no source). Beyond the family, and with one curve only, H ~ D^2 from the nearest curve.
class ImpellerFamily {
  public:
    /// One impeller's curve.
    struct Member {
        Length diameter;
        PumpCurve curve;
    };

    /// Rows of one or several diameters, in any order, finite; every row has its `impeller`. A fault of one
    /// diameter's curve has "217 mm" (its diameter) as subject. A larger impeller must give more head at
    /// shutoff and at the last flow of the smaller.
    static base::Result<ImpellerFamily> make(std::vector<PumpPoint> points,
                                             const quantity::ShownUnits& units = {});

    /// Rising diameter; at least one.
    const std::vector<Member>& members() const { return m_members; }

    /// Diameter from the head measured at shutoff and rated speed; above 0.
    ImpellerEstimate diameterForShutoff(Head shutoff) const;

    /// The curve of any diameter above 0: similar points of the two neighbouring curves, head and flow
    /// interpolated as above, efficiency and NPSH required linearly in diameter. A member's own diameter
    /// gives its own curve.
    PumpCurve curveOf(Length diameter) const;

  private:
    explicit ImpellerFamily(std::vector<Member> members) : m_members(std::move(members)) {}

    std::vector<Member> m_members;
};

}  // namespace ww::curve
