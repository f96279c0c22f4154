#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>
#include <unordered_set>
#include <vector>

#include "core/balancing/advice/advice.h"
#include "core/balancing/detail/branch_flow.h"

namespace ww::balancing {

namespace {

bool isMultiple(double setting, double step) {
    constexpr double kOnMark = 1e-6;
    const double marks = setting / step;
    return std::abs(marks - std::round(marks)) < kOnMark;
}

}  // namespace

Setting readableStep(const project::Project& project, const project::Branch& branch) {
    const project::ValveModel* valve = branch.valve ? project.valves().find(*branch.valve) : nullptr;
    if (valve == nullptr) {
        return Setting::si(detail::scaleDivisionFraction(project::Scale::Turns));
    }
    const double division = detail::scaleDivisionFraction(valve->scale);
    // One scale has few settings in many readings: each text is looked at once.
    std::unordered_set<std::string_view> seen;
    std::vector<double> typed;
    bool isFiner = false;
    const auto isNew = [&](const std::optional<base::Decimal>& setting) {
        return setting && !seen.contains(setting->text());
    };
    const auto take = [&](const base::Decimal& setting) {
        seen.insert(setting.text());
        typed.push_back(setting.value());
        isFiner = isFiner || setting.lastPlace() < division * 0.999;
    };
    for (const project::Branch& other : project.branches()) {
        if (isNew(other.setting) && other.valve == valve->id) {
            take(*other.setting);
        }
    }
    for (const project::Reading& reading : project.readings()) {
        if (reading.status == project::ReadingStatus::Standing && isNew(reading.setting)) {
            const project::Branch* where = project.branches().find(reading.branch);
            if (where != nullptr && where->valve == valve->id) {
                take(*reading.setting);
            }
        }
    }
    for (const project::ValveTableRow& row : valve->rows) {
        typed.push_back(row.setting.value());
    }
    constexpr std::array kParts{1.0, 2.0, 5.0, 10.0};
    for (std::size_t i = isFiner ? 1 : 0; i < kParts.size(); ++i) {
        const double step = division / kParts[i];
        if (std::all_of(typed.begin(), typed.end(),
                        [&](double setting) { return isMultiple(setting, step); })) {
            return Setting::si(step);
        }
    }
    return Setting::si(division / kParts.back());
}

}  // namespace ww::balancing
