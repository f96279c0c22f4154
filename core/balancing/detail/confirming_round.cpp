#include "core/balancing/detail/confirming_round.h"

#include <algorithm>
#include <cmath>

namespace ww::balancing::detail {

std::optional<RoundNumbers> confirmingRound(const project::Project& project, const LearnedLoop& learned,
                                            std::span<const std::size_t> terminals) {
    const project::Round* round = project.lastRound();
    if (round == nullptr || !learned.doubtful.empty() || terminals.empty()) {
        return std::nullopt;
    }
    std::vector<bool> isReadNow(project.branches().size(), false);
    for (const TakenReading& taken : learned.history.readings) {
        if (taken.movesBefore == learned.history.moves.size()) {
            isReadNow[project.branches().indexOf(project.readings().at(taken.reading).branch)] = true;
        }
    }
    RoundNumbers numbers = roundNumbers(project, round, LookBack::ToFillGaps);
    const double band = project.job().matchingBand.value.si();
    const bool isWithin = std::all_of(terminals.begin(), terminals.end(), [&](std::size_t terminal) {
        const auto& share = numbers.branches[terminal].ofTarget;
        return isReadNow[terminal] && share && std::abs(share->si() - 1) <= band;
    });
    return isWithin ? std::optional(std::move(numbers)) : std::nullopt;
}

}  // namespace ww::balancing::detail
