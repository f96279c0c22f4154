#include "core/hydraulics/solve.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/hydraulics/detail/block_newton.h"
#include "core/hydraulics/detail/network_store.h"
#include "core/hydraulics/detail/node_sets.h"
#include "core/hydraulics/detail/pure_fold.h"

namespace ww::hydraulics {

namespace {

using detail::ActiveState;
using detail::Code;
using detail::Plan;

constexpr double kUnknown = std::numeric_limits<double>::quiet_NaN();

/// The flow of a link or pure item in a former solution: along a series any child has it.
double formerFlow(const Plan& plan, Code code, const std::vector<double>& flows) {
    double sum = 0;
    std::vector<std::pair<Code, double>> waiting{{code, 1.0}};
    while (!waiting.empty()) {
        const auto [one, sign] = waiting.back();
        waiting.pop_back();
        const double sense = sign * one.sign();
        if (one.kind() == Code::Kind::Leaf) {
            sum += sense * flows[one.index()];
            continue;
        }
        const auto children = plan.pure.childrenOf(one.index());
        const std::size_t count = one.kind() == Code::Kind::Parallel ? children.size() : 1;
        for (std::size_t i = 0; i < count; ++i) {
            waiting.emplace_back(children[i], sense);
        }
    }
    return sum;
}

class Solve {
  public:
    Solve(const Network& network, const SolveOptions& options)
        : m_store(network.store()),
          m_options(options),
          m_plan(&(isFolding() ? m_store.plans->folded() : m_store.plans->unfolded())),
          m_flows(network.linkCount(), 0) {}

    Solution run() {
        std::vector<double> values(m_store.shape->nodeIds.size(), 0);
        if (m_options.start != nullptr) {
            m_start = m_options.start->state().flows_m3s;
        }
        for (int round = 0;; ++round) {
            const bool isLast = round == kMostRounds;
            solveFlows(!isLast);
            if (isLast || !(holdFlaps() || releaseFlaps(values))) {
                break;
            }
            m_start = m_flows;
        }
        measureMass(values);
        spreadPressures(values);
        measureEnergy(values);
        return Solution({std::move(m_flows), std::move(values), std::move(m_held)}, m_summary);
    }

  private:
    static constexpr int kMostRounds = 8;
    static constexpr double kOpens = 4e-15;  ///< part of the largest pump pressure that lifts a flap

    bool isFolding() const { return m_options.way == SolveWay::Fold; }

    /// Takes links out whose flap has been found pressed shut; whether there were any. A flap that alone
    /// joins two parts stays: nothing moves through it then, and the pressures behind it remain known.
    bool holdFlaps() {
        std::vector<std::uint32_t> pressed;
        for (std::uint32_t link = 0; link < m_flows.size(); ++link) {
            const std::uint32_t law = m_store.states.lawOf[link];
            if (m_flows[link] < 0 && law != detail::LinkStates::kSquare &&
                detail::hasNonReturn(m_store.states.laws[law])) {
                pressed.push_back(link);
            }
        }
        if (pressed.empty()) {
            return false;
        }
        detail::NodeSets parts(m_store.shape->nodeIds.size());
        std::vector<std::uint8_t> isOut = m_store.states.isClosed;
        for (const auto* links : {&m_held, &pressed}) {
            for (const std::uint32_t link : *links) {
                isOut[link] = 1;
            }
        }
        for (std::size_t link = 0; link < m_flows.size(); ++link) {
            if (isOut[link] == 0) {
                parts.join(m_store.shape->from[link], m_store.shape->to[link]);
            }
        }
        const std::size_t before = m_held.size();
        for (const std::uint32_t link : pressed) {
            if (!parts.join(m_store.shape->from[link], m_store.shape->to[link])) {
                m_held.push_back(link);
            }
        }
        return m_held.size() > before && replan();
    }

    bool replan() {
        std::sort(m_held.begin(), m_held.end());
        m_ownPlan = m_store.plans->without(m_held, isFolding());
        m_plan = &m_ownPlan;
        return true;
    }

    /// What presses on a held flap, beyond what it holds; negative: it is shut.
    double opening(std::uint32_t link, const std::vector<double>& pressures) const {
        const double across_Pa = pressures[m_store.shape->from[link]] - pressures[m_store.shape->to[link]];
        const double atRest_Pa = m_store.states.evaluateLink(link, 0).drop_Pa;
        return std::isnan(across_Pa) ? 0 : across_Pa - atRest_Pa;
    }

    /// Lets go of flaps that would open again now that others are shut; whether there were any.
    bool releaseFlaps(std::vector<double>& pressures) {
        if (m_held.empty()) {
            return false;
        }
        spreadPressures(pressures);
        double scale_Pa = 0;
        for (std::uint32_t link = 0; link < m_flows.size(); ++link) {
            const double atRest_Pa = std::abs(m_store.states.evaluateLink(link, 0).drop_Pa);
            scale_Pa = m_store.states.isClosed[link] == 0 ? std::max(scale_Pa, atRest_Pa) : scale_Pa;
        }
        const auto opens = [&](std::uint32_t link) { return opening(link, pressures) > kOpens * scale_Pa; };
        const auto kept = std::remove_if(m_held.begin(), m_held.end(), opens);
        if (kept == m_held.end()) {
            return false;
        }
        m_held.erase(kept, m_held.end());
        return replan();
    }

    void solveFlows(bool endsAtHeldFlaps) {
        std::fill(m_flows.begin(), m_flows.end(), 0);
        detail::PureFold pure(m_plan->pure, m_store.states.resistances);
        ActiveState state(m_plan->activeLeaves.size(), m_plan->active.size());
        for (std::size_t leaf = 0; leaf < m_plan->activeLeaves.size(); ++leaf) {
            const Code source = m_plan->activeLeaves[leaf];
            const bool isLink = source.kind() == Code::Kind::Leaf;
            const std::uint32_t law =
                isLink ? m_store.states.lawOf[source.index()] : detail::LinkStates::kSquare;
            if (law == detail::LinkStates::kSquare) {
                state.resistances[leaf] = pure.resistanceOf(source);
            } else {
                state.laws[leaf] = &m_store.states.laws[law];
            }
            if (!m_start.empty()) {
                state.flows[leaf] = formerFlow(*m_plan, source, m_start);
            }
        }
        m_summary.outcome = m_plan->blocks.empty() ? SolveOutcome::AtRest : SolveOutcome::Converged;
        m_summary.blocks = m_plan->blocks.size();
        m_summary.workingBytes = pure.bytes() + state.bytes();
        int iterations = 0;
        for (const detail::BlockPlan& block : m_plan->blocks) {
            iterations = std::max(iterations, solveOne(block, state, endsAtHeldFlaps));
        }
        m_summary.iterations += iterations;
        for (std::size_t leaf = 0; leaf < m_plan->activeLeaves.size(); ++leaf) {
            pure.seed(m_plan->activeLeaves[leaf], state.flows[leaf], m_flows);
        }
        pure.unfold(m_flows);
    }

    /// The Newton steps taken.
    int solveOne(const detail::BlockPlan& block, ActiveState& state, bool endsAtHeldFlaps) {
        detail::BlockLimits limits;
        limits.maxIterations = m_options.maxIterations;
        limits.flowToleranceFraction = m_options.flowToleranceFraction;
        limits.dropToleranceFraction = m_options.dropToleranceFraction;
        limits.maxDenseLoops = static_cast<std::size_t>(m_options.maxDenseLoops);
        limits.endsAtHeldFlaps = endsAtHeldFlaps;
        detail::BlockStep step(*m_plan, block, state, limits.maxDenseLoops);
        const detail::BlockEnd end =
            detail::solveBlock(*m_plan, block, state, step, limits, !m_start.empty());
        m_summary.lastStep = std::max(m_summary.lastStep, VolumeFlow::si(end.lastStep_m3s));
        m_summary.kernelLoops = std::max(m_summary.kernelLoops, step.loops());
        m_summary.workingBytes += step.bytes();
        if (!end.isConverged) {
            m_summary.outcome = SolveOutcome::NotConverged;
        }
        if (!block.isFolded()) {
            const SolveMethod used = step.isDense() ? SolveMethod::LoopNewton : SolveMethod::NodalNewton;
            m_summary.method = std::max(m_summary.method, used);
        }
        return end.iterations;
    }

    void measureMass(std::vector<double>& sums) {
        double largestFlow = 0;
        std::fill(sums.begin(), sums.end(), 0);
        for (std::size_t link = 0; link < m_flows.size(); ++link) {
            sums[m_store.shape->from[link]] -= m_flows[link];
            sums[m_store.shape->to[link]] += m_flows[link];
            largestFlow = std::max(largestFlow, std::abs(m_flows[link]));
        }
        m_summary.largestFlow = VolumeFlow::si(largestFlow);
        for (std::size_t node = 0; node < sums.size(); ++node) {
            const auto residual = VolumeFlow::si(std::abs(sums[node]));
            if (residual > m_summary.massResidual) {
                m_summary.massResidual = residual;
                m_summary.massWhere = NodeIndex{static_cast<std::uint32_t>(node)};
            }
        }
    }

    void spreadPressures(std::vector<double>& pressures) const {
        const detail::Shape& shape = *m_store.shape;
        std::fill(pressures.begin(), pressures.end(), kUnknown);
        for (std::size_t i = 0; i < shape.references.size(); ++i) {
            pressures[shape.references[i]] = shape.referencePressures_Pa[i];
        }
        for (const detail::PressureStep& step : m_plan->walk) {
            const double drop_Pa = m_store.states.evaluateLink(step.link, m_flows[step.link]).drop_Pa;
            const bool isForward = shape.to[step.link] == step.node;
            pressures[step.node] = isForward ? pressures[shape.from[step.link]] - drop_Pa
                                             : pressures[shape.to[step.link]] + drop_Pa;
        }
    }

    void measureEnergy(const std::vector<double>& pressures) {
        const detail::Shape& shape = *m_store.shape;
        for (std::uint32_t link = 0; link < m_flows.size(); ++link) {
            if (m_store.states.isClosed[link] != 0) {
                continue;
            }
            const double drop_Pa = m_store.states.evaluateLink(link, m_flows[link]).drop_Pa;
            const double atRest_Pa = m_store.states.evaluateLink(link, 0).drop_Pa;
            const double larger_Pa = std::max(std::abs(drop_Pa), std::abs(atRest_Pa));
            m_summary.largestPressure =
                std::max(m_summary.largestPressure, PressureDifference::si(larger_Pa));
            const double between_Pa = pressures[shape.from[link]] - pressures[shape.to[link]];
            const bool isHeld = std::binary_search(m_held.begin(), m_held.end(), link);
            const double miss_Pa =
                isHeld ? std::max(0.0, opening(link, pressures)) : std::abs(drop_Pa - between_Pa);
            const auto residual = PressureDifference::si(miss_Pa);
            if (residual > m_summary.energyResidual) {
                m_summary.energyResidual = residual;
                m_summary.energyWhere = LinkIndex{link};
            }
        }
    }

    const detail::NetworkStore& m_store;
    const SolveOptions& m_options;
    const Plan* m_plan;
    Plan m_ownPlan;
    std::vector<double> m_start;
    std::vector<std::uint32_t> m_held;
    std::vector<double> m_flows;
    SolveSummary m_summary;
};

bool isTolerance(double fraction) {
    return fraction >= 1e-14 && fraction <= 1e-3;
}

}  // namespace

Solution solve(const Network& network, const SolveOptions& options) {
    EXPECTS(options.maxIterations >= 1 && options.maxDenseLoops >= 0);
    EXPECTS(isTolerance(options.flowToleranceFraction) && isTolerance(options.dropToleranceFraction));
    EXPECTS(options.start == nullptr || options.start->linkCount() == network.linkCount());
    return Solve(network, options).run();
}

}  // namespace ww::hydraulics
