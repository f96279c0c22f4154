// The columns of the tables of review, and those that older tables gained: one list a record, walked alike
// when a table is read, when it is written and for JSON. Not for what a cell looks like.
#pragma once

#include <concepts>
#include <type_traits>

#include "core/exchange/table_reader.h"
#include "core/project/project.h"

namespace ww::exchange {

template <class R, class Record>
concept Holds = std::same_as<std::remove_cvref_t<R>, Record>;

// columns(io, record) calls, in the order of the table:
//   io.cell(column, member)                 text, yes or no, whole number, digits, word, moment
//   io.cell(column, member, sign)           a value with its unit
//   io.refers(column, kind, member)         another record, if any, by its name or number
//   io.record(column, kind, id)             likewise; the null id where the job has no such record
//   io.file(column, bytes, attachment name) bytes in a file of their own

template <class Io, Holds<project::Job> R>
void columns(Io& io, R& r) {
    io.cell("practice", r.practice);
    io.cell("altitude", r.altitude, Sign::Any);
    io.cell("fill_pressure", r.fillPressure, Sign::Any);
    io.cell("reading_age_limit", r.readingAgeLimit);
    io.cell("code_form", r.codeForm);
    io.cell("code_edition", r.codeEdition);
    io.cell("code_clause", r.codeClause);
    io.cell("code_exception", r.codeException);
}

template <class Io, Holds<project::Branch> R>
void columns(Io& io, R& r) {
    io.cell("disturbance", r.disturbance);
    io.cell("elevation", r.elevation, Sign::Any);
    io.cell("policy", r.policy);
    io.cell("policy_reason", r.policyReason);
    io.cell("notes", r.notes);
}

template <class Io, Holds<project::Pump> R>
void columns(Io& io, R& r) {
    io.cell("arrangement", r.arrangement);
    io.cell("suction_diameter", r.suctionDiameter, Sign::Positive);
    io.cell("discharge_diameter", r.dischargeDiameter, Sign::Positive);
    io.cell("suction_gauge_height", r.suctionGaugeHeight, Sign::Any);
    io.cell("discharge_gauge_height", r.dischargeGaugeHeight, Sign::Any);
    io.cell("power_factor", r.powerFactor, Sign::Positive);
    io.cell("no_load_amps", r.noLoadAmps, Sign::NotNegative);
    io.cell("plate_speed", r.plateSpeed, Sign::Positive);
    io.cell("synchronous_speed", r.synchronousSpeed, Sign::Positive);
    io.cell("minimum_speed", r.minimumSpeed, Sign::NotNegative);
    io.cell("drive", r.hasDrive);
    io.cell("positive_displacement", r.isPositiveDisplacement);
    io.cell("guards_source", r.guardsSource);
}

template <class Io, Holds<project::Instrument> R>
void columns(Io& io, R& r) {
    io.cell("resolution", r.resolution, Sign::NotNegative);
    io.cell("certificate", r.certificate);
    io.cell("zero_start", r.zeroStart, Sign::Any);
    io.cell("zero_end", r.zeroEnd, Sign::Any);
    io.cell("overdue_reason", r.overdueReason);
}

template <class Io, Holds<project::Person> R>
void columns(Io& io, R& r) {
    io.cell("role", r.role);
    io.cell("certificate", r.certificate);
    io.cell("firm", r.firm);
}

template <class Io, Holds<project::Round> R>
void columns(Io& io, R& r) {
    io.cell("sent", r.sent);
    io.cell("decided", r.decided);
    io.cell("sent_by", r.sentBy);
    io.cell("decided_by", r.decidedBy);
    io.cell("reason", r.reason);
    io.cell("readiness", r.readiness);
    io.cell("sample_seed", r.sampleSeed);
    io.cell("tolerance_low", r.toleranceLow, Sign::Any);
    io.cell("tolerance_high", r.toleranceHigh, Sign::Any);
    io.cell("matching_band", r.matchingBand, Sign::NotNegative);
}

template <class Io, Holds<project::Reading> R>
void columns(Io& io, R& r) {
    io.cell("purpose", r.purpose);
}

template <class Io, Holds<project::PumpReading> R>
void columns(Io& io, R& r) {
    io.cell("point", r.point);
    io.cell("volts_second", r.voltsSecond, Sign::NotNegative);
    io.cell("volts_third", r.voltsThird, Sign::NotNegative);
    io.cell("amps_second", r.ampsSecond, Sign::NotNegative);
    io.cell("amps_third", r.ampsThird, Sign::NotNegative);
    io.cell("power_factor", r.powerFactor, Sign::NotNegative);
    io.cell("doubtful", r.isDoubtful);
    io.cell("note", r.note);
    io.cell("reason", r.reason);
}

template <class Io, Holds<project::SetPoint> R>
void columns(Io& io, R& r) {
    io.refers("pump", RecordKind::Pump, r.pump);
    io.cell("sensor", r.sensor);
    io.cell("location", r.location);
    io.cell("method", r.method);
    io.cell("zero", r.zero, Sign::Any);
    io.cell("dp", r.dp, Sign::Any);
    io.cell("flow", r.flow, Sign::NotNegative);
    io.cell("speed", r.speed, Sign::NotNegative);
    io.cell("margin", r.margin, Sign::Any);
    io.cell("low_limit", r.lowLimit, Sign::Any);
    io.cell("high_limit", r.highLimit, Sign::Any);
    io.cell("reset", r.reset);
    io.cell("set_by", r.setBy);
    io.cell("time", r.time);
    io.cell("note", r.note);
}

template <class Io, Holds<project::ReadinessLine> R>
void columns(Io& io, R& r) {
    io.cell("text", r.text);
    io.cell("mandatory", r.isMandatory);
    io.cell("state", r.state);
    io.cell("owner", r.owner);
    io.cell("date", r.date);
    io.cell("evidence", r.evidence);
}

template <class Io, Holds<project::Deficiency> R>
void columns(Io& io, R& r) {
    io.cell("number", r.number);
    io.refers("tag", RecordKind::Branch, r.branch);
    io.refers("pump", RecordKind::Pump, r.pump);
    io.cell("location", r.location);
    io.cell("description", r.description);
    io.cell("consequence", r.consequence);
    io.cell("trade", r.trade);
    io.cell("remedy", r.remedy);
    io.refers("reading", RecordKind::Reading, r.reading);
    io.cell("status", r.status);
    io.cell("raised", r.raised);
    io.cell("raised_by", r.raisedBy);
    io.cell("retested", r.retested);
    io.refers("retest_reading", RecordKind::Reading, r.retestReading);
    io.cell("retest_result", r.retestResult);
}

template <class Io, Holds<project::Comment> R>
void columns(Io& io, R& r) {
    io.refers("round", RecordKind::Round, r.round);
    io.refers("tag", RecordKind::Branch, r.branch);
    io.refers("pump", RecordKind::Pump, r.pump);
    io.cell("field", r.field);
    io.refers("answers", RecordKind::Comment, r.answers);
    io.cell("text", r.text);
    io.cell("person", r.person);
    io.cell("time", r.time);
    io.cell("resolved", r.isResolved);
    io.cell("resolved_by", r.resolvedBy);
    io.cell("resolved_at", r.resolved);
}

template <class Io, Holds<project::Attachment> R>
void columns(Io& io, R& r) {
    io.refers("tag", RecordKind::Branch, r.branch);
    io.refers("deficiency", RecordKind::Deficiency, r.deficiency);
    io.cell("name", r.name);
    io.cell("media_type", r.mediaType);
    io.cell("caption", r.caption);
    io.cell("person", r.person);
    io.cell("time", r.time);
    io.file("file", r.content, r.name);
}

template <class Io, Holds<project::FindingReason> R>
void columns(Io& io, R& r) {
    io.cell("code", r.code);
    io.cell("subject", r.subject);
    io.cell("reason", r.reason);
    io.cell("person", r.person);
    io.cell("time", r.time);
}

template <class Io, Holds<project::SignedReport> R>
void columns(Io& io, R& r) {
    io.cell("revision", r.revision);
    io.cell("role", r.role);
    io.cell("signer", r.signer);
    io.cell("certificate", r.certificate);
    io.cell("self_made", r.isSelfMade);
    io.cell("time", r.time);
    io.cell("file_name", r.fileName);
    io.cell("file_digest", r.fileDigest);
    io.cell("journal_sequence", r.journalSequence);
    io.cell("journal_digest", r.journalDigest);
    io.cell("withdrawn", r.isWithdrawn);
    io.cell("reason", r.reason);
}

template <class Io, Holds<project::MergeConflict> R>
void columns(Io& io, R& r) {
    io.cell("kind", r.recordKind);
    io.record("record", r.recordKind, r.record);
    io.cell("field", r.field);
    io.cell("place", r.place);
    io.cell("ours", r.ours);
    io.cell("theirs", r.theirs);
    io.cell("our_person", r.ourPerson);
    io.cell("their_person", r.theirPerson);
    io.cell("our_time", r.ourTime);
    io.cell("their_time", r.theirTime);
    io.cell("our_instrument", r.ourInstrument);
    io.cell("their_instrument", r.theirInstrument);
    io.cell("choice", r.choice);
    io.cell("decided_by", r.decidedBy);
    io.cell("decided", r.decided);
}

template <class Io, Holds<project::ClockOffset> R>
void columns(Io& io, R& r) {
    io.cell("machine", r.machine);
    io.cell("own", r.own);
    io.cell("showed", r.showed);
    io.cell("stated", r.stated);
    io.cell("uncertain_since", r.uncertainSince);
    io.cell("person", r.person);
}

/// The tables of review with their records: visit(file, table), in the order of reading. What a record refers
/// to stands in an earlier table or in its own.
template <class Visit>
void eachReviewTable(Visit visit) {
    visit("set_points.csv", &project::Project::setPoints);
    visit("readiness.csv", &project::Project::readiness);
    visit("deficiencies.csv", &project::Project::deficiencies);
    visit("comments.csv", &project::Project::comments);
    visit("attachments.csv", &project::Project::attachments);
    visit("finding_reasons.csv", &project::Project::findingReasons);
    visit("signed_reports.csv", &project::Project::signedReports);
    visit("merge_conflicts.csv", &project::Project::mergeConflicts);
    visit("clock_offsets.csv", &project::Project::clockOffsets);
}

template <class Q>
struct DimensionOf;
template <class Kind>
struct DimensionOf<quantity::Quantity<Kind>> {
    static constexpr Dimension kValue = Kind::kDimension;
};
template <>
struct DimensionOf<quantity::GaugePressure> {
    static constexpr Dimension kValue = Dimension::Pressure;
};

/// Collects what columns() names.
class ColumnNames {
  public:
    std::vector<ColumnSpec> specs;

    template <class T>
    void cell(const char* column, const T&) {
        specs.push_back({column, {}, false});
    }
    template <class Q>
    void cell(const char* column, const std::optional<Measured<Q>>&, Sign) {
        specs.push_back({column, DimensionOf<Q>::kValue, false});
    }
    void refers(const char* column, RecordKind, const std::optional<base::Id>&) {
        specs.push_back({column, {}, false});
    }
    void record(const char* column, RecordKind, const base::Id&) { specs.push_back({column, {}, false}); }
    void file(const char* column, const base::SharedBytes&, const std::string&) {
        specs.push_back({column, {}, false});
    }
};

/// The columns of a record's table (for an older table: those it gained), behind those given.
template <class Record>
std::vector<ColumnSpec> columnsOf(std::vector<ColumnSpec> first = {}) {
    ColumnNames names{std::move(first)};
    Record none;
    columns(names, none);
    return std::move(names.specs);
}

/// Where the files of attachments.csv stand, below the job folder.
inline constexpr const char* kAttachmentFolder = "attachments";

/// How a table or JSON names a record: by tag, name or number; a reading as "round:row", the row counted
/// within its round from 1; others by their row. Empty where the job has no such record.
std::string referenceText(const project::Project& project, RecordKind kind, const base::Id& id);

}  // namespace ww::exchange
