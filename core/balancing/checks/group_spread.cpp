#include "core/balancing/checks/support.h"

namespace ww::balancing::checks {

/// Spread of a group once it is being matched: more than the matching band asks for another pass.
void groupSpread(const CheckContext& context, std::vector<Finding>& found) {
    if (context.round.kind == project::RoundKind::Survey) {
        return;
    }
    const Ratio limit = context.project.job().matchingBand.value;
    for (const GroupResult& group : context.now.groups) {
        if (!group.spread || *group.spread <= limit) {
            continue;
        }
        Finding finding{base::Fault{&kSpreadWide,
                                    detail::groupName(context.project, group),
                                    {detail::percentText(*group.spread),
                                     detail::groupName(context.project, group), detail::percentText(limit)}},
                        Severity::Warning, std::nullopt, std::nullopt};
        if (group.parent) {
            finding.branch = context.project.branches()[*group.parent].id;
        }
        found.push_back(std::move(finding));
    }
}

}  // namespace ww::balancing::checks
