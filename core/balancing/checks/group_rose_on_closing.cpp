#include <algorithm>
#include <cmath>

#include "core/balancing/checks/support.h"

namespace ww::balancing::checks {

namespace {

/// Flow of all members and its squared uncertainty; nothing where one is missing.
struct Sum {
    VolumeFlow flow;
    double square = 0;
};

std::optional<Sum> sumOf(const std::vector<BranchResult>& branches, const GroupResult& group) {
    Sum sum;
    for (const std::size_t member : group.members) {
        const BranchResult& result = branches[member];
        if (!result.flow || result.isFromEarlierRound) {
            return std::nullopt;
        }
        sum.flow += *result.flow;
        sum.square += result.readingUncertainty->si() * result.readingUncertainty->si();
    }
    return sum;
}

}  // namespace

/// The flow of a whole group that rose although valves inside it were only closed and nothing outside was
/// touched.
void groupRoseOnClosing(const CheckContext& context, std::vector<Finding>& found) {
    if (context.before == nullptr || isPumpChanged(context)) {
        return;
    }
    std::size_t closed = 0;
    for (std::size_t i = 0; i < context.now.branches.size(); ++i) {
        const Turn turn = turnOf(context, i);
        if (turn == Turn::Opened || turn == Turn::Unknown) {
            return;
        }
        closed += turn == Turn::Closed ? 1U : 0U;
    }
    if (closed == 0) {
        return;
    }
    for (const GroupResult& group : context.now.groups) {
        // All that was closed are members of this very group.
        const auto inside = static_cast<std::size_t>(
            std::count_if(group.members.begin(), group.members.end(),
                          [&](std::size_t member) { return turnOf(context, member) == Turn::Closed; }));
        const auto now = sumOf(context.now.branches, group);
        const auto then = sumOf(context.before->branches, group);
        if (inside != closed || !now || !then || then->flow.si() <= 0) {
            continue;
        }
        const double rise = now->flow / then->flow - 1;
        const double u = std::sqrt(now->square + then->square) / then->flow.si();
        if (rise > std::max(kLeastChangeRatio, kSignificantFactor * u)) {
            Finding finding{base::Fault{&kGroupRoseOnClosing,
                                        detail::groupName(context.project, group),
                                        {detail::groupName(context.project, group),
                                         detail::flowText(context.project, then->flow),
                                         detail::flowText(context.project, now->flow)}},
                            Severity::Error, std::nullopt, std::nullopt};
            if (group.parent) {
                finding.branch = context.project.branches()[*group.parent].id;
            }
            found.push_back(std::move(finding));
        }
    }
}

}  // namespace ww::balancing::checks
