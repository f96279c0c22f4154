// How the clock of this machine is set for a job, and which times in its journal the wrong clock wrote.
#include "core/project/clock_offset.h"
#include "core/project/edit_label.h"
#include "core/workbook/workbook_state.h"

namespace ww::workbook {

namespace {

using project::ClockOffset;

constexpr std::int64_t kMinute_s = 60;

std::string labelOfSetting(const ClockOffset& offset) {
    const std::int64_t added_s = project::added_s(offset);
    return added_s == 0 ? project::label(project::labels::kClockOwn, {offset.machine})
                        : project::label(project::labels::kClock,
                                         {offset.machine, project::offsetText(added_s)});
}

/// To the nearest whole minute.
std::int64_t wholeMinutes_s(std::int64_t seconds) {
    const std::int64_t half = seconds < 0 ? -kMinute_s / 2 : kMinute_s / 2;
    return (seconds + half) / kMinute_s * kMinute_s;
}

/// What was written down here since the clock was set last; all of it where it never was.
std::vector<JournalEntry> sinceLastSetting(const std::vector<JournalEntry>& journal,
                                           const ClockOffset* newest) {
    std::vector<JournalEntry> entries;
    for (const JournalEntry& entry : journal) {
        if (newest != nullptr && !entry.undoes && entry.label == labelOfSetting(*newest)) {
            entries.clear();
        } else if (!entry.isPartOfMerge) {
            entries.push_back(entry);
        }
    }
    return entries;
}

/// The first time that a clock wrote while it was behind: where the journal went back last.
std::optional<base::Instant> firstBehind(const std::vector<JournalEntry>& entries,
                                         const std::string& machine) {
    std::optional<base::Instant> first;
    for (std::size_t i = 1; i < entries.size(); ++i) {
        const bool wentBack = entries[i].time.seconds + kMinute_s <= entries[i - 1].time.seconds;
        first = wentBack && entries[i].machine == machine ? std::optional(entries[i].time) : first;
    }
    return first;
}

/// The earliest time that this machine wrote and that has not come yet.
std::optional<base::Instant> firstAhead(const std::vector<JournalEntry>& entries, const std::string& machine,
                                        const base::Instant& stated) {
    std::optional<base::Instant> first;
    for (const JournalEntry& entry : entries) {
        const bool isAhead = entry.machine == machine && entry.time.seconds >= stated.seconds + kMinute_s;
        first = isAhead && (!first || entry.time < *first) ? std::optional(entry.time) : first;
    }
    return first;
}

}  // namespace

project::Edit Workbook::settingOfClock(const base::Instant& stated) const {
    const base::Instant own = ownClock();
    const std::int64_t added_s = wholeMinutes_s(stated.seconds - own.seconds);
    if (added_s == project::addedNow_s(project(), machine())) {
        return {};
    }
    ClockOffset offset;
    offset.id = ids().next();
    offset.machine = machine();
    offset.own = own;
    offset.showed = now();
    offset.stated = own;
    offset.stated->seconds += added_s;
    offset.person = m_state->session.person;
    const auto entries = sinceLastSetting(m_state->entries, project::newestOffset(project(), offset.machine));
    offset.uncertainSince = *offset.stated > *offset.showed
                                ? firstBehind(entries, offset.machine)
                                : firstAhead(entries, offset.machine, *offset.stated);
    project::Edit edit;
    edit.label = labelOfSetting(offset);
    edit.put.emplace_back(std::move(offset));
    return edit;
}

}  // namespace ww::workbook
