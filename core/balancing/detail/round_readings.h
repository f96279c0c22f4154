// Which readings of a round count, branch by branch, and which reading of an earlier round stands behind
// them. Not for what they mean (branch_flow.h).
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/project/project.h"

namespace ww::balancing::detail {

using quantity::PressureDifference;
using quantity::Ratio;
using quantity::Setting;

/// What was read at one branch in one round. Pointers go into the project's table of readings.
struct BranchReadings {
    const project::Reading* counting = nullptr;  ///< newest standing one with a value, or "cannot be read"
    const project::Reading* setAt = nullptr;     ///< gives the setting of the counting reading, in this round
    const project::Reading* standing = nullptr;  ///< gives the setting that stands at the end of the round
    std::size_t dpCount = 0;                     ///< the counting dp and those it repeats
    PressureDifference dpMean;
    PressureDifference dpLow;
    PressureDifference dpHigh;

    bool hasValue() const { return counting != nullptr && (counting->dp || counting->flow); }
    std::optional<PressureDifference> dp() const {
        return dpCount > 0 ? std::optional(dpMean) : std::nullopt;
    }
};

/// The readings of one round by branch (index into Project::branches()). Readings of a shut valve are left
/// out: they are no flow and change no setting.
std::vector<BranchReadings> readingsByBranch(const project::Project& project, const base::Id& round);
/// The same anew for some branches of `out`.
void readAgain(const project::Project& project, const base::Id& round, std::span<const std::size_t> branches,
               std::vector<BranchReadings>& out);

/// What earlier rounds say about a branch: the newest reading with a value, and the newest setting.
struct EarlierReading {
    BranchReadings readings;                     ///< of that round; counting is null where there is none
    std::optional<Setting> readAtSetting;        ///< the setting of that reading
    std::optional<base::Decimal> settingBefore;  ///< the newest setting of the earlier rounds, as entered
    std::size_t round = 0;                       ///< index into Project::rounds()
};

/// What a round asks of the earlier ones; each asks for what stands before it as well.
enum class LookBack {
    ForSettings,  ///< settings of branches that name none now
    ToCompare,    ///< readings of branches that were read now
    ToFillGaps,   ///< readings of branches that were not read now
};

/// Looks back from a round, newest first, only as far as some branch asks for it.
std::vector<EarlierReading> earlierReadings(const project::Project& project, const project::Round& round,
                                            const std::vector<BranchReadings>& now, LookBack lookBack);
/// The same anew for some branches of `out`.
void lookBackAgain(const project::Project& project, const project::Round& round,
                   const std::vector<BranchReadings>& now, LookBack lookBack,
                   std::span<const std::size_t> branches, std::vector<EarlierReading>& out);

/// The setting at which a branch was read: of its reading, else as before in the round, else of earlier
/// rounds, else the branch's own, else fully open; nothing for a branch without a usable valve table.
std::optional<Setting> settingRead(const project::Project& project, const project::Branch& branch,
                                   const BranchReadings& now, const EarlierReading& earlier);
/// The setting that stands at the end of the round; the same order.
std::optional<Setting> settingStanding(const project::Project& project, const project::Branch& branch,
                                       const BranchReadings& now, const EarlierReading& earlier);

/// Whether two settings are the same position on a scale.
bool isSameSetting(Setting a, Setting b);

}  // namespace ww::balancing::detail
