// The design and the limits by which a closed round is judged: those that held when it was closed. Not for
// judging (balancing/) nor for keeping them when the design changes (workbook/kept_designs.h).
#pragma once

#include <optional>
#include <vector>

#include "core/project/project.h"

namespace ww::project {

/// The limits of acceptance: of design, and of a share.
struct Limits {
    Measured<Ratio> toleranceLow;   ///< of (flow/design - 1)
    Measured<Ratio> toleranceHigh;  ///< likewise
    Measured<Ratio> matchingBand;   ///< half width of the band of "of target" around 1

    bool operator==(const Limits&) const = default;
};

/// The limits of the job today.
Limits limitsOf(const Job& job);
/// The limits by which a round is judged: those kept with it, else the job's.
Limits limitsFor(const Project& project, const Round& round);

/// The job as it was designed and limited when a round was closed; nothing where that is as today. Branches
/// keep their places (index into Project::branches()); one that came later is not in the loop
/// (Branch::isInLoop). All else is as today: a corrected valve table corrects earlier rounds too.
std::optional<Project> asJudged(const Project& project, const Round& round);

/// Whether a branch belongs to the loop of a round: not where it came after that round was closed.
bool isInLoopOf(const Round& round, const Branch& branch);

/// A branch that was designed otherwise.
struct ChangedDesign {
    Id branch;
    bool wasInLoop = true;
    std::optional<Measured<VolumeFlow>> before;
    std::optional<Measured<VolumeFlow>> after;
};

/// What was changed between the closing of a round and that of the next one that is closed, or today.
struct ChangeAfterRound {
    int round = 0;  ///< number of the round: it and those before it are judged by what held before
    std::vector<ChangedDesign> designs;                    ///< in walking order
    std::optional<std::pair<Limits, Limits>> limits = {};  ///< before and after
};

/// All such changes, by number of the round. Empty in a job whose design stands since its first round.
std::vector<ChangeAfterRound> changesAfterRounds(const Project& project);

}  // namespace ww::project
