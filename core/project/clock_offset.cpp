#include "core/project/clock_offset.h"

#include <cstdlib>

namespace ww::project {

std::int64_t added_s(const ClockOffset& offset) {
    return offset.own && offset.stated ? offset.stated->seconds - offset.own->seconds : 0;
}

std::string offsetText(std::int64_t seconds) {
    const std::int64_t minutes = std::abs(seconds) / 60;
    const std::string hours = minutes >= 60 ? std::to_string(minutes / 60) + " h " : std::string();
    return (seconds < 0 ? "-" : "+") + hours + std::to_string(minutes % 60) + " min";
}

const ClockOffset* newestOffset(const Project& project, std::string_view machine) {
    const ClockOffset* newest = nullptr;
    for (const ClockOffset& offset : project.clockOffsets()) {
        newest = offset.machine == machine ? &offset : newest;
    }
    return newest;
}

std::int64_t addedNow_s(const Project& project, std::string_view machine) {
    const ClockOffset* newest = newestOffset(project, machine);
    return newest != nullptr ? added_s(*newest) : 0;
}

const ClockOffset* uncertainTime(const Project& project, const Instant& time) {
    // A reading gets its time a moment before the journal does.
    constexpr std::int64_t kBeforeJournal_s = 60;
    for (const ClockOffset& offset : project.clockOffsets()) {
        if (offset.uncertainSince && offset.showed && time <= *offset.showed &&
            time.seconds >= offset.uncertainSince->seconds - kBeforeJournal_s) {
            return &offset;
        }
    }
    return nullptr;
}

}  // namespace ww::project
