#include "core/hydraulics/detail/series_parallel.h"

#include <algorithm>

namespace ww::hydraulics::detail {

std::uint64_t SeriesParallelFold::key(std::uint32_t a, std::uint32_t b) {
    return (static_cast<std::uint64_t>(std::min(a, b)) << 32) | std::max(a, b);
}

void SeriesParallelFold::attach(std::uint32_t end) {
    Edge& edge = m_edges[end / 2];
    const std::uint32_t node = edge.node[end % 2];
    const std::uint32_t first = m_ends[node];
    edge.next[end % 2] = first;
    edge.previous[end % 2] = kNone;
    if (first != kNone) {
        m_edges[first / 2].previous[first % 2] = end;
    }
    m_ends[node] = end;
    ++m_degree[node];
}

void SeriesParallelFold::detach(std::uint32_t end) {
    const Edge& edge = m_edges[end / 2];
    const std::uint32_t node = edge.node[end % 2];
    const std::uint32_t next = edge.next[end % 2];
    const std::uint32_t previous = edge.previous[end % 2];
    if (next != kNone) {
        m_edges[next / 2].previous[next % 2] = previous;
    }
    if (previous != kNone) {
        m_edges[previous / 2].next[previous % 2] = next;
    } else {
        m_ends[node] = next;
    }
    --m_degree[node];
}

void SeriesParallelFold::addEdge(std::uint32_t from, std::uint32_t to, Code item, bool hasDriver) {
    m_edges.push_back({{from, to}, {kNone, kNone}, {kNone, kNone}, item, hasDriver, true});
    place(static_cast<std::uint32_t>(m_edges.size() - 1));
}

/// Puts an edge into the lists, or into the edge that already lies between its nodes.
void SeriesParallelFold::place(std::uint32_t edge) {
    const auto [from, to] = m_edges[edge].node;
    const auto [found, isNew] = m_between.try_emplace(key(from, to), edge);
    if (!isNew) {
        mergeParallel(found->second, edge);
        return;
    }
    attach(2 * edge);
    attach(2 * edge + 1);
}

void SeriesParallelFold::remove(std::uint32_t edge) {
    m_between.erase(key(m_edges[edge].node[0], m_edges[edge].node[1]));
    detach(2 * edge);
    detach(2 * edge + 1);
    m_edges[edge].isAlive = false;
}

void SeriesParallelFold::append(std::uint32_t item, Code child) {
    const auto position = static_cast<std::uint32_t>(m_children.size());
    m_children.push_back({child, kNone});
    if (m_items[item].head == kNone) {
        m_items[item].head = position;
    } else {
        m_children[m_items[item].tail].next = position;
    }
    m_items[item].tail = position;
}

/// The item of both, run through in the sense of `first`: an item of the same kind grows, anything else
/// starts a new one.
Code SeriesParallelFold::joined(bool isParallel, Code first, Code second) {
    const Code::Kind kind = isParallel ? Code::Kind::Parallel : Code::Kind::Series;
    if (first.kind() == kind) {
        append(first.index(), second.reversedIf(first.isReversed()));
        return first;
    }
    if (second.kind() == kind) {
        append(second.index(), first.reversedIf(second.isReversed()));
        return second;
    }
    const auto item = static_cast<std::uint32_t>(m_items.size());
    m_items.push_back({kNone, kNone, isParallel});
    append(item, first);
    append(item, second);
    return {kind, item};
}

void SeriesParallelFold::mergeParallel(std::uint32_t into, std::uint32_t from) {
    const bool isOpposite = m_edges[into].node[0] != m_edges[from].node[0];
    m_edges[into].item = joined(true, m_edges[into].item, m_edges[from].item.reversedIf(isOpposite));
    m_edges[into].hasDriver = m_edges[into].hasDriver || m_edges[from].hasDriver;
    m_edges[from].isAlive = false;
    m_waiting.push_back(m_edges[into].node[0]);
    m_waiting.push_back(m_edges[into].node[1]);
}

void SeriesParallelFold::mergeSeriesAt(std::uint32_t node) {
    const std::uint32_t firstEnd = m_ends[node];
    const std::uint32_t secondEnd = m_edges[firstEnd / 2].next[firstEnd % 2];
    const std::uint32_t first = firstEnd / 2;
    const std::uint32_t second = secondEnd / 2;
    const std::uint32_t start = m_edges[first].node[1 - firstEnd % 2];
    const std::uint32_t end = m_edges[second].node[1 - secondEnd % 2];
    // From start through node to end: each edge is reversed where it points the other way.
    const Code into = m_edges[first].item.reversedIf(firstEnd % 2 == 0);
    const Code onward = m_edges[second].item.reversedIf(secondEnd % 2 == 1);
    remove(first);
    remove(second);
    m_edges[first].node[0] = start;
    m_edges[first].node[1] = end;
    m_edges[first].item = joined(false, into, onward);
    m_edges[first].hasDriver = m_edges[first].hasDriver || m_edges[second].hasDriver;
    m_edges[first].isAlive = true;
    place(first);
}

/// Of a node with two edges.
bool SeriesParallelFold::touchesDriver(std::uint32_t node) const {
    const std::uint32_t end = m_ends[node];
    const std::uint32_t other = m_edges[end / 2].next[end % 2];
    return m_edges[end / 2].hasDriver || m_edges[other / 2].hasDriver;
}

void SeriesParallelFold::fold() {
    foldNodes(false);
    foldNodes(true);
}

void SeriesParallelFold::foldNodes(bool withDrivers) {
    for (std::uint32_t node = 0; node < m_ends.size(); ++node) {
        m_waiting.push_back(node);
    }
    // Taken from the back: the far end of a riser folds towards the pump in one run.
    while (!m_waiting.empty()) {
        const std::uint32_t node = m_waiting.back();
        m_waiting.pop_back();
        if (m_degree[node] == 2 && (withDrivers || !touchesDriver(node))) {
            mergeSeriesAt(node);
        }
    }
}

std::vector<KernelEdge> SeriesParallelFold::edges() const {
    std::vector<KernelEdge> out;
    for (const Edge& edge : m_edges) {
        if (edge.isAlive) {
            out.push_back({edge.item, edge.node[0], edge.node[1]});
        }
    }
    return out;
}

std::vector<Code> SeriesParallelFold::childrenOf(std::uint32_t item) const {
    std::vector<Code> out;
    for (std::uint32_t at = m_items[item].head; at != kNone; at = m_children[at].next) {
        out.push_back(m_children[at].code);
    }
    return out;
}

}  // namespace ww::hydraulics::detail
