#include "core/hydraulics/solution.h"

#include <algorithm>
#include <cmath>

#include "core/hydraulics/detail/network_store.h"

namespace ww::hydraulics {

VolumeFlow Solution::flow(LinkIndex link) const {
    EXPECTS(link.value < m_state.flows_m3s.size());
    return VolumeFlow::si(m_state.flows_m3s[link.value]);
}

std::optional<GaugePressure> Solution::pressure(NodeIndex node) const {
    EXPECTS(node.value < m_state.pressures_Pa.size());
    const double pressure_Pa = m_state.pressures_Pa[node.value];
    return std::isnan(pressure_Pa) ? std::nullopt : std::optional(GaugePressure::si(pressure_Pa));
}

std::optional<PressureDifference> Solution::drop(const Network& network, LinkIndex link) const {
    EXPECTS(network.linkCount() == m_state.flows_m3s.size());
    if (!network.isClosed(link) && !isHeldShut(link)) {
        return PressureDifference::si(
            network.store().states.evaluateLink(link.value, m_state.flows_m3s[link.value]).drop_Pa);
    }
    const auto start = pressure(network.from(link));
    const auto end = pressure(network.to(link));
    return start && end ? std::optional(*start - *end) : std::nullopt;
}

bool Solution::isHeldShut(LinkIndex link) const {
    return std::binary_search(m_state.heldShut.begin(), m_state.heldShut.end(), link.value);
}

LinkState Solution::state(const Network& network, LinkIndex link) const {
    EXPECTS(network.linkCount() == m_state.flows_m3s.size());
    if (network.isClosed(link)) {
        return LinkState::Closed;
    }
    const double flow_m3s = m_state.flows_m3s[link.value];
    const detail::Law law = network.store().states.law(link.value);
    if (isHeldShut(link)) {
        return LinkState::HeldShut;
    }
    if (flow_m3s == 0) {
        return LinkState::AtRest;
    }
    if (const auto* pump = std::get_if<detail::PumpLaw>(&law)) {
        return flow_m3s > pump->scale * pump->shape->lastFlow_m3s() ? LinkState::PumpBeyondCurve
                                                                    : LinkState::Normal;
    }
    if (const auto* limiter = std::get_if<detail::LimiterLaw>(&law)) {
        if (flow_m3s < limiter->flow_m3s) {
            return LinkState::LimiterBelow;
        }
        return flow_m3s <= limiter->flow_m3s * (1 + detail::kLimiterRise) ? LinkState::LimiterHolds
                                                                          : LinkState::LimiterAbove;
    }
    return LinkState::Normal;
}

}  // namespace ww::hydraulics
