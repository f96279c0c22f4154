#include "core/balancing/round_facts.h"

#include <algorithm>

#include "core/balancing/round_comparison.h"

namespace ww::balancing {

namespace {

void addOnce(std::vector<std::string>& all, const std::string& one) {
    if (std::find(all.begin(), all.end(), one) == all.end()) {
        all.push_back(one);
    }
}

}  // namespace

RoundFacts roundFacts(const project::Project& project, const Assessment& assessed) {
    RoundFacts facts;
    if (!assessed.round) {
        return facts;
    }
    for (const std::size_t index : project.readingsOf(*assessed.round)) {
        const project::Reading& reading = project.readings()[index];
        if (const auto* person = reading.person ? project.people().find(*reading.person) : nullptr) {
            addOnce(facts.readers, person->name);
        }
        if (const auto* meter =
                reading.instrument ? project.instruments().find(*reading.instrument) : nullptr) {
            addOnce(facts.meters, meter->tag);
        }
    }
    for (const BranchResult& branch : assessed.branches) {
        const project::Reading* reading =
            branch.reading && !branch.isFromEarlierRound ? project.readings().find(*branch.reading) : nullptr;
        const bool isKept =
            reading != nullptr && !reading->cannotBeRead && (reading->isDoubtful || !reading->reason.empty());
        facts.doubtful += isKept || (reading != nullptr && branch.state == State::Doubtful) ? 1 : 0;
    }
    facts.corrected = correctionCount(project, *assessed.round);
    return facts;
}

}  // namespace ww::balancing
