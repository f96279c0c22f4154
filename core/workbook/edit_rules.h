// What a job refuses: changes to locked rounds, broken references, repeated tags and numbers.
// Not for judging values (balancing/).
#pragma once

#include <optional>

#include "core/base/fault.h"
#include "core/project/edit.h"
#include "core/project/project.h"

namespace ww::workbook {

inline constexpr base::MessageForm kRoundTakesCorrectionsOnly{
    "round_takes_corrections_only",
    "round {1} is {2w} and takes only readings that correct one of its own; say which reading this one "
    "corrects, or "
    "open a new round"};
inline constexpr base::MessageForm kRoundAccepted{
    "accepted_round_locked", "round {1} is accepted and takes no more readings; open a new round"};
inline constexpr base::MessageForm kReadingLocked{"reading_locked",
                                                  "a reading of round {1}, which is {2w}, is neither changed "
                                                  "nor removed; enter a reading that corrects it"};
inline constexpr base::MessageForm kRoundLocked{
    "round_locked", "round {1} is {2w} and is neither removed nor numbered anew; open a new round"};
inline constexpr base::MessageForm kReferenceMissing{
    "reference_missing", "this refers to a {1w} that is not in the job; add it first or choose another"};
inline constexpr base::MessageForm kStillInUse{
    "still_in_use", "{1w} {2} is still used by {3w} {4}; remove that first or let it use another"};
inline constexpr base::MessageForm kPersonNamed{
    "person_named",
    "{1} is named elsewhere in the job ({2w}) and stays; correct the row, or add another person"};
inline constexpr base::MessageForm kNameTaken{"name_taken",
                                              "there is a {1w} of this name already; choose another name"};
inline constexpr base::MessageForm kRoundNumberTaken{
    "round_number_taken", "there is a round {1} already; give this one another number"};
inline constexpr base::MessageForm kSequenceTaken{
    "sequence_taken", "round {1} has a reading number {2} already; give this one the next number"};
inline constexpr base::MessageForm kExactlyOneJob{
    "exactly_one_job", "a workbook holds exactly one job; change the one that is there"};
inline constexpr base::MessageForm kFedFromItself{
    "fed_from_itself", "this branch would be fed from itself by way of its parents; choose another parent"};

/// Why an edit must not be carried out on a job; nothing where it may. Rounds count as locked by the state
/// they have before the edit: closed, sent and sent-back rounds take a new reading only where it names a
/// reading of the same place and round that it corrects (which may then be marked as superseded, with a
/// reason); accepted rounds take none. Names that are empty are not compared.
std::optional<base::Fault> refusal(const project::Project& project, const project::Edit& edit);

/// The same for the first content of a new workbook: exactly one Job among it.
std::optional<base::Fault> refusalOfContent(const project::Edit& content);

/// Whether the edit sends, accepts or sends back a round, or withdraws one of these: such an action is not
/// undone.
bool movesReview(const project::Project& project, const project::Edit& edit);

}  // namespace ww::workbook
