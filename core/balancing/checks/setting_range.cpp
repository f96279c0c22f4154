#include "core/balancing/checks/support.h"
#include "core/balancing/doubt_forms.h"
#include "core/project/setting_text.h"

namespace ww::balancing::checks {

namespace {

/// Below a fifth of the scale tables are least accurate and small seats are noisy.
constexpr double kNearlyShutFraction = 0.2;

}  // namespace

/// Valves that stand outside their table, or nearly shut. A setting at which a dp was read is a doubt by
/// itself.
void settingRange(const CheckContext& context, std::vector<Finding>& found) {
    for (const BranchResult& result : context.now.branches) {
        const project::Branch& branch = context.project.branches()[result.branch];
        const curve::ValveCharacteristic* curve = context.project.characteristicOf(branch);
        if (curve == nullptr || !result.setting || result.isSelfActing) {
            continue;
        }
        if (!curve->covers(*result.setting)) {
            if (!context.now.readings[result.branch].hasValue()) {
                const auto place = detail::placeOfValve(context.project, result);
                found.push_back(
                    aboutBranch(context, result.branch, kSettingOutside,
                                {place[0], settingText(context.project, branch, curve->lowest()), place[1]},
                                Severity::Warning));
            }
            continue;
        }
        if (result.setting->si() < kNearlyShutFraction * curve->fullyOpen().si()) {
            found.push_back(aboutBranch(context, result.branch, kValveNearlyShut,
                                        detail::placeOfValve(context.project, result), Severity::Warning,
                                        true));
        }
    }
}

}  // namespace ww::balancing::checks
