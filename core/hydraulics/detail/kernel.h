// The linear step of a kernel: given drop and slope of every edge at flows that balance, the change of flows
// that closes every loop.
#pragma once

#include <cstdint>
#include <memory>
#include <span>
#include <vector>

#include "core/hydraulics/detail/plan.h"

namespace ww::hydraulics::detail {

/// A spanning tree of low slopes; the other edges are the chords, one for each loop. Chord steps are solved
/// for, tree flows follow by balance, so that flows balance to the last place whatever the matrix loses.
class Kernel {
  public:
    Kernel(const BlockPlan& block, std::size_t maxDenseLoops);
    ~Kernel();
    Kernel(Kernel&&) noexcept;

    std::size_t loops() const { return m_block.edges.size() + 1 - m_block.nodeCount; }
    bool isDense() const { return loops() <= m_maxDense; }

    /// The tree of lowest slopes, to a factor of 2.
    void chooseTree(std::span<const double> slopes);
    /// Whether a tree edge has become much steeper than a chord, so that another tree would be better.
    bool isTreeStale(std::span<const double> slopes) const;
    /// Tree values from chord values, so that they sum to zero at every node.
    void balance(std::span<double> values) const;
    /// The largest mismatch of drops round a loop; kept for step().
    double mismatch(std::span<const double> drops);
    /// Makes and factors the matrix of these slopes for the present tree.
    void factor(std::span<const double> slopes);
    /// Steps of all edges that take the mismatches away; after factor() with the same slopes.
    void step(std::span<const double> slopes, std::span<double> steps);
    std::size_t bytes() const;

  private:
    struct Dense;
    struct Sparse;

    void factorDense(std::span<const double> slopes);
    void factorSparse(std::span<const double> slopes);
    void solveDense(std::span<double> steps);
    void solveSparse(std::span<const double> slopes, std::span<double> steps);
    double loopMismatch(std::span<const double> drops);
    void prepareDense();
    void prepareSparse();
    void rootTree();

    const BlockPlan& m_block;
    std::size_t m_maxDense;
    std::vector<std::uint32_t> m_chords;
    std::vector<std::uint8_t> m_isTree;       ///< empty before the first tree
    std::vector<std::uint32_t> m_order;       ///< nodes, parents first
    std::vector<std::uint32_t> m_parentEdge;  ///< of each node but the root
    std::vector<std::uint32_t> m_depth;
    std::vector<double> m_nodeValues;
    std::vector<double> m_nodeRests;  ///< what rounding took from m_nodeValues
    mutable std::vector<double> m_sums;
    std::vector<double> m_chordMismatch;
    std::unique_ptr<Dense> m_dense;
    std::unique_ptr<Sparse> m_sparse;
};

}  // namespace ww::hydraulics::detail
