#include "core/hydraulics/solve.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/hydraulics/detail/block_newton.h"
#include "core/hydraulics/detail/network_store.h"
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
          m_plan(options.way == SolveWay::Global ? m_store.plans->unfolded() : m_store.plans->folded()),
          m_flows(network.linkCount(), 0) {}

    Solution run() {
        solveFlows();
        std::vector<double> values(m_store.shape->nodeIds.size(), 0);
        measureMass(values);
        spreadPressures(values);
        measureEnergy(values);
        return {std::move(m_flows), std::move(values), m_summary};
    }

  private:
    void solveFlows() {
        detail::PureFold pure(m_plan.pure, m_store.states.resistances);
        ActiveState state(m_plan.activeLeaves.size(), m_plan.active.size());
        for (std::size_t leaf = 0; leaf < m_plan.activeLeaves.size(); ++leaf) {
            const Code source = m_plan.activeLeaves[leaf];
            const bool isLink = source.kind() == Code::Kind::Leaf;
            const std::uint32_t law =
                isLink ? m_store.states.lawOf[source.index()] : detail::LinkStates::kSquare;
            if (law == detail::LinkStates::kSquare) {
                state.resistances[leaf] = pure.resistanceOf(source);
            } else {
                state.laws[leaf] = &m_store.states.laws[law];
            }
            if (m_options.start != nullptr) {
                state.flows[leaf] = formerFlow(m_plan, source, m_options.start->rawFlows());
            }
        }
        m_summary.outcome = m_plan.blocks.empty() ? SolveOutcome::AtRest : SolveOutcome::Converged;
        m_summary.blocks = m_plan.blocks.size();
        m_summary.workingBytes = pure.bytes() + state.bytes();
        for (const detail::BlockPlan& block : m_plan.blocks) {
            solveOne(block, state);
        }
        for (std::size_t leaf = 0; leaf < m_plan.activeLeaves.size(); ++leaf) {
            pure.seed(m_plan.activeLeaves[leaf], state.flows[leaf], m_flows);
        }
        pure.unfold(m_flows);
    }

    void solveOne(const detail::BlockPlan& block, ActiveState& state) {
        const auto maxDense = static_cast<std::size_t>(m_options.maxDenseLoops);
        detail::BlockStep step(m_plan, block, state, maxDense);
        const detail::BlockLimits limits{m_options.maxIterations, m_options.flowToleranceFraction,
                                         m_options.dropToleranceFraction, maxDense};
        const detail::BlockEnd end =
            detail::solveBlock(m_plan, block, state, step, limits, m_options.start != nullptr);
        m_summary.iterations = std::max(m_summary.iterations, end.iterations);
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
    }

    void measureMass(std::vector<double>& sums) {
        double largestFlow = 0;
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
        for (const std::uint32_t root : m_plan.walkRoots) {
            pressures[root] = shape.hasReference[root] != 0 ? kUnknown : 0;
        }
        for (std::size_t i = 0; i < shape.references.size(); ++i) {
            pressures[shape.references[i]] = shape.referencePressures_Pa[i];
        }
        for (const detail::PressureStep& step : m_plan.walk) {
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
            m_summary.largestDrop =
                std::max(m_summary.largestDrop, PressureDifference::si(std::abs(drop_Pa)));
            const double between_Pa = pressures[shape.from[link]] - pressures[shape.to[link]];
            const auto residual = PressureDifference::si(std::abs(drop_Pa - between_Pa));
            if (residual > m_summary.energyResidual) {
                m_summary.energyResidual = residual;
                m_summary.energyWhere = LinkIndex{link};
            }
        }
    }

    const detail::NetworkStore& m_store;
    const SolveOptions& m_options;
    const Plan& m_plan;
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
