// What two rounds say about the same branches, side by side, with the corrections made in the later one.
// Not for judging (assess.h).
#pragma once

#include <optional>
#include <vector>

#include "core/balancing/assessment.h"

namespace ww::balancing {

/// One reading that was corrected (isCorrection()) or struck: what it was, and what stands in its place.
struct Correction {
    Id reading;                     ///< the old one
    std::optional<Id> replacement;  ///< the one that corrects it; nothing: struck
};

/// Whether `later`, which supersedes `earlier`, corrects a value of it: what was read, or the setting. What
/// adds a reading to a setting that was entered alone corrects nothing, nor what only says more of the same
/// reading (noteAnew).
bool isCorrection(const project::Reading& earlier, const project::Reading& later);

/// How many readings of a round were corrected or struck.
std::size_t correctionCount(const project::Project& project, const Id& round);

/// One branch in both rounds. Absent means: not read in that round.
struct ComparedBranch {
    Id branch;
    std::optional<Id> readingBefore;  ///< the one that counts
    std::optional<Id> readingAfter;
    std::optional<Setting> settingBefore;
    std::optional<Setting> settingAfter;
    std::optional<Ratio> ofTargetBefore;
    std::optional<Ratio> ofTargetAfter;
    State stateBefore = State::NotRead;
    State stateAfter = State::NotRead;
    bool isSettingChanged = false;
    bool isDpChanged = false;  ///< digits and unit as entered, or a flow likewise
    bool isStateChanged = false;
    bool isInstrumentChanged = false;  ///< both were read, with two different instruments
    bool isRemarked = false;  ///< the later reading has a note or a reason that the earlier one has not
    std::vector<Correction> corrections;  ///< of the later round, in order of entry

    bool isChanged() const {
        return isSettingChanged || isDpChanged || isStateChanged || isInstrumentChanged || isRemarked ||
               !corrections.empty();
    }
};

/// Every branch that either round has a reading of, in walking order. Both must be of rounds of the project;
/// readings that fill the gaps of an open round are left out.
std::vector<ComparedBranch> compareRounds(const project::Project& project, const Assessment& before,
                                          const Assessment& after);

/// What the rows of a comparison are sorted by.
enum class ComparisonOrder {
    AlongRoute,          ///< as compareRounds() gives them
    FarthestFromTarget,  ///< of target in the later round, by its distance from 100 %
    LargestChange,       ///< of target in the later round against the earlier one
};

/// The rows in that order. What is equal keeps the order of the route; rows without the value that is sorted
/// by come last.
std::vector<ComparedBranch> inOrder(std::vector<ComparedBranch> rows, ComparisonOrder order);

}  // namespace ww::balancing
