// Solves large sparse symmetric systems that are given as a sum of small dense terms, by eliminating groups
// of variables in a given order (the multifrontal method of I. S. Duff and J. K. Reid, ACM Trans. Math.
// Softw. 9 (1983) 302). Inside estimation only.
#pragma once

#include <Eigen/Core>
#include <Eigen/LU>
#include <cstdint>
#include <functional>
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

    /// The inverse over the variables of one front: all that stand together in a term belong to one.
    class Block {
      public:
        double at(std::uint32_t position, std::uint32_t other) const {
            return m_inverse(m_placeOf[position], m_placeOf[other]);
        }

      private:
        friend class FrontalFactor;
        Block(const Eigen::MatrixXd& inverse, const std::vector<Eigen::Index>& placeOf)
            : m_inverse(inverse), m_placeOf(placeOf) {}
        const Eigen::MatrixXd& m_inverse;
        const std::vector<Eigen::Index>& m_placeOf;
    };
    /// Calls take(front, block) for every front that has variables of its own, in no order to rely on: the
    /// entries of the inverse that have a place in the factor, without the others, for about what the
    /// factorisation takes (A. M. Erisman and W. F. Tinney, Commun. ACM 18 (1975) 177).
    void eachBlock(const std::function<void(std::uint32_t, const Block&)>& take) const;
    /// The front whose block holds all positions that stood together in a term: that of the first of them.
    std::uint32_t frontOf(std::uint32_t position) const { return m_frontOf[position]; }
    std::size_t frontCount() const { return m_fronts.size(); }
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
    Eigen::MatrixXd inverseOf(const Front& front, const Eigen::MatrixXd& later) const;
    /// Children of every front, the one with most fronts behind it last.
    std::vector<std::vector<std::uint32_t>> childrenBySize() const;

    std::vector<Front> m_fronts;
    std::vector<std::uint32_t> m_positionOf;               ///< by variable
    std::vector<std::uint32_t> m_frontOf;                  ///< by position
    std::vector<std::vector<std::uint32_t>> m_termsOf;     ///< by front
    std::vector<std::vector<std::uint32_t>> m_childrenOf;  ///< by front
};

}  // namespace ww::estimation::detail
