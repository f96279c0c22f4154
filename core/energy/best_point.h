// A pump's best-efficiency flow and its type number, and what they say about running it shut. Not for a
// pump's test itself (pump_test.h).
#pragma once

#include <optional>
#include <vector>

#include "core/base/fault.h"
#include "core/curve/pump_curve.h"
#include "core/quantity/shown_units.h"

namespace ww::energy {

using quantity::Power;
using quantity::Ratio;
using quantity::RotationalSpeed;
using quantity::Temperature;
using quantity::VolumeFlow;

/// The flow where the table's efficiency is highest; nothing where the table has no efficiencies, is level,
/// or is highest at its first or last point, so that the best may lie outside.
std::optional<VolumeFlow> bestEfficiencyFlow(const curve::PumpCurve& curve, curve::PumpState state = {});

/// K = 2 pi n sqrt(Q) / (g H)^(3/4) at best efficiency, one impeller stage (ISO 17769-1, type number). The
/// specific speed of the trade (rpm, gpm, ft) is 2733 K. Nothing without a best-efficiency flow.
std::optional<Ratio> typeNumber(const curve::PumpCurve& curve, RotationalSpeed speed);

/// From this type number on power may rise towards shutoff: specific speed 4500 in rpm, gpm and ft (Karassik
/// et al., Pump Handbook, from memory).
inline constexpr Ratio kHighTypeNumber = Ratio::si(4500.0 / 2733.0);

inline constexpr base::MessageForm kShutoffHow{"shutoff_how",
                                               "close the discharge valve slowly, never the suction valve; "
                                               "read both gauges within a minute, and open it "
                                               "again at once: the water in a pump that runs shut heats up"};
inline constexpr base::MessageForm kShutoffBear{"shutoff_bear",
                                                "the pressure rises to that of no flow; make sure that "
                                                "casing, gauges and pipe bear it, and that a boiler "
                                                "or chiller on this loop is off"};
inline constexpr base::MessageForm kShutoffDisplacement{
    "shutoff_displacement",
    "this is a positive displacement pump: running it shut bursts it or its pipe; do not make a shutoff "
    "test"};
inline constexpr base::MessageForm kShutoffHighSpecificSpeed{
    "shutoff_high_specific_speed",
    "the pump's specific speed is {1} (rpm, gpm, ft), so its power rises towards shutoff; do not make a "
    "shutoff "
    "test without the maker's word"};
inline constexpr base::MessageForm kShutoffPowerRises{
    "shutoff_power_rises",
    "by its table the pump takes {1} at shutoff and {2} at best efficiency; do not make a shutoff test "
    "without the maker's word"};
inline constexpr base::MessageForm kShutoffGuards{"shutoff_guards",
                                                  "this pump alone keeps water moving through a chiller or "
                                                  "boiler; do not make a shutoff test unless whoever "
                                                  "runs the plant has shut that down and agrees"};
inline constexpr base::MessageForm kShutoffHot{
    "shutoff_hot",
    "the water is {1}: gauges and vents scald, and a shut pump boils soon; have the permission of whoever "
    "runs the plant"};
inline constexpr base::MessageForm kShutoffLarge{"shutoff_large",
                                                 "the motor is {1}: a large pump heats its water within "
                                                 "seconds; have the permission of whoever runs the "
                                                 "plant"};
inline constexpr base::MessageForm kShutoffUnknown{"shutoff_unknown",
                                                   "the pump's table gives no efficiencies, so its specific "
                                                   "speed is not known; make sure that it is a radial "
                                                   "pump before it is run shut"};

/// What is known of a pump that somebody wants to run shut.
struct ShutoffCase {
    const curve::PumpCurve* curve = nullptr;  ///< may be null
    std::optional<RotationalSpeed> speed;
    std::optional<Power> motor;
    std::optional<Temperature> temperature;
    bool isPositiveDisplacement = false;
    bool guardsSource = false;
    quantity::ShownUnits units;  ///< of numbers in cautions
};

/// To be shown before the test. Local safety rules and licensed practice come first.
struct ShutoffAdvice {
    bool isForbidden = false;
    bool isNever = false;               ///< forbidden, and nobody's word allows it
    std::vector<base::Fault> cautions;  ///< what forbids it first; how to do it last
};
/// Forbidden for positive displacement, the only pump of a source, a high specific speed, and a power that
/// rises towards shut; cautioned where the specific speed is not known, the water hot or the motor large
/// (common practice, no source).
ShutoffAdvice shutoffAdvice(const ShutoffCase& pump);

}  // namespace ww::energy
