#include <algorithm>
#include <array>
#include <cmath>

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
    std::vector<const base::Decimal*> typed;
    for (const project::ValveTableRow& row : valve->rows) {
        typed.push_back(&row.setting);
    }
    bool isFiner = false;
    const double division = detail::scaleDivisionFraction(valve->scale);
    const auto take = [&](const std::optional<base::Decimal>& setting, const project::Branch& where) {
        if (setting && where.valve == valve->id) {
            typed.push_back(&*setting);
            isFiner = isFiner || setting->lastPlace() < division * 0.999;
        }
    };
    for (const project::Branch& other : project.branches()) {
        take(other.setting, other);
    }
    for (const project::Reading& reading : project.readings()) {
        if (const project::Branch* where = project.branches().find(reading.branch);
            where != nullptr && reading.status == project::ReadingStatus::Standing) {
            take(reading.setting, *where);
        }
    }
    constexpr std::array kParts{1.0, 2.0, 5.0, 10.0};
    for (std::size_t i = isFiner ? 1 : 0; i < kParts.size(); ++i) {
        const double step = division / kParts[i];
        if (std::all_of(typed.begin(), typed.end(),
                        [&](const base::Decimal* setting) { return isMultiple(setting->value(), step); })) {
            return Setting::si(step);
        }
    }
    return Setting::si(division / kParts.back());
}

}  // namespace ww::balancing
