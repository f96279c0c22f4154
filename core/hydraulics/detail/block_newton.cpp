#include "core/hydraulics/detail/block_newton.h"

#include <algorithm>
#include <cmath>

namespace ww::hydraulics::detail {

namespace {

/// Added to every slope of the step's matrix, as a part of pressure over flow, so that a loop in which
/// nothing moves has a matrix. It changes the path to the answer, never the answer.
constexpr double kLeastFloor = 1e-17;
constexpr double kMostFloor = 1e-8;

/// Largest step that the last places of the drops may stir up, as a part of the largest flow.
constexpr double kStirred = 1e-6;
/// Steps after which what still moves is taken for that.
constexpr int kMostPolish = 12;

/// At this part of pressure and flow it is clear which flaps are shut.
constexpr double kClear = 1e-2;

/// Flows below this part of what a pump is made for count as none when convergence is judged.
constexpr double kNoFlow = 1e-4;

double driverFlow(const Law& law) {
    const auto* pump = std::get_if<PumpLaw>(&law);
    return pump == nullptr ? 0 : pump->scale * pump->shape->lastFlow_m3s();
}

/// A loop in which nothing moves in the end has no slope there. Newton's method then shortens its flows by
/// the same ratio (a half for the square law) for ever; the sum of the series is the whole way.
bool isSteady(double ratio, double ratioBefore) {
    return ratio > 0.2 && ratio < 0.7 && std::abs(ratio - ratioBefore) < 0.08;
}

class Iteration {
  public:
    Iteration(const Plan&, const BlockPlan& block, ActiveState& state, BlockStep& step,
              const BlockLimits& limits)
        : m_block(block), m_state(state), m_step(step), m_limits(limits) {
        for (std::size_t leaf = block.firstLeaf; leaf < block.endLeaf; ++leaf) {
            if (state.laws[leaf] != nullptr && isDriver(*state.laws[leaf])) {
                m_scale_Pa = std::max(m_scale_Pa, std::abs(state.evaluateLeaf(leaf, 0).drop_Pa));
                m_leastFlow = std::max(m_leastFlow, kNoFlow * driverFlow(*state.laws[leaf]));
            }
        }
    }

    BlockEnd run(bool isStarted) {
        BlockEnd end;
        estimate();
        if (isStarted && isMovingEverywhere()) {
            m_step.balanceFlows();
        } else {
            for (std::size_t leaf = m_block.firstLeaf; leaf < m_block.endLeaf; ++leaf) {
                m_state.flows[leaf] = 0;
            }
            m_step.solve();
            ++end.iterations;
            advance(1);
        }
        double lastStep = INFINITY;
        double beforeLast = INFINITY;
        bool isNear = false;
        while (true) {
            const bool comesNear = !isNear && lastStep < 0.1 * m_largestFlow;
            isNear = isNear || comesNear;
            const double mismatch = linearise(comesNear);
            end.isConverged = isDone(mismatch, lastStep);
            if (end.isConverged || end.iterations >= m_limits.maxIterations) {
                break;
            }
            m_step.solve();
            ++end.iterations;
            const double step = largestStep();
            const double ratio = step / lastStep;
            const bool creeps = step < 0.01 * m_largestFlow && mismatch < 1e-6 * m_scale_Pa &&
                                isSteady(ratio, lastStep / beforeLast);
            const double part = creeps ? 1 / (1 - ratio) : length(step);
            advance(part);
            if (step > 1e-3 * m_largestFlow) {
                // What large steps leave in the last places would spoil the balance of small flows.
                m_step.balanceFlows();
            }
            const bool isClosed = mismatch <= m_limits.dropToleranceFraction * m_scale_Pa;
            m_polished += isClosed ? 1 : 0;
            beforeLast = creeps ? INFINITY : lastStep;
            lastStep = step;
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
            m_state.leafSlopes[leaf] += 1e-12 * m_steepest;
        }
        m_step.fold(true);
    }

    /// A start with still water in it, as of a circuit just opened, is worse than none: no slope there.
    bool isMovingEverywhere() const {
        for (std::size_t leaf = m_block.firstLeaf; leaf < m_block.endLeaf; ++leaf) {
            if (m_state.flows[leaf] == 0) {
                return false;
            }
        }
        return true;
    }

    /// The drops are closed and the step is small enough, or the last places of the drops hide any smaller
    /// one.
    bool isDone(double mismatch_Pa, double step_m3s) const {
        if (m_limits.endsAtHeldFlaps && mismatch_Pa <= kClear * m_scale_Pa &&
            step_m3s <= kClear * m_largestFlow && hasHeldFlap()) {
            return true;
        }
        if (mismatch_Pa > m_limits.dropToleranceFraction * m_scale_Pa) {
            return false;
        }
        return step_m3s <= m_limits.flowToleranceFraction * m_largestFlow ||
               (m_polished >= kMostPolish && step_m3s <= kStirred * m_largestFlow);
    }

    bool hasHeldFlap() const {
        for (std::size_t leaf = m_block.firstLeaf; leaf < m_block.endLeaf; ++leaf) {
            if (m_state.flows[leaf] < 0 && m_state.laws[leaf] != nullptr &&
                hasNonReturn(*m_state.laws[leaf])) {
                return true;
            }
        }
        return false;
    }

    double linearise(bool choosesTree) {
        m_largestFlow = m_leastFlow;
        for (std::size_t leaf = m_block.firstLeaf; leaf < m_block.endLeaf; ++leaf) {
            m_largestFlow = std::max(m_largestFlow, std::abs(m_state.flows[leaf]));
        }
        const double part = std::clamp(1e-3 * m_lastMismatch_Pa / m_scale_Pa, kLeastFloor, kMostFloor);
        const double floor = m_largestFlow > 0 ? part * m_scale_Pa / m_largestFlow : 1e-12 * m_steepest;
        if (!m_isAhead) {
            evaluateAt(0);
        }
        m_isAhead = false;
        for (std::size_t leaf = m_block.firstLeaf; leaf < m_block.endLeaf; ++leaf) {
            m_state.leafSlopes[leaf] += floor;
        }
        m_lastMismatch_Pa = m_step.fold(choosesTree);
        return m_lastMismatch_Pa;
    }

    /// Drops and slopes of all leaves after a part of the step.
    void evaluateAt(double part) {
        for (std::size_t leaf = m_block.firstLeaf; leaf < m_block.endLeaf; ++leaf) {
            const double flow = m_state.flows[leaf] + part * m_state.leafSteps[leaf];
            const DropAndSlope here = m_state.evaluateLeaf(leaf, flow);
            m_state.leafDrops[leaf] = here.drop_Pa;
            m_state.leafSlopes[leaf] = here.slope;
        }
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

    /// Derivative of the content along the step, from the drops at hand.
    double climbHere() const {
        double sum = 0;
        for (std::size_t leaf = m_block.firstLeaf; leaf < m_block.endLeaf; ++leaf) {
            sum += m_state.leafSteps[leaf] * m_state.leafDrops[leaf];
        }
        return sum;
    }

    /// The same after a part of the step.
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
    double length(double largestStep) {
        if (largestStep <= 1e-6 * m_largestFlow) {
            return 1;
        }
        const double atStart = climbHere();
        // Most steps are taken whole, and then this is the next linearisation already.
        evaluateAt(1);
        const double atEnd = climbHere();
        m_isAhead = atEnd <= 0.9 * std::abs(atStart);
        if (m_isAhead) {
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
    double m_leastFlow = 0;
    double m_lastMismatch_Pa = INFINITY;
    bool m_isAhead = false;  ///< drops and slopes are those after the step
    int m_polished = 0;      ///< steps taken with the drops closed
};

}  // namespace

BlockEnd solveBlock(const Plan& plan, const BlockPlan& block, ActiveState& state, BlockStep& step,
                    const BlockLimits& limits, bool isStarted) {
    return Iteration(plan, block, state, step, limits).run(isStarted);
}

}  // namespace ww::hydraulics::detail
