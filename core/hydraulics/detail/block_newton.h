// Newton's method on one block: slopes folded up the items, the kernel's loops closed, steps unfolded down.
#pragma once

#include <span>
#include <vector>

#include "core/hydraulics/detail/kernel.h"
#include "core/hydraulics/detail/law.h"
#include "core/hydraulics/detail/plan.h"

namespace ww::hydraulics::detail {

/// Law, flow and linearisation of the active leaves and items of a plan; every block uses its own range.
struct ActiveState {
    ActiveState(std::size_t leaves, std::size_t items)
        : laws(leaves, nullptr),
          resistances(leaves, 0),
          flows(leaves, 0),
          leafDrops(leaves, 0),
          leafSlopes(leaves, 0),
          leafSteps(leaves, 0),
          itemDrops(items, 0),
          itemSlopes(items, 0),
          itemSteps(items, 0) {}

    DropAndSlope evaluateLeaf(std::size_t leaf, double flow_m3s) const {
        if (laws[leaf] != nullptr) {
            return evaluate(*laws[leaf], flow_m3s);
        }
        const double perFlow = resistances[leaf] * std::abs(flow_m3s);
        return {perFlow * flow_m3s, 2 * perFlow};
    }
    std::size_t bytes() const {
        return laws.size() * 7 * sizeof(double) + itemDrops.size() * 3 * sizeof(double);
    }

    std::vector<const Law*> laws;  ///< null: the square law with this resistance
    std::vector<double> resistances;
    std::vector<double> flows;
    std::vector<double> leafDrops;
    std::vector<double> leafSlopes;
    std::vector<double> leafSteps;
    std::vector<double> itemDrops;
    std::vector<double> itemSlopes;
    std::vector<double> itemSteps;
};

/// The linear operator of a block: leafDrops and leafSlopes in, leafSteps out, so that with drops changing by
/// slope times step every loop closes.
class BlockStep {
  public:
    BlockStep(const Plan& plan, const BlockPlan& block, ActiveState& state, std::size_t maxDenseLoops);

    /// Folds drops and slopes; the largest mismatch of drops round any loop of the block. With `choosesTree`
    /// a large kernel looks for its best tree again; a small one always does.
    double fold(bool choosesTree);
    /// The same for other drops at slopes already folded.
    void foldAgain() { foldItems(); }
    /// Solves the kernel and unfolds the steps; without `factors`, with the slopes of the last time.
    void solve(bool factors = true);
    /// Flows of items and edges from those of the leaves, and back, so that they balance at every node.
    void balanceFlows();
    std::size_t loops() const { return m_block.isFolded() ? 0 : m_kernel.loops(); }
    bool isDense() const { return m_kernel.isDense(); }
    std::size_t bytes() const;

  private:
    double dropOf(Code code) const;
    double slopeOf(Code code) const;
    void setStep(Code code, double step);
    double stepOf(Code code) const;
    double foldItems();
    double foldParallel(std::size_t item);
    void unfoldParallel(std::size_t item);

    const Plan& m_plan;
    const BlockPlan& m_block;
    ActiveState& m_state;
    Kernel m_kernel;
    std::vector<double> m_edgeDrops;
    std::vector<double> m_edgeSlopes;
    std::vector<double> m_edgeSteps;
};

struct BlockLimits {
    int maxIterations = 60;
    double flowToleranceFraction = 1e-12;
    double dropToleranceFraction = 1e-12;
    std::size_t maxDenseLoops = 40;
    /// Ends as soon as it is clear which non-return flaps are pressed shut.
    bool endsAtHeldFlaps = false;
};

struct BlockEnd {
    bool isConverged = false;
    int iterations = 0;
    double lastStep_m3s = 0;
};

/// Solves a block. With `isStarted` the leaves' flows are a start, else it finds its own.
BlockEnd solveBlock(const Plan& plan, const BlockPlan& block, ActiveState& state, BlockStep& step,
                    const BlockLimits& limits, bool isStarted);

}  // namespace ww::hydraulics::detail
