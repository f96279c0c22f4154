#include "core/balancing/checks/support.h"
#include "core/balancing/detail/wording.h"
#include "core/balancing/index_rivals.h"

namespace ww::balancing::checks {

/// No terminal off the index circuit may be fully open and still take less of design than the index terminal.
void indexRival(const CheckContext& context, std::vector<Finding>& found) {
    const auto& branches = context.now.branches;
    for (const std::size_t rival : indexRivals(branches, context.now.index)) {
        const std::size_t terminal = *context.now.index.terminal;
        const project::Branch& branch = context.project.branches()[rival];
        found.push_back(
            {{&kIndexRival,
              branch.tag,
              {detail::percentText(*branches[rival].ofDesign), context.project.branches()[terminal].tag,
               detail::percentText(*branches[terminal].ofDesign)}},
             Severity::Warning,
             branch.id,
             std::nullopt});
    }
}

}  // namespace ww::balancing::checks
