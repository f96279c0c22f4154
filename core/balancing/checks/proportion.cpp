#include <algorithm>
#include <cmath>

#include "core/balancing/checks/support.h"

namespace ww::balancing::checks {

namespace {

/// Friction that is not quite square breaks proportion by up to 1.5 % where flows change by a fifth (own
/// derivation: 1.44^0.5405 against 1.44^0.5); noise comes on top.
constexpr double kBrokenRatio = 0.03;

}  // namespace

/// In direct return, all members beyond the farthest valve that was moved see the same change of dp and keep
/// step.
void proportion(const CheckContext& context, std::vector<Finding>& found) {
    if (context.before == nullptr) {
        return;
    }
    const std::vector<bool> moved = movedBelow(context);
    const std::vector<bool> selfActing = selfActingBelow(context);
    for (const GroupResult& group : context.now.groups) {
        const bool isReverse =
            group.parent && context.project.branches()[*group.parent].returns == project::ReturnKind::Reverse;
        const auto lastMoved = std::find_if(group.members.rbegin(), group.members.rend(),
                                            [&](std::size_t m) { return moved[m]; });
        if (isReverse || lastMoved == group.members.rend()) {
            continue;
        }
        std::vector<std::pair<std::size_t, FlowRatio>> beyond;
        bool isFollowed = true;
        for (auto at = lastMoved.base(); at != group.members.end(); ++at) {
            const auto ratio = flowRatio(context, *at);
            isFollowed = isFollowed && ratio && !selfActing[*at];
            if (ratio) {
                beyond.emplace_back(*at, *ratio);
            }
        }
        if (!isFollowed || beyond.size() < 2) {
            continue;
        }
        const auto byRatio = [](const auto& a, const auto& b) { return a.second.ratio < b.second.ratio; };
        std::vector<std::pair<std::size_t, FlowRatio>> sorted = beyond;
        std::sort(sorted.begin(), sorted.end(), byRatio);
        const FlowRatio usual = sorted[sorted.size() / 2].second;
        for (const auto& [member, ratio] : beyond) {
            const double change = ratio.ratio / usual.ratio - 1;
            const double u = std::hypot(ratio.relativeUncertainty, usual.relativeUncertainty);
            if (std::abs(change) > std::max(kBrokenRatio, kSignificantFactor * u)) {
                found.push_back(aboutBranch(
                    context, member, kProportionBroken,
                    {detail::percentText(Ratio::si(change)), std::to_string(context.before->round->number)},
                    Severity::Warning));
            }
        }
    }
}

}  // namespace ww::balancing::checks
