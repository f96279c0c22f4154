#include "core/hydraulics/element.h"

#include <cmath>
#include <numbers>

#include "core/curve/valve_flow.h"
#include "core/quantity/measured.h"

namespace ww::hydraulics {

namespace {

constexpr double kBackReference_Pa = 1e5;

bool isPositive(double number) {
    return std::isfinite(number) && number > 0;
}

bool isNotNegative(double number) {
    return std::isfinite(number) && number >= 0;
}

detail::CheckLaw checkLaw(double resistance) {
    const double least = std::max(resistance, detail::kLeastResistance);
    return {least, std::sqrt(least * kBackReference_Pa) / detail::kLeak};
}

}  // namespace

void Element::require(bool isGood, const base::MessageForm& form, std::vector<double> numbers) {
    if (isGood) {
        return;
    }
    base::Fault fault{&form, "", {}};
    for (const double number : numbers) {
        fault.arguments.push_back(std::isfinite(number) ? quantity::concise(number, 6) : "not a number");
    }
    m_faults.push_back(std::move(fault));
}

Element Element::shut() {
    Element element;
    element.m_isShut = true;
    return element;
}

Element Element::resistance(Resistance resistance) {
    Element element;
    element.require(isNotNegative(resistance.si()), kElementResistance, {resistance.si()});
    element.m_law = detail::SquareLaw{std::max(resistance.si(), detail::kLeastResistance)};
    return element;
}

Element Element::exponentLaw(PressureDifference drop, VolumeFlow flow, double exponent) {
    Element element;
    const bool isPoint = isPositive(drop.si()) && isPositive(flow.si());
    element.require(isPoint, kElementReference, {drop.si(), flow.si()});
    element.require(exponent >= 1 && exponent <= 4, kElementExponent, {exponent});
    if (element.m_faults.empty()) {
        element.m_law = detail::ExponentLaw{drop.si() / std::pow(flow.si(), exponent), exponent};
    }
    return element;
}

Element Element::valve(FlowCoefficient coefficient, Density density) {
    Element element;
    element.require(isNotNegative(coefficient.si()), kElementCoefficient, {coefficient.si()});
    element.require(isPositive(density.si()), kElementDensity, {density.si()});
    if (!element.m_faults.empty()) {
        return element;
    }
    if (coefficient.si() == 0) {
        return shut();
    }
    return resistance(curve::valveResistance(coefficient, density));
}

Element Element::pipe(const Pipe& pipe, Density density, KinematicViscosity viscosity) {
    Element element;
    const double diameter_m = pipe.insideDiameter.si();
    const double roughness_m = pipe.roughness.si();
    element.require(isPositive(pipe.length.si()), kPipeLength, {pipe.length.si()});
    element.require(isPositive(diameter_m), kPipeDiameter, {diameter_m});
    element.require(isNotNegative(roughness_m) && !(roughness_m > 0.1 * diameter_m), kPipeRoughness,
                    {roughness_m});
    element.require(isNotNegative(pipe.minorLossSum), kPipeMinorLoss, {pipe.minorLossSum});
    element.require(isPositive(density.si()), kElementDensity, {density.si()});
    element.require(isPositive(viscosity.si()), kPipeViscosity, {viscosity.si()});
    if (!element.m_faults.empty()) {
        return element;
    }
    const double area_m2 = std::numbers::pi / 4 * diameter_m * diameter_m;
    detail::PipeLaw law;
    law.friction = pipe.friction;
    law.reynoldsPerFlow = diameter_m / (area_m2 * viscosity.si());
    law.dynamicPerSquare = density.si() / (2 * area_m2 * area_m2);
    law.lengthOverDiameter = pipe.length.si() / diameter_m;
    law.relativeRoughness = roughness_m / diameter_m;
    law.minorLoss = pipe.minorLossSum;
    element.m_law = law;
    return element;
}

Element Element::checkValve(Resistance forward) {
    Element element;
    element.require(isNotNegative(forward.si()), kElementResistance, {forward.si()});
    element.m_law = checkLaw(forward.si());
    return element;
}

Element Element::flowLimiter(VolumeFlow flow, PressureDifference start, PressureDifference end) {
    Element element;
    element.require(isNotNegative(flow.si()), kLimiterFlow, {flow.si()});
    const bool isRange = isPositive(start.si()) && std::isfinite(end.si()) && end > start;
    element.require(isRange, kLimiterRange, {start.si(), end.si()});
    if (!element.m_faults.empty()) {
        return element;
    }
    if (flow.si() == 0) {
        return shut();
    }
    element.m_law = detail::LimiterLaw{flow.si(), start.si(), end.si()};
    return element;
}

Element Element::pressureIndependentValve(VolumeFlow fullFlow, double openFraction, PressureDifference start,
                                          PressureDifference end) {
    return flowLimiter(fullFlow * openFraction, start, end);
}

Element Element::staticLift(PressureDifference drop) {
    Element element;
    element.require(drop.isFinite(), kLiftNumber, {drop.si()});
    element.m_law = detail::LiftLaw{drop.si()};
    element.m_isPumpOrLift = true;
    return element;
}

Element Element::stoppedPump(const PumpOperation& operation) {
    if (!operation.stoppedResistance) {
        return shut();
    }
    return operation.hasNonReturn ? checkValve(*operation.stoppedResistance)
                                  : resistance(*operation.stoppedResistance);
}

Element Element::pump(PumpModel model, PumpOperation operation) {
    Element element;
    element.m_isPumpOrLift = true;
    const double speed = operation.speedFraction;
    const double shutoff_Pa = model.shutoff().si();
    element.require(isNotNegative(speed), kPumpSpeed, {speed});
    element.require(isPositive(operation.diameterFraction), kPumpDiameter, {operation.diameterFraction});
    element.require(isPositive(operation.curveFactor), kPumpFactor, {operation.curveFactor});
    element.require(isPositive(shutoff_Pa), kPumpShutoff, {shutoff_Pa});
    if (!element.m_faults.empty()) {
        return element;
    }
    if (!operation.isRunning || speed == 0) {
        element = stoppedPump(operation);
        element.m_isPumpOrLift = true;
        return element;
    }
    detail::PumpLaw law;
    law.shape = model.shape();
    law.scale = speed * operation.diameterFraction;
    law.factor = operation.curveFactor;
    law.hasNonReturn = operation.hasNonReturn;
    law.backSlope = law.scale * law.factor * shutoff_Pa / (detail::kLeak * model.lastFlow().si());
    element.m_law = std::move(law);
    return element;
}

PressureDifference Element::drop(VolumeFlow flow) const {
    EXPECTS(!m_isShut && m_faults.empty());
    return PressureDifference::si(detail::evaluate(m_law, flow.si()).drop_Pa);
}

DropSlope Element::slope(VolumeFlow flow) const {
    EXPECTS(!m_isShut && m_faults.empty());
    return DropSlope::si(detail::evaluate(m_law, flow.si()).slope);
}

}  // namespace ww::hydraulics
