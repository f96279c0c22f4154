#include "core/pump_room/decision_notes.h"

#include <algorithm>
#include <cmath>

#include "core/balancing/index_proof.h"
#include "core/balancing/share_count.h"
#include "core/base/term.h"

namespace ww::pump_room {

bool canBeTold(Head difference, const RequiredHead& required) {
    constexpr double kLeastShare = 0.02;
    const Head least = std::max(required.uncertainty.value_or(Head{}), required.head * kLeastShare);
    return std::abs(difference.si()) > least.si();
}

std::optional<base::Fault> firstLook(const project::Project& project, const balancing::Assessment& round) {
    const balancing::ShareCount count = balancing::shareCount(round);
    if (!round.round || !count.onShare) {
        return std::nullopt;
    }
    const bool isBalanced = round.verdict == balancing::Verdict::Accepted || *count.onShare == count.all;
    const bool isProved = balancing::indexProof(project, round).isProved();
    if (isBalanced && isProved) {
        return std::nullopt;
    }
    return base::Fault{
        &kFirstLook,
        "",
        {std::to_string(round.roundNumber), std::to_string(*count.onShare), std::to_string(count.all),
         isProved ? base::term("proved") : base::term("not proved")}};
}

}  // namespace ww::pump_room
