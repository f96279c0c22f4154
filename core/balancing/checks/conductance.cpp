#include <algorithm>
#include <cmath>
#include <optional>

#include "core/balancing/checks/support.h"

namespace ww::balancing::checks {

namespace {

constexpr double kChangeRatio = 0.05;

/// Whether no valve around a group was moved between its readings of the round before and those of this one.
/// Settings that are the same again do not tell: what was read between two moves was read in another state.
bool isUnmovedBetween(const CheckContext& context, const GroupResult& group, ReadingStates& states) {
    std::vector<Id> readings;
    for (const std::size_t member : group.members) {
        for (const detail::RoundNumbers* numbers : {context.before, &context.now}) {
            addReadingsBehind(context.project, *numbers, member, readings);
        }
    }
    return states.isUnmoved(readings, valvesAround(context.project, group), false);
}

/// Members of a group in which nothing moved keep step; one that does not has changed itself.
void compareMembers(const CheckContext& context, const GroupResult& group, ReadingStates& states,
                    std::vector<Finding>& found) {
    std::vector<std::pair<std::size_t, FlowRatio>> ratios;
    for (const std::size_t member : group.members) {
        if (const auto ratio = flowRatio(context, member)) {
            ratios.emplace_back(member, *ratio);
        }
    }
    constexpr std::size_t kFewest = 3;  // of two it cannot be told which one changed
    if (ratios.size() < kFewest) {
        return;
    }
    std::vector<double> sorted;
    for (const auto& [member, ratio] : ratios) {
        sorted.push_back(ratio.ratio);
    }
    std::nth_element(sorted.begin(), sorted.begin() + static_cast<std::ptrdiff_t>(sorted.size() / 2),
                     sorted.end());
    const double usual = sorted[sorted.size() / 2];
    std::optional<bool> isUnmoved;  // asked for once, and only where a member changed
    for (const auto& [member, ratio] : ratios) {
        const double change = ratio.ratio / usual - 1;
        if (std::abs(change) <= std::max(kChangeRatio, kSignificantFactor * ratio.relativeUncertainty)) {
            continue;
        }
        if (!isUnmoved) {
            isUnmoved = isUnmovedBetween(context, group, states);
        }
        if (*isUnmoved) {
            found.push_back(aboutBranch(
                context, member, kConductanceChanged,
                {detail::percentText(Ratio::si(change)), std::to_string(context.before->round->number)},
                Severity::Warning));
        }
    }
}

/// With one pump read in both rounds, the loop's flow over the root of its head.
void compareLoop(const CheckContext& context, ReadingStates& states, std::vector<Finding>& found) {
    if (context.pumps.size() != 1 || context.pumpsBefore->size() != 1 || !context.now.total ||
        !context.before->total) {
        return;
    }
    const PumpDuty& now = context.pumps.front();
    const PumpDuty& then = context.pumpsBefore->front();
    if (!now.head || !then.head || now.head->si() <= 0 || then.head->si() <= 0) {
        return;
    }
    const double change =
        (*context.now.total / *context.before->total) / std::sqrt(*now.head / *then.head) - 1;
    const double u = std::hypot(
        std::hypot(context.now.totalUncertainty / *context.now.total, *now.headUncertainty / *now.head / 2),
        std::hypot(context.before->totalUncertainty / *context.before->total,
                   *then.headUncertainty / *then.head / 2));
    if (std::abs(change) > std::max(kChangeRatio, kSignificantFactor * u) &&
        isUnmovedBetween(context, context.now.groups.front(), states)) {
        found.push_back({base::Fault{&kLoopConductanceChanged,
                                     "",
                                     {detail::percentText(Ratio::si(change)),
                                      std::to_string(context.before->round->number)}},
                         Severity::Warning, std::nullopt, std::nullopt});
    }
}

}  // namespace

/// Circuits that let through more or less than in the round before although no valve was moved.
void conductance(const CheckContext& context, std::vector<Finding>& found) {
    if (context.before == nullptr) {
        return;
    }
    const std::vector<bool> moved = movedBelow(context);
    const std::vector<bool> selfActing = selfActingBelow(context);
    ReadingStates states(context.project);
    bool isAllUnmoved = true;
    for (const GroupResult& group : context.now.groups) {
        const bool isQuiet =
            std::none_of(group.members.begin(), group.members.end(),
                         [&](std::size_t member) { return moved[member] || selfActing[member]; });
        isAllUnmoved = isAllUnmoved && isQuiet;
        if (isQuiet) {
            compareMembers(context, group, states, found);
        }
    }
    if (isAllUnmoved) {
        compareLoop(context, states, found);
    }
}

}  // namespace ww::balancing::checks
