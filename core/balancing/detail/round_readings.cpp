#include "core/balancing/detail/round_readings.h"

#include <algorithm>
#include <cmath>

namespace ww::balancing::detail {

namespace {

using project::Branch;
using project::Project;
using project::Reading;

void take(BranchReadings& branch, const Reading& reading) {
    if (reading.setting) {
        branch.standing = &reading;
    }
    if (!reading.dp && !reading.flow && !reading.cannotBeRead) {
        return;
    }
    const bool repeats = reading.isRepeat && reading.dp && branch.dpCount > 0;
    branch.counting = &reading;
    branch.setAt = branch.standing;
    if (!reading.dp) {
        branch.dpCount = 0;
        return;
    }
    const PressureDifference dp = reading.dp->value;
    if (!repeats) {
        branch.dpCount = 1;
        branch.dpMean = branch.dpLow = branch.dpHigh = dp;
        return;
    }
    const auto before = static_cast<double>(branch.dpCount++);
    branch.dpMean = (branch.dpMean * before + dp) / (before + 1);
    branch.dpLow = std::min(branch.dpLow, dp);
    branch.dpHigh = std::max(branch.dpHigh, dp);
}

/// What a branch still wants to know from earlier rounds.
struct Wish {
    bool reading = false;
    bool setting = false;
};

std::optional<Setting> defaultSetting(const Project& project, const Branch& branch) {
    const curve::ValveCharacteristic* curve = project.characteristicOf(branch);
    if (curve == nullptr) {
        return std::nullopt;
    }
    return branch.setting ? Setting::si(branch.setting->value()) : curve->fullyOpen();
}

std::optional<Setting> settingFrom(const Project& project, const Branch& branch, const Reading* source,
                                   const EarlierReading& earlier) {
    if (source != nullptr && source->setting && branch.valve) {
        return Setting::si(source->setting->value());
    }
    if (earlier.settingBefore && branch.valve) {
        return Setting::si(earlier.settingBefore->value());
    }
    return defaultSetting(project, branch);
}

/// Takes what one earlier round answers; gives the number of wishes that it fulfilled.
std::size_t answer(std::vector<Wish>& wishes, std::vector<EarlierReading>& out, const Project& project,
                   std::size_t roundIndex) {
    std::size_t fulfilled = 0;
    const auto then = readingsByBranch(project, project.rounds()[roundIndex].id);
    for (std::size_t i = 0; i < wishes.size(); ++i) {
        if (wishes[i].reading && then[i].hasValue()) {
            wishes[i].reading = false;
            ++fulfilled;
            out[i].readings = then[i];
            out[i].round = roundIndex;
            if (then[i].setAt != nullptr) {
                out[i].readAtSetting = Setting::si(then[i].setAt->setting->value());
            }
        }
        if (wishes[i].setting && then[i].standing != nullptr) {
            wishes[i].setting = false;
            ++fulfilled;
            out[i].settingBefore = then[i].standing->setting;
        }
    }
    return fulfilled;
}

}  // namespace

bool isSameSetting(Setting a, Setting b) {
    constexpr double kSamePosition = 1e-6;
    return std::abs(a.si() - b.si()) <= kSamePosition;
}

std::vector<BranchReadings> readingsByBranch(const Project& project, const base::Id& round) {
    const auto& branches = project.branches();
    std::vector<BranchReadings> out(branches.size());
    for (const std::size_t index : project.readingsOf(round)) {
        const Reading& reading = project.readings()[index];
        if (reading.status != project::ReadingStatus::Standing) {
            continue;
        }
        if (const Branch* branch = branches.find(reading.branch)) {
            take(out[static_cast<std::size_t>(branch - &branches[0])], reading);
        }
    }
    return out;
}

std::vector<EarlierReading> earlierReadings(const Project& project, const project::Round& round,
                                            const std::vector<BranchReadings>& now, bool fillGaps) {
    const std::size_t count = now.size();
    std::vector<EarlierReading> out(count);
    std::vector<Wish> wishes(count);
    std::size_t open = 0;
    for (std::size_t i = 0; i < count; ++i) {
        const bool isRead = now[i].hasValue();
        wishes[i].reading = isRead ? now[i].dpCount > 0 : fillGaps;
        wishes[i].setting =
            project.branches()[i].valve && (isRead ? now[i].setAt : now[i].standing) == nullptr;
        open += (wishes[i].reading ? 1U : 0U) + (wishes[i].setting ? 1U : 0U);
    }
    const auto order = project.roundsByNumber();
    for (auto at = order.rbegin(); at != order.rend() && open > 0; ++at) {
        if (project.rounds()[*at].number < round.number) {
            open -= answer(wishes, out, project, *at);
        }
    }
    for (std::size_t i = 0; i < count; ++i) {
        if (out[i].readings.counting != nullptr && !out[i].readAtSetting) {
            // Read without saying where the valve stood: as the branch was found.
            out[i].readAtSetting = defaultSetting(project, project.branches()[i]);
        }
    }
    return out;
}

std::optional<Setting> settingRead(const Project& project, const Branch& branch, const BranchReadings& now,
                                   const EarlierReading& earlier) {
    return settingFrom(project, branch, now.setAt, earlier);
}

std::optional<Setting> settingStanding(const Project& project, const Branch& branch,
                                       const BranchReadings& now, const EarlierReading& earlier) {
    return settingFrom(project, branch, now.standing, earlier);
}

}  // namespace ww::balancing::detail
