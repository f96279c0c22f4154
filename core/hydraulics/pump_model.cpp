#include "core/hydraulics/pump_model.h"

#include <cmath>
#include <string>

#include "core/base/term.h"
#include "core/hydraulics/detail/law.h"
#include "core/quantity/measured.h"

namespace ww::hydraulics {

namespace {

using quantity::Unit;

std::string inCubicMetresPerHour(VolumeFlow flow) {
    return quantity::concise(flow.in(Unit::CubicMetrePerHour), 4);
}

std::optional<base::Fault> faultOf(std::span<const PumpDuty> points) {
    for (std::size_t i = 0; i + 1 < points.size(); ++i) {
        const bool isFalling = points[i + 1].flow > points[i].flow && points[i + 1].rise < points[i].rise;
        if (!isFalling || !points[i].flow.isFinite() || !points[i + 1].rise.isFinite()) {
            return base::Fault{
                &kPumpDutyFalls,
                "",
                {quantity::concise(points[i].rise.in(Unit::Kilopascal), 4),
                 inCubicMetresPerHour(points[i].flow), inCubicMetresPerHour(points[i + 1].flow)}};
        }
    }
    return std::nullopt;
}

std::shared_ptr<const detail::PumpShape> shared(detail::PumpShape shape) {
    return std::make_shared<const detail::PumpShape>(std::move(shape));
}

}  // namespace

PumpModel PumpModel::fromCurve(curve::PumpCurve curve, Density density) {
    EXPECTS(density.si() > 0);
    const double pascalPerMetre = quantity::pressureOf(quantity::Head::si(1), density).si();
    return PumpModel(shared({detail::CurveShape{std::move(curve), pascalPerMetre}}));
}

base::Result<PumpModel> PumpModel::powerThroughThree(std::span<const PumpDuty> points) {
    if (points.size() != 3) {
        return base::Fault{&kPumpDutyCount, "", {std::to_string(points.size()), base::term("exactly 3")}};
    }
    if (points[0].flow.si() != 0) {
        return base::Fault{&kPumpDutyStart, "", {inCubicMetresPerHour(points[0].flow)}};
    }
    if (const auto fault = faultOf(points)) {
        return *fault;
    }
    const double shutoff_Pa = points[0].rise.si();
    const double firstFall_Pa = shutoff_Pa - points[1].rise.si();
    const double secondFall_Pa = shutoff_Pa - points[2].rise.si();
    const double exponent =
        std::log(secondFall_Pa / firstFall_Pa) / std::log(points[2].flow / points[1].flow);
    const double factor = firstFall_Pa / std::pow(points[1].flow.si(), exponent);
    // A power below 1 has an endless slope at zero flow: a thousandth of the curve is made straight there.
    const double linearBelow_m3s = exponent < 1 ? 1e-3 * points[1].flow.si() : 0;
    return PumpModel(
        shared({detail::PowerShape{shutoff_Pa, factor, exponent, linearBelow_m3s, points[2].flow.si()}}));
}

base::Result<PumpModel> PumpModel::straightLines(std::span<const PumpDuty> points) {
    if (points.size() < 2) {
        return base::Fault{&kPumpDutyCount, "", {std::to_string(points.size()), base::term("at least 2")}};
    }
    if (const auto fault = faultOf(points)) {
        return *fault;
    }
    detail::StraightShape shape;
    for (const PumpDuty& point : points) {
        shape.flows_m3s.push_back(point.flow.si());
        shape.rises_Pa.push_back(point.rise.si());
    }
    return PumpModel(shared({std::move(shape)}));
}

PressureDifference PumpModel::rise(VolumeFlow flow) const {
    EXPECTS(flow.si() >= 0);
    return PressureDifference::si(m_shape->riseAt(flow.si()).drop_Pa);
}

VolumeFlow PumpModel::lastFlow() const {
    return VolumeFlow::si(m_shape->lastFlow_m3s());
}

}  // namespace ww::hydraulics
