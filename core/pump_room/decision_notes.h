// What a reader of the pump's decision must know beside its numbers: that nothing is to be done, that
// it cannot be told whether the pump is short, or that the loop is not balanced yet. Not for the numbers
// (pump_decision.h).
#pragma once

#include "core/balancing/assessment.h"
#include "core/pump_room/required_head.h"

namespace ww::pump_room {

inline constexpr base::MessageForm kPumpFits{
    "pump_fits",
    "no change: at design flow the pump makes {1} and the index circuit needs {2}, no further apart than can "
    "be told; leave impeller and speed as they are"};
inline constexpr base::MessageForm kShortUndecided{
    "pump_short_undecided",
    "whether the pump is short cannot be told: at design flow it makes {1} and the index circuit needs {2}; "
    "read its gauges and every terminal again with finer meters, leave impeller and speed until then"};
inline constexpr base::MessageForm kFirstLook{"pump_first_look",
                                              "a first look: in round {1}, {2} of {3} terminals are on share "
                                              "and the index circuit is {4w}; leave the "
                                              "pump as it is until all are on share with the index proved"};

/// Whether this much head over (or under) what is required is more than can be told: more than the
/// uncertainty of the need, where it has one, and than 2 % of it, which is about 1 % of speed (common
/// practice, no source).
bool canBeTold(Head difference, const RequiredHead& required);

/// That the numbers of a round are only a first look; nothing where its loop is balanced and its index
/// circuit proved, or no share is known. The assessment is of `project`.
std::optional<base::Fault> firstLook(const project::Project& project, const balancing::Assessment& round);

}  // namespace ww::pump_room
