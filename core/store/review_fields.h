// Columns of the records of review: readiness, deficiencies, comments and the like. As record_fields.h.
#pragma once

#include "core/project/review_records.h"
#include "core/store/record_fields.h"

namespace ww::store {

template <>
inline constexpr const char* kTableOf<project::ReadinessLine> = "readiness";
template <>
inline constexpr const char* kTableOf<project::Deficiency> = "deficiencies";
template <>
inline constexpr const char* kTableOf<project::Comment> = "comments";
template <>
inline constexpr const char* kTableOf<project::Attachment> = "attachments";
template <>
inline constexpr const char* kTableOf<project::FindingReason> = "finding_reasons";
template <>
inline constexpr const char* kTableOf<project::SignedReport> = "signed_reports";
template <>
inline constexpr const char* kTableOf<project::MergeConflict> = "merge_conflicts";
template <>
inline constexpr const char* kTableOf<project::ClockOffset> = "clock_offsets";

template <class Io, Like<project::ReadinessLine> R>
void fields(Io& io, R& r) {
    io.field("id", r.id);
    io.field("position", r.position);
    io.field("text", r.text);
    io.field("is_mandatory", r.isMandatory);
    io.field("state", r.state);
    io.field("owner", r.owner);
    io.field("date", r.date);
    io.field("evidence", r.evidence);
}
template <class Io, Like<project::Deficiency> R>
void fields(Io& io, R& r) {
    io.field("id", r.id);
    io.field("number", r.number);
    io.field("branch", r.branch);
    io.field("pump", r.pump);
    io.field("location", r.location);
    io.field("description", r.description);
    io.field("consequence", r.consequence);
    io.field("trade", r.trade);
    io.field("remedy", r.remedy);
    io.field("reading", r.reading);
    io.field("status", r.status);
    io.field("raised", r.raised);
    io.field("raised_by", r.raisedBy);
    io.field("retested", r.retested);
    io.field("retest_reading", r.retestReading);
    io.field("retest_result", r.retestResult);
}
template <class Io, Like<project::Comment> R>
void fields(Io& io, R& r) {
    io.field("id", r.id);
    io.field("round", r.round);
    io.field("branch", r.branch);
    io.field("pump", r.pump);
    io.field("field", r.field);
    io.field("answers", r.answers);
    io.field("text", r.text);
    io.field("person", r.person);
    io.field("time", r.time);
    io.field("is_resolved", r.isResolved);
    io.field("resolved_by", r.resolvedBy);
    io.field("resolved", r.resolved);
}
template <class Io, Like<project::Attachment> R>
void fields(Io& io, R& r) {
    io.field("id", r.id);
    io.field("branch", r.branch);
    io.field("deficiency", r.deficiency);
    io.field("name", r.name);
    io.field("media_type", r.mediaType);
    io.field("caption", r.caption);
    io.field("person", r.person);
    io.field("time", r.time);
    io.field("content", r.content);
}
template <class Io, Like<project::FindingReason> R>
void fields(Io& io, R& r) {
    io.field("id", r.id);
    io.field("code", r.code);
    io.field("subject", r.subject);
    io.field("reason", r.reason);
    io.field("person", r.person);
    io.field("time", r.time);
}
template <class Io, Like<project::SignedReport> R>
void fields(Io& io, R& r) {
    io.field("id", r.id);
    io.field("revision", r.revision);
    io.field("role", r.role);
    io.field("signer", r.signer);
    io.field("certificate", r.certificate);
    io.field("is_self_made", r.isSelfMade);
    io.field("time", r.time);
    io.field("file_name", r.fileName);
    io.field("file_digest", r.fileDigest);
    io.field("journal_sequence", r.journalSequence);
    io.field("journal_digest", r.journalDigest);
    io.field("is_withdrawn", r.isWithdrawn);
    io.field("reason", r.reason);
}
template <class Io, Like<project::MergeConflict> R>
void fields(Io& io, R& r) {
    io.field("id", r.id);
    io.field("record_kind", r.recordKind);
    io.field("record", r.record);
    io.field("field", r.field);
    io.field("place", r.place);
    io.field("ours", r.ours);
    io.field("theirs", r.theirs);
    io.field("our_person", r.ourPerson);
    io.field("their_person", r.theirPerson);
    io.field("our_time", r.ourTime);
    io.field("their_time", r.theirTime);
    io.field("our_instrument", r.ourInstrument);
    io.field("their_instrument", r.theirInstrument);
    io.field("choice", r.choice);
    io.field("decided_by", r.decidedBy);
    io.field("decided", r.decided);
}
template <class Io, Like<project::ClockOffset> R>
void fields(Io& io, R& r) {
    io.field("id", r.id);
    io.field("machine", r.machine);
    io.field("own", r.own);
    io.field("showed", r.showed);
    io.field("stated", r.stated);
    io.field("uncertain_since", r.uncertainSince);
    io.field("person", r.person);
}

}  // namespace ww::store
