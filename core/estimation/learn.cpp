#include "core/estimation/learn.h"

#include <cmath>
#include <string>

#include "core/base/term.h"
#include "core/estimation/detail/fit.h"
#include "core/quantity/measured.h"

namespace ww::estimation {

namespace {

void checkContract(const Learning& learning, const LearnOptions& options) {
    EXPECTS(options.maxIterations >= 1 && options.leastSparseReadings >= 1);
    EXPECTS(options.stepToleranceRatio >= 1e-12 && options.stepToleranceRatio <= 0.1);
    EXPECTS(options.robustScore >= 0 && options.lnFactorLeastPriorSd >= 0);
    EXPECTS(options.lnFactorStart.empty() || options.lnFactorStart.size() == learning.unknowns.size());
    for (const hydraulics::Network& network : learning.cases) {
        EXPECTS(network.linkCount() == learning.cases.front().linkCount());
        EXPECTS(network.nodeCount() == learning.cases.front().nodeCount());
    }
    for (const Unknown& unknown : learning.unknowns) {
        for (const ScaledLink& scaled : unknown.links) {
            EXPECTS(!learning.cases.empty() && scaled.link.value < learning.cases.front().linkCount());
            EXPECTS(scaled.weightByCase.empty() || scaled.weightByCase.size() == learning.cases.size());
        }
    }
    for (const Observation& observation : learning.observations) {
        EXPECTS(observation.caseIndex < learning.cases.size());
        EXPECTS(observation.link.value < learning.cases[observation.caseIndex].linkCount());
        EXPECTS(std::holds_alternative<VolumeFlow>(observation.value) ==
                (observation.what == Observed::Flow));
        EXPECTS(!observation.instrument ||
                (*observation.instrument < learning.unknowns.size() &&
                 learning.unknowns[*observation.instrument].kind == UnknownKind::Instrument));
    }
}

std::string written(double number) {
    return std::isfinite(number) ? quantity::concise(number, 6) : base::term("not a number");
}

std::vector<base::Fault> faultsOf(const Learning& learning) {
    std::vector<base::Fault> faults;
    std::size_t weighted = 0;
    for (std::size_t position = 0; position < learning.observations.size(); ++position) {
        const Observation& observation = learning.observations[position];
        const std::string subject = std::to_string(position);
        weighted += observation.hasWeight() ? 1U : 0U;
        if (!(observation.relativeSd > 0 && std::isfinite(observation.relativeSd))) {
            faults.push_back({&kLearnReadingUncertainty, subject, {written(observation.relativeSd)}});
        }
        const bool isShut = learning.cases[observation.caseIndex].isClosed(observation.link);
        if (isShut && observation.what != Observed::AvailableDrop) {
            faults.push_back({&kLearnReadingShut, subject, {}});
        }
        if (!isShut && observation.what == Observed::AvailableDrop) {
            faults.push_back({&kLearnReadingOpen, subject, {}});
        }
    }
    for (std::size_t position = 0; position < learning.unknowns.size(); ++position) {
        const Unknown& unknown = learning.unknowns[position];
        const bool isGood = std::isfinite(unknown.lnFactorPrior) && std::isfinite(unknown.lnFactorPriorSd) &&
                            unknown.lnFactorPriorSd >= 0;
        if (!isGood) {
            faults.push_back({&kLearnPrior, "", {std::to_string(position)}});
        }
    }
    if (weighted == 0) {
        faults.push_back({&kLearnNothing, "", {}});
    }
    return faults;
}

}  // namespace

LearnResult learn(const Learning& learning, const LearnOptions& options) {
    checkContract(learning, options);
    LearnResult out;
    out.faults = faultsOf(learning);
    if (out.faults.empty()) {
        out.learned = detail::Fit(learning, options).run();
    }
    return out;
}

}  // namespace ww::estimation
