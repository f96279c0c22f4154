#include "core/balancing/checks/support.h"
#include "core/project/review.h"

namespace ww::balancing::checks {

/// Terminals outside the job's tolerance of design flow in a final round. One that a deficiency names is told
/// and blocks no signature; a reason alone does not lift it (common practice, no source).
void finalOffDesign(const CheckContext& context, std::vector<Finding>& found) {
    if (context.round.kind != project::RoundKind::Final) {
        return;
    }
    constexpr double kRounding = 1e-12;
    const double low = 1 + context.project.job().toleranceLow.value.si();
    const double high = 1 + context.project.job().toleranceHigh.value.si();
    for (const BranchResult& result : context.now.branches) {
        if (!result.isTerminal || !result.ofDesign) {
            continue;
        }
        const double ratio = result.ofDesign->si();
        if (ratio < low - kRounding || ratio > high + kRounding) {
            found.push_back(
                aboutBranch(context, result.branch, kFinalOffDesign,
                            {detail::percentText(*result.ofDesign), detail::percentText(Ratio::si(low)),
                             detail::percentText(Ratio::si(high))},
                            hasDeficiency(context.project, context.project.branches()[result.branch].id)
                                ? Severity::Warning
                                : Severity::BlocksSignature,
                            false));
        }
    }
}

}  // namespace ww::balancing::checks
