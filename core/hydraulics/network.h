// A closed loop as a graph: nodes joined by links that carry an element each. Never changed once made.
// Made by network_builder.h; solved by solve.h. Not the record of a job (project/).
#pragma once

#include <compare>
#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/hydraulics/element.h"

namespace ww::hydraulics {

namespace detail {
struct NetworkStore;
}

/// Position of a node or link in its network, in the order in which it was added.
struct NodeIndex {
    std::uint32_t value = 0;
    auto operator<=>(const NodeIndex&) const = default;
};
struct LinkIndex {
    std::uint32_t value = 0;
    auto operator<=>(const LinkIndex&) const = default;
};

/// A new state of one link.
struct LinkChange {
    LinkIndex link;
    Element element;
    bool isClosed = false;
};

/// What the network's parts take of memory, in bytes.
struct NetworkMemory {
    std::size_t laws = 0;  ///< ends, laws and states of the links
    std::size_t plan = 0;  ///< how it folds
};

/// Cheap to copy: copies share everything. May be read from any thread.
class Network {
  public:
    /// Indices run from 0 below these.
    std::size_t nodeCount() const;
    std::size_t linkCount() const;
    /// Nothing where no node, no link has this name.
    std::optional<NodeIndex> findNode(std::string_view id) const;
    std::optional<LinkIndex> findLink(std::string_view id) const;
    /// Names as given to the builder; an index beyond the count is a broken contract, here and below.
    const std::string& nodeId(NodeIndex node) const;
    const std::string& linkId(LinkIndex link) const;
    /// The ends of a link: positive flow leaves `from`.
    NodeIndex from(LinkIndex link) const;
    NodeIndex to(LinkIndex link) const;
    /// The law of a link that is not closed; a closed one has none.
    Element element(LinkIndex link) const;
    /// No flow can pass: closed, or its element is shut.
    bool isClosed(LinkIndex link) const;

    /// The same loop with some links in another state; a link named twice takes the last. The shape is
    /// shared, and how it folds as well while the same links are closed. Every faulty element is reported,
    /// with its link as subject, and then nothing is changed.
    struct Changed;
    Changed with(std::span<const LinkChange> changes) const;

    NetworkMemory memory() const;

    /// For the other files of this folder.
    const detail::NetworkStore& store() const { return *m_store; }
    explicit Network(std::shared_ptr<const detail::NetworkStore> store) : m_store(std::move(store)) {}

  private:
    std::shared_ptr<const detail::NetworkStore> m_store;
};

/// A network, or everything that prevents it.
struct Network::Changed {
    std::optional<Network> network;
    std::vector<base::Fault> faults;
};

}  // namespace ww::hydraulics
