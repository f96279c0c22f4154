#include "core/balancing/index_proof.h"

#include "core/balancing/detail/round_numbers.h"
#include "core/balancing/index_rivals.h"

namespace ww::balancing {

namespace {

bool isReadable(const project::Project& project, const BranchResult& terminal) {
    const auto& id = project.branches()[terminal.branch].valve;
    const project::ValveModel* valve = id ? project.valves().find(*id) : nullptr;
    return terminal.dp && (valve == nullptr || !valve->minimumDp || *terminal.dp >= valve->minimumDp->value);
}

}  // namespace

IndexProof indexProof(const project::Project& project, const Assessment& assessment) {
    IndexProof proof;
    const IndexCircuit& index = assessment.index;
    if (!index.terminal) {
        return proof;
    }
    proof.isKnown = true;
    for (const std::size_t branch : index.path) {
        if (!detail::isUnthrottled(project, assessment.branches[branch])) {
            proof.notOpen.push_back(branch);
        }
    }
    proof.isReadable = isReadable(project, assessment.branches[*index.terminal]);
    proof.rivals = indexRivals(assessment.branches, index);
    return proof;
}

}  // namespace ww::balancing
