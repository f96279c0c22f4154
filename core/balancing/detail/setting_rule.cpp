#include "core/balancing/detail/setting_rule.h"

#include "core/balancing/walk_forms.h"

namespace ww::balancing::detail {

std::optional<base::Fault> settingFault(const project::Project& project, const project::Branch& branch,
                                        const base::Decimal& setting) {
    const curve::ValveCharacteristic* curve = project.characteristicOf(branch);
    if (curve == nullptr || curve->covers(quantity::Setting::si(setting.value()))) {
        return std::nullopt;
    }
    return base::Fault{&kSettingBeyondScale,
                       branch.tag,
                       {setting.text(), quantity::concise(curve->lowest().si(), 4),
                        quantity::concise(curve->fullyOpen().si(), 4)}};
}

}  // namespace ww::balancing::detail
