// The records of a job beside its measurements, as plain values: readiness, deficiencies, comments, photos,
// reasons, signed reports, and what two laptops left to decide. Not for rules (balancing/, workbook/).
#pragma once

#include <optional>
#include <string>

#include "core/base/decimal.h"
#include "core/base/id.h"
#include "core/base/instant.h"
#include "core/base/shared_bytes.h"
#include "core/project/record_kind.h"

namespace ww::project {

using base::Decimal;
using base::Id;
using base::Instant;

enum class ReadinessState { Open, Done, DoesNotApply };

/// One line of the list that must hold before a loop is surveyed.
struct ReadinessLine {
    Id id;
    int position = 0;
    std::string text;
    bool isMandatory = true;
    ReadinessState state = ReadinessState::Open;
    std::string owner;  ///< who sees to it
    std::optional<Instant> date;
    std::string evidence;

    bool operator==(const ReadinessLine&) const = default;
};

enum class DeficiencyStatus {
    Open,
    Remedied,    ///< said to be mended, not yet tested again
    Closed,      ///< tested again and good
    LeftAsItIs,  ///< accepted by the engineer or owner as it is
};

/// Something wrong with the installation that the balancer cannot mend, with its evidence.
struct Deficiency {
    Id id;
    int number = 0;  ///< unique in the job
    std::optional<Id> branch;
    std::optional<Id> pump;
    std::string location;
    std::string description;
    std::string consequence;
    std::string trade;          ///< who must act
    std::string remedy;         ///< proposed
    std::optional<Id> reading;  ///< evidence
    DeficiencyStatus status = DeficiencyStatus::Open;
    std::optional<Instant> raised;
    std::string raisedBy;
    std::optional<Instant> retested;
    std::optional<Id> retestReading;
    std::string retestResult;

    bool operator==(const Deficiency&) const = default;
};

/// A remark pinned to one cell of a round, or an answer to one.
struct Comment {
    Id id;
    std::optional<Id> round;
    std::optional<Id> branch;
    std::optional<Id> pump;
    std::string field;          ///< "dp", "setting" ...; empty: the row
    std::optional<Id> answers;  ///< another comment
    std::string text;
    std::string person;
    std::optional<Instant> time;
    bool isResolved = false;  ///< of a first comment: with all its answers
    std::string resolvedBy;
    std::optional<Instant> resolved;

    bool operator==(const Comment&) const = default;
};

/// A photo or another file kept in the workbook.
struct Attachment {
    Id id;
    std::optional<Id> branch;
    std::optional<Id> deficiency;
    std::string name;       ///< of the file
    std::string mediaType;  ///< such as "image/jpeg"
    std::string caption;
    std::string person;
    std::optional<Instant> time;
    base::SharedBytes content;

    bool operator==(const Attachment&) const = default;
};

/// Why a finding that would hold up a signature stands.
struct FindingReason {
    Id id;
    std::string code;     ///< of the finding
    std::string subject;  ///< of the finding: a tag, or empty
    std::string reason;
    std::string person;
    std::optional<Instant> time;

    bool operator==(const FindingReason&) const = default;
};

/// One signature that was set on a report of this job.
struct SignedReport {
    Id id;
    int revision = 0;         ///< of the report; a later revision supersedes the earlier ones
    std::string role;         ///< "technician" or "supervisor"
    std::string signer;       ///< as the certificate names it
    std::string certificate;  ///< SHA-256 of the certificate, hexadecimal
    bool isSelfMade = false;  ///< nobody vouches for the certificate
    std::optional<Instant> time;
    std::string fileName;
    std::string fileDigest;     ///< SHA-256 of the signed file, hexadecimal
    Decimal journalSequence;    ///< the journal's newest record when it was signed
    std::string journalDigest;  ///< digest of that record, hexadecimal
    bool isWithdrawn = false;
    std::string reason;  ///< why it was withdrawn

    bool operator==(const SignedReport&) const = default;
};

enum class ConflictChoice { Open, Ours, Theirs, Both };

/// A value that two laptops changed differently, until a person picks, and who picked what.
struct MergeConflict {
    Id id;
    RecordKind recordKind{};
    Id record;
    std::string field;  ///< the column; empty: one side removed what the other changed
    std::string place;  ///< for people: "B-04, DP, round 3"
    std::string ours;   ///< as entered, with its unit
    std::string theirs;
    std::string ourPerson;
    std::string theirPerson;
    std::optional<Instant> ourTime;
    std::optional<Instant> theirTime;
    std::string ourInstrument;
    std::string theirInstrument;
    ConflictChoice choice = ConflictChoice::Open;
    std::string decidedBy;
    std::optional<Instant> decided;

    bool operator==(const MergeConflict&) const = default;
};

/// That a person set the clock of one machine right for this job. What was written before keeps its times.
struct ClockOffset {
    Id id;
    std::string machine;            ///< as the journal names it
    std::optional<Instant> own;     ///< what that machine's own clock said
    std::optional<Instant> showed;  ///< the time that it would have written down at that moment
    /// The true time of the same moment: from then on what it has over `own` is added to that machine's
    /// clock.
    std::optional<Instant> stated;
    /// The first time in this machine's part of the journal that the wrong clock wrote; nothing: none is
    /// known.
    std::optional<Instant> uncertainSince;
    std::string person;  ///< who stated it

    bool operator==(const ClockOffset&) const = default;
};

}  // namespace ww::project
