#include "core/balancing/learning/model_findings.h"

#include <algorithm>

#include "core/balancing/detail/wording.h"
#include "core/balancing/learning/learn_forms.h"
#include "core/quantity/measured.h"

namespace ww::balancing {

std::vector<Finding> modelFindings(const project::Project& project, const LearnedLoop& learned,
                                   const Id& round, bool isLast) {
    std::vector<Finding> found;
    for (const DoubtfulReading& doubtful : learned.doubtful) {
        if (project.rounds()[doubtful.round].id == round) {
            found.push_back({doubtful.why, Severity::Warning, project.branches()[doubtful.branch].id,
                             doubtful.readings.front()});
        }
    }
    for (const ShiftedRound& shifted : learned.shifted) {
        if (project.rounds()[shifted.round].id == round) {
            found.push_back({shifted.why, Severity::Warning, std::nullopt, std::nullopt});
        }
    }
    for (const base::Fault& fault : learned.faults) {
        // What else is left out is found by the checks.
        if (isLast && fault.is(kLearnTurnedLeftOut)) {
            found.push_back({fault, Severity::Note, std::nullopt, std::nullopt});
        }
    }
    if (isLast && learned.isMisfit) {
        found.push_back({{&kModelMisfit, "", {detail::smallPercentText(learned.misfitProbability)}},
                         Severity::Warning,
                         std::nullopt,
                         std::nullopt});
    }
    if (isLast && learned.isPriorWidened) {
        found.push_back({{&kModelPriorWidened, "", {}}, Severity::Note, std::nullopt, std::nullopt});
    }
    return found;
}

void addModelFindings(const project::Project& project, Assessment& assessment) {
    if (!assessment.round) {
        return;
    }
    const std::size_t terminals = project.tree().terminals().size();
    if (terminals > kMostTerminalsToCompare) {
        assessment.findings.push_back(
            {{&kModelNotAsked, "", {std::to_string(terminals)}}, Severity::Note, std::nullopt, std::nullopt});
        return;
    }
    const project::Round* last = project.lastRound();
    const bool isLast = last != nullptr && last->id == *assessment.round;
    auto found = modelFindings(project, learn(project), *assessment.round, isLast);
    assessment.findings.insert(assessment.findings.end(), std::make_move_iterator(found.begin()),
                               std::make_move_iterator(found.end()));
    std::stable_sort(assessment.findings.begin(), assessment.findings.end(),
                     [](const Finding& a, const Finding& b) { return a.severity > b.severity; });
}

}  // namespace ww::balancing
