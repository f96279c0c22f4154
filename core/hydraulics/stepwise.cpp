#include "core/hydraulics/stepwise.h"

#include <cmath>

#include "core/hydraulics/detail/block_newton.h"
#include "core/hydraulics/detail/network_store.h"
#include "core/hydraulics/solve.h"

namespace ww::hydraulics {

namespace {

constexpr std::uint32_t kNoParent = 0xFFFFFFFFU;

}  // namespace

/// The pure items of a network's plan folded, with the way from each link up; what is not pure is solved
/// whole.
class StepwiseLoop::Folded {
  public:
    Folded(const Network& network, const Solution& solution)
        : m_network(network),
          m_store(network.store()),
          m_plan(m_store.plans->folded()),
          m_resistances(m_store.states.resistances),
          m_values(m_plan.pure.size(), 0),
          m_parentOfLink(network.linkCount(), kNoParent),
          m_parentOfItem(m_plan.pure.size(), kNoParent),
          m_leafOfLink(network.linkCount(), kNoParent),
          m_leafOfItem(m_plan.pure.size(), kNoParent),
          m_state(m_plan.activeLeaves.size(), m_plan.active.size()) {
        for (std::uint32_t item = 0; item < m_values.size(); ++item) {
            for (const detail::Code child : m_plan.pure.childrenOf(item)) {
                m_values[item] += part(item, child);
                (isLink(child) ? m_parentOfLink : m_parentOfItem)[child.index()] = item;
            }
        }
        const auto& flows = solution.state().flows_m3s;
        for (std::uint32_t leaf = 0; leaf < m_plan.activeLeaves.size(); ++leaf) {
            const detail::Code code = m_plan.activeLeaves[leaf];
            (isLink(code) ? m_leafOfLink : m_leafOfItem)[code.index()] = leaf;
            m_state.flows[leaf] = formerFlow(code, 1, flows);
            if (isLink(code) && m_store.states.lawOf[code.index()] != detail::LinkStates::kSquare) {
                m_state.laws[leaf] = &m_store.states.laws[m_store.states.lawOf[code.index()]];
            } else {
                m_state.resistances[leaf] = resistanceOf(code);
            }
        }
        m_steps.reserve(m_plan.blocks.size());
        for (const detail::BlockPlan& block : m_plan.blocks) {
            m_steps.emplace_back(m_plan, block, m_state, SolveOptions{}.maxDenseLoops);
        }
    }

    bool isSquare(LinkIndex link) const {
        return m_store.states.lawOf[link.value] == detail::LinkStates::kSquare;
    }

    void turn(LinkIndex link, double resistance) {
        detail::Code code(detail::Code::Kind::Leaf, link.value);
        std::uint32_t parent = m_parentOfLink[link.value];
        double before = parent == kNoParent ? 0 : part(parent, code);
        m_resistances[link.value] = resistance;
        while (parent != kNoParent) {
            const double now = part(parent, code);
            const detail::Code next(m_plan.pure.isParallel[parent] != 0 ? detail::Code::Kind::Parallel
                                                                        : detail::Code::Kind::Series,
                                    parent);
            const std::uint32_t above = m_parentOfItem[parent];
            const double nextBefore = above == kNoParent ? 0 : part(above, next);
            m_values[parent] += now - before;
            code = next;
            parent = above;
            before = nextBefore;
        }
        const std::uint32_t leaf = (isLink(code) ? m_leafOfLink : m_leafOfItem)[code.index()];
        if (leaf != kNoParent) {
            m_state.resistances[leaf] = resistanceOf(code);
        }
        m_isSolved = false;
    }

    /// Nothing where no pump moves water through it, or where a flap would be pressed shut.
    std::optional<double> flow_m3s(LinkIndex link) {
        if (!solve()) {
            return std::nullopt;
        }
        double factor = 1;
        detail::Code code(detail::Code::Kind::Leaf, link.value);
        std::uint32_t parent = m_parentOfLink[link.value];
        while (parent != kNoParent) {
            const bool isParallel = m_plan.pure.isParallel[parent] != 0;
            factor *= signIn(parent, code) * (isParallel ? part(parent, code) / m_values[parent] : 1);
            code =
                detail::Code(isParallel ? detail::Code::Kind::Parallel : detail::Code::Kind::Series, parent);
            parent = m_parentOfItem[parent];
        }
        const std::uint32_t leaf = (isLink(code) ? m_leafOfLink : m_leafOfItem)[code.index()];
        if (leaf == kNoParent) {
            return std::nullopt;
        }
        return factor * m_plan.activeLeaves[leaf].sign() * m_state.flows[leaf];
    }

    double drop_Pa(LinkIndex link, double flow) const {
        return isSquare(link) ? m_resistances[link.value] * std::abs(flow) * flow
                              : m_store.states.evaluateLink(link.value, flow).drop_Pa;
    }

  private:
    static bool isLink(detail::Code code) { return code.kind() == detail::Code::Kind::Leaf; }

    /// What a child adds to its parent: resistance in series, 1/sqrt(resistance) in parallel.
    double part(std::uint32_t parent, detail::Code child) const {
        if (m_plan.pure.isParallel[parent] == 0) {
            return resistanceOf(child);
        }
        return child.kind() == detail::Code::Kind::Parallel ? m_values[child.index()]
                                                            : 1 / std::sqrt(resistanceOf(child));
    }
    double resistanceOf(detail::Code code) const {
        const double value = isLink(code) ? m_resistances[code.index()] : m_values[code.index()];
        return code.kind() == detail::Code::Kind::Parallel ? 1 / (value * value) : value;
    }
    double signIn(std::uint32_t parent, detail::Code child) const {
        for (const detail::Code one : m_plan.pure.childrenOf(parent)) {
            if (one.kind() == child.kind() && one.index() == child.index()) {
                return one.sign();
            }
        }
        return 1;
    }
    double formerFlow(detail::Code code, double sense, const std::vector<double>& flows) const {
        std::vector<std::pair<detail::Code, double>> waiting{{code, sense}};
        double sum = 0;
        while (!waiting.empty()) {
            const auto [one, before] = waiting.back();
            waiting.pop_back();
            const double now = before * one.sign();
            if (isLink(one)) {
                sum += now * flows[one.index()];
                continue;
            }
            const auto children = m_plan.pure.childrenOf(one.index());
            const std::size_t count = one.kind() == detail::Code::Kind::Parallel ? children.size() : 1;
            for (std::size_t i = 0; i < count; ++i) {
                waiting.emplace_back(children[i], now);
            }
        }
        return sum;
    }

    bool solve() {
        if (m_isSolved) {
            return m_isGood;
        }
        detail::BlockLimits limits;
        m_isGood = true;
        for (std::size_t i = 0; i < m_plan.blocks.size(); ++i) {
            m_isGood =
                detail::solveBlock(m_plan, m_plan.blocks[i], m_state, m_steps[i], limits, true).isConverged &&
                m_isGood;
        }
        for (std::size_t leaf = 0; leaf < m_state.flows.size(); ++leaf) {
            const bool isPressed = m_state.laws[leaf] != nullptr &&
                                   detail::hasNonReturn(*m_state.laws[leaf]) &&
                                   m_plan.activeLeaves[leaf].sign() * m_state.flows[leaf] < 0;
            m_isGood = m_isGood && !isPressed;
        }
        m_isSolved = true;
        return m_isGood;
    }

    Network m_network;
    const detail::NetworkStore& m_store;
    const detail::Plan& m_plan;
    std::vector<double> m_resistances;  ///< by link
    std::vector<double> m_values;       ///< by pure item, as in PureFold
    std::vector<std::uint32_t> m_parentOfLink;
    std::vector<std::uint32_t> m_parentOfItem;
    std::vector<std::uint32_t> m_leafOfLink;
    std::vector<std::uint32_t> m_leafOfItem;
    detail::ActiveState m_state;
    std::vector<detail::BlockStep> m_steps;
    bool m_isSolved = false;
    bool m_isGood = false;
};

StepwiseLoop::StepwiseLoop(Network network) : m_network(std::move(network)) {}
StepwiseLoop::~StepwiseLoop() = default;

void StepwiseLoop::turn(const LinkChange& change) {
    m_changes.push_back(change);
    m_whole.reset();
    const bool staysOpen = !change.isClosed && !change.element.isShut() && !m_network.isClosed(change.link);
    const auto* square = std::get_if<detail::SquareLaw>(&change.element.law());
    if (m_folded != nullptr && staysOpen && square != nullptr && m_folded->isSquare(change.link)) {
        m_folded->turn(change.link, square->resistance);
        return;
    }
    m_folded.reset();
    m_isFoldedTried = false;
}

void StepwiseLoop::catchUp() {
    if (!m_changes.empty()) {
        auto changed = m_network.with(m_changes);
        EXPECTS(changed.network.has_value());
        m_network = *std::move(changed.network);
        m_changes.clear();
    }
}

const Solution& StepwiseLoop::whole() {
    if (!m_whole) {
        catchUp();
        m_whole = solve(m_network);
    }
    return *m_whole;
}

StepwiseLoop::Folded* StepwiseLoop::folded() {
    if (m_folded == nullptr && !m_isFoldedTried) {
        m_isFoldedTried = true;
        if (whole().heldShut().empty()) {
            m_folded = std::make_unique<Folded>(m_network, whole());
        }
    }
    return m_folded.get();
}

VolumeFlow StepwiseLoop::flow(LinkIndex link) {
    if (Folded* made = folded()) {
        if (const auto flow = made->flow_m3s(link)) {
            return VolumeFlow::si(*flow);
        }
    }
    return whole().flow(link);
}

std::optional<PressureDifference> StepwiseLoop::drop(LinkIndex link) {
    if (Folded* made = folded()) {
        if (const auto flow = made->flow_m3s(link)) {
            return PressureDifference::si(made->drop_Pa(link, *flow));
        }
    }
    const Solution& solution = whole();
    return solution.drop(m_network, link);
}

}  // namespace ww::hydraulics
