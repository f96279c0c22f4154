#include "core/project/calibration.h"

namespace ww::project {

std::optional<Instant> takenAt(const Project& project, const std::optional<Instant>& time, const Id& round) {
    const Round* of = project.rounds().find(round);
    if (time || of == nullptr) {
        return time;
    }
    return of->opened ? of->opened : of->closed;
}

std::optional<std::int64_t> daysSinceDue(const Instrument& instrument, const std::optional<Instant>& moment) {
    if (!instrument.due || !moment) {
        return std::nullopt;
    }
    return moment->dateNumber() - instrument.due->dateNumber();
}

bool isOverdue(const Instrument& instrument, const std::optional<Instant>& moment) {
    return daysSinceDue(instrument, moment).value_or(0) > 0;
}

bool isOverdueUnexplained(const Instrument& instrument, const std::optional<Instant>& moment) {
    return isOverdue(instrument, moment) && instrument.overdueReason.empty();
}

}  // namespace ww::project
