// What is said when a round is closed whose shares or index circuit surprise. Not for what keeps it from
// being closed (walk.h).
#pragma once

#include <optional>

#include "core/balancing/assessment.h"

namespace ww::balancing {

inline constexpr base::MessageForm kTurnedRoundClosed{"turned_round_closed",
                                                      "round {1} was read while valves were turned, so its "
                                                      "shares may still change; read every valve in the next "
                                                      "round"};
inline constexpr base::MessageForm kTurnedRoundMovedIndex{
    "turned_round_moved_index",
    "round {1} was read while valves were turned, so its shares may still change, and the star went from {2} "
    "to {3}; read every valve in the next round"};
inline constexpr base::MessageForm kIndexMoved{"index_moved",
                                               "the star went from {2} to {3} in round {1}, the index "
                                               "circuit ends there now; see that every valve on its "
                                               "path is fully open"};

/// The end of the index circuit is another than in the last round that was read as the loop stood, or
/// terminals are off share in a round that was read valve by valve while they were turned; nothing otherwise.
/// `closed` is the assessment of a round of `project`.
std::optional<base::Fault> closedRoundNote(const project::Project& project, const Assessment& closed);

}  // namespace ww::balancing
