#include <cmath>

#include "core/balancing/checks/support.h"

namespace ww::balancing::checks {

namespace {

constexpr double kWarnRatio = 0.01;
constexpr double kErrorRatio = 0.05;

}  // namespace

/// Design flow of a branch against the sum of those it feeds.
void designSum(const CheckContext& context, std::vector<Finding>& found) {
    for (const GroupResult& group : context.now.groups) {
        if (!group.parent || !context.project.branches()[*group.parent].designFlow) {
            continue;
        }
        const VolumeFlow own = context.now.branches[*group.parent].designFlow;
        VolumeFlow sum;
        for (const std::size_t member : group.members) {
            sum += context.now.branches[member].designFlow;
        }
        if (own.si() <= 0) {
            continue;
        }
        const double apart = std::abs(sum / own - 1);
        if (apart > kWarnRatio) {
            found.push_back(
                aboutBranch(context, *group.parent, kDesignSumOpen,
                            {detail::flowText(context.project, own), detail::flowText(context.project, sum),
                             detail::percentText(Ratio::si(apart))},
                            apart > kErrorRatio ? Severity::Error : Severity::Warning));
        }
    }
}

}  // namespace ww::balancing::checks
