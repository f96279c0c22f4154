// A learning fitted through the sparse system and through dense algebra: how far the answers are apart.
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

#include "core/estimation/forecast.h"
#include "core/estimation/learn.h"
#include "core/estimation/share_forecast.h"

namespace ww::support {

/// The largest of each.
struct WaysApart {
    double unknown = 0;  ///< of ln of a factor, in its standard deviations
    double sd = 0;       ///< of standard deviations of unknowns, relative
    double score = 0;    ///< of scores of readings
    double shareSd = 0;  ///< of standard deviations of shares in the last case, relative
};

inline WaysApart waysApart(const estimation::Learning& learning,
                           const std::vector<hydraulics::LinkIndex>& circuits) {
    estimation::LearnOptions sparse;
    sparse.hasTableErrors = true;
    sparse.stepToleranceRatio = 1e-9;
    estimation::LearnOptions dense = sparse;
    dense.leastSparseReadings = std::numeric_limits<std::size_t>::max();
    const estimation::Learned one = *estimation::learn(learning, sparse).learned;
    const estimation::Learned other = *estimation::learn(learning, dense).learned;
    WaysApart out;
    for (std::size_t i = 0; i < one.unknowns.size(); ++i) {
        const double sd = other.unknowns[i].lnFactorSd;
        if (sd > 0) {
            out.unknown =
                std::max(out.unknown, std::abs(one.unknowns[i].lnFactor - other.unknowns[i].lnFactor) / sd);
            out.sd = std::max(out.sd, std::abs(one.unknowns[i].lnFactorSd / sd - 1));
        }
    }
    for (std::size_t i = 0; i < one.readings.size(); ++i) {
        out.score = std::max(out.score, std::abs(one.readings[i].score - other.readings[i].score));
    }
    const std::size_t last = learning.cases.size() - 1;
    std::vector<estimation::ToldFlow> flows;
    for (const hydraulics::LinkIndex circuit : circuits) {
        flows.push_back({circuit, true, {}});
    }
    const estimation::ShareForecast shares(learning, one, last, flows);
    const auto ahead = estimation::forecast(learning, other.lnFactorOfUnknowns(), last, circuits);
    const auto variances = other.posterior.varianceFactorOfEach(estimation::shareFunctionals(ahead.links));
    for (std::size_t i = 0; i < circuits.size(); ++i) {
        out.shareSd =
            std::max(out.shareSd, std::abs(shares.relativeSdOfShares()[i] / std::sqrt(variances[i]) - 1));
    }
    return out;
}

}  // namespace ww::support
