// Whether an instrument's calibration has run out. Not for what follows from it (balancing/checks, ui).
#pragma once

#include <cstdint>
#include <optional>

#include "core/project/project.h"

namespace ww::project {

/// When a reading of a round was taken; one without a time, as an import may bring it, when its round was
/// opened, else closed. Nothing where none is known.
std::optional<Instant> takenAt(const Project& project, const std::optional<Instant>& time, const Id& round);

/// Whole days that a moment lies behind the day on which the instrument falls due, each date in the zone it
/// was written in; the day itself still counts, so it is 0 there, and negative before. Nothing where either
/// date is missing.
std::optional<std::int64_t> daysSinceDue(const Instrument& instrument, const std::optional<Instant>& moment);

/// Whether the calibration had run out on that day; false where a date is missing.
bool isOverdue(const Instrument& instrument, const std::optional<Instant>& moment);

/// Whether it had run out and nobody said why readings with the instrument stand all the same.
bool isOverdueUnexplained(const Instrument& instrument, const std::optional<Instant>& moment);

}  // namespace ww::project
