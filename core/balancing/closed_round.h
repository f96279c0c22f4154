// What is said when a round is closed: shares or an index circuit that surprise, and what comes after a final
// round. Not for what keeps it from being closed (walk.h).
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
    "round {1} was read while valves were turned, so its shares may still change; the index circuit ends at "
    "{3} now, no more at {2}; read every valve in the next round"};
inline constexpr base::MessageForm kIndexMoved{"index_moved",
                                               "in round {1} the index circuit ends at {3}, no more at "
                                               "{2}; see that every valve on its path is fully open"};
inline constexpr base::MessageForm kFinalProved{
    "final_round_proved",
    "round {1}: {2} of {3} terminals are on share and the index circuit is proved; send it for review, then "
    "look at the report"};
inline constexpr base::MessageForm kFinalNotProved{
    "final_round_not_proved",
    "round {1}: {2} of {3} terminals are on share, but the index circuit is not proved; see on the place "
    "Adjust which valve to open, then read a final round"};
inline constexpr base::MessageForm kFinalOffShare{
    "final_round_off_share",
    "round {1}: {2} of {3} terminals are on share; go on in Adjust, then read a final round"};

/// The end of the index circuit is another than in the last round that was read as the loop stood, or
/// terminals are off share in a round that was read valve by valve while they were turned; else of a final
/// round what comes next; nothing otherwise. `closed` is the assessment of a round of `project`.
std::optional<base::Fault> closedRoundNote(const project::Project& project, const Assessment& closed);

}  // namespace ww::balancing
