#include "core/balancing/stale_reference.h"

#include <algorithm>
#include <cmath>

#include "core/balancing/detail/branch_flow.h"
#include "core/balancing/detail/wording.h"
#include "core/base/age.h"

namespace ww::balancing {

namespace {

using project::Project;
using project::Reading;

/// Of design, from a reading at the setting that stood when it was taken.
std::optional<double> ofDesignRatio(const Project& project, const History& history, std::size_t branch,
                                    const TakenReading& taken, double design_m3s) {
    const Reading& reading = project.readings().at(taken.reading);
    if (design_m3s <= 0) {
        return std::nullopt;
    }
    detail::BranchReadings counting;
    counting.counting = &reading;
    if (reading.dp) {
        counting.dpCount = 1;
        counting.dpMean = counting.dpLow = counting.dpHigh = reading.dp->value;
    }
    const LoopState state = stateAfter(project, history, taken.movesBefore);
    const auto at = state.settings.find(reading.branch);
    const auto flow =
        detail::branchFlow(project, project.branches()[branch], counting,
                           at == state.settings.end() ? std::nullopt : std::optional(at->second));
    return flow.flow ? std::optional(flow.flow->si() / design_m3s) : std::nullopt;
}

/// Whether a move of one branch changes what another gets relative to its neighbours: it stands in the same
/// group, or in the group of a branch above, or the pump changed.
bool concerns(const project::BranchTree& tree, const Move& move, std::size_t reference) {
    if (!move.branch) {
        return true;
    }
    for (std::size_t at = reference; at != project::BranchTree::kNone; at = tree.parent(at)) {
        if (*move.branch != at && tree.parent(*move.branch) == tree.parent(at)) {
            return true;
        }
    }
    return false;
}

}  // namespace

std::vector<base::Fault> staleReference(const Project& project, const History& history, std::size_t reference,
                                        std::optional<base::Instant> now, quantity::Duration limit) {
    const project::Branch& branch = project.branches()[reference];
    const TakenReading* last = nullptr;
    const TakenReading* before = nullptr;
    for (auto taken = history.readings.rbegin(); taken != history.readings.rend() && before == nullptr;
         ++taken) {
        if (project.readings().at(taken->reading).branch == branch.id && !taken->isShutForMoment) {
            (last == nullptr ? last : before) = &*taken;
        }
    }
    if (last == nullptr) {
        return {{&kReferenceUnread, branch.tag, {}}};
    }
    std::vector<base::Fault> found;
    const Reading& reading = project.readings().at(last->reading);
    if (now && reading.time) {
        const std::int64_t age_s = now->seconds - reading.time->seconds;
        if (static_cast<double>(age_s) > limit.si()) {
            found.push_back({&kReferenceOld,
                             branch.tag,
                             {base::agoText(age_s), base::ageText(std::llround(limit.si()))}});
        }
    }
    const auto mover = std::find_if(
        history.moves.begin() + static_cast<std::ptrdiff_t>(last->movesBefore), history.moves.end(),
        [&](const Move& move) { return move.branch && concerns(project.tree(), move, reference); });
    if (mover != history.moves.end()) {
        found.push_back({mover->isJoining ? &kReferenceJoinedOver : &kReferenceMovedOver,
                         branch.tag,
                         {project.branches()[*mover->branch].tag}});
    }
    if (before != nullptr) {
        const double design_m3s = project::designFlows(project)[reference].si();
        const auto then = ofDesignRatio(project, history, reference, *before, design_m3s);
        const auto present = ofDesignRatio(project, history, reference, *last, design_m3s);
        const Ratio band = project.job().matchingBand.value;
        const bool isOwnMove =
            std::any_of(history.moves.begin() + static_cast<std::ptrdiff_t>(before->movesBefore),
                        history.moves.begin() + static_cast<std::ptrdiff_t>(last->movesBefore),
                        [&](const Move& move) { return move.branch == reference; });
        if (then && present && *then > 0 && !isOwnMove && std::abs(*present / *then - 1) > band.si()) {
            found.push_back({&kReferenceDrifted,
                             branch.tag,
                             {detail::percentText(Ratio::si(*then)), detail::percentText(Ratio::si(*present)),
                              detail::percentText(band)}});
        }
    }
    return found;
}

}  // namespace ww::balancing
