// Which nodes hang together, as links are added one by one.
#pragma once

#include <cstdint>
#include <numeric>
#include <vector>

namespace ww::hydraulics::detail {

/// Disjoint sets with path halving.
class NodeSets {
  public:
    explicit NodeSets(std::size_t count) : m_parent(count) {
        std::iota(m_parent.begin(), m_parent.end(), 0U);
    }

    /// A node that stands for the whole set.
    std::uint32_t of(std::uint32_t node) {
        while (m_parent[node] != node) {
            m_parent[node] = m_parent[m_parent[node]];
            node = m_parent[node];
        }
        return node;
    }
    /// Whether the two were in different sets before.
    bool join(std::uint32_t a, std::uint32_t b) {
        a = of(a);
        b = of(b);
        m_parent[a] = b;
        return a != b;
    }

  private:
    std::vector<std::uint32_t> m_parent;
};

}  // namespace ww::hydraulics::detail
