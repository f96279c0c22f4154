// The linearised fit of whole cases as one sparse system: unknowns, node pressures of every case and the
// multipliers of the flow balance at every node. Inside estimation only.
#pragma once

#include <Eigen/Core>
#include <memory>
#include <span>
#include <vector>

#include "core/estimation/detail/flow_assembly.h"

namespace ww::estimation::detail {

/// Minimises |x|^2/2 + sum w (a z - r)^2/2 over x (unknowns in prior standard deviations) and the pressures
/// p, where the flows (dp - P x)/S of the links balance at every node: S the slope of a link at its flow, P
/// what x does to its drop. The matrix is [I + .., .., B'; .., .., G; B, G, 0] in x, p and multipliers, G the
/// nodal matrix of the conductances 1/S. Eliminated from the far ends inwards, with a node's pressures and
/// multipliers in all cases as one block; unknowns that touch many links come last.
class FlowSystem {
  public:
    /// `states` and `cases` side by side; `weightOfReadings` (1/sd^2, 0: none) by position in `readings`, the
    /// readings of these cases.
    FlowSystem(const Learning& learning, const FreeUnknowns& unknowns, std::span<const std::size_t> cases,
               std::span<const CaseState* const> states, std::vector<std::size_t> readings,
               std::vector<double> weightOfReadings, std::span<const FlowProbe> probes = {});

    const std::vector<std::size_t>& readings() const { return m_readings; }
    /// C times columns over the free unknowns.
    Eigen::MatrixXd solve(const Eigen::MatrixXd& columns) const;
    /// J C times columns over the free unknowns: one row a reading of this system.
    Eigen::MatrixXd readingsOf(const Eigen::MatrixXd& columns) const;
    /// C (J' byReading + byUnknown): one number a reading of this system, one a free unknown.
    Eigen::VectorXd step(const Eigen::VectorXd& byReading, const Eigen::VectorXd& byUnknown) const;
    /// The diagonals of C and of J C J': what is known of each unknown and of what is fitted at each reading,
    /// and of each probe.
    struct Variances {
        Eigen::VectorXd ofUnknowns;
        std::vector<double> ofReadings;
        std::vector<double> ofProbes;
    };
    Variances variances() const;
    /// The same of each probe with columns over the free unknowns: one row a probe.
    Eigen::MatrixXd probesOf(const Eigen::MatrixXd& columns) const;
    /// Of each probe with the sum of all probes times these weights.
    Eigen::VectorXd probesWithSum(const Eigen::VectorXd& weightOfProbes) const;
    std::size_t bytes() const { return m_factor->bytes(); }

  private:
    class Batches;
    Eigen::MatrixXd rowsOf(const std::vector<SparseRow>& rows, const Eigen::MatrixXd& columns) const;

    Eigen::Index m_unknownCount = 0;
    Eigen::Index m_variableCount = 0;
    std::vector<std::size_t> m_readings;
    std::vector<SparseRow> m_rows;    ///< with positions in the order of elimination
    std::vector<SparseRow> m_probes;  ///< likewise
    std::vector<std::uint32_t> m_positionOfUnknown;
    std::unique_ptr<const FrontalFactor> m_factor;
};

}  // namespace ww::estimation::detail
