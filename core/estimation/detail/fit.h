// The iteration behind learn(). Inside estimation only.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "core/estimation/detail/factorisation.h"
#include "core/estimation/learned.h"

namespace ww::estimation::detail {

/// One fit of a checked learning.
class Fit {
  public:
    Fit(const Learning& learning, const LearnOptions& options);
    Learned run();

  private:
    /// Unknowns with all cases solved there.
    struct Point {
        std::vector<double> lnFactors;
        std::vector<std::optional<CaseState>> states;  ///< by case; nothing where it has no readings
        std::vector<double> residuals;                 ///< ln observed - ln fitted, by reading
        double objective = 0;
    };

    std::optional<Point> solvedAt(std::vector<double> lnFactors, const Point* start);
    void evaluate(Point& point) const;
    double robustWeight(std::size_t reading, double residual) const;
    std::shared_ptr<const Factorisation> linearised(const Point& point) const;
    Eigen::VectorXd stepFrom(const Point& point, const Factorisation& factorisation) const;
    std::optional<Point> better(const Point& from, const Eigen::VectorXd& step);
    Learned result(const Point& point, LearnOutcome outcome, int iterations,
                   std::shared_ptr<const Factorisation> factorisation) const;

    const Learning& m_learning;
    const LearnOptions& m_options;
    FreeUnknowns m_unknowns;
    std::vector<std::vector<std::size_t>> m_readingsOf;  ///< by case
    std::vector<std::size_t> m_sparseCases;
};

}  // namespace ww::estimation::detail
