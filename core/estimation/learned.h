// The result of a fit, with its evidence.
#pragma once

#include <algorithm>
#include <cstddef>
#include <optional>
#include <vector>

#include "core/estimation/learning.h"
#include "core/estimation/posterior.h"

namespace ww::estimation {

enum class LearnOutcome {
    Converged,
    NotConverged,  ///< the steps allowed were not enough; the estimate is the best reached
    Stopped,       ///< on request; the estimate is the best reached
};

/// One unknown after the fit.
struct LearnedUnknown {
    double lnFactor = 0;
    double lnFactorSd = 0;       ///< posterior; 0 where held
    double lnFactorPriorSd = 0;  ///< as used: widened or held by the options
    /// How far it was moved off its prior, in the standard deviation that such moves have where the priors
    /// are true; 0 where nothing is learned of it.
    double movedScore = 0;
};

/// Below this redundancy a reading cannot be checked by the others.
inline constexpr double kLeastRedundancyFraction = 0.1;

/// One reading against the fit.
struct LearnedReading {
    ObservedValue fitted;         ///< what the loop makes there, instrument factor included
    double relativeResidual = 0;  ///< ln(value) - ln(fitted); of a left-out reading without logarithm 0
    /// Residual over its own standard deviation, sigma x sqrt(redundancy); of a left-out reading over that of
    /// its prediction. A small one says nothing of a reading that cannot be checked; 0 below a redundancy of
    /// 0.01, where it is rounding.
    double score = 0;
    double redundancyFraction = 0;  ///< part of an error that shows in its residual; 0 to 1
    /// ln of the least factor on the reading that would be noticed with 80 % probability at the 0.1 % level:
    /// 4.13 sigma / sqrt(redundancy) (W. Baarda, A testing procedure for use in geodetic networks, 1968).
    double relativeLeastDetectable = 0;
    double robustWeight = 1;  ///< that it had in the fit; 0 where left out
    bool canBeChecked() const { return redundancyFraction >= kLeastRedundancyFraction; }
    /// ln(value) less that of what all other readings expect there; with a redundancy below 0.05 as if it
    /// were that, where the others hardly know.
    double relativeDeviation() const {
        constexpr double kLeast = 0.05;
        return robustWeight > 0 ? relativeResidual / std::max(redundancyFraction, kLeast) : relativeResidual;
    }
};

/// Whether all readings together fit the model and its priors.
struct Misfit {
    double chiSquareScore = 0;         ///< squares of all residuals and of all moves off priors, in their sd
    std::size_t degreesOfFreedom = 0;  ///< readings with weight
    double probability = 1;            ///< of at least this misfit where everything assumed is true
    /// The world breaks an assumption: uncertainties are too small.
    bool isFound() const { return probability < 0.001; }
};

struct Learned {
    LearnOutcome outcome = LearnOutcome::Converged;
    int iterations = 0;                    ///< linearisations
    std::vector<LearnedUnknown> unknowns;  ///< in the order of Learning::unknowns
    std::vector<LearnedReading> readings;  ///< in the order of Learning::observations
    Misfit misfit;
    Posterior posterior;

    std::vector<double> lnFactorOfUnknowns() const;
};

}  // namespace ww::estimation
