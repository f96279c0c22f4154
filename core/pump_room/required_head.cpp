#include "core/pump_room/required_head.h"

#include <algorithm>
#include <cmath>

#include "core/balancing/advice/proportional_balance.h"
#include "core/balancing/assess.h"
#include "core/balancing/system_curve.h"

namespace ww::pump_room {

namespace {

using balancing::Assessment;
using project::Project;

std::optional<RequiredHead> fromLosses(const Project& project, const balancing::Resistances& resistances,
                                       HeadSource source) {
    const auto found = balancing::proportionalBalance(project, balancing::LoopState{}, resistances);
    if (!found.balance || found.balance->neededAtDesign.si() <= 0) {
        return std::nullopt;
    }
    RequiredHead required;
    required.source = source;
    required.head = project.fluid().head(found.balance->neededAtDesign);
    required.indexPath = found.balance->indexPath;
    return required;
}

bool isInProportion(const Project& project, const Assessment& picture) {
    const double band = project.job().matchingBand.value.si();
    return picture.isComplete && picture.totalFlow && picture.totalDesign.si() > 0 &&
           std::all_of(picture.branches.begin(), picture.branches.end(), [&](const auto& branch) {
               return !branch.isTerminal ||
                      (branch.ofTarget && std::abs(branch.ofTarget->si() - 1) <= band * (1 + 1e-9));
           });
}

/// Whether a pump's discharge valve was known to be throttled in this round.
bool isThrottled(const Project& project, const base::Id& round) {
    const auto& indices = project.pumpReadingsOf(round);
    return std::any_of(indices.begin(), indices.end(), [&](std::size_t index) {
        const project::PumpReading& reading = project.pumpReadings()[index];
        const bool stands = reading.status == project::ReadingStatus::Standing;
        return stands && (reading.point == project::PumpPoint::ThrottledToDesign ||
                          (reading.throttle && reading.throttle->value() < 100));
    });
}

std::optional<RequiredHead> measured(const Project& project, quantity::Ratio headFactor) {
    const auto order = project.roundsByNumber();
    for (auto at = order.rbegin(); at != order.rend(); ++at) {
        const project::Round& round = project.rounds()[*at];
        balancing::AssessOptions options;
        options.numbersOnly = true;
        options.byDesignOfToday = true;
        const Assessment picture = balancing::assess(project, round.id, options);
        if (!isInProportion(project, picture) || isThrottled(project, round.id)) {
            continue;
        }
        const auto duty = balancing::systemCurve(project, picture, headFactor);
        if (!duty) {
            continue;
        }
        RequiredHead required;
        required.source = HeadSource::Measured;
        required.head = duty->at(picture.totalDesign);
        required.roundNumber = round.number;
        required.indexPath = picture.index.path;
        if (duty->headUncertainty && duty->flowUncertainty) {
            const double ofHead = *duty->headUncertainty / duty->head;
            const double ofFlow = 2 * (*duty->flowUncertainty / duty->flow);
            required.uncertainty = required.head * std::hypot(ofHead, ofFlow);
        }
        return required;
    }
    return std::nullopt;
}

}  // namespace

std::vector<RequiredHead> requiredHeads(const Project& project, const balancing::Resistances& learned,
                                        quantity::Ratio headFactor) {
    std::vector<RequiredHead> heads;
    const auto add = [&](std::optional<RequiredHead> head) {
        if (head) {
            heads.push_back(std::move(*head));
        }
    };
    add(fromLosses(project, {}, HeadSource::Design));
    if (!learned.empty()) {
        add(fromLosses(project, learned, HeadSource::Learned));
    }
    add(measured(project, headFactor));
    return heads;
}

}  // namespace ww::pump_room
