// Solves large sparse symmetric systems that are given as a sum of small dense terms, by eliminating groups
// of variables in a given order (the multifrontal method of I. S. Duff and J. K. Reid, ACM Trans. Math.
// Softw. 9 (1983) 302). Inside estimation only.
#pragma once

#include <Eigen/Core>
#include <Eigen/LU>
#include <cstdint>
#include <vector>

namespace ww::estimation::detail {

/// A small symmetric block of the matrix: entry (i, j) belongs to variables[i] and variables[j]. A variable
/// may stand twice.
struct MatrixTerm {
    std::vector<std::uint32_t> variables;
    std::vector<double> entries;  ///< row by row

    explicit MatrixTerm(std::vector<std::uint32_t> of) : variables(std::move(of)) {
        entries.assign(variables.size() * variables.size(), 0);
    }
    double& at(std::size_t row, std::size_t column) { return entries[row * variables.size() + column]; }
    /// Adds entry (row, column) and its mirror image; of the diagonal once.
    void addBoth(std::size_t row, std::size_t column, double value) {
        at(row, column) += value;
        if (row != column) {
            at(column, row) += value;
        }
    }
};

/// The matrix may be indefinite; every group's block must be regular when its turn comes. Pivots are sought
/// within a group.
class FrontalFactor {
  public:
    /// Groups in the order of elimination; every variable from 0 upwards in just one of them.
    FrontalFactor(const std::vector<std::vector<std::uint32_t>>& groups,
                  const std::vector<MatrixTerm>& terms);

    /// Row-major: the rows of a front are gathered by whole rows.
    using Rows = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;

    /// Overwrites every column with the solution. Rows stand in the order of elimination: see positionOf().
    void solve(Rows& columns) const;
    std::uint32_t positionOf(std::uint32_t variable) const { return m_positionOf[variable]; }
    std::size_t bytes() const;

  private:
    struct Front {
        std::vector<std::uint32_t> own;   ///< positions in the order of elimination
        std::vector<std::uint32_t> rows;  ///< later positions it is coupled to, rising
        Eigen::PartialPivLU<Eigen::MatrixXd> pivot;
        Eigen::MatrixXd below;  ///< rows x own
    };

    void analyse(const std::vector<std::vector<std::uint32_t>>& groups, const std::vector<MatrixTerm>& terms);
    void eliminate(const std::vector<MatrixTerm>& terms);

    std::vector<Front> m_fronts;
    std::vector<std::uint32_t> m_positionOf;               ///< by variable
    std::vector<std::uint32_t> m_frontOf;                  ///< by position
    std::vector<std::vector<std::uint32_t>> m_termsOf;     ///< by front
    std::vector<std::vector<std::uint32_t>> m_childrenOf;  ///< by front
};

}  // namespace ww::estimation::detail
