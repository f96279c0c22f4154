#include "core/balancing/checks/support.h"

namespace ww::balancing::checks {

namespace {

/// Above about 70 ft of water a balancing valve may be noisy or cavitate.
constexpr PressureDifference kNoisyAbove = PressureDifference::si(200000);

}  // namespace

/// Valves with a large dp. A self-acting valve has its own range.
void valveNoise(const CheckContext& context, std::vector<Finding>& found) {
    for (const BranchResult& result : context.now.branches) {
        if (result.dp && !result.isSelfActing && *result.dp > kNoisyAbove) {
            found.push_back(aboutBranch(
                context, result.branch, kValveDpHigh,
                {detail::dpText(context.project, *result.dp), detail::dpText(context.project, kNoisyAbove)},
                Severity::Warning, true));
        }
    }
}

}  // namespace ww::balancing::checks
