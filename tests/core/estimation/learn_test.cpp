// What a fit must do whatever the loop: recover exact readings, agree with itself by both ways of algebra,
// and balance its books. Its own identities and brute force are the reference here; published buildings are
// in tests/reference.
#include "core/estimation/learn.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/estimation/forecast.h"
#include "tests/support/hidden_loop.h"

namespace ww::estimation {
namespace {

using support::HiddenLoop;
using support::HiddenLoopOptions;

Learned learned(const Learning& learning, const LearnOptions& options = {}) {
    auto result = learn(learning, options);
    EXPECT_TRUE(result.faults.empty());
    return *std::move(result.learned);
}

/// Two rounds, a closed valve, a direct flow.
HiddenLoop surveyed(HiddenLoopOptions options) {
    HiddenLoop loop(options);
    const std::size_t open = loop.addOpenCase();
    loop.readRound(open);
    const std::size_t shut = loop.addShutCase(1);
    loop.read(shut, loop.valves()[1], Observed::AvailableDrop);
    loop.readRound(loop.addThrottledCase());
    loop.read(open, loop.circuits()[0], Observed::Flow);
    loop.read(open, loop.pump(), Observed::Flow);
    return loop;
}

TEST(Learn, exactReadingsGiveTheFactorsBack) {
    HiddenLoopOptions options;
    options.branches = 1;
    options.terminalsOfBranch = 3;
    options.relativeNoise = 0;
    HiddenLoop loop(options);
    for (int round = 0; round < 4; ++round) {
        loop.readRound(loop.addThrottledCase());
    }
    for (std::size_t terminal = 0; terminal < 3; ++terminal) {
        loop.read(loop.addShutCase(terminal), loop.valves()[terminal], Observed::AvailableDrop);
    }
    // The main and the first run, the last run and the last circuit are in series: only their sums can be
    // known. One of each and the common factor of the runs are held at the truth, all else is told apart.
    const std::size_t common = 3 + 4;
    for (const std::size_t held : {std::size_t{3}, std::size_t{6}, common}) {
        loop.learning().unknowns[held].lnFactorPrior = loop.truth()[held];
        loop.learning().unknowns[held].lnFactorPriorSd = 0;
    }
    const Learned fit = learned(loop.learning());
    EXPECT_EQ(fit.outcome, LearnOutcome::Converged);
    for (std::size_t unknown = 0; unknown < common + 2; ++unknown) {
        EXPECT_NEAR(fit.unknowns[unknown].lnFactor, loop.truth()[unknown], 2e-4) << unknown;
    }
}

TEST(Learn, bothWaysOfAlgebraAgree) {
    HiddenLoopOptions loopOptions;
    loopOptions.instrumentFactor = 1.02;
    loopOptions.instrumentSdFactor = 0.03;
    loopOptions.hasTableErrors = true;
    HiddenLoop loop = surveyed(loopOptions);
    for (const std::size_t leastSparse : {1U, 5U}) {
        LearnOptions dense;
        dense.hasTableErrors = true;
        dense.stepToleranceRatio = 1e-9;
        dense.leastSparseReadings = 100000;
        LearnOptions sparse = dense;
        sparse.leastSparseReadings = leastSparse;
        const Learned one = learned(loop.learning(), dense);
        const Learned other = learned(loop.learning(), sparse);
        for (std::size_t i = 0; i < one.unknowns.size(); ++i) {
            EXPECT_NEAR(one.unknowns[i].lnFactor, other.unknowns[i].lnFactor, 1e-7) << i;
            EXPECT_NEAR(one.unknowns[i].lnFactorSd, other.unknowns[i].lnFactorSd, 1e-7) << i;
        }
        for (std::size_t i = 0; i < one.readings.size(); ++i) {
            EXPECT_NEAR(one.readings[i].redundancyFraction, other.readings[i].redundancyFraction, 1e-6) << i;
            EXPECT_NEAR(one.readings[i].score, other.readings[i].score, 1e-5) << i;
        }
        const auto ahead = forecast(loop.learning(), one.lnFactorOfUnknowns(), 0, loop.circuits());
        const auto shares = shareFunctionals(ahead.links);
        const auto byOne = one.posterior.covariance(shares);
        const auto byOther = other.posterior.covariance(shares);
        for (std::size_t i = 0; i < byOne.weightOfPairs.size(); ++i) {
            EXPECT_NEAR(byOne.weightOfPairs[i], byOther.weightOfPairs[i], 1e-9);
        }
    }
}

TEST(Learn, redundanciesSumToReadingsLessEffectiveUnknowns) {
    HiddenLoop loop = surveyed({});
    for (const std::size_t leastSparse : {1U, 100000U}) {
        LearnOptions options;
        options.leastSparseReadings = leastSparse;
        const Learned fit = learned(loop.learning(), options);
        double redundancy = 0;
        for (const LearnedReading& reading : fit.readings) {
            redundancy += reading.redundancyFraction;
        }
        double effective = 0;
        for (const LearnedUnknown& unknown : fit.unknowns) {
            if (unknown.lnFactorPriorSd > 0) {
                effective += 1 - std::pow(unknown.lnFactorSd / unknown.lnFactorPriorSd, 2);
            }
        }
        EXPECT_NEAR(redundancy, static_cast<double>(fit.readings.size()) - effective, 1e-8);
    }
}

/// The sum of squares that learn() makes least, from forward solves alone.
double sumOfSquares(const Learning& learning, const std::vector<double>& lnFactors) {
    double sum = 0;
    for (const Observation& observation : learning.observations) {
        const auto network = learnedNetwork(learning, observation.caseIndex, lnFactors);
        const auto solution = hydraulics::solve(network);
        const double fitted = observation.what == Observed::Flow
                                  ? solution.flow(observation.link).si()
                                  : std::abs(solution.drop(network, observation.link)->si());
        sum += std::pow((*observation.lnValueRatio() - std::log(fitted)) / observation.relativeSd, 2);
    }
    for (std::size_t i = 0; i < lnFactors.size(); ++i) {
        const double sd = learning.unknowns[i].lnFactorPriorSd;
        sum += learning.unknowns[i].kind == UnknownKind::ValveTable ? 0 : std::pow(lnFactors[i] / sd, 2);
    }
    return sum;
}

TEST(Learn, endsWhereTheSumOfSquaresIsLeast) {
    HiddenLoopOptions options;
    options.branches = 1;
    options.terminalsOfBranch = 3;
    HiddenLoop loop = surveyed(options);
    LearnOptions tight;
    tight.stepToleranceRatio = 1e-8;
    const Learned fit = learned(loop.learning(), tight);
    const std::vector<double> best = fit.lnFactorOfUnknowns();
    const double least = sumOfSquares(loop.learning(), best);
    EXPECT_NEAR(fit.misfit.chiSquareScore, least, 1e-6 * least);
    for (std::size_t i = 0; i < best.size(); ++i) {
        if (fit.unknowns[i].lnFactorPriorSd == 0) {
            continue;
        }
        const double step = 1e-2 * fit.unknowns[i].lnFactorSd;
        std::vector<double> up = best;
        std::vector<double> down = best;
        up[i] += step;
        down[i] -= step;
        const double above = sumOfSquares(loop.learning(), up);
        const double below = sumOfSquares(loop.learning(), down);
        EXPECT_GT(above, least) << i;
        EXPECT_GT(below, least) << i;
        // The slope is nought against the curvature of one standard deviation.
        EXPECT_LT(std::abs(above - below), 1e-2 * (above + below - 2 * least)) << i;
    }
}

TEST(Learn, covarianceIsTheInverseOfTheCurvature) {
    HiddenLoopOptions options;
    options.branches = 1;
    options.terminalsOfBranch = 3;
    options.relativeNoise = 0;  // at exact readings the residuals add no second derivatives of their own
    options.hiddenSdFactor = 0;
    HiddenLoop loop = surveyed(options);
    for (Observation& observation : loop.learning().observations) {
        observation.relativeSd = 0.01;
    }
    const Learned fit = learned(loop.learning());
    const auto table = fit.posterior.covariance();
    const std::vector<double> best = fit.lnFactorOfUnknowns();
    std::vector<std::size_t> free;
    for (std::size_t i = 0; i < best.size(); ++i) {
        if (fit.unknowns[i].lnFactorPriorSd > 0) {
            free.push_back(i);
        }
    }
    // Half the second derivatives, by central differences, times the covariance is the unit matrix.
    const double step = 1e-4;
    const auto at = [&](std::size_t i, double byI, std::size_t j, double byJ) {
        std::vector<double> moved = best;
        moved[i] += byI;
        moved[j] += byJ;
        return sumOfSquares(loop.learning(), moved);
    };
    for (const std::size_t i : free) {
        std::vector<double> row;
        for (const std::size_t j : free) {
            row.push_back((at(i, step, j, step) - at(i, step, j, -step) - at(i, -step, j, step) +
                           at(i, -step, j, -step)) /
                          (8 * step * step));
        }
        for (std::size_t k = 0; k < free.size(); ++k) {
            double sum = 0;
            for (std::size_t j = 0; j < free.size(); ++j) {
                sum += row[j] * table.covarianceWeight(free[j], free[k]);
            }
            EXPECT_NEAR(sum, i == free[k] ? 1.0 : 0.0, 2e-3) << i << " " << free[k];
        }
    }
}

}  // namespace
}  // namespace ww::estimation
