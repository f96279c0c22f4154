#include "core/balancing/detail/round_readings.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <unordered_map>

namespace ww::balancing::detail {

namespace {

using project::Branch;
using project::Project;
using project::Reading;

/// A valve shut for a moment shows the head available there: neither a flow nor where the valve stands.
bool isCounted(const Reading& reading) {
    return reading.status == project::ReadingStatus::Standing &&
           reading.purpose != project::ReadingPurpose::ShutValve;
}

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
    bool readAt = false;  ///< where the valve stood when that reading was taken
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

/// Some branches by their ids. Few of many are looked up in a table of their own, which stays in the
/// processor's cache while the readings of many rounds go by.
class BranchFinder {
  public:
    BranchFinder(const Project& project, std::span<const std::size_t> branches) : m_project(project) {
        constexpr std::size_t kFew = 8;
        const bool areFew = branches.size() * kFew < project.branches().size();
        if (!areFew) {
            m_places.resize(project.branches().size());
        }
        for (std::size_t place = 0; place < branches.size(); ++place) {
            if (areFew) {
                m_few.emplace(project.branches()[branches[place]].id, place);
            } else {
                m_places[branches[place]] = place;
            }
        }
    }
    /// Its place among them; nothing where it is none of them.
    std::optional<std::size_t> placeOf(const base::Id& branch) const {
        if (m_places.empty()) {
            const auto found = m_few.find(branch);
            return found != m_few.end() ? std::optional(found->second) : std::nullopt;
        }
        const auto index = m_project.branches().findIndex(branch);
        return index ? m_places[*index] : std::nullopt;
    }

  private:
    const Project& m_project;
    std::unordered_map<base::Id, std::size_t> m_few;
    std::vector<std::optional<std::size_t>> m_places;  ///< by branch, where they are many; else empty
};

/// The branches that still wish for something, and what one earlier round says about them.
class Asking {
  public:
    Asking(const Project& project, std::span<const std::size_t> branches) : m_project(project) {
        m_open.reserve(branches.size());
    }
    void add(std::size_t branch, Wish wish) {
        if (wish.reading || wish.setting) {
            m_open.push_back({branch, wish, {}});
        }
    }
    bool isDone() const { return m_open.empty(); }

    void ask(std::size_t roundIndex, std::vector<EarlierReading>& out) {
        collect(m_project.rounds()[roundIndex].id);
        std::erase_if(m_open, [&](Open& open) {
            answer(open, roundIndex, out[open.branch]);
            open.then = {};
            return !open.wish.reading && !open.wish.readAt && !open.wish.setting;
        });
    }

  private:
    struct Open {
        std::size_t branch = 0;
        Wish wish;
        BranchReadings then;
    };

    void collect(const base::Id& round) {
        std::vector<std::size_t> branches;
        for (const Open& open : m_open) {
            branches.push_back(open.branch);
        }
        const BranchFinder finder(m_project, branches);
        for (const std::size_t index : m_project.readingsOf(round)) {
            const Reading& reading = m_project.readings()[index];
            const auto place = finder.placeOf(reading.branch);
            if (place && isCounted(reading)) {
                take(m_open[*place].then, reading);
            }
        }
    }

    static void answer(Open& open, std::size_t roundIndex, EarlierReading& out) {
        if (open.wish.reading && open.then.hasValue()) {
            open.wish.reading = false;
            out.readings = open.then;
            out.round = roundIndex;
            if (open.then.setAt != nullptr) {
                out.readAtSetting = Setting::si(open.then.setAt->setting->value());
            } else {
                // Read without saying where the valve stood: where the rounds before left it.
                open.wish.readAt = true;
            }
        } else if (open.wish.readAt && open.then.standing != nullptr) {
            open.wish.readAt = false;
            out.readAtSetting = Setting::si(open.then.standing->setting->value());
        }
        if (open.wish.setting && open.then.standing != nullptr) {
            open.wish.setting = false;
            out.settingBefore = open.then.standing->setting;
        }
    }

    const Project& m_project;
    std::vector<Open> m_open;
};

std::vector<std::size_t> everyBranch(const Project& project) {
    std::vector<std::size_t> all(project.branches().size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    return all;
}

}  // namespace

bool isSameSetting(Setting a, Setting b) {
    constexpr double kSamePosition = 1e-6;
    return std::abs(a.si() - b.si()) <= kSamePosition;
}

std::vector<BranchReadings> readingsByBranch(const Project& project, const base::Id& round) {
    std::vector<BranchReadings> out(project.branches().size());
    readAgain(project, round, everyBranch(project), out);
    return out;
}

void readAgain(const Project& project, const base::Id& round, std::span<const std::size_t> branches,
               std::vector<BranchReadings>& out) {
    if (branches.empty()) {
        return;
    }
    for (const std::size_t branch : branches) {
        out[branch] = {};
    }
    const BranchFinder finder(project, branches);
    for (const std::size_t index : project.readingsOf(round)) {
        const Reading& reading = project.readings()[index];
        const auto place = finder.placeOf(reading.branch);
        if (place && isCounted(reading)) {
            take(out[branches[*place]], reading);
        }
    }
}

std::vector<EarlierReading> earlierReadings(const Project& project, const project::Round& round,
                                            const std::vector<BranchReadings>& now, LookBack lookBack) {
    std::vector<EarlierReading> out(now.size());
    lookBackAgain(project, round, now, lookBack, everyBranch(project), out);
    return out;
}

void lookBackAgain(const Project& project, const project::Round& round,
                   const std::vector<BranchReadings>& now, LookBack lookBack,
                   std::span<const std::size_t> branches, std::vector<EarlierReading>& out) {
    Asking asking(project, branches);
    for (const std::size_t branch : branches) {
        out[branch] = {};
        const BranchReadings& readings = now[branch];
        const bool isRead = readings.hasValue();
        asking.add(branch, {.reading = isRead ? readings.dpCount > 0 && lookBack != LookBack::ForSettings
                                              : lookBack == LookBack::ToFillGaps,
                            .setting = project.branches()[branch].valve &&
                                       (isRead ? readings.setAt : readings.standing) == nullptr});
    }
    const auto order = project.roundsByNumber();
    for (auto at = order.rbegin(); at != order.rend() && !asking.isDone(); ++at) {
        if (project.rounds()[*at].number < round.number) {
            asking.ask(*at, out);
        }
    }
    for (const std::size_t branch : branches) {
        if (out[branch].readings.counting != nullptr && !out[branch].readAtSetting) {
            // No round says where the valve stood: as the branch was found.
            out[branch].readAtSetting = defaultSetting(project, project.branches()[branch]);
        }
    }
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
