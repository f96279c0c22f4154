// The pressure rise of one pump over flow at rated speed: by a table, by a power law or by straight lines.
// Not for power, efficiency or NPSH (curve/pump_curve.h).
#pragma once

#include <memory>
#include <span>
#include <vector>

#include "core/base/result.h"
#include "core/curve/pump_curve.h"
#include "core/quantity/quantity.h"

namespace ww::hydraulics {

using quantity::Density;
using quantity::PressureDifference;
using quantity::VolumeFlow;

namespace detail {
struct PumpShape;
}

/// One point of a pump's curve as pressure.
struct PumpDuty {
    VolumeFlow flow;
    PressureDifference rise;
};

inline constexpr base::MessageForm kPumpDutyCount{
    "pump_duty_count", "points of the pump's curve: {1}; this law needs {2w}, add or remove points"};
inline constexpr base::MessageForm kPumpDutyFalls{
    "pump_duty_falls",
    "the pump's pressure does not fall from {1} kPa between {2} and {3} m3/h; correct these points"};
inline constexpr base::MessageForm kPumpDutyStart{
    "pump_duty_start",
    "the pump's first point stands at {1} m3/h; the power law needs its first point at zero flow"};

/// Rise over flow, falling strictly. Cheap to copy: copies share the curve.
class PumpModel {
  public:
    /// The monotone cubic of the table (curve/pump_curve.h), turned into pressure with the fluid's density.
    static PumpModel fromCurve(curve::PumpCurve curve, Density density);
    /// rise = h0 - b q^c through three points, the first at zero flow; c = ln((h0-h2)/(h0-h1))/ln(q2/q1).
    /// The law goes on beyond the third point.
    static base::Result<PumpModel> powerThroughThree(std::span<const PumpDuty> points);
    /// Straight lines between at least two points; the end lines go on beyond them.
    static base::Result<PumpModel> straightLines(std::span<const PumpDuty> points);

    /// Rise at rated speed, at a flow of 0 or more.
    PressureDifference rise(VolumeFlow flow) const;
    PressureDifference shutoff() const { return rise(VolumeFlow()); }
    /// The flow of the last point; beyond it the curve is continued.
    VolumeFlow lastFlow() const;

    const std::shared_ptr<const detail::PumpShape>& shape() const { return m_shape; }

  private:
    explicit PumpModel(std::shared_ptr<const detail::PumpShape> shape) : m_shape(std::move(shape)) {}
    std::shared_ptr<const detail::PumpShape> m_shape;
};

}  // namespace ww::hydraulics
