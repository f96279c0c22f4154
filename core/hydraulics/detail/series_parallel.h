// Folds one block: two links after each other become a series item, two beside each other a parallel one,
// until one item or an irreducible kernel is left.
#pragma once

#include <cstdint>
#include <unordered_map>
#include <vector>

#include "core/hydraulics/detail/plan.h"

namespace ww::hydraulics::detail {

/// J. Valdes, R. Tarjan, E. Lawler, SIAM J. Comput. 11 (1982) 298, on the undirected block. Linear in the
/// number of links. Items made here are numbered as they are made, not yet in fold order.
class SeriesParallelFold {
  public:
    explicit SeriesParallelFold(std::uint32_t nodeCount) : m_ends(nodeCount, kNone), m_degree(nodeCount, 0) {}

    void addEdge(std::uint32_t from, std::uint32_t to, Code item, bool hasDriver);
    /// Folds as far as possible: first what has no driver, so that a pump ends up beside one item of all its
    /// circuits and not deep inside the items along a riser.
    void fold();
    /// What is left.
    std::vector<KernelEdge> edges() const;

    std::size_t itemCount() const { return m_items.size(); }
    bool isParallel(std::uint32_t item) const { return m_items[item].isParallel; }
    std::vector<Code> childrenOf(std::uint32_t item) const;

  private:
    static constexpr std::uint32_t kNone = 0xFFFFFFFFU;

    struct Item {
        std::uint32_t head = kNone;
        std::uint32_t tail = kNone;
        bool isParallel = false;
    };
    struct Child {
        Code code;
        std::uint32_t next = kNone;
    };
    struct Edge {
        std::uint32_t node[2];
        std::uint32_t next[2];  ///< in the list of ends at node[i]; an end is 2 * edge + i
        std::uint32_t previous[2];
        Code item;
        bool hasDriver = false;
        bool isAlive = true;
    };

    static std::uint64_t key(std::uint32_t a, std::uint32_t b);
    void attach(std::uint32_t end);
    void detach(std::uint32_t end);
    void place(std::uint32_t edge);
    void remove(std::uint32_t edge);
    void mergeParallel(std::uint32_t into, std::uint32_t from);
    void mergeSeriesAt(std::uint32_t node);
    void foldNodes(bool withDrivers);
    bool touchesDriver(std::uint32_t node) const;
    Code joined(bool isParallel, Code first, Code second);
    void append(std::uint32_t item, Code child);

    std::vector<Edge> m_edges;
    std::vector<std::uint32_t> m_ends;  ///< first end at each node
    std::vector<std::uint32_t> m_degree;
    std::vector<Item> m_items;
    std::vector<Child> m_children;
    std::unordered_map<std::uint64_t, std::uint32_t> m_between;
    std::vector<std::uint32_t> m_waiting;  ///< nodes to look at
};

}  // namespace ww::hydraulics::detail
