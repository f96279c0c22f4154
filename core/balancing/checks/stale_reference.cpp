#include "core/balancing/checks/support.h"

namespace ww::balancing::checks {

/// A reference that was read before another valve of its group was moved.
void staleReference(const CheckContext& context, std::vector<Finding>& found) {
    const auto moves = movesInRound(context);
    for (const GroupResult& group : context.now.groups) {
        if (!group.reference || !context.now.readings[*group.reference].hasValue()) {
            continue;
        }
        const int readAt = context.now.readings[*group.reference].counting->sequence;
        std::optional<std::size_t> mover;
        for (const std::size_t member : group.members) {
            if (member != *group.reference && moves[member] && moves[member]->sequence > readAt &&
                (!mover || moves[member]->sequence > moves[*mover]->sequence)) {
                mover = member;
            }
        }
        if (mover) {
            found.push_back(aboutBranch(context, *group.reference, kReferenceStale,
                                        {context.project.branches()[*mover].tag}, Severity::Warning));
        }
    }
}

}  // namespace ww::balancing::checks
