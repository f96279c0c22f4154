// The kinds of record in a job, one table each.
#pragma once

namespace ww::project {

enum class RecordKind {
    Job,
    ValveModel,
    Branch,
    Pump,
    Instrument,
    Person,
    Round,
    Reading,
    PumpReading,
    SetPoint,
    ReadinessLine,
    Deficiency,
    Comment,
    Attachment,
    FindingReason,
    SignedReport,
    MergeConflict,
    ClockOffset,
};

}  // namespace ww::project
