// Collects nodes and links and makes a network of them, or says everything that is wrong with them.
#pragma once

#include <string>
#include <vector>

#include "core/hydraulics/detail/network_store.h"
#include "core/hydraulics/detail/node_sets.h"
#include "core/hydraulics/network.h"

namespace ww::hydraulics {

using quantity::GaugePressure;

inline constexpr base::MessageForm kNodeRepeated{"node_repeated",
                                                 "the node is given twice; give every node its own name"};
inline constexpr base::MessageForm kLinkRepeated{"link_repeated",
                                                 "the link is given twice; give every link its own name"};
inline constexpr base::MessageForm kNodeUnknown{
    "node_unknown", "the link ends at node \"{1}\", which does not exist; correct the name or add the node"};
inline constexpr base::MessageForm kLinkToItself{
    "link_to_itself", "the link starts and ends at node \"{1}\"; join it to two different nodes"};
inline constexpr base::MessageForm kNodeFloating{
    "node_floating", "no link ends at this node; join it to the loop or take it out"};
inline constexpr base::MessageForm kNoPathToPump{
    "no_path_to_pump",
    "no pump or static lift is joined to this part, its nodes: {1}; join it to the loop or add its pump"};
inline constexpr base::MessageForm kReferenceUnknown{
    "reference_unknown", "the pressure is given at a node that does not exist; correct the name"};
inline constexpr base::MessageForm kReferenceRepeated{
    "reference_repeated",
    "the pressure is given here and at node \"{1}\" of the same loop; keep one, a closed loop has one "
    "expansion vessel"};
inline constexpr base::MessageForm kNetworkEmpty{"network_empty",
                                                 "the network has no links; add at least one circuit"};
inline constexpr base::MessageForm kThreeWayPosition{
    "three_way_position", "the three-way valve stands at {1}; its position must lie between 0 and 1"};

/// A network, or every fault found (a fault's subject is the node's or link's id).
using BuiltNetwork = Network::Changed;

/// Nodes first, then links between them. Nothing is checked until build().
class NetworkBuilder {
  public:
    /// A joint of pipes, by a name of its own.
    NodeIndex addNode(std::string id);
    /// Positive flow goes from `from` to `to`; a pump pushes that way.
    LinkIndex addLink(std::string id, std::string_view from, std::string_view to, Element element,
                      bool isClosed = false);
    LinkIndex addLink(std::string id, NodeIndex from, NodeIndex to, Element element, bool isClosed = false);
    /// A mixing or diverting valve as its two legs, "<id>.A" and "<id>.B", from the ports to the common port:
    /// at position 1 leg A is fully open and B shut, linearly in between.
    void addThreeWayValve(const std::string& id, std::string_view portA, std::string_view portB,
                          std::string_view common, FlowCoefficient fullCoefficient, double position,
                          Density density);
    /// The node where the pressure is known (the expansion vessel). A loop without one has pressure 0 at its
    /// first node. Flows do not depend on it.
    void setReference(std::string node, GaugePressure pressure);

    /// All faults: names given twice, unknown ends, floating nodes, parts without a pump, several references
    /// in one loop, and every faulty number of every element.
    BuiltNetwork build() const;

  private:
    struct Reference {
        std::string node;
        double pressure_Pa;
    };

    std::uint32_t resolved(const std::string& link, std::string_view node);
    void checkJoints(detail::Shape& shape, std::vector<base::Fault>& faults) const;
    void placeReferences(detail::Shape& shape, detail::NodeSets& parts,
                         std::vector<base::Fault>& faults) const;

    detail::Shape m_shape;
    std::vector<Element> m_elements;
    std::vector<std::uint8_t> m_isClosed;
    std::vector<Reference> m_references;
    std::vector<base::Fault> m_faults;
};

}  // namespace ww::hydraulics
