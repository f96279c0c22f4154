// What follows directly from the records of review: who may decide, what is open. Not for rules of steps
// (workbook/) nor for readings (balancing/).
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/project/project.h"

namespace ww::project {

/// Whether a person of the job reviews: a supervisor or an engineer. The name as in Person::name.
bool reviews(const Project& project, std::string_view person);

/// Whether a person sent a round or took a reading of it, at a valve or a pump, whatever became of the
/// reading: such a one does not decide on it. The name as in Person::name.
bool tookPart(const Project& project, const Round& round, std::string_view person);

/// The numbers of the rounds that a person took part in, in their order.
std::vector<int> roundsTakenPartIn(const Project& project, std::string_view person);

/// What the one who signs a report did himself besides. It is told, not refused: a firm may be small.
struct OwnPart {
    std::string rounds;  ///< of a reviewer: those he read or sent, with commas between them; empty: none
    bool hasBothRoles =
        false;  ///< the same revision is signed by him, or with his key, in the other role too

    bool isNone() const { return rounds.empty() && !hasBothRoles; }
};
/// The part of the signer of `signature`, whether that is in the job yet or not.
OwnPart ownPart(const Project& project, const SignedReport& signature);

/// Who may decide on a round: those who review and took no part in it, in the order of the job's people.
std::vector<const Person*> decidersOf(const Project& project, const Round& round);

/// Whether a round stands accepted by a person who took part in it.
bool isSelfAccepted(const Project& project, const Round& round);

/// Who took the newest reading that names its reader; nothing where none does.
std::optional<Id> lastReader(const Project& project);

/// The last round where it is open; null otherwise.
const Round* roundInHand(const Project& project);

/// The last round that the balancers walked: no witness round, which reads a sample again. Null where there
/// is none. `upTo`: of those with at most this number.
const Round* lastOwnRound(const Project& project, std::optional<int> upTo = {});

/// The mandatory lines of readiness that are open, in order of position.
std::vector<const ReadinessLine*> openMandatory(const Project& project);

/// When a round was walked: the moment of its earliest reading that has a time, else that of its opening;
/// nothing where neither was written down. The round must exist.
std::optional<Instant> beginOf(const Project& project, const Id& round);

/// First comments of a round that are not resolved, along the walking order, then those on pumps and on the
/// round as a whole.
std::vector<const Comment*> openComments(const Project& project, const Id& round);
/// The same of all rounds of the job, and of none.
std::vector<const Comment*> openComments(const Project& project);

/// The answers to a comment, in order of entry.
std::vector<const Comment*> answersTo(const Project& project, const Id& comment);

/// Open comments of a round that was sent back whose last word is that of the person who sent it back: nobody
/// has answered it yet. In the order of openComments().
std::vector<const Comment*> unansweredComments(const Project& project, const Id& round);

/// The number that the next deficiency takes: one above the highest.
int nextDeficiencyNumber(const Project& project);

/// Whether a deficiency of any status names the branch.
bool hasDeficiency(const Project& project, const Id& branch);

/// The reason given for a finding of this code and subject; null where there is none.
const FindingReason* reasonFor(const Project& project, std::string_view code, std::string_view subject);

}  // namespace ww::project
