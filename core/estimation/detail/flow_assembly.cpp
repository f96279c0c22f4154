#include "core/estimation/detail/flow_assembly.h"

#include <Eigen/OrderingMethods>
#include <Eigen/SparseCore>
#include <algorithm>
#include <cmath>

#include "core/hydraulics/sensitivity.h"

namespace ww::estimation::detail {

using hydraulics::LinkIndex;
using hydraulics::LinkState;
using hydraulics::NodeIndex;

namespace {

constexpr std::uint32_t kNone = 0xFFFFFFFFU;
/// An unknown that touches more nodes than this is eliminated last.
constexpr std::size_t kMostLocalNodes = 8;
/// Slopes below this part of pressure over flow count as that, so that no conductance is endless.
constexpr double kLeastSlope = 1e-10;
/// The root of a node's part.
std::uint32_t rootOf(std::vector<std::uint32_t>& parents, std::uint32_t node) {
    while (parents[node] != node) {
        parents[node] = parents[parents[node]];
        node = parents[node];
    }
    return node;
}

bool isOpen(const CaseState& state, LinkIndex link) {
    if (state.network.isClosed(link)) {
        return false;
    }
    return state.solution.state(state.network, link) != LinkState::HeldShut;
}

/// For every node the one whose pressure its part is measured from: the node with most links.
std::vector<std::uint8_t> grounds(const CaseState& state) {
    const std::size_t nodes = state.network.nodeCount();
    std::vector<std::uint32_t> parents(nodes);
    std::vector<std::uint32_t> degrees(nodes, 0);
    for (std::uint32_t node = 0; node < nodes; ++node) {
        parents[node] = node;
    }
    for (std::uint32_t link = 0; link < state.network.linkCount(); ++link) {
        if (isOpen(state, LinkIndex{link})) {
            const std::uint32_t from = state.network.from(LinkIndex{link}).value;
            const std::uint32_t to = state.network.to(LinkIndex{link}).value;
            ++degrees[from];
            ++degrees[to];
            parents[rootOf(parents, from)] = rootOf(parents, to);
        }
    }
    std::vector<std::uint32_t> best(nodes, kNone);
    for (std::uint32_t node = 0; node < nodes; ++node) {
        std::uint32_t& ofPart = best[rootOf(parents, node)];
        if (ofPart == kNone || degrees[node] > degrees[ofPart]) {
            ofPart = node;
        }
    }
    std::vector<std::uint8_t> out(nodes, 0);
    for (const std::uint32_t node : best) {
        if (node != kNone) {
            out[node] = 1;
        }
    }
    return out;
}

}  // namespace

FlowAssembly::FlowAssembly(const Learning& learning, const FreeUnknowns& unknowns,
                           std::span<const std::size_t> cases, std::span<const CaseState* const> states)
    : m_learning(learning),
      m_unknowns(unknowns),
      m_cases(cases),
      m_states(states),
      m_nodes(states.front()->network.nodeCount()) {
    numberVariables();
    collectUses();
    for (std::size_t position = 0; position < cases.size(); ++position) {
        addLinks(position);
    }
    for (Eigen::Index free = 0; free < unknowns.count(); ++free) {
        MatrixTerm prior({static_cast<std::uint32_t>(free)});
        prior.at(0, 0) = 1;
        m_terms.push_back(std::move(prior));
    }
}

void FlowAssembly::numberVariables() {
    m_variables = static_cast<std::uint32_t>(m_unknowns.count());
    m_pressureOf.assign(m_cases.size() * m_nodes, kNone);
    for (std::size_t position = 0; position < m_cases.size(); ++position) {
        const auto isGround = grounds(*m_states[position]);
        for (std::uint32_t node = 0; node < m_nodes; ++node) {
            if (isGround[node] == 0) {
                m_pressureOf[position * m_nodes + node] = m_variables;
                m_variables += 2;  // the pressure and the multiplier of its balance
            }
        }
    }
}

void FlowAssembly::collectUses() {
    m_usesOf.resize(m_states.front()->network.linkCount());
    for (Eigen::Index free = 0; free < m_unknowns.count(); ++free) {
        const std::size_t unknown = m_unknowns.unknownOf[static_cast<std::size_t>(free)];
        for (const ScaledLink& scaled : m_learning.unknowns[unknown].links) {
            m_usesOf[scaled.link.value].push_back({static_cast<std::uint32_t>(free), &scaled});
        }
    }
}

SparseRow FlowAssembly::dropRow(std::size_t position, LinkIndex link) const {
    SparseRow row;
    const auto& network = m_states[position]->network;
    for (const auto& [node, sign] : {std::pair(network.from(link), 1.0), std::pair(network.to(link), -1.0)}) {
        const std::uint32_t pressure = pressureOf(position, node);
        if (pressure != kNone) {
            row.variables.push_back(pressure);
            row.weights.push_back(sign);
        }
    }
    return row;
}

SparseRow FlowAssembly::flowRow(std::size_t position, LinkIndex link) const {
    const CaseState& state = *m_states[position];
    const double pressure_Pa = state.solution.summary().largestPressure.si();
    const double largest_m3s = state.solution.summary().largestFlow.si();
    const VolumeFlow flow = state.solution.flow(link);
    SparseRow row = dropRow(position, link);
    double conductance = 1;
    const bool isAtRest = flow.si() == 0;
    if (!isAtRest) {
        const double scale = pressure_Pa / largest_m3s;
        const hydraulics::Element element = state.network.element(link);
        conductance = scale / std::max(element.slope(flow).si(), kLeastSlope * scale);
        for (const Use& use : m_usesOf[link.value]) {
            const std::size_t unknown = m_unknowns.unknownOf[use.free];
            const double weight = use.scaled->weightIn(m_cases[position]) * m_unknowns.priorSds[unknown];
            const double push_Pa = hydraulics::dropPerLogarithm(element, use.scaled->kind, flow).si();
            row.variables.push_back(use.free);
            row.weights.push_back(-weight * push_Pa / pressure_Pa);
        }
    }
    for (double& weight : row.weights) {
        weight *= conductance;
    }
    return row;
}

void FlowAssembly::addLinks(std::size_t position) {
    const CaseState& state = *m_states[position];
    for (std::uint32_t index = 0; index < state.network.linkCount(); ++index) {
        const LinkIndex link{index};
        if (!isOpen(state, link)) {
            continue;
        }
        const SparseRow row = flowRow(position, link);
        const std::size_t size = row.variables.size();
        const std::uint32_t from = pressureOf(position, state.network.from(link));
        const std::uint32_t to = pressureOf(position, state.network.to(link));
        std::vector<std::pair<std::uint32_t, double>> balances;
        if (from != kNone) {
            balances.emplace_back(from + 1, 1.0);
        }
        if (to != kNone) {
            balances.emplace_back(to + 1, -1.0);
        }
        std::vector<std::uint32_t> variables = row.variables;
        for (const auto& [multiplier, sign] : balances) {
            variables.push_back(multiplier);
        }
        MatrixTerm balance(std::move(variables));
        for (std::size_t i = 0; i < balances.size(); ++i) {
            for (std::size_t j = 0; j < size; ++j) {
                balance.addBoth(size + i, j, balances[i].second * row.weights[j]);
            }
        }
        m_terms.push_back(std::move(balance));
    }
}

SparseRow FlowAssembly::addProbe(const FlowProbe& probe) {
    const auto at = std::find(m_cases.begin(), m_cases.end(), probe.caseIndex);
    const auto position = static_cast<std::size_t>(at - m_cases.begin());
    const hydraulics::Solution& solution = m_states[position]->solution;
    SparseRow row = flowRow(position, probe.link);
    for (double& one : row.weights) {
        one *= solution.summary().largestFlow / solution.flow(probe.link);
    }
    for (const auto& [unknown, weight] : probe.besides) {
        if (m_unknowns.freeOf[unknown] != FreeUnknowns::kHeld) {
            row.variables.push_back(static_cast<std::uint32_t>(m_unknowns.freeOf[unknown]));
            row.weights.push_back(weight * m_unknowns.priorSds[unknown]);
        }
    }
    m_terms.emplace_back(row.variables);
    return row;
}

SparseRow FlowAssembly::addReading(const Observation& observation, double weight) {
    const auto at = std::find(m_cases.begin(), m_cases.end(), observation.caseIndex);
    const auto position = static_cast<std::size_t>(at - m_cases.begin());
    const CaseState& state = *m_states[position];
    const double fitted = fittedSi(state, observation).value_or(0);
    const double ln = observation.lnValueRatio().value_or(std::log(std::max(std::abs(fitted), 1e-300)));
    double factor = logValue(fitted, ln).perSi * (observation.what == Observed::Rise ? -1 : 1);
    SparseRow row;
    if (observation.what == Observed::Flow) {
        row = flowRow(position, observation.link);
        factor *= state.solution.summary().largestFlow.si();
    } else {
        row = dropRow(position, observation.link);
        factor *= state.solution.summary().largestPressure.si();
    }
    for (double& one : row.weights) {
        one *= factor;
    }
    if (observation.instrument && m_unknowns.freeOf[*observation.instrument] != FreeUnknowns::kHeld) {
        row.variables.push_back(static_cast<std::uint32_t>(m_unknowns.freeOf[*observation.instrument]));
        row.weights.push_back(m_unknowns.priorSds[*observation.instrument]);
    }
    MatrixTerm term(row.variables);
    for (std::size_t i = 0; i < row.variables.size(); ++i) {
        for (std::size_t j = 0; j < row.variables.size(); ++j) {
            term.at(i, j) = weight * row.weights[i] * row.weights[j];
        }
    }
    m_terms.push_back(std::move(term));
    return row;
}

std::vector<std::vector<std::uint32_t>> FlowAssembly::groups() const {
    const auto count = static_cast<std::uint32_t>(m_unknowns.count());
    std::vector<std::uint32_t> nodeOf(m_variables, kNone);
    for (std::size_t at = 0; at < m_pressureOf.size(); ++at) {
        if (m_pressureOf[at] != kNone) {
            nodeOf[m_pressureOf[at]] = nodeOf[m_pressureOf[at] + 1] =
                static_cast<std::uint32_t>(at % m_nodes);
        }
    }
    // Nodes that meet in a term, and those that each unknown meets.
    std::vector<std::vector<std::uint32_t>> metBy(count);
    std::vector<Eigen::Triplet<double>> pairs;
    const auto join = [&pairs](const std::vector<std::uint32_t>& nodes) {
        for (const std::uint32_t one : nodes) {
            for (const std::uint32_t other : nodes) {
                pairs.emplace_back(static_cast<int>(one), static_cast<int>(other), 1.0);
            }
        }
    };
    for (const MatrixTerm& term : m_terms) {
        std::vector<std::uint32_t> nodes;
        for (const std::uint32_t variable : term.variables) {
            if (nodeOf[variable] != kNone &&
                std::find(nodes.begin(), nodes.end(), nodeOf[variable]) == nodes.end()) {
                nodes.push_back(nodeOf[variable]);
            }
        }
        join(nodes);
        for (const std::uint32_t variable : term.variables) {
            if (variable < count) {
                metBy[variable].insert(metBy[variable].end(), nodes.begin(), nodes.end());
            }
        }
    }
    for (auto& nodes : metBy) {
        std::sort(nodes.begin(), nodes.end());
        nodes.erase(std::unique(nodes.begin(), nodes.end()), nodes.end());
        if (nodes.size() <= kMostLocalNodes) {
            join(nodes);
        }
    }
    Eigen::SparseMatrix<double> pattern(static_cast<Eigen::Index>(m_nodes),
                                        static_cast<Eigen::Index>(m_nodes));
    pattern.setFromTriplets(pairs.begin(), pairs.end());
    Eigen::PermutationMatrix<Eigen::Dynamic, Eigen::Dynamic, int> order;
    Eigen::AMDOrdering<int>()(pattern, order);

    std::vector<std::uint32_t> turnOf(m_nodes);
    for (std::uint32_t turn = 0; turn < m_nodes; ++turn) {
        turnOf[static_cast<std::size_t>(order.indices()[turn])] = turn;
    }
    std::vector<std::vector<std::uint32_t>> out(m_nodes + 1);
    for (std::uint32_t variable = count; variable < m_variables; ++variable) {
        out[turnOf[nodeOf[variable]]].push_back(variable);
    }
    for (std::uint32_t unknown = 0; unknown < count; ++unknown) {
        const auto& nodes = metBy[unknown];
        std::uint32_t turn = static_cast<std::uint32_t>(m_nodes);
        if (nodes.size() <= kMostLocalNodes) {
            for (const std::uint32_t node : nodes) {
                turn = std::min(turn, turnOf[node]);
            }
        }
        out[turn].push_back(unknown);
    }
    return out;
}

}  // namespace ww::estimation::detail
