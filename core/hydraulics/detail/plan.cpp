#include "core/hydraulics/detail/plan.h"

#include <algorithm>

#include "core/hydraulics/detail/blocks.h"
#include "core/hydraulics/detail/series_parallel.h"

namespace ww::hydraulics::detail {

namespace {

constexpr std::uint32_t kNone = 0xFFFFFFFFU;

std::uint32_t addItem(Program& program, std::span<const Code> children, bool isParallel) {
    program.children.insert(program.children.end(), children.begin(), children.end());
    program.firstChild.push_back(static_cast<std::uint32_t>(program.children.size()));
    program.isParallel.push_back(isParallel ? 1 : 0);
    return static_cast<std::uint32_t>(program.size() - 1);
}

Code::Kind kindOf(bool isParallel) {
    return isParallel ? Code::Kind::Parallel : Code::Kind::Series;
}

/// Writes the items of one folded block into the plan's two programs in fold order.
class Emission {
  public:
    Emission(const SeriesParallelFold& fold, const PlanInput& input, Plan& plan)
        : m_fold(fold),
          m_input(input),
          m_plan(plan),
          m_emitted(fold.itemCount()),
          m_isPure(fold.itemCount(), 0) {}

    /// The code of an item or link in the active program.
    Code activeCode(Code code) {
        if (code.kind() != Code::Kind::Leaf) {
            emitBelow(code.index());
        }
        if (!isPure(code) && code.kind() != Code::Kind::Leaf) {
            return emittedCode(code);
        }
        return asActiveLeaf(emittedCode(code).reversedIf(code.isReversed())).reversedIf(code.isReversed());
    }

  private:
    struct Frame {
        std::uint32_t item;
        std::vector<Code> children;
        std::size_t next;
    };

    bool isPure(Code code) const {
        return code.kind() == Code::Kind::Leaf ? m_input.isSquare[code.index()] != 0
                                               : m_isPure[code.index()] != 0;
    }

    /// With the item's place in its program, and the sense of `code`.
    Code emittedCode(Code code) const {
        return code.kind() == Code::Kind::Leaf ? code : m_emitted[code.index()].reversedIf(code.isReversed());
    }

    Code asActiveLeaf(Code source) {
        m_plan.activeLeaves.push_back(source);
        return {Code::Kind::Leaf, static_cast<std::uint32_t>(m_plan.activeLeaves.size() - 1)};
    }

    void emitBelow(std::uint32_t root) {
        std::vector<Frame> stack;
        stack.push_back({root, m_fold.childrenOf(root), 0});
        while (!stack.empty()) {
            Frame& frame = stack.back();
            if (frame.next < frame.children.size()) {
                const Code child = frame.children[frame.next++];
                if (child.kind() != Code::Kind::Leaf) {
                    stack.push_back({child.index(), m_fold.childrenOf(child.index()), 0});
                }
                continue;
            }
            emit(frame.item, frame.children);
            stack.pop_back();
        }
    }

    void emit(std::uint32_t item, std::span<const Code> children) {
        const bool isParallel = m_fold.isParallel(item);
        std::vector<Code> pure;
        std::vector<Code> active;
        for (const Code child : children) {
            (isPure(child) ? pure : active).push_back(emittedCode(child));
        }
        if (active.empty()) {
            m_isPure[item] = 1;
            m_emitted[item] = Code(kindOf(isParallel), addItem(m_plan.pure, pure, isParallel));
            return;
        }
        for (Code& child : active) {
            if (child.kind() == Code::Kind::Leaf) {
                child = asActiveLeaf(child.reversedIf(child.isReversed())).reversedIf(child.isReversed());
            }
        }
        if (pure.size() == 1) {
            const Code one = pure.front();
            active.push_back(asActiveLeaf(one.reversedIf(one.isReversed())).reversedIf(one.isReversed()));
        } else if (!pure.empty()) {
            const std::uint32_t together = addItem(m_plan.pure, pure, isParallel);
            active.push_back(asActiveLeaf(Code(kindOf(isParallel), together)));
        }
        m_emitted[item] = Code(kindOf(isParallel), addItem(m_plan.active, active, isParallel));
    }

    const SeriesParallelFold& m_fold;
    const PlanInput& m_input;
    Plan& m_plan;
    std::vector<Code> m_emitted;
    std::vector<std::uint8_t> m_isPure;
};

/// Numbers the nodes of one block from 0 on.
class LocalNodes {
  public:
    explicit LocalNodes(std::uint32_t nodeCount) : m_local(nodeCount, kNone) {}

    std::uint32_t of(std::uint32_t node) {
        if (m_local[node] == kNone) {
            m_local[node] = static_cast<std::uint32_t>(m_used.size());
            m_used.push_back(node);
        }
        return m_local[node];
    }
    std::uint32_t count() const { return static_cast<std::uint32_t>(m_used.size()); }
    void clear() {
        for (const std::uint32_t node : m_used) {
            m_local[node] = kNone;
        }
        m_used.clear();
    }

  private:
    std::vector<std::uint32_t> m_local;
    std::vector<std::uint32_t> m_used;
};

/// Kernel nodes that folding has emptied are left out of the count.
void renumber(BlockPlan& block) {
    std::vector<std::uint32_t> local(block.nodeCount, kNone);
    block.nodeCount = 0;
    const auto of = [&](std::uint32_t node) {
        if (local[node] == kNone) {
            local[node] = block.nodeCount++;
        }
        return local[node];
    };
    for (KernelEdge& edge : block.edges) {
        edge.from = of(edge.from);
        edge.to = of(edge.to);
    }
}

void planBlock(const PlanInput& input, std::span<const std::uint32_t> links, bool folds, LocalNodes& nodes,
               Plan& plan) {
    nodes.clear();
    for (const std::uint32_t link : links) {
        nodes.of(input.from[link]);
        nodes.of(input.to[link]);
    }
    BlockPlan block;
    block.nodeCount = nodes.count();
    block.firstLeaf = static_cast<std::uint32_t>(plan.activeLeaves.size());
    block.firstItem = static_cast<std::uint32_t>(plan.active.size());
    if (folds) {
        SeriesParallelFold fold(nodes.count());
        for (const std::uint32_t link : links) {
            fold.addEdge(nodes.of(input.from[link]), nodes.of(input.to[link]), Code(Code::Kind::Leaf, link),
                         input.isDriver[link] != 0);
        }
        fold.fold();
        block.edges = fold.edges();
        Emission emission(fold, input, plan);
        for (KernelEdge& edge : block.edges) {
            edge.item = emission.activeCode(edge.item);
        }
        renumber(block);
    } else {
        for (const std::uint32_t link : links) {
            const auto leaf = static_cast<std::uint32_t>(plan.activeLeaves.size());
            plan.activeLeaves.emplace_back(Code::Kind::Leaf, link);
            block.edges.push_back(
                {Code(Code::Kind::Leaf, leaf), nodes.of(input.from[link]), nodes.of(input.to[link])});
        }
    }
    block.endLeaf = static_cast<std::uint32_t>(plan.activeLeaves.size());
    block.endItem = static_cast<std::uint32_t>(plan.active.size());
    plan.blocks.push_back(std::move(block));
}

void planWalk(const PlanInput& input, const Incidence& incidence, Plan& plan) {
    std::vector<std::uint8_t> isReached(input.nodeCount, 0);
    std::vector<std::uint32_t> waiting;
    const auto walkFrom = [&](std::uint32_t root) {
        isReached[root] = 1;
        waiting.push_back(root);
        while (!waiting.empty()) {
            const std::uint32_t node = waiting.back();
            waiting.pop_back();
            for (const std::uint32_t link : incidence.at(node)) {
                const std::uint32_t other = input.from[link] == node ? input.to[link] : input.from[link];
                if (isReached[other] == 0) {
                    isReached[other] = 1;
                    plan.walk.push_back({link, other});
                    waiting.push_back(other);
                }
            }
        }
    };
    for (const std::uint32_t node : input.references) {
        if (isReached[node] == 0) {
            walkFrom(node);
        }
    }
    for (std::uint32_t node = 0; node < input.nodeCount; ++node) {
        if (isReached[node] == 0) {
            walkFrom(node);
        }
    }
}

}  // namespace

Plan makePlan(const PlanInput& input, bool folds) {
    Plan plan;
    const Incidence incidence = incidenceOf(input.nodeCount, input.from, input.to, input.isClosed);
    const Blocks blocks = blocksOf(incidence, input.from, input.to);
    LocalNodes nodes(input.nodeCount);
    for (std::size_t b = 0; b < blocks.size(); ++b) {
        const auto links = blocks.at(b);
        const bool isDriven = std::any_of(links.begin(), links.end(),
                                          [&](std::uint32_t link) { return input.isDriver[link] != 0; });
        if (links.size() > 1 && isDriven) {
            planBlock(input, links, folds, nodes, plan);
        }
    }
    planWalk(input, incidence, plan);
    return plan;
}

}  // namespace ww::hydraulics::detail
