// The linearised fit, factored: the covariance of the unknowns as an operator. Inside estimation only.
#pragma once

#include <Eigen/Cholesky>
#include <Eigen/Core>
#include <memory>
#include <optional>
#include <vector>

#include "core/estimation/detail/flow_system.h"

namespace ww::estimation::detail {

/// Rows of d(ln fitted)/d(unknown) of single readings.
struct DenseReadings {
    std::vector<std::size_t> readings;     ///< positions in Learning::observations
    std::vector<double> weightOfReadings;  ///< 1/sd^2; 0: none
    Eigen::MatrixXd rows;                  ///< over the free unknowns, in prior standard deviations
};

/// C = (I + sum of weights x rows' rows)^-1 in prior standard deviations. Readings in the sparse system,
/// where there is one, are its base B; the dense ones follow by C = B - B J' (W^-1 + J B J')^-1 J B (M. A.
/// Woodbury, 1950), or without a base by the matrix of the unknowns where those are fewer than the readings.
class Factorisation {
  public:
    Factorisation(FreeUnknowns unknowns, std::unique_ptr<const FlowSystem> base, DenseReadings dense);

    const FreeUnknowns& unknowns() const { return m_unknowns; }
    /// C times columns.
    Eigen::MatrixXd solve(const Eigen::MatrixXd& columns) const;
    /// C (J' byReading + byUnknown), the first by position in Learning::observations.
    Eigen::VectorXd step(const Eigen::VectorXd& byReading, const Eigen::VectorXd& byUnknown) const;
    /// The diagonals of C and of J C J' over all readings, the second by position in Learning::observations.
    FlowSystem::Variances variances(std::size_t observationCount) const;

    /// Of ln of shares: each probe less the sum of all times these weights. There must be a base.
    std::vector<double> variancesOfShares(const Eigen::VectorXd& weightOfProbes) const;
    /// The same shares with columns over the free unknowns: one row a probe.
    Eigen::MatrixXd sharesWith(const Eigen::MatrixXd& columns, const Eigen::VectorXd& weightOfProbes) const;

  private:
    FlowSystem::Variances variancesByBase(std::size_t observationCount) const;
    Eigen::VectorXd variancesOfUnknowns() const;
    Eigen::MatrixXd baseTimes(const Eigen::MatrixXd& columns) const {
        return m_base ? m_base->solve(columns) : columns;
    }

    FreeUnknowns m_unknowns;
    std::unique_ptr<const FlowSystem> m_base;
    DenseReadings m_dense;
    bool m_isByUnknowns = false;     ///< the small matrix is that of the unknowns
    Eigen::MatrixXd m_weighted;      ///< rows of the dense readings times sqrt(weight)
    Eigen::MatrixXd m_baseWeighted;  ///< B m_weighted'
    Eigen::LLT<Eigen::MatrixXd> m_small;
};

}  // namespace ww::estimation::detail
