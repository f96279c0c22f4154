#include "core/project/setting_text.h"

#include <cmath>

namespace ww::project {

base::Decimal writtenSetting(Scale scale, quantity::Setting setting) {
    constexpr double kOnMark = 1e-4;
    int decimals = scale == Scale::Turns ? 1 : 0;
    const int most = decimals + 2;
    const auto isOnMark = [&] {
        const double marks = setting.si() * std::pow(10.0, decimals);
        return std::abs(marks - std::round(marks)) < kOnMark;
    };
    while (decimals < most && !isOnMark()) {
        ++decimals;
    }
    return base::Decimal::fromNumber(setting.si(), decimals);
}

std::string settingText(const Project& project, const Branch& branch, quantity::Setting setting) {
    const ValveModel* valve = branch.valve ? project.valves().find(*branch.valve) : nullptr;
    return writtenSetting(valve != nullptr ? valve->scale : Scale::Turns, setting).text();
}

}  // namespace ww::project
