#include "core/balancing/touched_rounds.h"

#include <algorithm>
#include <limits>

namespace ww::balancing {

namespace {

using project::Project;
using project::RecordKind;

constexpr int kEvery = std::numeric_limits<int>::min();
constexpr int kNone = std::numeric_limits<int>::max();

/// The number of the round that a record of the job belongs to; kNone where the job does not hold it.
int roundOf(const Project& job, const project::RecordRef& record) {
    const auto number = [&](const auto* reading) {
        return reading != nullptr ? job.rounds().at(reading->round).number : kNone;
    };
    switch (record.kind) {
        case RecordKind::Reading:
            return number(job.readings().find(record.id));
        case RecordKind::PumpReading:
            return number(job.pumpReadings().find(record.id));
        case RecordKind::Round: {
            const project::Round* round = job.rounds().find(record.id);
            return round != nullptr ? round->number : kNone;
        }
        case RecordKind::Comment:
        case RecordKind::Attachment:
        case RecordKind::SignedReport:
            return kNone;
        default:
            return kEvery;
    }
}

}  // namespace

std::optional<int> firstRoundTouched(const Project& before, const Project& after,
                                     const project::ChangeSet& changes) {
    int first = changes.isEmpty() ? kEvery : kNone;
    for (const auto* records : {&changes.put, &changes.erased}) {
        for (const project::RecordRef& record : *records) {
            first = std::min({first, roundOf(before, record), roundOf(after, record)});
        }
    }
    return first == kNone ? std::nullopt : std::optional(first);
}

}  // namespace ww::balancing
