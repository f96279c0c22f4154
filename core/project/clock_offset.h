// What a job knows of wrong clocks: what is added to the clock of a machine, and which times are uncertain.
// Not for where the time comes from (base::Clock) nor for setting one (workbook::Workbook).
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "core/project/project.h"

namespace ww::project {

/// Seconds that this setting adds to the machine's own clock; 0 where it takes an earlier one back.
std::int64_t added_s(const ClockOffset& offset);

/// A difference in hours and minutes, "+3 h 1 min" or "-12 min"; seconds are left out.
std::string offsetText(std::int64_t seconds);

/// The newest setting of the clock of a machine; null where there is none.
const ClockOffset* newestOffset(const Project& project, std::string_view machine);

/// Seconds that are added to the own clock of a machine; 0 where nothing was set.
std::int64_t addedNow_s(const Project& project, std::string_view machine);

/// The setting that makes this time uncertain: it lies among those that a clock wrote while it was wrong.
/// Null for any other time. Readings do not name their machine, so those that another laptop took in that
/// stretch of time count as uncertain too.
const ClockOffset* uncertainTime(const Project& project, const Instant& time);

}  // namespace ww::project
