// What a stored conflict says, part by part, so that it can be shown in the language of the reader: its place
// and values stand in the record in English. Not for making them (conflict_words.h, merge_settlement.h).
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/fault.h"
#include "core/project/project.h"

namespace ww::workbook {

/// The sentences that stand in places and values of conflicts, all in this one file, so that what is stored
/// can be told by its text.
namespace conflict_forms {

using base::MessageForm;

inline constexpr MessageForm kRound{"conflict_round", "round {1}"};
inline constexpr MessageForm kReadings{"conflict_readings", "readings"};
inline constexpr MessageForm kPumpReadings{"conflict_pump_readings", "pump readings"};
inline constexpr MessageForm kSignedReport{"conflict_signed_report", "signed report"};
inline constexpr MessageForm kRevision{"conflict_revision", "revision {1}"};
inline constexpr MessageForm kFedFrom{"conflict_fed_from", "fed from"};
inline constexpr MessageForm kThePump{"conflict_the_pump", "the pump"};
inline constexpr MessageForm kRemoved{"conflict_removed", "removed"};
inline constexpr MessageForm kKept{"conflict_kept", "kept, changed or used"};
inline constexpr MessageForm kCannotBeRead{"conflict_cannot_be_read", "cannot be read"};
inline constexpr MessageForm kWithoutThem{"conflict_without_them", "{1w} without them"};
inline constexpr MessageForm kOneReading{"conflict_one_reading", "1 reading more or changed"};
inline constexpr MessageForm kMoreReadings{"conflict_more_readings", "{1} readings more or changed"};
inline constexpr MessageForm kRows{"conflict_rows", "{1} rows"};
inline constexpr MessageForm kBytes{"conflict_bytes", "{1} bytes"};
inline constexpr MessageForm kYes{"conflict_yes", "yes"};
inline constexpr MessageForm kNo{"conflict_no", "no"};
inline constexpr MessageForm kWord{"conflict_word", "{1w}"};

}  // namespace conflict_forms

/// One part: the title of a column, a sentence, a text as a person gave it, or a column with its value
/// ("setting" and "4").
struct ConflictPart {
    std::string column;               ///< as the workbook's tables name it: "design_flow"; may be empty
    std::optional<base::Fault> said;  ///< a sentence; then the other two are empty
    std::string text;                 ///< stays as it is in every language; may be empty

    bool operator==(const ConflictPart&) const = default;
};

/// Put together with commas between them. A side without parts is a value that is not there.
struct ConflictParts {
    std::vector<ConflictPart> place;
    std::vector<ConflictPart> ours;
    std::vector<ConflictPart> theirs;
};

/// What the conflict says. What is of no known form stays as it is stored: another program wrote it.
ConflictParts partsOf(const project::MergeConflict& conflict);

/// The same of a place alone, as it stands behind a choice in the journal, where the column in conflict is
/// not known: what reads as a title of a column is taken for one.
std::vector<ConflictPart> partsOfPlace(std::string_view place);

/// The same of one value of a place that was read twice, as a reason keeps it: "48.8 kPa, setting 4".
std::vector<ConflictPart> partsOfReading(std::string_view value);

/// The English title of a column in a stored place: "design flow" for design_flow, "DP" for dp.
std::string conflictTitle(std::string column);

/// A part in English, as the record keeps it.
std::string conflictText(const base::MessageForm& form, const std::vector<std::string>& arguments = {});

}  // namespace ww::workbook
