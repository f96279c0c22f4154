#include "core/curve/impeller_family.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <string>

#include "core/curve/affinity.h"
#include "core/quantity/measured.h"

namespace ww::curve {

namespace {

using quantity::Unit;
using Member = ImpellerFamily::Member;

// Heads closer than this stand on the curve itself.
constexpr double kSameHead = 1e-9;

/// The two members around the first for which `isBelow` no longer holds; an end member twice beyond the ends.
struct Neighbours {
    const Member* smaller;
    const Member* larger;
};

template <class IsBelow>
Neighbours neighbours(const std::vector<Member>& members, IsBelow isBelow) {
    const auto larger = std::partition_point(members.begin(), members.end(), isBelow);
    if (larger == members.begin()) {
        return {&members.front(), &members.front()};
    }
    if (larger == members.end()) {
        return {&members.back(), &members.back()};
    }
    return {&*std::prev(larger), &*larger};
}

/// Diameter at `wanted` when the smaller and the larger neighbour give these heads at similar points.
ImpellerEstimate between(Neighbours pair, Head ofSmaller, Head ofLarger, Head wanted) {
    if (pair.smaller == pair.larger) {
        const Length diameter = impellerFromShutoff(pair.larger->diameter, ofLarger, wanted);
        return {diameter, std::abs(wanted / ofLarger - 1) > kSameHead};
    }
    const double low = std::sqrt(ofSmaller.si());
    const double high = std::sqrt(ofLarger.si());
    const double part = (std::sqrt(wanted.si()) - low) / (high - low);
    return {pair.smaller->diameter + (pair.larger->diameter - pair.smaller->diameter) * part};
}

/// Linear mixture of two optional numbers; absent where either is.
template <class Q>
std::optional<Q> mixed(std::optional<Q> a, std::optional<Q> b, double part) {
    return a && b ? std::optional(*a + (*b - *a) * part) : std::nullopt;
}

/// The flow on `curve` that is similar to a point of another curve of the casing.
VolumeFlow similarFlowTo(const PumpPoint& point, const PumpCurve& curve) {
    if (point.flow.si() == 0) {
        return point.flow;
    }
    return point.head.si() == 0 ? curve.runOut() : similarFlow(curve, point.flow, point.head);
}

/// The point that lies `part` of the way in diameter from the smaller curve to this point of the larger one.
/// Similar points keep flow over sqrt(head), so both go linearly; the mixed curve therefore falls as the two
/// curves do.
PumpPoint mixedPoint(const PumpPoint& ofLarger, const PumpCurve& smaller, double part) {
    const VolumeFlow smallFlow = similarFlowTo(ofLarger, smaller);
    const double low = std::sqrt(std::max(0.0, smaller.head(smallFlow).si()));
    const double rootHead = low + (std::sqrt(ofLarger.head.si()) - low) * part;
    PumpPoint point;
    point.flow = smallFlow + (ofLarger.flow - smallFlow) * part;
    point.head = Head::si(rootHead * rootHead);
    point.efficiency = mixed(smaller.efficiency(smallFlow), ofLarger.efficiency, part);
    point.power = mixed(smaller.shaftPower(smallFlow, kPumpTableDensity), ofLarger.power, part);
    point.npshRequired = mixed(smaller.npshRequired(smallFlow), ofLarger.npshRequired, part);
    return point;
}

/// The same curve for another diameter of the same casing by the laws of affinity.
PumpCurve scaled(const PumpCurve& curve, double factor) {
    std::vector<PumpPoint> points(curve.points().begin(), curve.points().end());
    for (PumpPoint& point : points) {
        point.flow = point.flow * factor;
        point.head = point.head * (factor * factor);
        if (point.power) {
            point.power = *point.power * (factor * factor * factor);
        }
    }
    return PumpCurve::make(std::move(points)).value();
}

bool liesBelow(const PumpCurve& smaller, const PumpCurve& larger) {
    const VolumeFlow last = smaller.lastFlow();
    return smaller.shutoffHead() < larger.shutoffHead() && smaller.head(last) < larger.head(last);
}

}  // namespace

base::Result<ImpellerFamily> ImpellerFamily::make(std::vector<PumpPoint> points,
                                                  const quantity::ShownUnits& units) {
    if (points.empty()) {
        return base::Fault{&kPumpTooFewPoints, "", {"0"}};
    }
    std::map<Length, std::vector<PumpPoint>> byDiameter;
    for (const PumpPoint& point : points) {
        const std::string flow = units.text(point.flow);
        if (!point.impeller) {
            return base::Fault{&kImpellerMissing, "", {flow}};
        }
        EXPECTS(point.impeller->isFinite());
        if (!(point.impeller->si() > 0)) {
            return base::Fault{&kImpellerNotPositive, "", {flow, units.text(*point.impeller)}};
        }
        byDiameter[*point.impeller].push_back(point);
    }
    std::vector<Member> members;
    for (auto& [diameter, rows] : byDiameter) {
        auto curve = PumpCurve::make(std::move(rows), units);
        if (!curve) {
            base::Fault fault = curve.fault();
            fault.subject = units.text(diameter);
            return fault;
        }
        if (!members.empty() && !liesBelow(members.back().curve, *curve)) {
            return base::Fault{
                &kImpellerOrder, "", {units.text(members.back().diameter), units.text(diameter)}};
        }
        members.push_back({diameter, std::move(*curve)});
    }
    return ImpellerFamily(std::move(members));
}

ImpellerEstimate ImpellerFamily::diameterForShutoff(Head shutoff) const {
    EXPECTS(shutoff.si() > 0);
    const Neighbours pair =
        neighbours(m_members, [&](const Member& member) { return member.curve.shutoffHead() < shutoff; });
    return between(pair, pair.smaller->curve.shutoffHead(), pair.larger->curve.shutoffHead(), shutoff);
}

PumpCurve ImpellerFamily::curveOf(Length diameter) const {
    EXPECTS(diameter.si() > 0);
    const Neighbours pair =
        neighbours(m_members, [&](const Member& member) { return member.diameter < diameter; });
    if (pair.larger->diameter == diameter) {
        return pair.larger->curve;
    }
    if (pair.smaller == pair.larger) {
        return scaled(pair.larger->curve, diameter / pair.larger->diameter);
    }
    const double part =
        (diameter - pair.smaller->diameter) / (pair.larger->diameter - pair.smaller->diameter);
    std::vector<PumpPoint> points;
    for (const PumpPoint& point : pair.larger->curve.points()) {
        points.push_back(mixedPoint(point, pair.smaller->curve, part));
    }
    return PumpCurve::make(std::move(points)).value();
}

}  // namespace ww::curve
