#include "core/hydraulics/detail/blocks.h"

#include <algorithm>

namespace ww::hydraulics::detail {

Incidence incidenceOf(std::uint32_t nodeCount, std::span<const std::uint32_t> from,
                      std::span<const std::uint32_t> to, std::span<const std::uint8_t> isClosed) {
    Incidence out;
    out.first.assign(nodeCount + 1, 0);
    for (std::size_t link = 0; link < from.size(); ++link) {
        if (isClosed[link] == 0) {
            ++out.first[from[link] + 1];
            ++out.first[to[link] + 1];
        }
    }
    for (std::uint32_t node = 0; node < nodeCount; ++node) {
        out.first[node + 1] += out.first[node];
    }
    out.links.resize(out.first.back());
    std::vector<std::uint32_t> next(out.first.begin(), out.first.end() - 1);
    for (std::size_t link = 0; link < from.size(); ++link) {
        if (isClosed[link] == 0) {
            out.links[next[from[link]]++] = static_cast<std::uint32_t>(link);
            out.links[next[to[link]]++] = static_cast<std::uint32_t>(link);
        }
    }
    return out;
}

namespace {

constexpr std::uint32_t kAbsent = 0xFFFFFFFFU;

/// The depth-first walk with its own stack: a riser of 100,000 take-offs is as deep.
class BlockWalk {
  public:
    BlockWalk(const Incidence& incidence, std::span<const std::uint32_t> from,
              std::span<const std::uint32_t> to)
        : m_incidence(incidence),
          m_from(from),
          m_to(to),
          m_order(incidence.first.size() - 1, kAbsent),
          m_low(incidence.first.size() - 1, kAbsent) {}

    Blocks run() {
        for (std::uint32_t root = 0; root < m_order.size(); ++root) {
            if (m_order[root] == kAbsent) {
                walkFrom(root);
            }
        }
        return std::move(m_blocks);
    }

  private:
    struct Frame {
        std::uint32_t node;
        std::uint32_t viaLink;
        std::uint32_t next;  ///< position in the incidence list
    };

    std::uint32_t otherEnd(std::uint32_t link, std::uint32_t node) const {
        return m_from[link] == node ? m_to[link] : m_from[link];
    }

    void enter(std::uint32_t node, std::uint32_t viaLink) {
        m_order[node] = m_low[node] = m_count++;
        m_stack.push_back({node, viaLink, m_incidence.first[node]});
    }

    void walkFrom(std::uint32_t root) {
        enter(root, kAbsent);
        while (!m_stack.empty()) {
            Frame& frame = m_stack.back();
            if (frame.next < m_incidence.first[frame.node + 1]) {
                visit(frame.node, frame.viaLink, m_incidence.links[frame.next++]);
            } else {
                leave();
            }
        }
    }

    void visit(std::uint32_t node, std::uint32_t viaLink, std::uint32_t link) {
        if (link == viaLink) {
            return;
        }
        const std::uint32_t other = otherEnd(link, node);
        if (m_order[other] == kAbsent) {
            m_open.push_back(link);
            enter(other, link);
        } else if (m_order[other] < m_order[node]) {
            m_open.push_back(link);
            m_low[node] = std::min(m_low[node], m_order[other]);
        }
    }

    void leave() {
        const Frame done = m_stack.back();
        m_stack.pop_back();
        if (m_stack.empty()) {
            return;
        }
        const std::uint32_t parent = m_stack.back().node;
        m_low[parent] = std::min(m_low[parent], m_low[done.node]);
        if (m_low[done.node] < m_order[parent]) {
            return;
        }
        std::uint32_t link = kAbsent;
        while (link != done.viaLink) {
            link = m_open.back();
            m_open.pop_back();
            m_blocks.links.push_back(link);
        }
        m_blocks.first.push_back(static_cast<std::uint32_t>(m_blocks.links.size()));
    }

    const Incidence& m_incidence;
    std::span<const std::uint32_t> m_from;
    std::span<const std::uint32_t> m_to;
    std::vector<std::uint32_t> m_order;
    std::vector<std::uint32_t> m_low;
    std::vector<Frame> m_stack;
    std::vector<std::uint32_t> m_open;
    std::uint32_t m_count = 0;
    Blocks m_blocks;
};

}  // namespace

Blocks blocksOf(const Incidence& incidence, std::span<const std::uint32_t> from,
                std::span<const std::uint32_t> to) {
    return BlockWalk(incidence, from, to).run();
}

}  // namespace ww::hydraulics::detail
