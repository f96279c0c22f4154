#include "core/balancing/available_head.h"

#include <algorithm>

#include "core/balancing/adjusting.h"
#include "core/balancing/prediction.h"

namespace ww::balancing {

namespace {

using project::Project;
using project::Reading;

/// Whether another valve was tried after this reading, in its round.
bool isOtherTurnedSince(const Project& project, const Reading& shut) {
    const auto& indices = project.readingsOf(shut.round);
    return std::any_of(indices.begin(), indices.end(), [&](std::size_t index) {
        const Reading& reading = project.readings()[index];
        const bool isTry = reading.purpose == project::ReadingPurpose::Try ||
                           reading.purpose == project::ReadingPurpose::Hold;
        return isTry && reading.status == project::ReadingStatus::Standing && reading.branch != shut.branch &&
               reading.sequence > shut.sequence;
    });
}

std::optional<PressureDifference> headOfLearned(const Project& project, std::size_t branch,
                                                const LearnedLoop& learned) {
    if (learned.fits == nullptr) {
        return std::nullopt;
    }
    LoopState state = learned.present;
    state.closed.push_back(project.branches()[branch].id);
    const PredictionResult shut = predict(project, state, learned.resistances);
    return shut.prediction ? shut.prediction->branches[branch].valveDrop : std::nullopt;
}

}  // namespace

std::optional<AvailableHead> availableHead(const Project& project, std::size_t branch,
                                           const std::vector<AimTry>& tries, const LearnedLoop* learned) {
    const Reading* shut = shutReading(project, project.branches()[branch].id);
    if (shut != nullptr && !isOtherTurnedSince(project, *shut)) {
        return AvailableHead{shut->dp->value, HeadSource::ShutValve};
    }
    if (const auto found = branchCharacteristic(project, branch, tries, learned)) {
        return AvailableHead{found->available, HeadSource::Tries};
    }
    const auto head = learned != nullptr ? headOfLearned(project, branch, *learned) : std::nullopt;
    return head ? std::optional(AvailableHead{*head, HeadSource::Learned}) : std::nullopt;
}

bool isBeyond(const AvailableHead& available, const AimRow& row) {
    return row.low > available.head;
}

}  // namespace ww::balancing
