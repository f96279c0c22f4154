// What makes a reading of a pump's test doubtful: against its other points, its plate and what a pump can do.
// Not for what is computed of the test (pump_room/test_sheet.h). Nothing here keeps a reading from being
// stored.
#pragma once

#include <vector>

#include "core/base/fault.h"
#include "core/project/project.h"

namespace ww::balancing {

inline constexpr base::MessageForm kPumpSuctionAbove{
    "pump_reading_suction_above",
    "suction {1} is above discharge {2} with the pump running; swap the two readings, or check the direction "
    "of "
    "turn and the gauges"};
inline constexpr base::MessageForm kPumpFarFromPoints{
    "pump_reading_far",
    "{1w} {2} is far from {3} at the other points of this pump; check the point and the unit, read again or "
    "give "
    "the reason"};
inline constexpr base::MessageForm kPumpPointMoved{"pump_reading_point_moved",
                                                   "{1w} {2} is far from {3} at the other points of this "
                                                   "pump, with the point moved it would be {4}; correct it, "
                                                   "read again or give the reason"};
inline constexpr base::MessageForm kPumpNothingRead{
    "pump_reading_zero",
    "{1w} 0 with the pump running; check the clamp, the phases and the range, read again or leave it empty"};
inline constexpr base::MessageForm kPumpHeadRises{"pump_reading_head_rises",
                                                  "{1w} gives {2} of head and {3w}, with less flow, only "
                                                  "{4}; a pump's head falls as flow rises: read both taps "
                                                  "again with one gauge"};
inline constexpr base::MessageForm kPumpAboveCurve{
    "pump_reading_above_curve",
    "a head of {1} is far above the {2} of the pump's curve at no flow; check the gauges, the field and the "
    "unit, read again or give the reason"};
inline constexpr base::MessageForm kPumpSpeedHigh{
    "pump_reading_speed_high",
    "{1} is {2} % of the rated speed; check the reading and the rated speed entered, or give the reason"};
inline constexpr base::MessageForm kPumpPowerFactorHigh{
    "pump_reading_power_factor", "a power factor of {1} is above 1; check the reading and its unit"};

/// A pump whose head rises with flow is none that this program knows; its power is never 0 while it runs.
/// Values outside 0.4 to 2.5 times the median of the other points at about the same speed, and a speed above
/// 110 % of rated, are doubted, and a head above one and a half times the highest of the pump's table (common
/// practice, no source; the ratios of values are those for dps). `pumpReading`: a standing reading. Subject:
/// the pump's tag. Empty where the reading stands to reason.
std::vector<base::Fault> pumpDoubts(const project::Project& project, const project::PumpReading& pumpReading);

}  // namespace ww::balancing
