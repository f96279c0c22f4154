#include "core/curve/pump_curve.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "core/quantity/measured.h"

namespace ww::curve {

namespace {

using quantity::Unit;

constexpr double kSharpBend = 8;

std::optional<base::Fault> faultInRow(const PumpPoint& point, const quantity::ShownUnits& units) {
    const std::string flow = units.text(point.flow);
    if (point.flow.si() < 0 || point.head.si() < 0) {
        return base::Fault{&kPumpNegative, "", {flow, units.text(point.head)}};
    }
    if (point.efficiency && (point.efficiency->si() < 0 || point.efficiency->si() > 1)) {
        return base::Fault{
            &kPumpEfficiencyOutside, "", {flow, quantity::concise(point.efficiency->si() * 100, 4)}};
    }
    if (point.power && point.power->si() <= 0) {
        return base::Fault{&kPumpPowerNotPositive, "", {flow, units.text(*point.power)}};
    }
    if (point.npshRequired && point.npshRequired->si() < 0) {
        return base::Fault{&kPumpNpshNegative, "", {flow, units.text(*point.npshRequired)}};
    }
    return std::nullopt;
}

std::optional<base::Fault> faultBetween(const PumpPoint& before, const PumpPoint& after,
                                        const quantity::ShownUnits& units) {
    const std::string flowBefore = units.text(before.flow);
    const std::string flowAfter = units.text(after.flow);
    if (after.flow == before.flow) {
        return base::Fault{&kPumpFlowRepeated, "", {flowAfter}};
    }
    if (after.head > before.head) {
        return base::Fault{
            &kPumpRises, "", {units.text(before.head), units.text(after.head), flowBefore, flowAfter}};
    }
    if (after.head == before.head) {
        return base::Fault{&kPumpFlat, "", {units.text(before.head), flowBefore, flowAfter}};
    }
    return std::nullopt;
}

bool isFinite(const PumpPoint& point) {
    return point.flow.isFinite() && point.head.isFinite() &&
           (!point.efficiency || point.efficiency->isFinite()) && (!point.power || point.power->isFinite()) &&
           (!point.npshRequired || point.npshRequired->isFinite());
}

/// The curve of one optional column over the rows that have it; empty if none has.
template <class Q>
MonotoneCubic columnCurve(std::span<const PumpPoint> points, std::optional<Q> PumpPoint::*column) {
    std::vector<double> flows_m3s;
    std::vector<double> values_si;
    for (const PumpPoint& point : points) {
        if (point.*column) {
            flows_m3s.push_back(point.flow.si());
            values_si.push_back((point.*column)->si());
        }
    }
    return flows_m3s.empty() ? MonotoneCubic() : MonotoneCubic(flows_m3s, values_si);
}

MonotoneCubic headCurve(std::span<const PumpPoint> points) {
    std::vector<double> flows_m3s;
    std::vector<double> heads_m;
    for (const PumpPoint& point : points) {
        flows_m3s.push_back(point.flow.si());
        heads_m.push_back(point.head.si());
    }
    return {flows_m3s, heads_m};
}

/// By how much flows are larger than on the table's curve: speed and trim act alike (Q ~ n D, H ~ n^2 D^2).
double scaleOf(PumpState state) {
    EXPECTS(state.speedFraction > 0 && state.diameterFraction > 0);
    return state.speedFraction * state.diameterFraction;
}

double hydraulicPower_W(double flow_m3s, double head_m, Density density) {
    return density.si() * quantity::kStandardGravity * flow_m3s * head_m;
}

}  // namespace

base::Result<PumpCurve> PumpCurve::make(std::vector<PumpPoint> points, const quantity::ShownUnits& units) {
    for (const PumpPoint& point : points) {
        EXPECTS(isFinite(point));
    }
    if (points.size() < 2) {
        return base::Fault{&kPumpTooFewPoints, "", {std::to_string(points.size())}};
    }
    std::stable_sort(points.begin(), points.end(),
                     [](const PumpPoint& a, const PumpPoint& b) { return a.flow < b.flow; });
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (const auto fault = faultInRow(points[i], units)) {
            return *fault;
        }
        if (i == 0) {
            continue;
        }
        if (const auto fault = faultBetween(points[i - 1], points[i], units)) {
            return *fault;
        }
    }
    return PumpCurve(std::move(points));
}

PumpCurve::PumpCurve(std::vector<PumpPoint> points)
    : m_points(std::move(points)),
      m_heads(headCurve(m_points)),
      m_efficiencies(columnCurve(m_points, &PumpPoint::efficiency)),
      m_powers(columnCurve(m_points, &PumpPoint::power)),
      m_npshRequired(columnCurve(m_points, &PumpPoint::npshRequired)) {}

std::vector<base::Fault> PumpCurve::doubts(const quantity::ShownUnits& units) const {
    const auto slope_mPerM3h = [&](std::size_t i) {
        return (m_points[i + 1].head - m_points[i].head).si() /
               (m_points[i + 1].flow - m_points[i].flow).in(Unit::CubicMetrePerHour);
    };
    std::vector<base::Fault> out;
    for (std::size_t i = 1; i + 1 < m_points.size(); ++i) {
        const double before = slope_mPerM3h(i - 1);
        const double after = slope_mPerM3h(i);
        if (after / before > kSharpBend || before / after > kSharpBend) {
            out.push_back({&kPumpKinked,
                           "",
                           {units.text(m_points[i].flow),
                            quantity::concise(std::max(after / before, before / after), 2)}});
        }
    }
    return out;
}

Head PumpCurve::head(VolumeFlow flow, PumpState state) const {
    const double scale = scaleOf(state);
    return Head::si(m_heads.value(flow.si() / scale) * scale * scale);
}

double PumpCurve::headSlope(VolumeFlow flow, PumpState state) const {
    const double scale = scaleOf(state);
    return m_heads.slope(flow.si() / scale) * scale;
}

std::optional<VolumeFlow> PumpCurve::flowAtHead(Head head, PumpState state) const {
    const double scale = scaleOf(state);
    const double flow_m3s = m_heads.inverse(head.si() / (scale * scale)) * scale;
    if (flow_m3s >= 0) {
        return VolumeFlow::si(flow_m3s);
    }
    // The shutoff head itself belongs to zero flow, whatever the last place of the inverse says.
    return head <= shutoffHead(state) ? std::optional(VolumeFlow::si(0)) : std::nullopt;
}

CurveRange PumpCurve::range(VolumeFlow flow, PumpState state) const {
    const double scale = scaleOf(state);
    if (flow > m_points.back().flow * scale) {
        return CurveRange::BeyondLastPoint;
    }
    return flow < m_points.front().flow * scale ? CurveRange::BelowShutoffFlow : CurveRange::WithinPoints;
}

VolumeFlow PumpCurve::lastFlow(PumpState state) const {
    return m_points.back().flow * scaleOf(state);
}

VolumeFlow PumpCurve::runOut(PumpState state) const {
    return VolumeFlow::si(m_heads.inverse(0) * scaleOf(state));
}

std::optional<Ratio> PumpCurve::efficiency(VolumeFlow flow, PumpState state) const {
    const double tableFlow_m3s = flow.si() / scaleOf(state);
    if (m_efficiencies.covers(tableFlow_m3s)) {
        return Ratio::si(m_efficiencies.value(tableFlow_m3s));
    }
    if (!m_powers.covers(tableFlow_m3s)) {
        return std::nullopt;
    }
    const double hydraulic_W =
        hydraulicPower_W(tableFlow_m3s, m_heads.value(tableFlow_m3s), kPumpTableDensity);
    return Ratio::si(hydraulic_W / m_powers.value(tableFlow_m3s));
}

std::optional<Power> PumpCurve::shaftPower(VolumeFlow flow, Density density, PumpState state) const {
    const double scale = scaleOf(state);
    const double tableFlow_m3s = flow.si() / scale;
    const double affinity = scale * scale * scale;
    if (m_powers.covers(tableFlow_m3s)) {
        const double ofTableFluid = density.si() / kPumpTableDensity.si();
        return Power::si(m_powers.value(tableFlow_m3s) * ofTableFluid * affinity);
    }
    if (!m_efficiencies.covers(tableFlow_m3s) || !(tableFlow_m3s > 0)) {
        return std::nullopt;
    }
    const double efficiency = m_efficiencies.value(tableFlow_m3s);
    if (!(efficiency > 0)) {
        return std::nullopt;
    }
    const double hydraulic_W = hydraulicPower_W(tableFlow_m3s, m_heads.value(tableFlow_m3s), density);
    return Power::si(hydraulic_W / efficiency * affinity);
}

std::optional<Head> PumpCurve::npshRequired(VolumeFlow flow, PumpState state) const {
    const double tableFlow_m3s = flow.si() / scaleOf(state);
    if (!m_npshRequired.covers(tableFlow_m3s)) {
        return std::nullopt;
    }
    return Head::si(m_npshRequired.value(tableFlow_m3s) * state.speedFraction * state.speedFraction);
}

}  // namespace ww::curve
