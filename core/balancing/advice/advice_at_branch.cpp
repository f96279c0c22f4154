// What an advice says of one branch. Not for making it (advice.cpp).
#include <algorithm>

#include "core/balancing/advice/advice.h"

namespace ww::balancing {

const IndexStep* indexStepAt(const Advice& advice, std::size_t branch) {
    const auto found = std::find_if(advice.indexSteps.begin(), advice.indexSteps.end(),
                                    [&](const IndexStep& step) { return step.branch == branch; });
    return found != advice.indexSteps.end() ? &*found : nullptr;
}

bool throttles(const Advice& advice, std::size_t branch) {
    return advice.isReady() &&
           std::any_of(advice.settings.begin(), advice.settings.end(), [&](const SettingAdvice& advised) {
               return advised.branch == branch && !advised.isReference && !advised.isFullyOpen;
           });
}

}  // namespace ww::balancing
