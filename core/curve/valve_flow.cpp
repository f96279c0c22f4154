#include "core/curve/valve_flow.h"

#include <cmath>

#include "core/base/root_sum_square.h"

namespace ww::curve {

namespace {

constexpr double kSecondsPerHour = 3600;
constexpr double kPascalsPerBar = 1e5;

}  // namespace

double specificGravity(Density density) {
    EXPECTS(density.si() > 0);
    return density.si() / kReferenceDensity.si();
}

VolumeFlow valveFlow(FlowCoefficient coefficient, PressureDifference dp, Density density) {
    EXPECTS(coefficient.si() >= 0);
    const double dp_bar = dp.si() / kPascalsPerBar;
    const double flow_m3h = coefficient.si() * std::sqrt(std::abs(dp_bar) / specificGravity(density));
    return VolumeFlow::si(std::copysign(flow_m3h / kSecondsPerHour, dp_bar));
}

PressureDifference valveDrop(FlowCoefficient coefficient, VolumeFlow flow, Density density) {
    const double flow_m3s = flow.si();
    return PressureDifference::si(valveResistance(coefficient, density).si() * flow_m3s * std::abs(flow_m3s));
}

FlowCoefficient coefficientNeeded(VolumeFlow flow, PressureDifference dp, Density density) {
    EXPECTS(flow.si() > 0 && dp.si() > 0);
    const double dp_bar = dp.si() / kPascalsPerBar;
    const double flow_m3h = flow.si() * kSecondsPerHour;
    return FlowCoefficient::si(flow_m3h / std::sqrt(dp_bar / specificGravity(density)));
}

quantity::Resistance valveResistance(FlowCoefficient coefficient, Density density) {
    EXPECTS(coefficient.si() > 0);
    const double perCoefficient = kSecondsPerHour / coefficient.si();
    return quantity::Resistance::si(specificGravity(density) * kPascalsPerBar * perCoefficient *
                                    perCoefficient);
}

double flowUncertainty(const FlowUncertaintyParts& parts) {
    return base::rootSumSquare(parts.coefficient, 0.5 * parts.pressure, 0.5 * parts.density, parts.position);
}

}  // namespace ww::curve
