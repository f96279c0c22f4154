#include "core/workbook/lock_rules.h"

#include <algorithm>
#include <concepts>

#include "core/project/names.h"
#include "core/workbook/edit_rules.h"

namespace ww::workbook {

namespace {

using base::Fault;
using project::AnyRecord;
using project::Id;
using project::Project;
using project::PumpReading;
using project::Reading;
using project::ReadingStatus;
using project::RecordTable;
using project::Round;
using project::RoundState;

template <class R>
concept AnyReading = std::same_as<R, Reading> || std::same_as<R, PumpReading>;

const RecordTable<Reading>& readingTable(const Project& project, const Reading*) {
    return project.readings();
}
const RecordTable<PumpReading>& readingTable(const Project& project, const PumpReading*) {
    return project.pumpReadings();
}
const std::vector<std::size_t>& readingsOfRound(const Project& project, const Id& round, const Reading*) {
    return project.readingsOf(round);
}
const std::vector<std::size_t>& readingsOfRound(const Project& project, const Id& round, const PumpReading*) {
    return project.pumpReadingsOf(round);
}

const Id& readAt(const Reading& reading) {
    return reading.branch;
}
const Id& readAt(const PumpReading& reading) {
    return reading.pump;
}

bool isLocked(const Round* round) {
    return round != nullptr && round->state != RoundState::Open;
}

/// A fault whose sentence begins with the number of a round and its state.
Fault lockFault(const base::MessageForm& form, std::string subject, const Round& round) {
    return Fault{
        &form, std::move(subject), {std::to_string(round.number), std::string(project::name(round.state))}};
}

std::optional<Fault> roundPutRefusal(const EditedProject& edited, const Round& after) {
    const Round* before = edited.before().rounds().find(after.id);
    const bool isRenamed = isLocked(before) && (before->number != after.number || before->kind != after.kind);
    const bool isTouched = before != nullptr && before->state == RoundState::Accepted &&
                           after.state == RoundState::Accepted && !(*before == after);
    return isRenamed || isTouched ? std::optional(lockFault(kRoundLocked, "", *before)) : std::nullopt;
}

/// Whether a reading names one of the same place and round.
template <AnyReading R>
bool corrects(const Project& project, const R& reading) {
    const R* corrected =
        reading.supersedes ? readingTable(project, &reading).find(*reading.supersedes) : nullptr;
    return corrected != nullptr && corrected->round == reading.round && readAt(*corrected) == readAt(reading);
}

/// Whether the only change is that a reading of this edit supersedes it, with a reason. A place that was
/// read twice is corrected as a whole: its correction names the last of the readings.
template <AnyReading R>
bool isMarkedSuperseded(const EditedProject& edited, R before, const R& after) {
    const Project& project = edited.before();
    const bool isCorrected = std::any_of(edited.put().begin(), edited.put().end(), [&](const auto& entry) {
        const R* other = std::get_if<R>(entry.second);
        return other != nullptr && readingTable(project, other).find(other->id) == nullptr &&
               other->round == before.round && readAt(*other) == readAt(before) && corrects(project, *other);
    });
    const Round* round = project.rounds().find(before.round);
    if (!isCorrected || after.status != ReadingStatus::Superseded || round->state == RoundState::Accepted) {
        return false;
    }
    before.status = after.status;
    if constexpr (std::same_as<R, Reading>) {
        before.reason = after.reason;
    }
    return before == after;
}

/// Whether the only change is that a reading of a round that waits to be sent gets its first reason: a
/// correction may be doubtful, and is explained like any other reading.
template <AnyReading R>
bool isExplained(const Round& round, R before, const R& after) {
    if constexpr (std::same_as<R, Reading>) {
        if (before.reason.empty() &&
            (round.state == RoundState::Closed || round.state == RoundState::SentBack)) {
            before.reason = after.reason;
            return before == after;
        }
    }
    return false;
}

template <AnyReading R>
std::optional<Fault> readingPutRefusal(const EditedProject& edited, const R& reading) {
    const Project& project = edited.before();
    const R* before = readingTable(project, &reading).find(reading.id);
    if (before != nullptr) {
        const Round* earlier = project.rounds().find(before->round);
        if (isLocked(earlier) && !(*before == reading) && !isExplained(*earlier, *before, reading) &&
            !isMarkedSuperseded(edited, *before, reading)) {
            return lockFault(kReadingLocked, edited.nameFor(reading), *earlier);
        }
        if (before->round == reading.round) {
            return std::nullopt;
        }
    }
    const Round* round = project.rounds().find(reading.round);
    if (!isLocked(round)) {
        return std::nullopt;
    }
    if (round->state == RoundState::Accepted) {
        return Fault{&kRoundAccepted, edited.nameFor(reading), {std::to_string(round->number)}};
    }
    return corrects(project, reading)
               ? std::nullopt
               : std::optional(lockFault(kRoundTakesCorrectionsOnly, edited.nameFor(reading), *round));
}

template <AnyReading R>
std::optional<Fault> readingErasedRefusal(const EditedProject& edited, const R* before) {
    const Round* round = before == nullptr ? nullptr : edited.before().rounds().find(before->round);
    return isLocked(round) ? std::optional(lockFault(kReadingLocked, edited.nameFor(*before), *round))
                           : std::nullopt;
}

template <AnyReading R>
Fault sequenceFault(const EditedProject& edited, const R& reading) {
    const Round* round = edited.after(edited.before().rounds(), reading.round);
    return Fault{&kSequenceTaken,
                 edited.nameFor(reading),
                 {round == nullptr ? "?" : std::to_string(round->number), std::to_string(reading.sequence)}};
}

/// Sequences within each round that the edit puts readings into.
template <AnyReading R>
std::optional<Fault> sequenceRefusalOf(const EditedProject& edited, const R* kind) {
    std::unordered_map<Id, std::unordered_set<int>> sequences;
    for (const auto& [id, record] : edited.put()) {
        const R* reading = std::get_if<R>(record);
        if (reading != nullptr && !sequences[reading->round].insert(reading->sequence).second) {
            return sequenceFault(edited, *reading);
        }
    }
    const Project& project = edited.before();
    for (const auto& [round, put] : sequences) {
        for (const std::size_t index : readingsOfRound(project, round, kind)) {
            const R& reading = readingTable(project, kind)[index];
            if (put.contains(reading.sequence) && edited.isUntouched(reading.id)) {
                return sequenceFault(edited, reading);
            }
        }
    }
    return std::nullopt;
}

}  // namespace

std::optional<Fault> lockRefusal(const EditedProject& edited, const AnyRecord& put) {
    if (const auto* round = std::get_if<Round>(&put)) {
        return roundPutRefusal(edited, *round);
    }
    if (const auto* reading = std::get_if<Reading>(&put)) {
        return readingPutRefusal(edited, *reading);
    }
    const auto* pumpReading = std::get_if<PumpReading>(&put);
    return pumpReading == nullptr ? std::nullopt : readingPutRefusal(edited, *pumpReading);
}

std::optional<Fault> lockRefusal(const EditedProject& edited, const Id& erased) {
    const Project& project = edited.before();
    if (const Round* round = project.rounds().find(erased); isLocked(round)) {
        return lockFault(kRoundLocked, "", *round);
    }
    const auto fault = readingErasedRefusal(edited, project.readings().find(erased));
    return fault ? fault : readingErasedRefusal(edited, project.pumpReadings().find(erased));
}

std::optional<Fault> sequenceRefusal(const EditedProject& edited) {
    const auto fault = sequenceRefusalOf(edited, static_cast<const Reading*>(nullptr));
    return fault ? fault : sequenceRefusalOf(edited, static_cast<const PumpReading*>(nullptr));
}

}  // namespace ww::workbook
