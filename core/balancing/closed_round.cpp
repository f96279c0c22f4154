#include "core/balancing/closed_round.h"

#include "core/balancing/assess.h"
#include "core/balancing/history.h"
#include "core/balancing/index_proof.h"
#include "core/balancing/share_count.h"

namespace ww::balancing {

namespace {

/// The last round before this one that was read as the loop stood.
const project::Round* walkedRoundBefore(const project::Project& project, int number) {
    const project::Round* found = nullptr;
    for (const std::size_t index : project.roundsByNumber()) {
        const project::Round& round = project.rounds()[index];
        if (round.number < number && round.kind != project::RoundKind::Witness &&
            !isReadValveByValve(project, round)) {
            found = &round;
        }
    }
    return found;
}

}  // namespace

std::optional<base::Fault> closedRoundNote(const project::Project& project, const Assessment& closed) {
    if (!closed.round || closed.kind == project::RoundKind::Witness) {
        return std::nullopt;
    }
    const std::string number = std::to_string(closed.roundNumber);
    const bool isTurned = isReadValveByValve(project, project.rounds().at(*closed.round));
    if (const project::Round* before = walkedRoundBefore(project, closed.roundNumber)) {
        const auto was = assess(project, before->id).index.terminal;
        const auto is = closed.index.terminal;
        if (was && is && was != is) {
            return base::Fault{isTurned ? &kTurnedRoundMovedIndex : &kIndexMoved,
                               "",
                               {number, project.branches()[*was].tag, project.branches()[*is].tag}};
        }
    }
    const ShareCount count = shareCount(closed);
    if (isTurned && count.onShare && *count.onShare < count.all) {
        return base::Fault{&kTurnedRoundClosed, "", {number}};
    }
    if (closed.kind != project::RoundKind::Final || !count.onShare) {
        return std::nullopt;
    }
    const base::MessageForm* next = *count.onShare < count.all               ? &kFinalOffShare
                                    : indexProof(project, closed).isProved() ? &kFinalProved
                                                                             : &kFinalNotProved;
    return base::Fault{next, "", {number, std::to_string(*count.onShare), std::to_string(count.all)}};
}

}  // namespace ww::balancing
