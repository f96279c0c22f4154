#include "core/hydraulics/network_builder.h"

#include <cmath>

#include "core/hydraulics/detail/node_sets.h"
#include "core/quantity/measured.h"

namespace ww::hydraulics {

namespace {

constexpr std::uint32_t kNone = 0xFFFFFFFFU;

}  // namespace

NodeIndex NetworkBuilder::addNode(std::string id) {
    const NodeIndex index{static_cast<std::uint32_t>(m_shape.nodeIds.size())};
    if (!m_shape.nodeOf.try_emplace(id, index.value).second) {
        m_faults.push_back({&kNodeRepeated, id, {}});
        return {m_shape.nodeOf.find(id)->second};
    }
    m_shape.nodeIds.push_back(std::move(id));
    return index;
}

std::uint32_t NetworkBuilder::resolved(const std::string& link, std::string_view node) {
    const auto found = m_shape.nodeOf.find(node);
    if (found != m_shape.nodeOf.end()) {
        return found->second;
    }
    m_faults.push_back({&kNodeUnknown, link, {std::string(node)}});
    return kNone;
}

LinkIndex NetworkBuilder::addLink(std::string id, std::string_view from, std::string_view to, Element element,
                                  bool isClosed) {
    const NodeIndex start{resolved(id, from)};
    const NodeIndex end{resolved(id, to)};
    return addLink(std::move(id), start, end, std::move(element), isClosed);
}

LinkIndex NetworkBuilder::addLink(std::string id, NodeIndex from, NodeIndex to, Element element,
                                  bool isClosed) {
    const auto known = [&](NodeIndex node) {
        return node.value == kNone || node.value < m_shape.nodeIds.size();
    };
    EXPECTS(known(from) && known(to));
    const LinkIndex index{static_cast<std::uint32_t>(m_shape.linkIds.size())};
    if (!m_shape.linkOf.try_emplace(id, index.value).second) {
        m_faults.push_back({&kLinkRepeated, id, {}});
    }
    if (from == to && from.value != kNone) {
        m_faults.push_back({&kLinkToItself, id, {m_shape.nodeIds[from.value]}});
    }
    for (base::Fault fault : element.faults()) {
        fault.subject = id;
        m_faults.push_back(std::move(fault));
    }
    m_shape.linkIds.push_back(std::move(id));
    m_shape.from.push_back(from.value);
    m_shape.to.push_back(to.value);
    m_elements.push_back(std::move(element));
    m_isClosed.push_back(isClosed ? 1 : 0);
    return index;
}

void NetworkBuilder::addThreeWayValve(const std::string& id, std::string_view portA, std::string_view portB,
                                      std::string_view common, FlowCoefficient fullCoefficient,
                                      double position, Density density) {
    if (!(position >= 0 && position <= 1)) {
        const std::string shown = std::isfinite(position) ? quantity::concise(position, 6) : "not a number";
        m_faults.push_back({&kThreeWayPosition, id, {shown}});
        position = 1;
    }
    addLink(id + ".A", portA, common, Element::valve(fullCoefficient * position, density));
    addLink(id + ".B", portB, common, Element::valve(fullCoefficient * (1 - position), density));
}

void NetworkBuilder::setReference(std::string node, GaugePressure pressure) {
    m_references.push_back({std::move(node), pressure.si()});
}

void NetworkBuilder::checkJoints(detail::Shape& shape, std::vector<base::Fault>& faults) const {
    const auto nodeCount = static_cast<std::uint32_t>(shape.nodeIds.size());
    detail::NodeSets parts(nodeCount);
    std::vector<std::uint8_t> isJoined(nodeCount, 0);
    for (std::size_t link = 0; link < shape.from.size(); ++link) {
        if (shape.from[link] != kNone && shape.to[link] != kNone) {
            parts.join(shape.from[link], shape.to[link]);
        }
        for (const std::uint32_t node : {shape.from[link], shape.to[link]}) {
            if (node != kNone) {
                isJoined[node] = 1;
            }
        }
    }
    std::vector<std::uint8_t> isDriven(nodeCount, 0);
    for (std::size_t link = 0; link < shape.from.size(); ++link) {
        if (m_elements[link].isPumpOrLift() && shape.from[link] != kNone) {
            isDriven[parts.of(shape.from[link])] = 1;
        }
    }
    std::vector<std::uint32_t> sizes(nodeCount, 0);
    for (std::uint32_t node = 0; node < nodeCount; ++node) {
        ++sizes[parts.of(node)];
    }
    std::vector<std::uint8_t> isSaid(nodeCount, 0);
    for (std::uint32_t node = 0; node < nodeCount; ++node) {
        const std::uint32_t part = parts.of(node);
        if (isJoined[node] == 0) {
            faults.push_back({&kNodeFloating, shape.nodeIds[node], {}});
        } else if (isDriven[part] == 0 && isSaid[part] == 0) {
            isSaid[part] = 1;
            faults.push_back({&kNoPathToPump, shape.nodeIds[node], {std::to_string(sizes[part])}});
        }
    }
    placeReferences(shape, parts, faults);
}

void NetworkBuilder::placeReferences(detail::Shape& shape, detail::NodeSets& parts,
                                     std::vector<base::Fault>& faults) const {
    const auto nodeCount = static_cast<std::uint32_t>(shape.nodeIds.size());
    std::vector<std::uint32_t> referenceOf(nodeCount, kNone);
    for (const Reference& reference : m_references) {
        const auto found = shape.nodeOf.find(reference.node);
        if (found == shape.nodeOf.end()) {
            faults.push_back({&kReferenceUnknown, reference.node, {}});
            continue;
        }
        std::uint32_t& first = referenceOf[parts.of(found->second)];
        if (first != kNone) {
            faults.push_back({&kReferenceRepeated, reference.node, {shape.nodeIds[first]}});
            continue;
        }
        first = found->second;
        shape.references.push_back(found->second);
        shape.referencePressures_Pa.push_back(reference.pressure_Pa);
    }
    for (std::uint32_t node = 0; node < nodeCount; ++node) {
        std::uint32_t& reference = referenceOf[parts.of(node)];
        if (reference == kNone) {
            reference = node;
            shape.references.push_back(node);
            shape.referencePressures_Pa.push_back(0);
        }
    }
}

BuiltNetwork NetworkBuilder::build() const {
    BuiltNetwork out;
    out.faults = m_faults;
    auto shape = std::make_shared<detail::Shape>(m_shape);
    if (shape->linkIds.empty()) {
        out.faults.push_back({&kNetworkEmpty, "", {}});
    }
    checkJoints(*shape, out.faults);
    if (!out.faults.empty()) {
        return out;
    }
    auto store = std::make_shared<detail::NetworkStore>();
    const std::size_t links = shape->linkIds.size();
    store->states.resistances.assign(links, 0);
    store->states.lawOf.assign(links, detail::LinkStates::kSquare);
    store->states.isClosed.assign(links, 0);
    for (std::size_t link = 0; link < links; ++link) {
        store->states.set(static_cast<std::uint32_t>(link), m_elements[link], m_isClosed[link] != 0);
    }
    store->shape = std::move(shape);
    store->plans = std::make_shared<const detail::Plans>(store->shape, store->states);
    out.network = Network(std::move(store));
    return out;
}

}  // namespace ww::hydraulics
