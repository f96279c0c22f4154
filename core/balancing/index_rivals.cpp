#include "core/balancing/index_rivals.h"

#include <cmath>

namespace ww::balancing {

std::vector<std::size_t> indexRivals(std::span<const BranchResult> branches, const IndexCircuit& index) {
    std::vector<std::size_t> rivals;
    if (!index.terminal || !branches[*index.terminal].ofDesign) {
        return rivals;
    }
    const Ratio least = *branches[*index.terminal].ofDesign;
    for (const BranchResult& result : branches) {
        const bool isCandidate =
            result.isTerminal && !result.isSelfActing && result.branch != *index.terminal;
        if (isCandidate && result.isFullyOpen && result.ofDesign && *result.ofDesign < least) {
            rivals.push_back(result.branch);
        }
    }
    return rivals;
}

Ratio distanceUncertainty(const BranchResult& rival, const BranchResult& index) {
    const auto ofDesign = [](const BranchResult& branch) {
        return branch.readingUncertainty->si() / branch.designFlow.si();
    };
    return Ratio::si(std::hypot(ofDesign(rival), ofDesign(index)));
}

bool isSurelyLess(const BranchResult& rival, const BranchResult& index) {
    return index.ofDesign->si() - rival.ofDesign->si() > distanceUncertainty(rival, index).si();
}

}  // namespace ww::balancing
