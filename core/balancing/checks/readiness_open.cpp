#include "core/balancing/checks/support.h"
#include "core/project/review.h"

namespace ww::balancing::checks {

/// Mandatory lines of readiness that are still open in a final round.
void readinessOpen(const CheckContext& context, std::vector<Finding>& found) {
    const auto open = project::openMandatory(context.project);
    if (context.round.kind == project::RoundKind::Final && !open.empty()) {
        found.push_back(
            {base::Fault{&kReadinessOpen, "", {detail::numberText(open.size()), open.front()->text}},
             Severity::BlocksSignature, std::nullopt, std::nullopt});
    }
}

}  // namespace ww::balancing::checks
