#include "core/balancing/checks/support.h"

namespace ww::balancing::checks {

namespace {

constexpr double kLowestRatio = 0.4;
constexpr double kHighestRatio = 2;

}  // namespace

/// Circuits that take far less or far more than design with everything open: often something else than
/// imbalance.
void surveyExtremes(const CheckContext& context, std::vector<Finding>& found) {
    if (context.round.kind != project::RoundKind::Survey) {
        return;
    }
    for (const BranchResult& result : context.now.branches) {
        if (!result.isTerminal || result.isSelfActing || !result.ofDesign || result.isFromEarlierRound) {
            continue;
        }
        if (result.ofDesign->si() < kLowestRatio || result.ofDesign->si() > kHighestRatio) {
            found.push_back(aboutBranch(context, result.branch, kFarFromDesign,
                                        {detail::percentText(*result.ofDesign)}, Severity::Warning, true));
        }
    }
}

}  // namespace ww::balancing::checks
