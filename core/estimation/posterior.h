// What is known of the unknowns after a fit: variances and covariances of linear functionals of them, and
// what a further reading would tell.
#pragma once

#include <cstddef>
#include <memory>
#include <span>
#include <vector>

namespace ww::estimation {

namespace detail {
class Factorisation;
}

/// A quantity as it depends on the unknowns: its derivative with each, at the estimate.
struct Functional {
    std::vector<double> weightByUnknown;
};

/// Row by row of a symmetric table.
struct CovarianceTable {
    std::size_t size = 0;
    std::vector<double> weightOfPairs;
    double covarianceWeight(std::size_t row, std::size_t column) const {
        return weightOfPairs[row * size + column];
    }
};

/// A reading that could be taken: how ln of its value depends on the unknowns, and its uncertainty.
struct CandidateReading {
    Functional functional;
    double relativeSd = 0.01;  ///< above 0
};

/// What a candidate would do to the variances of the functionals aimed at.
struct ReadingGain {
    double traceGainRatio = 0;         ///< the sum of variances it takes away, over their sum
    double largestVarianceFactor = 1;  ///< the largest variance afterwards, over the largest before
};

/// The normal distribution of the unknowns around the estimate, linearised there. Cheap to copy. Functionals
/// must have one weight an unknown; those of held unknowns do not count.
class Posterior {
  public:
    /// Var(g x) = g' C g.
    double varianceFactor(const Functional& functional) const;
    /// Of each functional by itself: less work than the table.
    std::vector<double> varianceFactorOfEach(std::span<const Functional> functionals) const;
    CovarianceTable covariance(std::span<const Functional> functionals) const;
    /// Of all unknowns: for tables of up to about a thousand.
    CovarianceTable covariance() const;
    /// The gain of each candidate taken alone, |D C g|^2 / (sd^2 + g' C g) of the trace of D C D'.
    std::vector<ReadingGain> gains(std::span<const Functional> aims,
                                   std::span<const CandidateReading> candidates) const;

    /// It was given up to save memory: nothing may be asked of it.
    bool isEmpty() const { return m_factorisation == nullptr; }

    explicit Posterior(std::shared_ptr<const detail::Factorisation> factorisation)
        : m_factorisation(std::move(factorisation)) {}

  private:
    std::shared_ptr<const detail::Factorisation> m_factorisation;
};

}  // namespace ww::estimation
