// The dp that a pump's drive is to hold: how it is found, how it follows the flow, and what it does to
// circuits that call alone. Not for a drive's own settings.
#pragma once

#include <optional>
#include <vector>

#include "core/base/fault.h"
#include "core/project/records.h"
#include "core/quantity/shown_units.h"

namespace ww::energy {

using project::ResetLaw;
using quantity::PressureDifference;
using quantity::Ratio;
using quantity::VolumeFlow;

/// How the set-point follows the flow G. None: it is held (a sensor at the far circuit). Square: dp0 (G/G0)^2
/// + margin. Linear: dp0 G/G0 + margin. Both with limits. Source: US DOE/FEMP, Continuous Commissioning
/// Guidebook, 2002, chapter 5, which gives the square and works an example with the linear form.
struct DpResetLaw {
    ResetLaw form = ResetLaw::None;
    PressureDifference dpAtReference;  ///< dp0
    VolumeFlow reference;              ///< G0, above 0
    PressureDifference margin;
    std::optional<PressureDifference> low;
    std::optional<PressureDifference> high;
};

struct DpAtFlow {
    PressureDifference computed;  ///< by the law alone
    PressureDifference setPoint;  ///< within the limits
};
/// `law.reference` must be above 0; limits out of order are the caller's to find (setPointFindings()).
DpAtFlow dpAtFlow(const DpResetLaw& law, VolumeFlow flow);

inline constexpr base::MessageForm kSetPointZero{"set_point_zero",
                                                 "the sensor reads {1} with the pumps off, more than its "
                                                 "accuracy of {2}; have it zeroed before the "
                                                 "set-point is taken from it"};
inline constexpr base::MessageForm kSetPointZeroMissing{
    "set_point_zero_missing",
    "the sensor was not read with the pumps off; stop the pumps, read it and enter the value"};
inline constexpr base::MessageForm kSetPointTooHigh{"set_point_too_high",
                                                    "the set-point of {1} is {2} % of what the index "
                                                    "circuit needs at design flow, above 110 %; lower it"};
inline constexpr base::MessageForm kSetPointIndex{
    "set_point_index",
    "at this set-point the index circuit takes {1} % of design flow, outside {2} to {3} %; correct the "
    "set-point"};
inline constexpr base::MessageForm kSetPointVariable{
    "set_point_variable",
    "a balance by hand valves is right at one flow only: when far circuits close, near ones take less than "
    "design; let the control valves do the rest and hold as little dp as the worst circuit needs"};
inline constexpr base::MessageForm kSetPointLimits{
    "set_point_limits", "the low limit of {1} stands above the high limit of {2}; correct them"};

struct SetPointCheckInput {
    PressureDifference setPoint;
    std::optional<PressureDifference> zero;      ///< read with the pumps off
    std::optional<PressureDifference> accuracy;  ///< of the sensor
    std::optional<PressureDifference> need;      ///< at the sensor while the index takes design flow
    std::optional<Ratio> indexOfDesign;          ///< while the set-point was held
    Ratio toleranceLow = Ratio::si(-0.1);        ///< of flow over design less 1
    Ratio toleranceHigh = Ratio::si(0.1);
    std::optional<PressureDifference> low;
    std::optional<PressureDifference> high;
    quantity::ShownUnits units;  ///< of numbers in findings
};
/// Zero within accuracy, set-point to 110 % of the need (ASHRAE/IES 90.1, section on variable flow, from
/// memory), index within tolerance, limits in order; and the warning that holds for every variable-flow loop.
std::vector<base::Fault> setPointFindings(const SetPointCheckInput& input);

}  // namespace ww::energy
