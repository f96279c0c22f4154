#include "core/project/equipment_curves.h"

#include <cmath>

namespace ww::project {

std::vector<curve::ValvePoint> valvePoints(const ValveModel& valve) {
    std::vector<curve::ValvePoint> points;
    points.reserve(valve.rows.size());
    for (const ValveTableRow& row : valve.rows) {
        points.push_back({quantity::Setting::si(row.setting.value()),
                          quantity::FlowCoefficient::from(row.coefficient.value(), valve.coefficientUnit)});
    }
    return points;
}

curve::PumpPoint pumpPoint(const PumpTableRow& row) {
    curve::PumpPoint point;
    point.flow = row.flow.value;
    point.head = row.head.value;
    if (row.efficiency) {
        point.efficiency = row.efficiency->value;
    }
    if (row.power) {
        point.power = row.power->value;
    }
    if (row.npshRequired) {
        point.npshRequired = row.npshRequired->value;
    }
    if (row.impeller) {
        point.impeller = row.impeller->value;
    }
    return point;
}

std::optional<curve::PumpCurve> pumpCurveOf(const Pump& pump) {
    // Of a family, the curve of the impeller that is in the pump; without one stated, the largest.
    std::optional<double> wanted_m;
    if (pump.impeller) {
        wanted_m = pump.impeller->value.si();
    }
    std::optional<double> chosen_m;
    for (const PumpTableRow& row : pump.rows) {
        if (!row.impeller) {
            continue;
        }
        const double candidate_m = row.impeller->value.si();
        const bool isBetter =
            !chosen_m || (wanted_m ? std::abs(candidate_m - *wanted_m) < std::abs(*chosen_m - *wanted_m)
                                   : candidate_m > *chosen_m);
        if (isBetter) {
            chosen_m = candidate_m;
        }
    }
    std::vector<curve::PumpPoint> points;
    for (const PumpTableRow& row : pump.rows) {
        if (chosen_m && row.impeller && row.impeller->value.si() != *chosen_m) {
            continue;
        }
        points.push_back(pumpPoint(row));
    }
    auto curve = curve::PumpCurve::make(std::move(points));
    return curve ? std::optional(std::move(*curve)) : std::nullopt;
}

}  // namespace ww::project
