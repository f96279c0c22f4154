#include "core/balancing/detail/setting_rule.h"

#include "core/balancing/walk_forms.h"
#include "core/project/setting_text.h"

namespace ww::balancing::detail {

std::optional<base::Fault> settingFault(const project::Project& project, const project::Branch& branch,
                                        const base::Decimal& setting) {
    const curve::ValveCharacteristic* curve = project.characteristicOf(branch);
    if (curve == nullptr || curve->covers(quantity::Setting::si(setting.value()))) {
        return std::nullopt;
    }
    return base::Fault{&kSettingBeyondScale,
                       branch.tag,
                       {setting.text(), settingText(project, branch, curve->lowest()),
                        settingText(project, branch, curve->fullyOpen())}};
}

}  // namespace ww::balancing::detail
