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

}  // namespace ww::balancing
