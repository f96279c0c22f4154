#include "core/balancing/share_count.h"

#include <algorithm>

namespace ww::balancing {

ShareCount shareCount(const Assessment& round) {
    const auto isJudged = [](const BranchResult& branch) {
        return branch.isTerminal && !branch.isFromEarlierRound &&
               (branch.ofTarget || (branch.isSelfActing && branch.state != State::NotRead));
    };
    ShareCount count{round.terminalCount, round.readCount, {}};
    if (std::any_of(round.branches.begin(), round.branches.end(), isJudged)) {
        count.onShare = round.onShareCount;
    }
    return count;
}

std::size_t doubtfulInTotal(const Assessment& round) {
    return static_cast<std::size_t>(
        std::count_if(round.branches.begin(), round.branches.end(), [](const BranchResult& branch) {
            return branch.isTerminal && branch.flow && branch.state == State::Doubtful &&
                   !branch.isFromEarlierRound;
        }));
}

}  // namespace ww::balancing
