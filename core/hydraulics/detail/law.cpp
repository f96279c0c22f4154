#include "core/hydraulics/detail/law.h"

#include <algorithm>

namespace ww::hydraulics::detail {

namespace {

DropAndSlope at(const SquareLaw& law, double flow) {
    const double perFlow = law.resistance * std::abs(flow);
    return {perFlow * flow, 2 * perFlow};
}

DropAndSlope at(const ExponentLaw& law, double flow) {
    const double size = std::abs(flow);
    const double perFlow =
        size == 0 && law.exponent > 1 ? 0 : law.coefficient * std::pow(size, law.exponent - 1);
    return {perFlow * flow, law.exponent * perFlow};
}

DropAndSlope at(const PipeLaw& law, double flow) {
    const double size = std::abs(flow);
    const double reynolds = size * law.reynoldsPerFlow;
    const double square = law.factor * law.dynamicPerSquare;
    double drop = square * law.minorLoss * size * size;
    double slope = 2 * square * law.minorLoss * size;
    const double friction = square * law.lengthOverDiameter;
    if (reynolds <= 2000) {
        const double laminar = friction * 64 / law.reynoldsPerFlow;
        drop += laminar * size;
        slope += laminar;
    } else {
        const FrictionFactor f = frictionFactor(law.friction, reynolds, law.relativeRoughness);
        drop += friction * f.factor * size * size;
        slope += friction * size * (2 * f.factor + f.slopePerReynolds * reynolds);
    }
    return {std::copysign(drop, flow), slope};
}

DropAndSlope at(const CheckLaw& law, double flow) {
    if (flow >= 0) {
        return {law.resistance * flow * flow, 2 * law.resistance * flow};
    }
    return {law.backSlope * flow, law.backSlope};
}

DropAndSlope at(const LimiterLaw& law, double flow) {
    const double size = std::abs(flow);
    const double top = law.flow_m3s * (1 + kLimiterRise);
    if (flow < law.flow_m3s) {
        const double perFlow = law.start_Pa / (law.flow_m3s * law.flow_m3s) * size;
        return {perFlow * flow, 2 * perFlow};
    }
    if (flow <= top) {
        const double slope = (law.end_Pa - law.start_Pa) / (top - law.flow_m3s);
        return {law.start_Pa + slope * (flow - law.flow_m3s), slope};
    }
    const double perFlow = law.end_Pa / (top * top) * size;
    return {perFlow * flow, 2 * perFlow};
}

DropAndSlope at(const LiftLaw& law, double) {
    return {law.drop_Pa, 0};
}

DropAndSlope at(const PumpLaw& law, double flow) {
    const double square = law.scale * law.scale * law.factor;
    if (flow >= 0) {
        const DropAndSlope rated = law.shape->riseAt(flow / law.scale);
        return {-square * rated.drop_Pa, -law.scale * law.factor * rated.slope};
    }
    const double shutoff = law.shape->riseAt(0).drop_Pa;
    if (law.hasNonReturn) {
        return {-square * shutoff + law.backSlope * flow, law.backSlope};
    }
    const DropAndSlope mirrored = law.shape->riseAt(-flow / law.scale);
    return {-square * (2 * shutoff - mirrored.drop_Pa), -law.scale * law.factor * mirrored.slope};
}

DropAndSlope riseAlong(const PowerShape& shape, double flow) {
    if (flow < shape.linearBelow_m3s) {
        const double line = shape.factor * std::pow(shape.linearBelow_m3s, shape.exponent - 1);
        return {shape.shutoff_Pa - line * flow, -line};
    }
    const double perFlow =
        flow == 0 && shape.exponent > 1 ? 0 : shape.factor * std::pow(flow, shape.exponent - 1);
    return {shape.shutoff_Pa - perFlow * flow, -shape.exponent * perFlow};
}

DropAndSlope riseAlong(const StraightShape& shape, double flow) {
    const auto above = std::upper_bound(shape.flows_m3s.begin(), shape.flows_m3s.end(), flow);
    const auto position = static_cast<std::size_t>(above - shape.flows_m3s.begin());
    const std::size_t i = std::clamp<std::size_t>(position, 1, shape.flows_m3s.size() - 1) - 1;
    const double slope =
        (shape.rises_Pa[i + 1] - shape.rises_Pa[i]) / (shape.flows_m3s[i + 1] - shape.flows_m3s[i]);
    return {shape.rises_Pa[i] + slope * (flow - shape.flows_m3s[i]), slope};
}

DropAndSlope riseAlong(const CurveShape& shape, double flow) {
    const auto typed = curve::VolumeFlow::si(flow);
    return {shape.curve.head(typed).si() * shape.pascalPerMetre,
            shape.curve.headSlope(typed) * shape.pascalPerMetre};
}

}  // namespace

DropAndSlope PumpShape::riseAt(double flow_m3s) const {
    return std::visit([&](const auto& shape) { return riseAlong(shape, flow_m3s); }, law);
}

double PumpShape::lastFlow_m3s() const {
    if (const auto* power = std::get_if<PowerShape>(&law)) {
        return power->last_m3s;
    }
    if (const auto* straight = std::get_if<StraightShape>(&law)) {
        return straight->flows_m3s.back();
    }
    return std::get<CurveShape>(law).curve.lastFlow().si();
}

DropAndSlope evaluate(const Law& law, double flow_m3s) {
    return std::visit([&](const auto& one) { return at(one, flow_m3s); }, law);
}

double secantSlope(const Law& law, double scale_Pa) {
    struct Visitor {
        double scale_Pa;
        double operator()(const SquareLaw& law) const { return std::sqrt(law.resistance * scale_Pa); }
        double operator()(const ExponentLaw& law) const {
            return std::pow(law.coefficient, 1 / law.exponent) * std::pow(scale_Pa, 1 - 1 / law.exponent);
        }
        double operator()(const PipeLaw& law) const {
            // A friction factor of 0.025 is near enough; the laminar line is the least the slope can be.
            const double square = law.factor * law.dynamicPerSquare;
            const double turbulent = square * (0.025 * law.lengthOverDiameter + law.minorLoss);
            const double laminar = square * law.lengthOverDiameter * 64 / law.reynoldsPerFlow;
            return std::max(laminar, std::sqrt(turbulent * scale_Pa));
        }
        double operator()(const CheckLaw& law) const { return std::sqrt(law.resistance * scale_Pa); }
        double operator()(const LimiterLaw& law) const {
            return std::max(scale_Pa, law.start_Pa) / law.flow_m3s;
        }
        double operator()(const LiftLaw&) const { return 0; }
        double operator()(const PumpLaw& law) const {
            const double rise_Pa = law.shape->riseAt(0).drop_Pa;
            return law.scale * law.factor * rise_Pa / law.shape->lastFlow_m3s();
        }
    };
    return std::visit(Visitor{scale_Pa}, law);
}

double dropPerFactor(const Law& law, double flow_m3s) {
    if (const auto* check = std::get_if<CheckLaw>(&law)) {
        return flow_m3s > 0 ? check->resistance * flow_m3s * flow_m3s : 0;
    }
    if (const auto* pump = std::get_if<PumpLaw>(&law);
        pump != nullptr && pump->hasNonReturn && flow_m3s < 0) {
        return -pump->scale * pump->scale * pump->factor * pump->shape->riseAt(0).drop_Pa;
    }
    return evaluate(law, flow_m3s).drop_Pa;
}

double dropPerCoefficient(const Law& law, double flow_m3s) {
    if (std::holds_alternative<LimiterLaw>(law)) {
        return -flow_m3s * evaluate(law, flow_m3s).slope;
    }
    return -2 * dropPerFactor(law, flow_m3s);
}

double dropPerSpeed(const Law& law, double flow_m3s) {
    const auto* pump = std::get_if<PumpLaw>(&law);
    if (pump == nullptr) {
        return 0;
    }
    if (pump->hasNonReturn && flow_m3s < 0) {
        return 2 * dropPerFactor(law, flow_m3s);
    }
    const DropAndSlope here = evaluate(law, flow_m3s);
    return 2 * here.drop_Pa - flow_m3s * here.slope;
}

void scaleDrop(Law& law, double factor) {
    std::visit(
        [factor](auto& one) {
            using Kind = std::decay_t<decltype(one)>;
            if constexpr (std::is_same_v<Kind, SquareLaw> || std::is_same_v<Kind, CheckLaw>) {
                one.resistance = std::max(one.resistance * factor, kLeastResistance);
            } else if constexpr (std::is_same_v<Kind, ExponentLaw>) {
                one.coefficient *= factor;
            } else if constexpr (std::is_same_v<Kind, LimiterLaw>) {
                one.start_Pa *= factor;
                one.end_Pa *= factor;
            } else if constexpr (std::is_same_v<Kind, LiftLaw>) {
                one.drop_Pa *= factor;
            } else {
                one.factor *= factor;
            }
        },
        law);
}

void scaleCoefficient(Law& law, double factor) {
    if (auto* limiter = std::get_if<LimiterLaw>(&law)) {
        limiter->flow_m3s *= factor;
    } else {
        scaleDrop(law, 1 / (factor * factor));
    }
}

void scaleSpeed(Law& law, double factor) {
    if (auto* pump = std::get_if<PumpLaw>(&law)) {
        pump->scale *= factor;
    }
}

bool hasNonReturn(const Law& law) {
    const auto* pump = std::get_if<PumpLaw>(&law);
    return std::holds_alternative<CheckLaw>(law) || (pump != nullptr && pump->hasNonReturn);
}

bool isDriver(const Law& law) {
    const auto* lift = std::get_if<LiftLaw>(&law);
    return std::holds_alternative<PumpLaw>(law) || (lift != nullptr && lift->drop_Pa != 0);
}

}  // namespace ww::hydraulics::detail
