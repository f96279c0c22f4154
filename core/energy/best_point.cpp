#include "core/energy/best_point.h"

#include <cmath>
#include <numbers>

#include "core/quantity/measured.h"

namespace ww::energy {

namespace {

using quantity::Unit;

/// The trade's specific speed (rpm, gpm, ft) over the type number: 60 sqrt(15850.3) 3.28084^-0.75 g^0.75 / 2
/// pi.
constexpr double kSpecificSpeedOfType = 2733;
/// Hot and large pumps (common practice, no source).
constexpr double kHot_C = 60;
constexpr double kLarge_W = 37000;

/// Efficiency there; nothing outside the table's own.
double efficiencyAt(const curve::PumpCurve& curve, double flow_m3s, curve::PumpState state) {
    const auto found = curve.efficiency(VolumeFlow::si(flow_m3s), state);
    return found ? found->si() : -1;
}

}  // namespace

std::optional<VolumeFlow> bestEfficiencyFlow(const curve::PumpCurve& curve, curve::PumpState state) {
    constexpr int kSteps = 400;
    const double last_m3s = curve.lastFlow(state).si();
    double least = 2;
    double best = -1;
    int bestStep = 0;
    int firstStep = -1;
    int lastStep = -1;
    for (int step = 0; step <= kSteps; ++step) {
        const double here = efficiencyAt(curve, last_m3s * step / kSteps, state);
        if (here < 0) {
            continue;
        }
        firstStep = firstStep < 0 ? step : firstStep;
        lastStep = step;
        least = std::min(least, here);
        if (here > best) {
            best = here;
            bestStep = step;
        }
    }
    if (best <= 0 || best - least < 1e-6 || bestStep == firstStep || bestStep == lastStep) {
        return std::nullopt;
    }
    double low_m3s = last_m3s * (bestStep - 1) / kSteps;
    double high_m3s = last_m3s * (bestStep + 1) / kSteps;
    for (int i = 0; i < 60; ++i) {
        const double third_m3s = (high_m3s - low_m3s) / 3;
        const bool isRight = efficiencyAt(curve, low_m3s + third_m3s, state) <
                             efficiencyAt(curve, high_m3s - third_m3s, state);
        (isRight ? low_m3s : high_m3s) += isRight ? third_m3s : -third_m3s;
    }
    return VolumeFlow::si(0.5 * (low_m3s + high_m3s));
}

std::optional<Ratio> typeNumber(const curve::PumpCurve& curve, RotationalSpeed speed) {
    const auto flow = bestEfficiencyFlow(curve);
    if (!flow) {
        return std::nullopt;
    }
    const double specificEnergy = quantity::kStandardGravity * curve.head(*flow).si();
    return Ratio::si(2 * std::numbers::pi * speed.si() * std::sqrt(flow->si()) /
                     std::pow(specificEnergy, 0.75));
}

ShutoffAdvice shutoffAdvice(const ShutoffCase& pump) {
    ShutoffAdvice out;
    const auto forbid = [&](base::Fault fault) {
        out.isForbidden = true;
        out.cautions.push_back(std::move(fault));
    };
    if (pump.isPositiveDisplacement) {
        out.isNever = true;
        forbid({&kShutoffDisplacement, "", {}});
    }
    if (pump.guardsSource) {
        forbid({&kShutoffGuards, "", {}});
    }
    const auto type =
        pump.curve != nullptr && pump.speed ? typeNumber(*pump.curve, *pump.speed) : std::nullopt;
    if (type && *type > kHighTypeNumber) {
        forbid({&kShutoffHighSpecificSpeed, "", {quantity::concise(kSpecificSpeedOfType * type->si(), 3)}});
    }
    if (pump.curve != nullptr) {
        const auto best = bestEfficiencyFlow(*pump.curve);
        const auto shut = pump.curve->shaftPower(VolumeFlow(), curve::kPumpTableDensity);
        const auto running = best ? pump.curve->shaftPower(*best, curve::kPumpTableDensity) : std::nullopt;
        if (shut && running && *shut > *running) {
            forbid({&kShutoffPowerRises, "", {pump.units.text(*shut, 3), pump.units.text(*running, 3)}});
        }
    }
    if (!type && !pump.isPositiveDisplacement) {
        out.cautions.push_back({&kShutoffUnknown, "", {}});
    }
    if (pump.temperature && pump.temperature->in(Unit::Celsius) >= kHot_C) {
        out.cautions.push_back({&kShutoffHot, "", {pump.units.text(*pump.temperature, 3)}});
    }
    if (pump.motor && pump.motor->si() >= kLarge_W) {
        out.cautions.push_back({&kShutoffLarge, "", {pump.units.text(*pump.motor, 3)}});
    }
    if (!out.isForbidden) {
        out.cautions.push_back({&kShutoffBear, "", {}});
        out.cautions.push_back({&kShutoffHow, "", {}});
    }
    return out;
}

}  // namespace ww::energy
