#include "core/balancing/round_comparison.h"

#include <algorithm>
#include <cmath>
#include <unordered_map>

#include "core/balancing/standing_readings.h"

namespace ww::balancing {

namespace {

using project::Project;
using project::Reading;

std::unordered_map<Id, std::vector<Correction>> correctionsOf(const Project& project, const Id& round) {
    std::unordered_map<Id, const Reading*> replacedBy;
    for (const std::size_t index : project.readingsOf(round)) {
        const Reading& reading = project.readings()[index];
        if (reading.supersedes) {
            replacedBy[*reading.supersedes] = &reading;
        }
    }
    std::unordered_map<Id, std::vector<Correction>> found;
    for (const std::size_t index : project.readingsOf(round)) {
        const Reading& reading = project.readings()[index];
        if (reading.status == project::ReadingStatus::Standing) {
            continue;
        }
        auto replacement = replacedBy.find(reading.id);
        if (replacement == replacedBy.end()) {
            found[reading.branch].push_back({reading.id, std::nullopt});
        } else if (isCorrection(reading, *replacement->second)) {
            // What was said of the new value later stands with the last of the same reading.
            const Reading* last = replacement->second;
            while ((replacement = replacedBy.find(last->id)) != replacedBy.end() &&
                   !isCorrection(*last, *replacement->second)) {
                last = replacement->second;
            }
            found[reading.branch].push_back({reading.id, last->id});
        }
    }
    return found;
}

bool isSameValue(const Reading* before, const Reading* after) {
    if (before == nullptr || after == nullptr) {
        return before == after;
    }
    return before->dp == after->dp && before->flow == after->flow &&
           before->cannotBeRead == after->cannotBeRead;
}

bool isOtherInstrument(const Reading* before, const Reading* after) {
    return before != nullptr && after != nullptr && before->instrument != after->instrument;
}

bool isRemarkNew(const Reading* before, const Reading* after) {
    const auto isNew = [&](std::string Reading::*text) {
        return after != nullptr && !(after->*text).empty() &&
               (before == nullptr || before->*text != after->*text);
    };
    return isNew(&Reading::note) || isNew(&Reading::reason);
}

/// Of target by what was read in the round itself.
std::optional<Ratio> ofTarget(const Reading* reading, const BranchResult& result) {
    return reading != nullptr && !result.isFromEarlierRound ? result.ofTarget : std::nullopt;
}

/// The state by what was read in the round itself.
State stateRead(const BranchResult& result) {
    return result.isFromEarlierRound ? State::NotRead : result.state;
}

/// What a row is sorted by, largest first; negative: it has no such value.
double sortedBy(const ComparedBranch& row, ComparisonOrder order) {
    if (!row.ofTargetAfter) {
        return -1;
    }
    if (order == ComparisonOrder::FarthestFromTarget) {
        return std::abs(row.ofTargetAfter->si() - 1);
    }
    return row.ofTargetBefore ? std::abs(row.ofTargetAfter->si() - row.ofTargetBefore->si()) : -1;
}

}  // namespace

bool isCorrection(const Reading& earlier, const Reading& later) {
    const bool isSameAct = isSameValue(&earlier, &later) && earlier.setting == later.setting &&
                           !isOtherInstrument(&earlier, &later) && earlier.person == later.person &&
                           earlier.time == later.time;
    if (isSameAct) {
        return false;
    }
    return hasContent(earlier) || (earlier.setting && later.setting && earlier.setting != later.setting);
}

std::size_t correctionCount(const Project& project, const Id& round) {
    std::size_t count = 0;
    for (const auto& [branch, corrections] : correctionsOf(project, round)) {
        count += corrections.size();
    }
    return count;
}

std::vector<ComparedBranch> compareRounds(const Project& project, const Assessment& before,
                                          const Assessment& after) {
    auto corrections = correctionsOf(project, *after.round);
    const std::vector<const Reading*> thens = countingReadings(project, *before.round);
    const std::vector<const Reading*> nows = countingReadings(project, *after.round);
    std::vector<ComparedBranch> rows;
    for (const std::size_t index : project.tree().walkingOrder()) {
        ComparedBranch row;
        row.branch = project.branches()[index].id;
        const Reading* then = thens[index];
        const Reading* now = nows[index];
        if (const auto found = corrections.find(row.branch); found != corrections.end()) {
            row.corrections = std::move(found->second);
        }
        if (then == nullptr && now == nullptr && row.corrections.empty()) {
            continue;
        }
        const BranchResult& old = before.branches[index];
        const BranchResult& fresh = after.branches[index];
        row.readingBefore = then != nullptr ? std::optional(then->id) : std::nullopt;
        row.readingAfter = now != nullptr ? std::optional(now->id) : std::nullopt;
        row.settingBefore = old.setting;
        row.settingAfter = fresh.setting;
        row.ofTargetBefore = ofTarget(then, old);
        row.ofTargetAfter = ofTarget(now, fresh);
        row.stateBefore = stateRead(old);
        row.stateAfter = stateRead(fresh);
        row.isSettingChanged = old.setting != fresh.setting;
        row.isDpChanged = !isSameValue(then, now);
        row.isStateChanged = row.stateBefore != row.stateAfter;
        row.isInstrumentChanged = isOtherInstrument(then, now);
        row.isRemarked = isRemarkNew(then, now);
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<ComparedBranch> inOrder(std::vector<ComparedBranch> rows, ComparisonOrder order) {
    if (order != ComparisonOrder::AlongRoute) {
        std::stable_sort(rows.begin(), rows.end(), [order](const auto& left, const auto& right) {
            return sortedBy(left, order) > sortedBy(right, order);
        });
    }
    return rows;
}

}  // namespace ww::balancing
