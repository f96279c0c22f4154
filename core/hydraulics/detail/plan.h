// How one network is solved, found once from its shape: which links are at rest, and how the rest folds into
// series and parallel items down to an irreducible kernel.
// Holds no resistance and no flow: it serves every state with the same closed links and kinds of law.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

namespace ww::hydraulics::detail {

/// A link, a series or a parallel item, with the sense in which its parent runs through it.
class Code {
  public:
    enum class Kind : std::uint32_t { Leaf = 0, Series = 1, Parallel = 2 };

    Code() = default;
    Code(Kind kind, std::uint32_t index, bool isReversed = false)
        : m_bits(index | (static_cast<std::uint32_t>(kind) << 29) | (isReversed ? kReversed : 0)) {}

    Kind kind() const { return static_cast<Kind>((m_bits >> 29) & 3U); }
    std::uint32_t index() const { return m_bits & kIndexMask; }
    bool isReversed() const { return (m_bits & kReversed) != 0; }
    double sign() const { return isReversed() ? -1.0 : 1.0; }
    Code reversedIf(bool flip) const { return flip ? Code(kind(), index(), !isReversed()) : *this; }

  private:
    static constexpr std::uint32_t kReversed = 1U << 31;
    static constexpr std::uint32_t kIndexMask = (1U << 29) - 1;
    std::uint32_t m_bits = 0;
};

/// Series and parallel items in fold order: children stand before their parents.
struct Program {
    std::vector<std::uint32_t> firstChild = {0};  ///< one more than there are items
    std::vector<Code> children;
    std::vector<std::uint8_t> isParallel;

    std::size_t size() const { return isParallel.size(); }
    std::span<const Code> childrenOf(std::size_t item) const {
        return {children.data() + firstChild[item], children.data() + firstChild[item + 1]};
    }
    std::size_t bytes() const {
        return firstChild.size() * sizeof(std::uint32_t) + children.size() * sizeof(Code) + isParallel.size();
    }
};

/// An item of the active program between two nodes of a kernel.
struct KernelEdge {
    Code item;
    std::uint32_t from = 0;
    std::uint32_t to = 0;
};

/// One biconnected block in which a driver runs. One edge between two nodes is a fully folded block: its item
/// is a parallel one without outside flow.
struct BlockPlan {
    std::uint32_t firstLeaf = 0;
    std::uint32_t endLeaf = 0;
    std::uint32_t firstItem = 0;
    std::uint32_t endItem = 0;
    std::uint32_t nodeCount = 0;
    std::vector<KernelEdge> edges;

    bool isFolded() const { return edges.size() == 1; }
};

/// A step of the walk that spreads pressures from the reference nodes over open links.
struct PressureStep {
    std::uint32_t link = 0;
    std::uint32_t node = 0;  ///< reached by this step
};

struct Plan {
    Program pure;                    ///< items of square laws only; leaves are links
    std::vector<Code> activeLeaves;  ///< a link (Leaf) or a pure item each
    Program active;                  ///< leaves are positions in activeLeaves
    std::vector<BlockPlan> blocks;
    std::vector<PressureStep> walk;

    std::size_t bytes() const {
        std::size_t total = pure.bytes() + active.bytes() + activeLeaves.size() * sizeof(Code) +
                            walk.size() * sizeof(PressureStep);
        for (const BlockPlan& block : blocks) {
            total += sizeof(BlockPlan) + block.edges.size() * sizeof(KernelEdge);
        }
        return total;
    }
};

/// What a plan is made from. All spans have one entry a link.
struct PlanInput {
    std::uint32_t nodeCount = 0;
    std::span<const std::uint32_t> from;
    std::span<const std::uint32_t> to;
    std::span<const std::uint8_t> isClosed;
    std::span<const std::uint8_t> isSquare;
    std::span<const std::uint8_t> isDriver;
    std::span<const std::uint32_t> references;  ///< nodes
};

/// `folds` false leaves every link of a block as an edge of its kernel.
Plan makePlan(const PlanInput& input, bool folds);

}  // namespace ww::hydraulics::detail
