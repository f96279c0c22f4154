#include <algorithm>

#include "core/balancing/checks/support.h"
#include "core/balancing/detail/judgment.h"

namespace ww::balancing::checks {

/// The valve of a group's reference is fully open at the finish; on the way there it is only mentioned, where
/// the group was read in one state: else the lowest may be the one that was read before the others moved.
/// References on the index circuit belong to the check of its path.
void referenceOpen(const CheckContext& context, std::vector<Finding>& found) {
    const bool isFinish =
        context.round.kind == project::RoundKind::Final || context.round.kind == project::RoundKind::Witness;
    const Severity severity = isFinish ? Severity::Error : Severity::Warning;
    const auto& path = context.now.index.path;
    ReadingStates states(context.project);
    for (const GroupResult& group : context.now.groups) {
        if (!group.reference || std::find(path.begin(), path.end(), *group.reference) != path.end()) {
            continue;
        }
        const BranchResult& reference = context.now.branches[*group.reference];
        if (detail::isUnthrottled(context.project, reference) ||
            (!isFinish && !isOfOneState(context, group, {}, states))) {
            continue;
        }
        if (auto fault = detail::groupShutFault(context.project, context.now, group)) {
            found.push_back(
                {std::move(*fault), severity, context.project.branches()[*group.reference].id, std::nullopt});
        } else {
            found.push_back(aboutBranch(context, *group.reference, kReferenceThrottled,
                                        detail::placeOfValve(context.project, reference), severity));
        }
    }
}

}  // namespace ww::balancing::checks
