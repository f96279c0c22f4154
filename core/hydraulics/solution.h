// Flows and pressures of one state of a network.
#pragma once

#include <optional>
#include <vector>

#include "core/hydraulics/detail/solved_state.h"
#include "core/hydraulics/network.h"
#include "core/hydraulics/solve_summary.h"

namespace ww::hydraulics {

using quantity::GaugePressure;

/// What one link does at its flow.
enum class LinkState {
    Normal,
    Closed,           ///< shut, or its pump stopped
    AtRest,           ///< open, but no water moves through it
    HeldShut,         ///< its non-return flap is pressed shut
    PumpBeyondCurve,  ///< more flow than the last point of the pump's curve: the rise is extrapolated
    LimiterBelow,     ///< too little dp for the limiter to hold its flow
    LimiterHolds,
    LimiterAbove,  ///< more dp than the limiter can hold its flow at
};

/// A value of its own: outlives the network it came from, and may start the solve of a changed one.
class Solution {
  public:
    /// Exactly 0 in closed links, where a non-return flap is pressed shut and where no pump moves water.
    VolumeFlow flow(LinkIndex link) const;
    /// Nothing for nodes cut off from the pressure reference by closed links or shut flaps.
    std::optional<GaugePressure> pressure(NodeIndex node) const;
    /// Pressure at the link's start less that at its end; of a closed link or a flap pressed shut, what
    /// stands across it (nothing where that is unknown).
    std::optional<PressureDifference> drop(const Network& network, LinkIndex link) const;
    /// Of the network it was solved for.
    LinkState state(const Network& network, LinkIndex link) const;
    const SolveSummary& summary() const { return m_summary; }

    std::size_t linkCount() const { return m_state.flows_m3s.size(); }
    std::size_t bytes() const {
        return (m_state.flows_m3s.size() + m_state.pressures_Pa.size()) * sizeof(double);
    }
    /// Links whose non-return flap is pressed shut, in rising order of position.
    const std::vector<std::uint32_t>& heldShut() const { return m_state.heldShut; }

    /// For the other files of this folder.
    const detail::SolvedState& state() const { return m_state; }
    Solution(detail::SolvedState state, SolveSummary summary)
        : m_state(std::move(state)), m_summary(summary) {}

  private:
    bool isHeldShut(LinkIndex link) const;

    detail::SolvedState m_state;
    SolveSummary m_summary;
};

}  // namespace ww::hydraulics
