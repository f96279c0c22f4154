// The head that the index circuit needs at design flow, by every way there is. Not for what the pump makes
// (pump_decision.h).
#pragma once

#include <optional>
#include <vector>

#include "core/balancing/hydraulic_model.h"

namespace ww::pump_room {

using base::Id;
using quantity::Head;

/// Where a required head comes from.
enum class HeadSource {
    Design,    ///< the losses of the papers
    Learned,   ///< resistances learned from the readings
    Measured,  ///< the head read in a round whose shares are within the band, by the square law
};

/// Head that the index circuit needs at design flow.
struct RequiredHead {
    HeadSource source{};
    Head head;
    std::optional<Head> uncertainty;     ///< standard, where readings say it
    std::vector<std::size_t> indexPath;  ///< from the pump outward; empty where the source does not say it
    int roundNumber = 0;                 ///< of Measured
};

/// Side by side, in the order of HeadSource; those that cannot be told are left out. Design: the largest sum
/// of losses round a circuit at design flows, its valves fully open. Learned: the same with learned
/// resistances; nothing where `learned` is empty. Measured: of the newest round whose terminals were all
/// read, have shares within the matching band and a pump that was not throttled: H (Qdesign/Q)^2, its
/// uncertainty from gauges and terminals; without gauges H is the curve's, times `headFactor`
/// (balancing::CountedCurve).
std::vector<RequiredHead> requiredHeads(const project::Project& project,
                                        const balancing::Resistances& learned = {},
                                        quantity::Ratio headFactor = quantity::Ratio::si(1));

}  // namespace ww::pump_room
