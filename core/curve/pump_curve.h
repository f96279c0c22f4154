// A pump's head, power, efficiency and NPSH required over flow, as a table of points for one impeller or a family
// of them; affinity laws for speed and trim. Not for the system it works on (hydraulics/).
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/base/result.h"
#include "core/quantity/quantity.h"

namespace ww::curve {

using quantity::Density;
using quantity::Head;
using quantity::Length;
using quantity::Power;
using quantity::Ratio;
using quantity::VolumeFlow;

/// One row of a pump's table at rated speed.
struct PumpPoint {
    VolumeFlow flow;
    Head head;
    std::optional<Ratio> efficiency;
    std::optional<Power> power;  ///< shaft power with the fluid of the table (water)
    std::optional<Head> npshRequired;
    std::optional<Length> impeller;  ///< for a family of curves
};

inline constexpr base::MessageForm kPumpTooFewPoints{
    "pump_too_few_points", "the pump curve has {1} point(s); give at least two of falling head"};
inline constexpr base::MessageForm kPumpRises{
    "pump_rises",
    "the head rises from {1} m to {2} m between {3} and {4} m3/h; check these points, the duty is not unique on a "
    "rising curve"};
inline constexpr base::MessageForm kPumpFlowRepeated{"pump_flow_repeated",
                                                     "flow {1} m3/h stands twice in the pump curve; keep one row"};
inline constexpr base::MessageForm kPumpKinked{
    "pump_kinked",
    "the pump curve bends sharply at {1} m3/h (slope {2} then {3} m per m3/h); check this point for a slip"};

/// How a pump runs: speed as a fraction of rated, impeller as a fraction of the curve's own diameter.
struct PumpState {
    double speedFraction = 1.0;
    double diameterFraction = 1.0;
};

/// Where on the curve a flow stands.
enum class CurveRange { WithinPoints, BeyondLastPoint, BelowShutoffFlow };

/// Head falls strictly with flow. Between points a monotone cubic (Fritsch-Carlson); beyond the last point the end
/// slope goes on (flagged by range()); below the first point's flow, down to zero, the end slope likewise.
/// Affinity for speed n: Q ~ n, H ~ n^2, P ~ n^3. Trim of one casing: Q ~ D, H ~ D^2, P ~ D^3 (first estimate).
/// NPSH required scales with n^2 (from memory; near design flow only).
class PumpCurve {
  public:
    /// Points of one impeller, in any order; `impeller` fields are ignored. Rising or repeated points are faults.
    static base::Result<PumpCurve> make(std::vector<PumpPoint> points);

    /// Points where the slope changes so abruptly that a slip is likely (more than 8 times, either way).
    std::vector<base::Fault> doubts() const;

    Head head(VolumeFlow flow, PumpState state = {}) const;
    /// dH/dQ there, s/m2 (head in m over flow in m3/s); always negative.
    double headSlope(VolumeFlow flow, PumpState state = {}) const;
    /// The flow at which the curve gives this head; nothing above the shutoff head. May lie beyond the last point.
    std::optional<VolumeFlow> flowAtHead(Head head, PumpState state = {}) const;
    CurveRange range(VolumeFlow flow, PumpState state = {}) const;

    Head shutoffHead(PumpState state = {}) const { return head(VolumeFlow::si(0), state); }
    VolumeFlow lastFlow(PumpState state = {}) const;
    /// The flow where the curve's head reaches zero.
    VolumeFlow runOut(PumpState state = {}) const;

    /// Efficiency: from the table's efficiency or power (water, `tableDensity`); nothing outside its points.
    std::optional<Ratio> efficiency(VolumeFlow flow, PumpState state = {}) const;
    /// Shaft power with a fluid of this density; nothing where the table says nothing.
    std::optional<Power> shaftPower(VolumeFlow flow, Density density, PumpState state = {}) const;
    std::optional<Head> npshRequired(VolumeFlow flow, PumpState state = {}) const;

    std::span<const PumpPoint> points() const { return m_points; }

  private:
    explicit PumpCurve(std::vector<PumpPoint> points);

    std::vector<PumpPoint> m_points;  ///< rising flow
    std::vector<double> m_slopes;     ///< dH/dQ at each point, s/m2
};

}  // namespace ww::curve
