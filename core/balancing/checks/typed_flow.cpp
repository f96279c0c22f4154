#include "core/balancing/checks/support.h"

namespace ww::balancing::checks {

/// A flow typed in where a dp and the valve's table would give one that can be checked (common practice, no
/// source).
void typedFlow(const CheckContext& context, std::vector<Finding>& found) {
    for (std::size_t i = 0; i < context.now.readings.size(); ++i) {
        const project::Reading* reading = context.now.readings[i].counting;
        const project::Branch& branch = context.project.branches()[i];
        if (reading != nullptr && reading->flow && !reading->dp &&
            context.project.characteristicOf(branch) != nullptr) {
            found.push_back(
                aboutBranch(context, i, kFlowTyped, {reading->flow->text()}, Severity::Warning, true));
        }
    }
}

}  // namespace ww::balancing::checks
