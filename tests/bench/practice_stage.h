// How near the shares of simulated buildings came to target after one stage, counted and printed.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <vector>

#include "tests/support/guided_practice.h"

namespace ww::support {

inline double median(std::vector<double> values) {
    std::sort(values.begin(), values.end());
    return values.empty() ? 0 : values[values.size() / 2];
}

inline double percent(std::size_t part, std::size_t whole) {
    return whole == 0 ? 0 : 100.0 * static_cast<double>(part) / static_cast<double>(whole);
}

/// Shares of all buildings after one stage.
struct Stage {
    std::vector<double> worstTrue;
    std::size_t true5 = 0, true2 = 0, indicated5 = 0, indicated2 = 0, open = 0, misfits = 0, buildings = 0;
    std::size_t scores = 0, scoresWithin = 0, trueScores = 0, trueScoresWithin = 0;
    double squares = 0;
    double promised = 0;  ///< sum of the stated probabilities that all indicated shares lie within 5 %
    double promisedTrue = 0;

    void add(const practice::Building& building, const GuidedPractice& technician,
             const balancing::LearnedLoop& learned, const balancing::Advice& advice) {
        const practice::Outcome outcome = technician.outcome();
        ++buildings;
        worstTrue.push_back(100 * outcome.worstTrue.si());
        true5 += outcome.worstTrue.si() <= 0.05 ? 1 : 0;
        true2 += outcome.worstTrue.si() <= 0.02 ? 1 : 0;
        indicated5 += outcome.worstIndicated.si() <= 0.05 ? 1 : 0;
        indicated2 += outcome.worstIndicated.si() <= 0.02 ? 1 : 0;
        open += outcome.hasOpenMemberInEveryGroup ? 1 : 0;
        misfits += learned.isMisfit ? 1 : 0;
        promised += advice.indicatedProbability.si();
        promisedTrue += advice.actualProbability.si();
        addScores(building, technician, advice);
    }

    void addScores(const practice::Building& building, const GuidedPractice& technician,
                   const balancing::Advice& advice) {
        practice::ReadingMoment moment;
        moment.round = 0;
        const auto real = building.stateAt(technician.noted(), moment);
        const auto design = project::designFlows(building.design());
        double total = 0, indicated = 0, designTotal = 0;
        for (const std::size_t terminal : building.design().tree().terminals()) {
            total += real.flows[terminal].si();
            indicated += building.indicatedFlow(technician.noted(), real, terminal).si();
            designTotal += design[terminal].si();
        }
        for (const auto& one : advice.settings) {
            if (!building.design().tree().isTerminal(one.branch)) {
                continue;
            }
            const double target = design[one.branch].si() / designTotal;
            const double trueOfTarget = real.flows[one.branch].si() / total / target;
            const double read =
                building.indicatedFlow(technician.noted(), real, one.branch).si() / indicated / target;
            if (one.indicated.uncertainty.si() > 0) {
                const double score = (read - one.indicated.ofTarget.si()) / one.indicated.uncertainty.si();
                ++scores;
                scoresWithin += std::abs(score) <= 2 ? 1 : 0;
                squares += score * score;
            }
            if (one.actual.uncertainty.si() > 0) {
                ++trueScores;
                trueScoresWithin +=
                    std::abs(trueOfTarget - one.actual.ofTarget.si()) <= 2 * one.actual.uncertainty.si() ? 1
                                                                                                         : 0;
            }
        }
    }

    void print(const char* name) const {
        const double n = static_cast<double>(buildings);
        std::printf("  %-14s %6.2f %6.0f %6.0f %9.0f %6.0f %7.0f %8.0f %8.0f %8.1f %6.2f %8.1f %7.0f\n", name,
                    median(worstTrue), percent(true5, buildings), percent(true2, buildings),
                    percent(indicated5, buildings), percent(indicated2, buildings), percent(open, buildings),
                    100 * promised / n, 100 * promisedTrue / n, percent(scoresWithin, scores),
                    std::sqrt(squares / std::max(1.0, static_cast<double>(scores))),
                    percent(trueScoresWithin, trueScores), percent(misfits, buildings));
        std::fflush(stdout);
    }
};

}  // namespace ww::support
