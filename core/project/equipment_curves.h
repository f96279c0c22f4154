// The tables of valves and pumps, as typed, made into points and curves.
// Not for the curves themselves (curve/).
#pragma once

#include <optional>
#include <vector>

#include "core/curve/pump_curve.h"
#include "core/curve/valve_characteristic.h"
#include "core/project/records.h"

namespace ww::project {

/// The points of a valve model's table as quantities, in order of entry.
std::vector<curve::ValvePoint> valvePoints(const ValveModel& valve);

/// One row of a pump's table as quantities, its impeller among them.
curve::PumpPoint pumpPoint(const PumpTableRow& row);

/// The curve of a pump for the impeller that is in it, else for the largest of its table; nothing where the
/// table is unusable.
std::optional<curve::PumpCurve> pumpCurveOf(const Pump& pump);

}  // namespace ww::project
