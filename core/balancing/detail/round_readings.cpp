#include "core/balancing/detail/round_readings.h"

#include <algorithm>
#include <cmath>
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

/// The branches that still wish for something, and what one earlier round says about them.
class Asking {
  public:
    Asking(const Project& project, std::vector<Wish> wishes)
        : m_project(project), m_wishes(std::move(wishes)) {
        for (std::size_t i = 0; i < m_wishes.size(); ++i) {
            if (m_wishes[i].reading || m_wishes[i].setting) {
                m_open.push_back(i);
            }
        }
        m_then.resize(m_open.empty() ? 0 : m_wishes.size());
    }
    bool isDone() const { return m_open.empty(); }

    void ask(std::size_t roundIndex, std::vector<EarlierReading>& out) {
        collect(m_project.rounds()[roundIndex].id);
        std::erase_if(m_open, [&](std::size_t branch) {
            answer(m_wishes[branch], m_then[branch], roundIndex, out[branch]);
            m_then[branch] = {};
            return !m_wishes[branch].reading && !m_wishes[branch].setting;
        });
    }

  private:
    /// Fills m_then for the branches that ask. Few of many are looked up in a table of their own, which stays
    /// in the processor's cache while the readings of many rounds go by.
    void collect(const base::Id& round) {
        constexpr std::size_t kFew = 8;
        const auto& branches = m_project.branches();
        const bool areFew = m_open.size() * kFew < branches.size();
        std::unordered_map<base::Id, std::size_t> asking;
        for (std::size_t i = 0; areFew && i < m_open.size(); ++i) {
            asking.emplace(branches[m_open[i]].id, m_open[i]);
        }
        for (const std::size_t index : m_project.readingsOf(round)) {
            const Reading& reading = m_project.readings()[index];
            if (areFew) {
                const auto found = asking.find(reading.branch);
                if (found != asking.end() && isCounted(reading)) {
                    take(m_then[found->second], reading);
                }
            } else if (isCounted(reading)) {
                if (const auto branch = branches.findIndex(reading.branch)) {
                    take(m_then[*branch], reading);
                }
            }
        }
    }

    static void answer(Wish& wish, const BranchReadings& then, std::size_t roundIndex, EarlierReading& out) {
        if (wish.reading && then.hasValue()) {
            wish.reading = false;
            out.readings = then;
            out.round = roundIndex;
            if (then.setAt != nullptr) {
                out.readAtSetting = Setting::si(then.setAt->setting->value());
            }
        }
        if (wish.setting && then.standing != nullptr) {
            wish.setting = false;
            out.settingBefore = then.standing->setting;
        }
    }

    const Project& m_project;
    std::vector<Wish> m_wishes;
    std::vector<BranchReadings> m_then;
    std::vector<std::size_t> m_open;
};

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
        if (!isCounted(reading)) {
            continue;
        }
        if (const auto branch = branches.findIndex(reading.branch)) {
            take(out[*branch], reading);
        }
    }
    return out;
}

std::vector<EarlierReading> earlierReadings(const Project& project, const project::Round& round,
                                            const std::vector<BranchReadings>& now, LookBack lookBack) {
    const std::size_t count = now.size();
    std::vector<EarlierReading> out(count);
    std::vector<Wish> wishes(count);
    for (std::size_t i = 0; i < count; ++i) {
        const bool isRead = now[i].hasValue();
        wishes[i].reading = isRead ? now[i].dpCount > 0 && lookBack != LookBack::ForSettings
                                   : lookBack == LookBack::ToFillGaps;
        wishes[i].setting =
            project.branches()[i].valve && (isRead ? now[i].setAt : now[i].standing) == nullptr;
    }
    Asking asking(project, std::move(wishes));
    const auto order = project.roundsByNumber();
    for (auto at = order.rbegin(); at != order.rend() && !asking.isDone(); ++at) {
        if (project.rounds()[*at].number < round.number) {
            asking.ask(*at, out);
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
