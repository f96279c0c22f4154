#include "core/hydraulics/network.h"

#include "core/hydraulics/detail/network_store.h"

namespace ww::hydraulics {

namespace detail {

void LinkStates::set(std::uint32_t link, const Element& element, bool closed) {
    isClosed[link] = closed || element.isShut() ? 1 : 0;
    if (isClosed[link] != 0) {
        return;
    }
    if (const auto* square = std::get_if<SquareLaw>(&element.law())) {
        resistances[link] = square->resistance;
        lawOf[link] = kSquare;
        return;
    }
    resistances[link] = 0;
    if (lawOf[link] == kSquare) {
        lawOf[link] = static_cast<std::uint32_t>(laws.size());
        laws.push_back(element.law());
    } else {
        laws[lawOf[link]] = element.law();
    }
}

namespace {

std::vector<std::uint8_t> squaresOf(const LinkStates& states) {
    std::vector<std::uint8_t> out(states.lawOf.size());
    for (std::size_t link = 0; link < out.size(); ++link) {
        out[link] = states.lawOf[link] == LinkStates::kSquare ? 1 : 0;
    }
    return out;
}

std::vector<std::uint8_t> driversOf(const LinkStates& states) {
    std::vector<std::uint8_t> out(states.lawOf.size(), 0);
    for (std::size_t link = 0; link < out.size(); ++link) {
        if (states.isClosed[link] == 0 && states.lawOf[link] != LinkStates::kSquare) {
            out[link] = isDriver(states.laws[states.lawOf[link]]) ? 1 : 0;
        }
    }
    return out;
}

}  // namespace

Plans::Plans(std::shared_ptr<const Shape> shape, const LinkStates& states)
    : m_shape(std::move(shape)),
      m_isClosed(states.isClosed),
      m_isSquare(squaresOf(states)),
      m_isDriver(driversOf(states)),
      m_folded(makePlan(input(), true)) {}

PlanInput Plans::input() const {
    return {static_cast<std::uint32_t>(m_shape->nodeIds.size()),
            m_shape->from,
            m_shape->to,
            m_isClosed,
            m_isSquare,
            m_isDriver,
            m_shape->references};
}

const Plan& Plans::unfolded() const {
    std::call_once(m_once, [&] { m_unfolded = makePlan(input(), false); });
    return m_unfolded;
}

Plan Plans::without(std::span<const std::uint32_t> links, bool folds) const {
    std::vector<std::uint8_t> isClosed = m_isClosed;
    for (const std::uint32_t link : links) {
        isClosed[link] = 1;
    }
    PlanInput reduced = input();
    reduced.isClosed = isClosed;
    return makePlan(reduced, folds);
}

bool Plans::serve(const LinkStates& states) const {
    return m_isClosed == states.isClosed && m_isSquare == squaresOf(states) &&
           m_isDriver == driversOf(states);
}

}  // namespace detail

std::size_t Network::nodeCount() const {
    return m_store->shape->nodeIds.size();
}

std::size_t Network::linkCount() const {
    return m_store->shape->linkIds.size();
}

std::optional<NodeIndex> Network::findNode(std::string_view id) const {
    const auto found = m_store->shape->nodeOf.find(id);
    return found == m_store->shape->nodeOf.end() ? std::nullopt : std::optional(NodeIndex{found->second});
}

std::optional<LinkIndex> Network::findLink(std::string_view id) const {
    const auto found = m_store->shape->linkOf.find(id);
    return found == m_store->shape->linkOf.end() ? std::nullopt : std::optional(LinkIndex{found->second});
}

const std::string& Network::nodeId(NodeIndex node) const {
    EXPECTS(node.value < nodeCount());
    return m_store->shape->nodeIds[node.value];
}

const std::string& Network::linkId(LinkIndex link) const {
    EXPECTS(link.value < linkCount());
    return m_store->shape->linkIds[link.value];
}

NodeIndex Network::from(LinkIndex link) const {
    EXPECTS(link.value < linkCount());
    return {m_store->shape->from[link.value]};
}

NodeIndex Network::to(LinkIndex link) const {
    EXPECTS(link.value < linkCount());
    return {m_store->shape->to[link.value]};
}

Element Network::element(LinkIndex link) const {
    EXPECTS(!isClosed(link));
    return Element(m_store->states.law(link.value));
}

bool Network::isClosed(LinkIndex link) const {
    EXPECTS(link.value < linkCount());
    return m_store->states.isClosed[link.value] != 0;
}

Network::Changed Network::with(std::span<const LinkChange> changes) const {
    Changed out;
    for (const LinkChange& change : changes) {
        EXPECTS(change.link.value < linkCount());
        for (base::Fault fault : change.element.faults()) {
            fault.subject = linkId(change.link);
            out.faults.push_back(std::move(fault));
        }
    }
    if (!out.faults.empty()) {
        return out;
    }
    auto store = std::make_shared<detail::NetworkStore>(*m_store);
    for (const LinkChange& change : changes) {
        store->states.set(change.link.value, change.element, change.isClosed);
    }
    if (!store->plans->serve(store->states)) {
        store->plans = std::make_shared<const detail::Plans>(store->shape, store->states);
    }
    out.network = Network(std::move(store));
    return out;
}

NetworkMemory Network::memory() const {
    const auto& states = m_store->states;
    NetworkMemory out;
    out.laws = linkCount() * (2 * sizeof(std::uint32_t) + sizeof(double) + sizeof(std::uint32_t) + 1) +
               states.laws.size() * sizeof(detail::Law);
    out.plan = m_store->plans->folded().bytes() + 3 * linkCount();
    return out;
}

}  // namespace ww::hydraulics
