#include "core/curve/pump_set.h"

#include <algorithm>
#include <cmath>

namespace ww::curve {

PumpSet::PumpSet(std::vector<PumpMember> members, PumpJoint joint)
    : m_members(std::move(members)), m_joint(joint) {
    EXPECTS(!m_members.empty());
}

PumpSet PumpSet::atSpeed(double speedFactor) const {
    EXPECTS(speedFactor > 0);
    PumpSet other = *this;
    for (PumpMember& member : other.m_members) {
        member.state.speedFraction *= speedFactor;
    }
    return other;
}

VolumeFlow PumpSet::sumAtHead(Head head) const {
    VolumeFlow sum;
    for (const PumpMember& member : m_members) {
        sum += member.curve.flowAtHead(head, member.state).value_or(VolumeFlow());
    }
    return sum;
}

std::optional<Head> PumpSet::head(VolumeFlow flow) const {
    if (m_joint == PumpJoint::Series || m_members.size() == 1) {
        Head sum;
        for (const PumpMember& member : m_members) {
            sum += member.curve.head(flow, member.state);
        }
        return sum;
    }
    double low_m = 0;
    double high_m = shutoffHead().si();
    if (flow.si() < 0 || flow > sumAtHead(Head())) {
        return std::nullopt;
    }
    constexpr int kHalvings = 60;  // 2^-60 of the shutoff head: below the noise of doubles
    for (int i = 0; i < kHalvings; ++i) {
        const double middle_m = 0.5 * (low_m + high_m);
        (sumAtHead(Head::si(middle_m)) > flow ? low_m : high_m) = middle_m;
    }
    return Head::si(0.5 * (low_m + high_m));
}

std::optional<VolumeFlow> PumpSet::flowAtHead(Head wanted) const {
    if (wanted > shutoffHead()) {
        return std::nullopt;
    }
    if (m_members.size() == 1) {
        return m_members.front().curve.flowAtHead(wanted, m_members.front().state);
    }
    if (m_joint == PumpJoint::Parallel) {
        return sumAtHead(wanted);
    }
    double low_m3s = 0;
    double high_m3s = 0;
    for (const PumpMember& member : m_members) {
        high_m3s = std::max(high_m3s, member.curve.runOut(member.state).si());
    }
    constexpr int kHalvings = 60;
    for (int i = 0; i < kHalvings; ++i) {
        const double middle_m3s = 0.5 * (low_m3s + high_m3s);
        (*head(VolumeFlow::si(middle_m3s)) > wanted ? low_m3s : high_m3s) = middle_m3s;
    }
    return VolumeFlow::si(0.5 * (low_m3s + high_m3s));
}

Head PumpSet::shutoffHead() const {
    Head sum;
    Head highest;
    for (const PumpMember& member : m_members) {
        const Head own = member.curve.shutoffHead(member.state);
        sum += own;
        highest = std::max(highest, own);
    }
    return m_joint == PumpJoint::Series ? sum : highest;
}

std::vector<VolumeFlow> PumpSet::flowsOfMembers(VolumeFlow flow) const {
    std::vector<VolumeFlow> flows;
    if (m_joint == PumpJoint::Series || m_members.size() == 1) {
        flows.assign(m_members.size(), flow);
        return flows;
    }
    if (const auto common = head(flow)) {
        for (const PumpMember& member : m_members) {
            flows.push_back(member.curve.flowAtHead(*common, member.state).value_or(VolumeFlow()));
        }
    }
    return flows;
}

bool PumpSet::isWithinPoints(VolumeFlow flow) const {
    const std::vector<VolumeFlow> flows = flowsOfMembers(flow);
    if (flows.empty()) {
        return false;
    }
    // The last digits of a bisection do not make a duty at the last point one beyond it.
    constexpr double kAtLastPoint = 1 + 1e-9;
    for (std::size_t i = 0; i < flows.size(); ++i) {
        if (flows[i] > m_members[i].curve.lastFlow(m_members[i].state) * kAtLastPoint) {
            return false;
        }
    }
    return true;
}

std::optional<Power> PumpSet::shaftPower(VolumeFlow flow, Density density) const {
    const std::vector<VolumeFlow> flows = flowsOfMembers(flow);
    if (flows.empty()) {
        return std::nullopt;
    }
    Power sum;
    for (std::size_t i = 0; i < flows.size(); ++i) {
        const auto own = m_members[i].curve.shaftPower(flows[i], density, m_members[i].state);
        if (!own) {
            return std::nullopt;
        }
        sum += *own;
    }
    return sum;
}

std::optional<Ratio> PumpSet::efficiency(VolumeFlow flow, Density density) const {
    const auto shaft = shaftPower(flow, density);
    const auto common = head(flow);
    if (!shaft || !common || shaft->si() <= 0 || flow.si() <= 0) {
        return std::nullopt;
    }
    return Ratio::si(quantity::pressureOf(*common, density).si() * flow.si() / shaft->si());
}

PumpCurve trimmedCurve(const PumpCurve& curve, double diameterFraction, double flowExponent) {
    EXPECTS(diameterFraction > 0);
    const double onFlow = std::pow(diameterFraction, flowExponent);
    const double onHead = diameterFraction * diameterFraction;
    std::vector<PumpPoint> points(curve.points().begin(), curve.points().end());
    for (PumpPoint& point : points) {
        point.flow = point.flow * onFlow;
        point.head = point.head * onHead;
        if (point.power) {
            point.power = *point.power * (onFlow * onHead);
        }
        if (point.impeller) {
            point.impeller = *point.impeller * diameterFraction;
        }
    }
    return PumpCurve::make(std::move(points)).value();
}

PumpCurve withHeads(const PumpCurve& curve, Ratio factor) {
    EXPECTS(factor.si() > 0);
    std::vector<PumpPoint> points(curve.points().begin(), curve.points().end());
    for (PumpPoint& point : points) {
        point.head = point.head * factor.si();
        if (point.power) {
            point.power = *point.power * factor.si();
        }
    }
    return PumpCurve::make(std::move(points)).value();
}

}  // namespace ww::curve
