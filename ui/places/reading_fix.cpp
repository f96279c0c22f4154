#include "ui/places/reading_fix.h"

#include <cmath>

#include "core/balancing/adjusting.h"
#include "core/balancing/meant_dp.h"
#include "core/balancing/walk_progress.h"

namespace ww::ui {

std::optional<LearnedFix> learnedFix(const project::Project& project,
                                     const balancing::DoubtfulReading& doubtful) {
    const project::Reading* reading =
        doubtful.readings.empty() ? nullptr : project.readings().find(doubtful.readings.back());
    if (reading == nullptr || !reading->dp || reading->status != project::ReadingStatus::Standing) {
        return std::nullopt;
    }
    LearnedFix fix;
    fix.reading = reading->id;
    if (doubtful.explainedSetting) {
        fix.setting = base::Decimal::parse(quantity::concise(doubtful.explainedSetting->si(), 5)).value();
        return fix;
    }
    if (!doubtful.explainedDp) {
        return std::nullopt;
    }
    // The explanation is one of value; what was typed keeps its digits.
    constexpr double kSameValue = 1e-3;
    const quantity::Density density = project.fluid().density();
    auto typed = *reading->dp;
    std::vector<balancing::MeantDp> meant;
    if (typed.digits.isNegative()) {
        typed = quantity::measuredDifference(base::Decimal::parse(typed.digits.text().substr(1)).value(),
                                             typed.unit, density);
        meant.push_back({typed, false});
    }
    for (balancing::MeantDp& other : balancing::meantDps(typed, density)) {
        meant.push_back(std::move(other));
    }
    for (balancing::MeantDp& other : meant) {
        if (std::abs(other.dp.value / *doubtful.explainedDp - 1) < kSameValue) {
            fix.dp = std::move(other.dp);
            return fix;
        }
    }
    return std::nullopt;
}

base::Outcome takeLearnedFix(WorkbookBridge& bridge, const LearnedFix& fix) {
    const auto made =
        balancing::correctReading(bridge.project(), fix.reading, fix.dp, fix.setting, bridge.context());
    if (!made) {
        return made.fault();
    }
    return bridge.apply(*made);
}

const balancing::DoubtfulReading* doubtfulAt(const LoopAdvisor& advisor, const project::Project& project,
                                             const base::Id& branch) {
    const LoopPicture* picture = advisor.picture();
    if (picture == nullptr || !project.branches().contains(branch)) {
        return nullptr;
    }
    const std::size_t index = project.branches().indexOf(branch);
    for (const balancing::DoubtfulReading& doubtful : picture->learned.doubtful) {
        if (doubtful.branch == index) {
            return &doubtful;
        }
    }
    return nullptr;
}

std::vector<base::Fault> shiftsOf(const LoopAdvisor& advisor, const project::Project& project,
                                  const base::Id& round) {
    std::vector<base::Fault> shifts;
    const LoopPicture* picture = advisor.picture();
    if (picture == nullptr) {
        return shifts;
    }
    for (const balancing::ShiftedRound& shifted : picture->learned.shifted) {
        if (shifted.round < project.rounds().size() && project.rounds()[shifted.round].id == round) {
            shifts.push_back(shifted.why);
        }
    }
    return shifts;
}

std::vector<const balancing::DoubtfulReading*> doubtsOf(const LoopAdvisor& advisor,
                                                        const project::Project& project,
                                                        const base::Id& round) {
    std::vector<const balancing::DoubtfulReading*> doubts;
    const LoopPicture* picture = advisor.picture();
    if (picture == nullptr) {
        return doubts;
    }
    for (const balancing::DoubtfulReading& doubtful : picture->learned.doubtful) {
        const project::Reading* reading =
            doubtful.readings.empty() ? nullptr : project.readings().find(doubtful.readings.back());
        const bool isUnanswered = reading != nullptr && reading->round == round && reading->reason.empty() &&
                                  reading->status == project::ReadingStatus::Standing;
        // Of a branch the first, as in doubtfulAt().
        if (isUnanswered && doubtfulAt(advisor, project, reading->branch) == &doubtful) {
            doubts.push_back(&doubtful);
        }
    }
    if (doubts.empty()) {
        return doubts;
    }
    for (const balancing::Finding& item : balancing::openItems(project, round)) {
        std::erase_if(doubts, [&](const balancing::DoubtfulReading* doubt) {
            return item.branch == project.branches()[doubt->branch].id;
        });
    }
    return doubts;
}

std::optional<base::Outcome> takeFixOf(WorkbookBridge& bridge, const LoopAdvisor& advisor,
                                       const base::Id& branch) {
    if (bridge.offeredFix(branch)) {
        return bridge.takeOfferedFix(branch);
    }
    const balancing::DoubtfulReading* doubtful = doubtfulAt(advisor, bridge.project(), branch);
    const auto fix = doubtful != nullptr ? learnedFix(bridge.project(), *doubtful) : std::nullopt;
    if (!fix) {
        return std::nullopt;
    }
    return takeLearnedFix(bridge, *fix);
}

}  // namespace ww::ui
