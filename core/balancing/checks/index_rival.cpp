#include "core/balancing/checks/support.h"
#include "core/balancing/detail/wording.h"

namespace ww::balancing::checks {

/// No terminal off the index circuit may be fully open and still take less of design than the index terminal:
/// then the index circuit found level by level is not yet the one that governs the pump (common practice, no
/// source).
void indexRival(const CheckContext& context, std::vector<Finding>& found) {
    const auto terminal = context.now.index.terminal;
    if (!terminal || !context.now.branches[*terminal].ofDesign) {
        return;
    }
    const quantity::Ratio least = *context.now.branches[*terminal].ofDesign;
    for (const BranchResult& result : context.now.branches) {
        const bool isRival = result.isTerminal && !result.isSelfActing && result.branch != *terminal &&
                             result.isFullyOpen && result.ofDesign && *result.ofDesign < least;
        if (isRival) {
            const project::Branch& branch = context.project.branches()[result.branch];
            found.push_back({{&kIndexRival,
                              branch.tag,
                              {detail::percentText(*result.ofDesign),
                               context.project.branches()[*terminal].tag, detail::percentText(least)}},
                             Severity::Warning,
                             branch.id,
                             std::nullopt});
        }
    }
}

}  // namespace ww::balancing::checks
