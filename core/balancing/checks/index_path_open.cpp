#include "core/balancing/checks/support.h"
#include "core/balancing/detail/judgment.h"

namespace ww::balancing::checks {

/// Every valve on the index circuit is fully open: terminal, branch and riser.
void indexPathOpen(const CheckContext& context, std::vector<Finding>& found) {
    for (const std::size_t branch : context.now.index.path) {
        if (auto fault = detail::indexThrottledFault(context.project, context.now, branch)) {
            found.push_back(
                {std::move(*fault), Severity::Error, context.project.branches()[branch].id, std::nullopt});
        }
    }
}

}  // namespace ww::balancing::checks
