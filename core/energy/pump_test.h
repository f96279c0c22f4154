// A pump's test sheet evaluated: head, flow by every way there is, impeller, power, efficiency and suction at
// every point that was read. Not for records (pump_room/) and not for what to do about it (pump_options.h).
#pragma once

#include <optional>
#include <vector>

#include "core/curve/impeller_family.h"
#include "core/curve/pump_set.h"
#include "core/energy/best_point.h"
#include "core/energy/motor_condition.h"
#include "core/energy/pump_head.h"
#include "core/energy/suction.h"
#include "core/project/records.h"
#include "core/quantity/shown_units.h"

namespace ww::energy {

/// A flow with its standard uncertainty.
struct FlowValue {
    VolumeFlow flow;
    std::optional<VolumeFlow> uncertainty;
};

/// What was read at one point of the test.
struct PumpTestPoint {
    project::PumpPoint kind = project::PumpPoint::Running;
    GaugeReading gauges;
    std::optional<PressureDifference> riseUncertainty;  ///< standard, of discharge less suction
    bool isGaugeStated = true;                          ///< the gauge states its accuracy
    std::optional<RotationalSpeed> speed;
    std::optional<FlowValue> meter;     ///< of a flow meter in the main
    std::optional<FlowValue> branches;  ///< sum of the terminals read at that time
    MotorReading motor;
};

/// Everything known about one pump.
struct PumpTestInput {
    const curve::PumpCurve* curve = nullptr;        ///< of the stated impeller; may be null
    const curve::ImpellerFamily* family = nullptr;  ///< where the table has several; may be null
    std::optional<Length> statedImpeller;
    std::optional<RotationalSpeed> ratedSpeed;  ///< of the curve
    GaugeStation station;
    MotorPlate plate;
    MotorLimits limits;
    Density density;
    AbsolutePressure vapour;
    AbsolutePressure air = AbsolutePressure::si(101325);
    std::vector<PumpTestPoint> points;
    quantity::ShownUnits units;  ///< of numbers in findings
};

inline constexpr base::MessageForm kHeadAboveShutoff{
    "pump_head_above_shutoff",
    "the head of {1} lies above the curve's {2} at shutoff, so the curve gives no flow; check gauges, "
    "speed "
    "and impeller"};
inline constexpr base::MessageForm kHeadBelowCurve{
    "pump_head_below_curve",
    "the head of {1} lies below the last point of the curve, so the curve gives no flow; get the maker's "
    "curve for this duty"};
inline constexpr base::MessageForm kCurveFlat{"pump_curve_flat",
                                              "the curve is flat here: the uncertainty of the head makes the "
                                              "flow {1} to {2}; use a meter or the sum "
                                              "of the terminals"};
inline constexpr base::MessageForm kCurveUnknown{
    "pump_curve_unknown", "the pump has no usable curve, so it gives no flow; enter at least two points"};
inline constexpr base::MessageForm kClosureWide{"pump_closure_wide",
                                                "flow by {1w} is {2} and by {3w} is {4}, z = {5}: "
                                                "more apart than their uncertainties allow; find "
                                                "out which is wrong"};
inline constexpr base::MessageForm kImpellerSuspect{"pump_impeller_suspect",
                                                    "the head at shutoff says {1} of impeller and the "
                                                    "record says {2}; check impeller, direction of turn, "
                                                    "speed, wear and air before the curve is trusted"};
inline constexpr base::MessageForm kImpellerBeyond{"pump_impeller_beyond",
                                                   "the head at shutoff lies outside the family of curves, "
                                                   "the impeller is a first estimate; check the family"};
inline constexpr base::MessageForm kEfficiencyImplied{
    "pump_efficiency_implied",
    "power into the water over shaft power is {1} %, outside 20 to 90 %; check flow, head and motor "
    "readings"};
inline constexpr base::MessageForm kHeadAboveTestShutoff{
    "pump_head_above_test_shutoff",
    "the head with flow, {1}, is not below the head at shutoff, {2}; read one of them again"};
inline constexpr base::MessageForm kNpshShort{
    "pump_npsh_short",
    "NPSH available is {1} and required {2}, a margin below {3}; raise the fill pressure or lower the "
    "temperature before the pump is damaged"};
inline constexpr base::MessageForm kZeroLarge{"pump_gauge_zero_large",
                                              "with the pump off the gauges differ by {1} after "
                                              "correction for height; use one gauge for both taps, "
                                              "or have them calibrated"};
inline constexpr base::MessageForm kGaugeUnstated{"pump_gauge_unstated",
                                                  "no gauge with a known accuracy is named, so the usual 2 % "
                                                  "of each reading are counted; name the gauge here "
                                                  "and its accuracy on the place Job"};
inline constexpr base::MessageForm kSpeedUnknown{"pump_test_speed_unknown",
                                                 "the speed was not read, so full speed is assumed; read it"};

enum class FlowWay { Curve, Meter, Branches };

/// Flow from the curve, with the flows at the head's standard uncertainty up and down.
struct CurveFlow {
    VolumeFlow flow;
    VolumeFlow low;
    VolumeFlow high;
    bool isFlat = false;  ///< the interval is wider than 10 % of the flow either way
};

/// How two flows agree: z = |a - b| / sqrt(ua^2 + ub^2).
struct FlowClosure {
    FlowWay one{};
    FlowWay other{};
    Ratio score;
};

struct PumpPointResult {
    project::PumpPoint kind{};
    std::optional<PumpHead> head;
    std::optional<Head> headUncertainty;
    Ratio speedFraction = Ratio::si(1);    ///< of rated
    std::optional<Head> headAtRatedSpeed;  ///< H (Nr/N)^2
    std::optional<CurveFlow> curveFlow;
    std::optional<FlowValue> meterFlow;
    std::optional<FlowValue> branchFlow;
    std::vector<FlowClosure> closures;
    std::optional<FlowWay> flowWay;  ///< which flow counts: meter, else branches, else curve; 0 at shutoff
    std::optional<VolumeFlow> flow;
    MotorPower motor;
    MotorCondition condition;
    std::optional<Power> water;
    std::optional<Ratio> efficiency;   ///< water power over shaft power
    std::optional<Ratio> wireToWater;  ///< water power over electrical input
    std::optional<Ratio> ofBestFlow;   ///< flow over best-efficiency flow
    std::optional<Head> npshAvailable;
    std::optional<Head> npshRequired;
    std::optional<Head> npshMargin;
    std::vector<base::Fault> findings;
};

struct PumpTestSheet {
    std::optional<PressureDifference> gaugeZero;
    std::optional<curve::ImpellerEstimate> impeller;  ///< from the head at shutoff
    bool isImpellerSuspect = false;  ///< its head differs by more than 3 % from the stated one's
    std::optional<curve::PumpCurve>
        curve;                            ///< that flows were taken from: of the impeller found where suspect
    std::vector<PumpPointResult> points;  ///< beside the input's
    std::vector<base::Fault> findings;
};

/// Evaluates the points in the order: at rest, shutoff, then all others.
PumpTestSheet evaluate(const PumpTestInput& input);

}  // namespace ww::energy
