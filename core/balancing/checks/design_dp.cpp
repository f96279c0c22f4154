#include <algorithm>

#include "core/balancing/checks/support.h"
#include "core/balancing/detail/branch_flow.h"
#include "core/curve/valve_flow.h"

namespace ww::balancing::checks {

namespace {

/// One foot of water across a wide-open valve at design flow (from memory: ASHRAE Handbook, HVAC
/// Applications).
constexpr PressureDifference kWarnBelow = PressureDifference::si(3000);
/// The usual smallest signal (from memory: BSRIA BG 2).
constexpr PressureDifference kErrorBelow = PressureDifference::si(1000);

/// The meter that the branch was read with; null where it was not read.
const project::Instrument* meterOf(const CheckContext& context, const BranchResult& result) {
    const project::Reading* reading =
        result.reading ? context.project.readings().find(*result.reading) : nullptr;
    return reading != nullptr && reading->instrument
               ? context.project.instruments().find(*reading->instrument)
               : nullptr;
}

}  // namespace

/// Whether a valve that stands fully open can be read at design flow at all; a throttled one has more dp.
void designDp(const CheckContext& context, std::vector<Finding>& found) {
    for (const BranchResult& result : context.now.branches) {
        const curve::ValveCharacteristic* curve =
            context.project.characteristicOf(context.project.branches()[result.branch]);
        const bool isThrottled = result.setting && !result.isFullyOpen;
        if (curve == nullptr || result.isSelfActing || result.designFlow.si() <= 0 || isThrottled) {
            continue;
        }
        const PressureDifference dp = curve::valveDrop(curve->coefficientFullyOpen(), result.designFlow,
                                                       context.project.fluid().density());
        if (dp < kWarnBelow) {
            const bool isUnreadable = dp < kErrorBelow;
            // The limit that a reading taken here is held to.
            const project::Branch& branch = context.project.branches()[result.branch];
            const project::ValveModel* valve =
                branch.valve ? context.project.valves().find(*branch.valve) : nullptr;
            const PressureDifference least = detail::readableMinimum(branch, valve, meterOf(context, result));
            found.push_back(aboutBranch(context, result.branch, kDesignDpLow,
                                        {detail::dpText(context.project, dp),
                                         detail::dpText(context.project, std::max(kWarnBelow, least)),
                                         detail::dpText(context.project, least)},
                                        isUnreadable ? Severity::Error : Severity::Warning));
        }
    }
}

}  // namespace ww::balancing::checks
