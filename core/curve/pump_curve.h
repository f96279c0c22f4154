// A pump's head, power, efficiency and NPSH required over flow, as a table of points for one impeller or a
// family of them; affinity laws for speed and trim. Not for the system it works on (hydraulics/).
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/base/result.h"
#include "core/curve/monotone_cubic.h"
#include "core/quantity/shown_units.h"

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
    "pump_too_few_points", "points of the pump curve: {1}; give at least two of falling head"};
inline constexpr base::MessageForm kPumpRises{"pump_rises",
                                              "the head rises from {1} to {2} between {3} and {4}; "
                                              "check these points, the duty is not unique on a "
                                              "rising curve"};
inline constexpr base::MessageForm kPumpFlowRepeated{"pump_flow_repeated",
                                                     "flow {1} stands twice in the pump curve; keep one row"};
inline constexpr base::MessageForm kPumpKinked{"pump_kinked",
                                               "the pump curve bends sharply at {1} (its slope changes by a "
                                               "factor of {2}); check this point for a slip"};

inline constexpr base::MessageForm kPumpFlat{"pump_flat",
                                             "the head stays at {1} between {2} and {3}; write one "
                                             "more digit or leave one of the rows out, the duty is "
                                             "not unique on a level curve"};
inline constexpr base::MessageForm kPumpNegative{
    "pump_negative",
    "the pump curve has flow {1} with head {2}; neither may be below zero, correct this row"};
inline constexpr base::MessageForm kPumpEfficiencyOutside{
    "pump_efficiency_outside",
    "the efficiency at {1} is {2} %; it must lie between 0 and 100 %, correct this row"};
inline constexpr base::MessageForm kPumpPowerNotPositive{
    "pump_power_not_positive", "the power at {1} is {2}; it must be above 0, correct this row"};
inline constexpr base::MessageForm kPumpNpshNegative{
    "pump_npsh_negative", "the NPSH required at {1} is {2}; it must not be below zero, correct this row"};

/// Density of the water that a pump's table of power was taken with: 20 C at atmospheric pressure (common
/// practice: tables are for cold clean water).
inline constexpr Density kPumpTableDensity = Density::si(998.2);

/// How a pump runs: speed as a fraction of rated, impeller as a fraction of the curve's own diameter. Both
/// above 0.
struct PumpState {
    double speedFraction = 1.0;
    double diameterFraction = 1.0;
};

/// Where on the curve a flow stands.
enum class CurveRange { WithinPoints, BeyondLastPoint, BelowShutoffFlow };

/// Head falls strictly with flow. Between points a monotone cubic (Fritsch-Carlson); beyond the last point
/// the end slope goes on (flagged by range()); below the first point's flow, down to zero, the end slope
/// likewise. Affinity for speed n: Q ~ n, H ~ n^2, P ~ n^3. Trim of one casing: Q ~ D, H ~ D^2, P ~ D^3
/// (first estimate). NPSH required scales with n^2 (from memory; near design flow only); a trim leaves it as
/// it stands at the flow Q/(n D) of the table, which is the higher and so the safer value. Sources: Karassik
/// et al., Pump Handbook.
class PumpCurve {
  public:
    /// Points of one impeller, in any order, finite; `impeller` fields are ignored. The first fault in order
    /// of flow is reported: too few points, below zero, a flow twice, rising or level head, a bad efficiency,
    /// power or NPSH.
    static base::Result<PumpCurve> make(std::vector<PumpPoint> points,
                                        const quantity::ShownUnits& units = {});

    /// Points where the slope changes so abruptly that a slip is likely (more than 8 times, either way).
    std::vector<base::Fault> doubts(const quantity::ShownUnits& units = {}) const;

    /// Head at a flow; beyond the table's flows the end slope goes on, so far out it is below zero.
    Head head(VolumeFlow flow, PumpState state = {}) const;
    /// dH/dQ there, s/m2 (head in m over flow in m3/s); always negative.
    double headSlope(VolumeFlow flow, PumpState state = {}) const;
    /// The flow at which the curve gives this head; nothing above the shutoff head. May lie beyond the last
    /// point.
    std::optional<VolumeFlow> flowAtHead(Head head, PumpState state = {}) const;
    /// Whether a flow lies beyond the last point, before the first one, or between them.
    CurveRange range(VolumeFlow flow, PumpState state = {}) const;

    /// Head at no flow.
    Head shutoffHead(PumpState state = {}) const { return head(VolumeFlow::si(0), state); }
    /// The flow of the last point.
    VolumeFlow lastFlow(PumpState state = {}) const;
    /// The flow where the curve's head reaches zero.
    VolumeFlow runOut(PumpState state = {}) const;

    /// Efficiency: from the table's efficiency, else from its power (water of kPumpTableDensity); nothing
    /// outside the points that say so. Speed and trim leave it as it is (a real one falls by 1 to 3 points;
    /// common practice).
    std::optional<Ratio> efficiency(VolumeFlow flow, PumpState state = {}) const;
    /// Shaft power with a fluid of this density: from the table's power, else from its efficiency (not at
    /// zero flow); nothing where the table says nothing.
    std::optional<Power> shaftPower(VolumeFlow flow, Density density, PumpState state = {}) const;
    /// NPSH required; nothing outside the points that give one.
    std::optional<Head> npshRequired(VolumeFlow flow, PumpState state = {}) const;

    /// The points that the curve was made from.
    std::span<const PumpPoint> points() const { return m_points; }

  private:
    explicit PumpCurve(std::vector<PumpPoint> points);

    std::vector<PumpPoint> m_points;  ///< rising flow
    MonotoneCubic m_heads;            ///< m over m3/s
    MonotoneCubic m_efficiencies;     ///< over m3/s, of the points that have one
    MonotoneCubic m_powers;           ///< W over m3/s, likewise
    MonotoneCubic m_npshRequired;     ///< m over m3/s, likewise
};

}  // namespace ww::curve
