// The laws of elements as numbers: drop and slope over flow, in SI (Pa, m3/s), without virtual calls.
// Inside hydraulics only; the typed door is element.h.
#pragma once

#include <cmath>
#include <memory>
#include <optional>
#include <variant>
#include <vector>

#include "core/curve/pump_curve.h"
#include "core/hydraulics/friction.h"

namespace ww::hydraulics::detail {

/// Pressure drop in the direction of positive flow, and its derivative with flow, Pa/(m3/s).
struct DropAndSlope {
    double drop_Pa = 0;
    double slope = 0;
};

/// k q |q|.
struct SquareLaw {
    double resistance = 0;
};

/// k q |q|^(n-1), n from 1 to 4.
struct ExponentLaw {
    double coefficient = 0;
    double exponent = 2;
};

/// (f L/D + K) rho/2 v |v|.
struct PipeLaw {
    FrictionLaw friction = FrictionLaw::Colebrook;
    double reynoldsPerFlow = 0;
    double dynamicPerSquare = 0;  ///< rho / (2 A^2)
    double lengthOverDiameter = 0;
    double relativeRoughness = 0;
    double minorLoss = 0;
    double factor = 1;  ///< on the whole drop
};

/// k q |q| forwards; backwards a stiff line that lets through kLeak of the forward flow at 1 bar.
struct CheckLaw {
    double resistance = 0;
    double backSlope = 0;
};

/// Orifice up to the start of the range, a steep line through it, an orifice again above it.
struct LimiterLaw {
    double flow_m3s = 0;
    double start_Pa = 0;
    double end_Pa = 0;
};

/// The same drop at every flow.
struct LiftLaw {
    double drop_Pa = 0;
};

/// h0 - b q^c; below `linearBelow` (c < 1 only, whose slope is endless at 0) a straight line.
struct PowerShape {
    double shutoff_Pa = 0;
    double factor = 0;
    double exponent = 2;
    double linearBelow_m3s = 0;
    double last_m3s = 0;
};

struct StraightShape {
    std::vector<double> flows_m3s;
    std::vector<double> rises_Pa;
};

struct CurveShape {
    curve::PumpCurve curve;
    double pascalPerMetre = 0;
};

struct PumpShape {
    std::variant<PowerShape, StraightShape, CurveShape> law;

    /// Rise and its slope at rated speed; flow 0 or more.
    DropAndSlope riseAt(double flow_m3s) const;
    double lastFlow_m3s() const;
};

/// A running pump: drop = -w^2 rise(q/w) times factor; backwards the non-return flap's stiff line, or without
/// one the mirror of the curve about its shutoff point.
struct PumpLaw {
    std::shared_ptr<const PumpShape> shape;
    double scale = 1;   ///< speed times diameter fraction
    double factor = 1;  ///< on the rise
    double backSlope = 0;
    bool hasNonReturn = true;
};

using Law = std::variant<SquareLaw, ExponentLaw, PipeLaw, CheckLaw, LimiterLaw, LiftLaw, PumpLaw>;

/// Flow through a shut non-return flap over the flow that would pass forwards.
inline constexpr double kLeak = 1e-6;
/// Rise of a limiter's flow over its whole range.
inline constexpr double kLimiterRise = 1e-3;
/// The least resistance of the square law, Pa/(m3/s)^2; smaller ones count as this.
inline constexpr double kLeastResistance = 1e-6;

DropAndSlope evaluate(const Law& law, double flow_m3s);

/// A slope of the right size for a drop of about `scale_Pa`: for a first estimate of the flows.
double secantSlope(const Law& law, double scale_Pa);

/// d(drop)/d(ln p) at a flow: p multiplies the whole drop; the flow coefficient or set flow; the pump's
/// speed.
double dropPerFactor(const Law& law, double flow_m3s);
double dropPerCoefficient(const Law& law, double flow_m3s);
double dropPerSpeed(const Law& law, double flow_m3s);

/// Makes the drop, the flow coefficient (or set flow) or the pump's speed the factor times what it was; the
/// three derivatives above are those of its logarithm. Where a flap is pressed shut nothing changes.
void scaleDrop(Law& law, double factor);
void scaleCoefficient(Law& law, double factor);
void scaleSpeed(Law& law, double factor);

/// Whether a flap keeps the water from going backwards.
bool hasNonReturn(const Law& law);

/// Whether the law pushes by itself: a running pump or a lift.
bool isDriver(const Law& law);

}  // namespace ww::hydraulics::detail
