// Biconnected blocks of the graph of open links: flows of one block do not depend on another's.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

namespace ww::hydraulics::detail {

/// Links at each node: links of node n stand at links[first[n]] .. links[first[n + 1]).
struct Incidence {
    std::vector<std::uint32_t> first;
    std::vector<std::uint32_t> links;

    std::span<const std::uint32_t> at(std::uint32_t node) const {
        return {links.data() + first[node], links.data() + first[node + 1]};
    }
};

/// Of the links that are not closed.
Incidence incidenceOf(std::uint32_t nodeCount, std::span<const std::uint32_t> from,
                      std::span<const std::uint32_t> to, std::span<const std::uint8_t> isClosed);

/// The links of each block, one list after another: block b is links[first[b]] .. links[first[b + 1]).
struct Blocks {
    std::vector<std::uint32_t> first = {0};
    std::vector<std::uint32_t> links;

    std::size_t size() const { return first.size() - 1; }
    std::span<const std::uint32_t> at(std::size_t block) const {
        return {links.data() + first[block], links.data() + first[block + 1]};
    }
};

/// R. Tarjan, SIAM J. Comput. 1 (1972) 146, without recursion; parallel links are one block.
Blocks blocksOf(const Incidence& incidence, std::span<const std::uint32_t> from,
                std::span<const std::uint32_t> to);

}  // namespace ww::hydraulics::detail
