// What sender and reviewer of a round do, as edits: send, accept, send back, withdraw, comment, give reasons,
// list deficiencies. Whether a job allows it is the workbook's to say.
#pragma once

#include <string>

#include "core/balancing/assessment.h"
#include "core/base/term.h"
#include "core/project/edit.h"

namespace ww::balancing {

/// Who acts, and where new ids and the time come from.
struct ReviewContext {
    std::string person;
    base::IdSource& ids;
    base::Instant now;
};

/// Why a round that was sent back may not be sent again: a comment of the reviewer is neither answered nor
/// resolved. Nothing for any other round.
std::optional<base::Fault> unansweredFault(const project::Project& project, const Id& round);
/// Hands a closed round, or one sent back and corrected, to the reviewer. Refused while it has open items
/// (walk.h) or a comment that waits for an answer.
base::Result<project::Edit> sendRound(const project::Project& project, const Id& round,
                                      ReviewContext context);
/// Accepts a round that was sent; it takes no more changes. `reason`: why one who took part in it accepts it
/// (project::tookPart); of anybody else it is left out.
project::Edit acceptRound(const project::Project& project, const Id& round, std::string reason,
                          ReviewContext context);
/// Gives a round that was sent back to its sender; an open comment says what to correct.
project::Edit sendBackRound(const project::Project& project, const Id& round, std::string reason,
                            ReviewContext context);
/// Takes back the last step of a review: a sent round is closed again, an accepted or sent-back one waits for
/// its decision again. `reason` says why.
project::Edit withdrawRound(const project::Project& project, const Id& round, std::string reason,
                            ReviewContext context);

/// Where a comment is pinned.
struct CommentPlace {
    std::optional<Id> round;
    std::optional<Id> branch;
    std::optional<Id> pump;
    std::string field;  ///< "dp", "setting" ...; empty: the row
};
/// Pins a first comment to a place; it stays open until it is resolved.
project::Edit addComment(const project::Project& project, CommentPlace place, std::string text,
                         ReviewContext context);
/// An answer to a first comment; to an answer it goes to the comment that was answered.
project::Edit answerComment(const project::Project& project, const Id& comment, std::string text,
                            ReviewContext context);
/// Resolves a first comment with its answers, or opens it again.
project::Edit resolveComment(const project::Project& project, const Id& comment, bool isResolved,
                             ReviewContext context);
/// "B-05, DP, round 3", for labels and lists.
std::string placeText(const project::Project& project, const project::Comment& comment,
                      const base::Wording& wording = {});

/// The branches that wait for somebody, in walking order: with an open comment in any round, with an open
/// item (walk.h) of the round that is open, or `doubted` beside the others (learning/).
std::vector<Id> openBranches(const project::Project& project, const std::vector<Id>& doubted = {});

/// Withdraws the revision that a signature belongs to: all its signatures stay on record with the reason.
project::Edit withdrawReport(const project::Project& project, const Id& signature, std::string reason);

/// Says why a finding that blocks a signature stands; an empty reason takes that back.
project::Edit giveFindingReason(const project::Project& project, const base::Fault& finding,
                                std::string reason, ReviewContext context);

/// A new deficiency with the next number, at a branch with its counting reading of the newest round as
/// evidence where there is one.
project::Deficiency newDeficiency(const project::Project& project, std::optional<Id> branch,
                                  ReviewContext context);
project::Edit putDeficiency(project::Deficiency deficiency);

}  // namespace ww::balancing
