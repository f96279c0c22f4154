#include "core/balancing/advice/predictors.h"

#include <cmath>

namespace ww::balancing {

namespace {

double square(double number) {
    return number * number;
}

}  // namespace

Resistance resistanceToMatch(PressureDifference nodeDrop, Ratio referenceOfDesign, VolumeFlow design) {
    EXPECTS(nodeDrop.si() > 0 && referenceOfDesign.si() > 0 && design.si() > 0);
    return Resistance::si(nodeDrop.si() / square(referenceOfDesign.si() * design.si()));
}

std::optional<Resistance> pathFromTwoTries(const MatchTry& first, const MatchTry& second) {
    if (first.flow.si() <= 0 || second.flow.si() <= 0 || first.reference.si() <= 0 ||
        second.reference.si() <= 0 || first.valve == second.valve) {
        return std::nullopt;
    }
    const double rho = square(second.reference / first.reference) * square(first.flow / second.flow);
    const double path = (second.valve.si() - rho * first.valve.si()) / (rho - 1);
    if (!std::isfinite(path) || path < 0) {
        return std::nullopt;
    }
    return Resistance::si(path);
}

std::optional<Resistance> valveToMatch(const MatchTry& first, const MatchTry& second, VolumeFlow design,
                                       VolumeFlow referenceDesign) {
    const auto path = pathFromTwoTries(first, second);
    if (!path || design.si() <= 0 || referenceDesign.si() <= 0) {
        return std::nullopt;
    }
    const auto nodeDrop = PressureDifference::si((path->si() + second.valve.si()) * square(second.flow.si()));
    const Resistance whole =
        resistanceToMatch(nodeDrop, Ratio::si(second.reference / referenceDesign), design);
    const double valve = whole.si() - path->si();
    return valve > 0 ? std::optional(Resistance::si(valve)) : std::nullopt;
}

FlowCoefficient coefficientAtConstantDrop(FlowCoefficient present, Ratio wantedOverPresent) {
    return present * wantedOverPresent.si();
}

Ratio speedRatioAfterMatching(Ratio referenceOfDesign) {
    EXPECTS(referenceOfDesign.si() > 0);
    return Ratio::si(1 / referenceOfDesign.si());
}

std::optional<std::size_t> workingReference(const Assessment& assessment, const GroupResult& group) {
    if (!group.reference) {
        return std::nullopt;
    }
    for (auto at = group.members.rbegin(); at != group.members.rend(); ++at) {
        if (*at == *group.reference) {
            return std::nullopt;
        }
        if (assessment.branches[*at].isMatchable) {
            return *at;
        }
    }
    return std::nullopt;
}

}  // namespace ww::balancing
