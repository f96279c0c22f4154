// How a fit is made.
#pragma once

#include <cstddef>
#include <stop_token>
#include <vector>

namespace ww::estimation {

struct LearnOptions {
    /// Valve tables as unknowns with their priors. Settings are computed from the fit that trusts the tables
    /// (false); uncertainties of true shares and tests of residuals from the other (true).
    bool hasTableErrors = false;
    /// Readings whose residual is above this many standard deviations count less (P. J. Huber, Ann. Math.
    /// Statist. 35 (1964) 73); 0: all count fully.
    double robustScore = 0;
    /// Priors of circuits and runs are widened to at least this; 0.8 before a reading is accused, so that
    /// design losses that are badly wrong do not pass for a wrong reading.
    double lnFactorLeastPriorSd = 0;
    int maxIterations = 40;  ///< at least 1
    /// The largest step, in prior standard deviations, below which the fit has converged; 1e-12 to 0.1.
    double stepToleranceRatio = 1e-4;
    /// Where to start, one number an unknown; empty: at the priors.
    std::vector<double> lnFactorStart;
    /// Asked between solves: the fit ends as LearnOutcome::Stopped.
    std::stop_token stop;
    /// Cases with at least this many readings enter by a sparse matrix over all their flows and pressures,
    /// the others reading by reading through a dense one. Both give the same answer; the first is faster
    /// where both circuits and readings are many. At least 1.
    std::size_t leastSparseReadings = 40;
    /// Cases in the sparse matrix at most: its blocks grow with them.
    std::size_t maxSparseCases = 64;
};

}  // namespace ww::estimation
