#include <algorithm>

#include "core/balancing/checks/support.h"

namespace ww::balancing::checks {

/// A flow that rose although its own valve was closed and nothing else was touched: a slip in one of the
/// readings.
void roseOnClosing(const CheckContext& context, std::vector<Finding>& found) {
    if (context.before == nullptr || isPumpChanged(context)) {
        return;
    }
    std::optional<std::size_t> only;
    for (std::size_t i = 0; i < context.now.branches.size(); ++i) {
        const Turn turn = turnOf(context, i);
        if (turn == Turn::Unmoved) {
            continue;
        }
        if (only || turn != Turn::Closed) {
            return;
        }
        only = i;
    }
    const auto ratio = only ? flowRatio(context, *only) : std::nullopt;
    if (ratio &&
        ratio->ratio - 1 > std::max(kLeastChangeRatio, kSignificantFactor * ratio->relativeUncertainty)) {
        found.push_back(aboutBranch(context, *only, kRoseOnClosing,
                                    {detail::flowText(context.project, *context.before->branches[*only].flow),
                                     detail::flowText(context.project, *context.now.branches[*only].flow)},
                                    Severity::Error, true));
    }
}

}  // namespace ww::balancing::checks
