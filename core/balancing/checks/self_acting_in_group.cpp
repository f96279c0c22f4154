#include <algorithm>

#include "core/balancing/checks/support.h"

namespace ww::balancing::checks {

/// A limiter or pressure-independent valve among valves that are matched.
void selfActingInGroup(const CheckContext& context, std::vector<Finding>& found) {
    for (const GroupResult& group : context.now.groups) {
        const bool isMatched =
            std::any_of(group.members.begin(), group.members.end(),
                        [&](std::size_t member) { return context.now.branches[member].isMatchable; });
        for (const std::size_t member : group.members) {
            if (isMatched && context.now.branches[member].isSelfActing) {
                found.push_back(aboutBranch(context, member, kSelfActingInGroup,
                                            {detail::groupName(context.project, group)}, Severity::Note));
            }
        }
    }
}

}  // namespace ww::balancing::checks
