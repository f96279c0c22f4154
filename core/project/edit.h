// What a person does to a job, as a value: records put or erased together, with a name for undo and the
// journal. Not for storage; a workbook carries it out.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "core/project/record_kind.h"
#include "core/project/records.h"
#include "core/project/review_records.h"

namespace ww::project {

/// In the order of RecordKind.
using AnyRecord = std::variant<Job, ValveModel, Branch, Pump, Instrument, Person, Round, Reading, PumpReading,
                               SetPoint, ReadinessLine, Deficiency, Comment, Attachment, FindingReason,
                               SignedReport, MergeConflict, ClockOffset>;

/// The kind and the id of whatever record it is.
RecordKind kindOf(const AnyRecord& record);
const Id& idOf(const AnyRecord& record);

/// Name of a record in the place where people see it: tag, number, model and size.
std::string nameOf(const AnyRecord& record);

struct RecordRef {
    RecordKind kind{};
    Id id;

    bool operator==(const RecordRef&) const = default;
};

/// One user action: all of it happens, or nothing. `label` reads well after "Undo", as in "DP 52.7 kPa,
/// B-05".
struct Edit {
    std::string label;
    std::vector<AnyRecord> put;
    std::vector<RecordRef> erase;
    /// Sending, accepting and signing are not undone; they are withdrawn by another action.
    bool canUndo = true;

    bool isEmpty() const { return put.empty() && erase.empty(); }
};

/// What changed in a job, by id, after an action, an undo or a redo.
struct ChangeSet {
    std::vector<RecordRef> put;
    std::vector<RecordRef> erased;

    bool isEmpty() const { return put.empty() && erased.empty(); }
    /// Whether a record of this kind was put or erased.
    bool touches(RecordKind kind) const;
};

}  // namespace ww::project
