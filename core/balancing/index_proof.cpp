#include "core/balancing/index_proof.h"

#include "core/balancing/detail/branch_flow.h"
#include "core/balancing/detail/round_numbers.h"
#include "core/balancing/index_rivals.h"

namespace ww::balancing {

namespace {

void judgeReadable(const project::Project& project, const BranchResult& terminal, IndexProof& proof) {
    if (!terminal.dp) {
        return;
    }
    const auto& id = project.branches()[terminal.branch].valve;
    const project::ValveModel* valve = id ? project.valves().find(*id) : nullptr;
    const project::Reading* reading = terminal.reading ? project.readings().find(*terminal.reading) : nullptr;
    const project::Instrument* meter = reading != nullptr && reading->instrument
                                           ? project.instruments().find(*reading->instrument)
                                           : nullptr;
    const PressureDifference minimum =
        detail::readableMinimum(project.branches()[terminal.branch], valve, meter);
    proof.readableMinimum = minimum;
    proof.isReadable = *terminal.dp >= minimum;
    if (proof.isReadable || reading == nullptr || !reading->dp) {
        return;
    }
    const PressureDifference u =
        detail::dpUncertainty(*reading->dp, *terminal.dp, meter, project.fluid().density());
    if (minimum - *terminal.dp <= u) {
        proof.undecidedDp = u;
    }
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
    const BranchResult& terminal = assessment.branches[*index.terminal];
    judgeReadable(project, terminal, proof);
    for (const std::size_t rival : indexRivals(assessment.branches, index)) {
        const bool isSure = isSurelyLess(assessment.branches[rival], terminal);
        (isSure ? proof.rivals : proof.undecidedRivals).push_back(rival);
    }
    return proof;
}

}  // namespace ww::balancing
