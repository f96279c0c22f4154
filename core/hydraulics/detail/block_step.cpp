#include <algorithm>
#include <cmath>

#include "core/hydraulics/detail/block_newton.h"

namespace ww::hydraulics::detail {

BlockStep::BlockStep(const Plan& plan, const BlockPlan& block, ActiveState& state, std::size_t maxDenseLoops)
    : m_plan(plan), m_block(block), m_state(state), m_kernel(block, maxDenseLoops) {
    if (!block.isFolded()) {
        m_edgeDrops.resize(block.edges.size(), 0);
        m_edgeSlopes.resize(block.edges.size(), 0);
        m_edgeSteps.resize(block.edges.size(), 0);
    }
}

double BlockStep::dropOf(Code code) const {
    const auto& drops = code.kind() == Code::Kind::Leaf ? m_state.leafDrops : m_state.itemDrops;
    return code.sign() * drops[code.index()];
}

double BlockStep::slopeOf(Code code) const {
    return (code.kind() == Code::Kind::Leaf ? m_state.leafSlopes : m_state.itemSlopes)[code.index()];
}

void BlockStep::setStep(Code code, double step) {
    (code.kind() == Code::Kind::Leaf ? m_state.leafSteps : m_state.itemSteps)[code.index()] =
        code.sign() * step;
}

double BlockStep::stepOf(Code code) const {
    const auto& steps = code.kind() == Code::Kind::Leaf ? m_state.leafSteps : m_state.itemSteps;
    return code.sign() * steps[code.index()];
}

double BlockStep::foldParallel(std::size_t item) {
    double conductance = 0;
    double flow = 0;
    double least = INFINITY;
    double largest = -INFINITY;
    for (const Code child : m_plan.active.childrenOf(item)) {
        const double drop = dropOf(child);
        const double slope = slopeOf(child);
        conductance += 1 / slope;
        flow += drop / slope;
        least = std::min(least, drop);
        largest = std::max(largest, drop);
    }
    m_state.itemDrops[item] = flow / conductance;
    m_state.itemSlopes[item] = 1 / conductance;
    return largest - least;
}

double BlockStep::fold(bool choosesTree) {
    const double mismatch = foldItems();
    if (m_block.isFolded()) {
        return mismatch;
    }
    if (choosesTree || m_kernel.isDense() || m_kernel.isTreeStale(m_edgeSlopes)) {
        m_kernel.chooseTree(m_edgeSlopes);
    }
    return std::max(mismatch, m_kernel.mismatch(m_edgeDrops));
}

double BlockStep::foldItems() {
    double mismatch = 0;
    for (std::size_t item = m_block.firstItem; item < m_block.endItem; ++item) {
        if (m_plan.active.isParallel[item] != 0) {
            mismatch = std::max(mismatch, foldParallel(item));
            continue;
        }
        double drop = 0;
        double slope = 0;
        for (const Code child : m_plan.active.childrenOf(item)) {
            drop += dropOf(child);
            slope += slopeOf(child);
        }
        m_state.itemDrops[item] = drop;
        m_state.itemSlopes[item] = slope;
    }
    for (std::size_t edge = 0; edge < m_block.edges.size() && !m_block.isFolded(); ++edge) {
        m_edgeDrops[edge] = dropOf(m_block.edges[edge].item);
        m_edgeSlopes[edge] = slopeOf(m_block.edges[edge].item);
    }
    return mismatch;
}

void BlockStep::unfoldParallel(std::size_t item) {
    const auto children = m_plan.active.childrenOf(item);
    const double total = m_state.itemSteps[item];
    const double drop = m_state.itemDrops[item] + m_state.itemSlopes[item] * total;
    // The child of least slope takes what the others leave: its own division would lose the most digits.
    std::size_t easiest = 0;
    for (std::size_t i = 1; i < children.size(); ++i) {
        easiest = slopeOf(children[i]) < slopeOf(children[easiest]) ? i : easiest;
    }
    double others = 0;
    for (std::size_t i = 0; i < children.size(); ++i) {
        if (i != easiest) {
            const double step = (drop - dropOf(children[i])) / slopeOf(children[i]);
            others += step;
            setStep(children[i], step);
        }
    }
    setStep(children[easiest], total - others);
}

void BlockStep::solve(bool factors) {
    if (m_block.isFolded()) {
        setStep(m_block.edges.front().item, 0);
    } else {
        if (factors) {
            m_kernel.factor(m_edgeSlopes);
        } else {
            m_kernel.mismatch(m_edgeDrops);
        }
        m_kernel.step(m_edgeSlopes, m_edgeSteps);
        for (std::size_t edge = 0; edge < m_block.edges.size(); ++edge) {
            setStep(m_block.edges[edge].item, m_edgeSteps[edge]);
        }
    }
    for (std::size_t item = m_block.endItem; item-- > m_block.firstItem;) {
        if (m_plan.active.isParallel[item] != 0) {
            unfoldParallel(item);
            continue;
        }
        for (const Code child : m_plan.active.childrenOf(item)) {
            setStep(child, m_state.itemSteps[item]);
        }
    }
}

void BlockStep::balanceFlows() {
    // The step arrays carry flows here.
    for (std::size_t leaf = m_block.firstLeaf; leaf < m_block.endLeaf; ++leaf) {
        m_state.leafSteps[leaf] = m_state.flows[leaf];
    }
    for (std::size_t item = m_block.firstItem; item < m_block.endItem; ++item) {
        const auto children = m_plan.active.childrenOf(item);
        double flow = stepOf(children.front());
        for (std::size_t i = 1; i < children.size() && m_plan.active.isParallel[item] != 0; ++i) {
            flow += stepOf(children[i]);
        }
        m_state.itemSteps[item] = flow;
    }
    if (m_block.isFolded()) {
        setStep(m_block.edges.front().item, 0);
    } else {
        for (std::size_t edge = 0; edge < m_block.edges.size(); ++edge) {
            m_edgeSteps[edge] = stepOf(m_block.edges[edge].item);
        }
        m_kernel.balance(m_edgeSteps);
        for (std::size_t edge = 0; edge < m_block.edges.size(); ++edge) {
            setStep(m_block.edges[edge].item, m_edgeSteps[edge]);
        }
    }
    for (std::size_t item = m_block.endItem; item-- > m_block.firstItem;) {
        const auto children = m_plan.active.childrenOf(item);
        double rest = m_state.itemSteps[item];
        std::size_t largest = 0;
        for (std::size_t i = 0; i < children.size(); ++i) {
            if (m_plan.active.isParallel[item] == 0) {
                setStep(children[i], rest);
            } else if (std::abs(stepOf(children[i])) > std::abs(stepOf(children[largest]))) {
                largest = i;
            }
        }
        if (m_plan.active.isParallel[item] != 0) {
            for (std::size_t i = 0; i < children.size(); ++i) {
                rest -= i == largest ? 0 : stepOf(children[i]);
            }
            setStep(children[largest], rest);
        }
    }
    for (std::size_t leaf = m_block.firstLeaf; leaf < m_block.endLeaf; ++leaf) {
        m_state.flows[leaf] = m_state.leafSteps[leaf];
    }
}

std::size_t BlockStep::bytes() const {
    return m_block.isFolded() ? 0 : m_kernel.bytes() + m_edgeDrops.size() * 3 * sizeof(double);
}

}  // namespace ww::hydraulics::detail
