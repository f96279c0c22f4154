#include "core/hydraulics/detail/block_newton.h"

#include <algorithm>
#include <cmath>

namespace ww::hydraulics::detail {

namespace {

/// Added to every slope of the step's matrix, as a part of pressure over flow, so that a loop in which
/// nothing moves has a matrix. It changes the path to the answer, never the answer.
constexpr double kSlopeFloor = 1e-13;

class Iteration {
  public:
    Iteration(const Plan&, const BlockPlan& block, ActiveState& state, BlockStep& step,
              const BlockLimits& limits)
        : m_block(block), m_state(state), m_step(step), m_limits(limits) {
        for (std::size_t leaf = block.firstLeaf; leaf < block.endLeaf; ++leaf) {
            if (state.laws[leaf] != nullptr && isDriver(*state.laws[leaf])) {
                m_scale_Pa = std::max(m_scale_Pa, std::abs(state.evaluateLeaf(leaf, 0).drop_Pa));
            }
        }
    }

    BlockEnd run(bool isStarted) {
        BlockEnd end;
        estimate();
        end.iterations = 1;
        if (isStarted) {
            m_step.balanceFlows();
        } else {
            advance(1);
        }
        double previous = INFINITY;
        int stalled = 0;
        double lastStep = INFINITY;
        while (true) {
            const double mismatch = linearise();
            const bool isClosed = mismatch <= m_limits.dropToleranceFraction * m_scale_Pa;
            const bool isSettled = lastStep <= m_limits.flowToleranceFraction * m_largestFlow || stalled >= 2;
            end.isConverged = isClosed && isSettled;
            if (end.isConverged || end.iterations >= m_limits.maxIterations) {
                break;
            }
            m_step.solve();
            ++end.iterations;
            lastStep = largestStep();
            advance(length(lastStep));
            // Where the last places of the drops hide smaller flows than asked for, steps stop shrinking.
            stalled = isClosed && lastStep > 0.5 * previous ? stalled + 1 : 0;
            previous = lastStep;
        }
        end.lastStep_m3s = std::isfinite(lastStep) ? lastStep : 0;
        return end;
    }

  private:
    /// Flows as if every element were a line through its point at the full pump pressure.
    void estimate() {
        for (std::size_t leaf = m_block.firstLeaf; leaf < m_block.endLeaf; ++leaf) {
            const bool isSquare = m_state.laws[leaf] == nullptr;
            m_state.leafDrops[leaf] = isSquare ? 0 : m_state.evaluateLeaf(leaf, 0).drop_Pa;
            m_state.leafSlopes[leaf] = isSquare ? std::sqrt(m_state.resistances[leaf] * m_scale_Pa)
                                                : secantSlope(*m_state.laws[leaf], m_scale_Pa);
            m_steepest = std::max(m_steepest, m_state.leafSlopes[leaf]);
        }
        for (std::size_t leaf = m_block.firstLeaf; leaf < m_block.endLeaf; ++leaf) {
            m_state.leafSlopes[leaf] += 1e-15 * m_steepest;
        }
        m_step.fold();
        m_step.solve();
    }

    double linearise() {
        m_largestFlow = 0;
        for (std::size_t leaf = m_block.firstLeaf; leaf < m_block.endLeaf; ++leaf) {
            m_largestFlow = std::max(m_largestFlow, std::abs(m_state.flows[leaf]));
        }
        const double floor =
            m_largestFlow > 0 ? kSlopeFloor * m_scale_Pa / m_largestFlow : 1e-15 * m_steepest;
        for (std::size_t leaf = m_block.firstLeaf; leaf < m_block.endLeaf; ++leaf) {
            const DropAndSlope here = m_state.evaluateLeaf(leaf, m_state.flows[leaf]);
            m_state.leafDrops[leaf] = here.drop_Pa;
            m_state.leafSlopes[leaf] = here.slope + floor;
        }
        return m_step.fold();
    }

    double largestStep() const {
        double largest = 0;
        for (std::size_t leaf = m_block.firstLeaf; leaf < m_block.endLeaf; ++leaf) {
            largest = std::max(largest, std::abs(m_state.leafSteps[leaf]));
        }
        return largest;
    }

    void advance(double part) {
        for (std::size_t leaf = m_block.firstLeaf; leaf < m_block.endLeaf; ++leaf) {
            m_state.flows[leaf] += part * m_state.leafSteps[leaf];
        }
    }

    /// Derivative of the content along the step.
    double climb(double part) const {
        double sum = 0;
        for (std::size_t leaf = m_block.firstLeaf; leaf < m_block.endLeaf; ++leaf) {
            const double step = m_state.leafSteps[leaf];
            sum += step * m_state.evaluateLeaf(leaf, m_state.flows[leaf] + part * step).drop_Pa;
        }
        return sum;
    }

    /// How much of the step to take: all of it, unless the content rises again before its end as steeply as
    /// it fell at the start; then to where it is nearly level.
    double length(double largestStep) const {
        if (largestStep <= 1e-6 * m_largestFlow) {
            return 1;
        }
        const double atEnd = climb(1);
        const double atStart = climb(0);
        if (atEnd <= 0.9 * std::abs(atStart)) {
            return 1;
        }
        double low = 0;
        double high = 1;
        double lowClimb = atStart;
        double highClimb = atEnd;
        double part = 1;
        for (int i = 0; i < 20; ++i) {
            const double chord = low + (high - low) * lowClimb / (lowClimb - highClimb);
            // Between the chord's root and the middle: neither creeps.
            part = i % 2 == 0 ? chord : 0.5 * (low + high);
            const double here = climb(part);
            if (std::abs(here) <= 0.3 * std::abs(atStart)) {
                break;
            }
            (here < 0 ? low : high) = part;
            (here < 0 ? lowClimb : highClimb) = here;
        }
        return part;
    }

    const BlockPlan& m_block;
    ActiveState& m_state;
    BlockStep& m_step;
    const BlockLimits& m_limits;
    double m_scale_Pa = 0;
    double m_steepest = 0;
    double m_largestFlow = 0;
};

}  // namespace

BlockEnd solveBlock(const Plan& plan, const BlockPlan& block, ActiveState& state, BlockStep& step,
                    const BlockLimits& limits, bool isStarted) {
    return Iteration(plan, block, state, step, limits).run(isStarted);
}

}  // namespace ww::hydraulics::detail
