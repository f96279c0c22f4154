// What a reading that may still be taken would take from variances. Not for the variances themselves
// (posterior.h, share_forecast.h).
#pragma once

#include <Eigen/Dense>
#include <span>
#include <vector>

#include "core/base/expects.h"
#include "core/estimation/posterior.h"

namespace ww::estimation::detail {

/// The functionals of candidates, each of which must have a positive standard deviation.
inline std::vector<Functional> functionalsOf(std::span<const CandidateReading> candidates) {
    std::vector<Functional> functionals;
    for (const CandidateReading& candidate : candidates) {
        EXPECTS(candidate.relativeSd > 0);
        functionals.push_back(candidate.functional);
    }
    return functionals;
}

/// From the variances of the aims and what one reading takes of each; no gain where nothing is uncertain.
inline ReadingGain gainOf(const Eigen::VectorXd& before, const Eigen::VectorXd& taken) {
    ReadingGain gain;
    if (before.size() > 0 && before.sum() > 0) {
        gain.traceGainRatio = taken.sum() / before.sum();
        gain.largestVarianceFactor = (before - taken).maxCoeff() / before.maxCoeff();
    }
    return gain;
}

}  // namespace ww::estimation::detail
