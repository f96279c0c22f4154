#include "core/balancing/checks/support.h"
#include "core/project/review.h"

namespace ww::balancing::checks {

/// Comments on this round that nobody has resolved.
void commentsOpen(const CheckContext& context, std::vector<Finding>& found) {
    const auto open = project::openComments(context.project, context.round.id);
    if (open.empty()) {
        return;
    }
    found.push_back({base::Fault{&kCommentsOpen,
                                 "round " + std::to_string(context.round.number),
                                 {detail::numberText(open.size()), open.front()->text}},
                     Severity::BlocksSignature, open.front()->branch, std::nullopt});
}

}  // namespace ww::balancing::checks
