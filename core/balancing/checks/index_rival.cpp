#include "core/balancing/checks/support.h"
#include "core/balancing/detail/wording.h"
#include "core/balancing/index_rivals.h"

namespace ww::balancing::checks {

/// No terminal off the index circuit may be fully open and still take less of design than the index terminal;
/// where the readings cannot tell, both are to be read again.
void indexRival(const CheckContext& context, std::vector<Finding>& found) {
    const auto& branches = context.now.branches;
    for (const std::size_t rival : indexRivals(branches, context.now.index)) {
        const std::size_t terminal = *context.now.index.terminal;
        const project::Branch& branch = context.project.branches()[rival];
        const bool isSure = isSurelyLess(branches[rival], branches[terminal]);
        std::vector<std::string> arguments{detail::percentText(*branches[rival].ofDesign),
                                           context.project.branches()[terminal].tag,
                                           detail::percentText(*branches[terminal].ofDesign)};
        if (!isSure) {
            arguments.push_back(
                detail::percentText(distanceUncertainty(branches[rival], branches[terminal])));
        }
        found.push_back({{isSure ? &kIndexRival : &kIndexRivalUndecided, branch.tag, std::move(arguments)},
                         Severity::Warning,
                         branch.id,
                         std::nullopt});
    }
}

}  // namespace ww::balancing::checks
