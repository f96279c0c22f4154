// What is said with an advice: why it is not ready, what a valve or the pump cannot do, what to do next.
// Not for the learning (learning/learn_forms.h).
#pragma once

#include "core/base/fault.h"

namespace ww::balancing {

inline constexpr base::MessageForm kAdviceUnread{
    "advice_unread", "nothing was read here, so its circuit is only known by design; read it"};
inline constexpr base::MessageForm kAdviceAllDoubtful{
    "advice_all_doubtful",
    "what was read here does not fit the other readings and is left out; read it again"};
inline constexpr base::MessageForm kAdviceUncertain{
    "advice_uncertain",
    "its share cannot be promised within {1} % yet, the standard uncertainty is {2} %; take the reading "
    "named as "
    "most helpful"};
inline constexpr base::MessageForm kAdviceNotSettled{
    "advice_not_settled", "the learning did not settle; look at the doubtful readings and the design losses"};
inline constexpr base::MessageForm kAdviceNothingToSet{
    "advice_nothing_to_set", "no branch has a valve with a table to set; enter the valve tables"};
inline constexpr base::MessageForm kAdviceUnverified{
    "advice_unverified",
    "advice, unverified: no round has confirmed these settings; set them, then read every valve once more"};
inline constexpr base::MessageForm kAdviceVerified{
    "advice_verified",
    "a round read at the settings that stand has every share within the band; nothing is left to turn"};
inline constexpr base::MessageForm kAdviceSharesVerified{
    "advice_shares_verified",
    "a round read at the settings that stand has every share within the band, but not the proof of the index "
    "circuit; turn the valve named, then read a final round"};
inline constexpr base::MessageForm kAdviceValveTooLarge{
    "advice_valve_too_large",
    "its valve makes only {1} at this flow, below the {2} that can be read; use a smaller valve or measure "
    "another "
    "way"};
inline constexpr base::MessageForm kAdviceBelowReliable{
    "advice_below_reliable",
    "the setting needed, {1}, is below {2}, where tables and marks are not reliable; set it by the dp, or "
    "fit a "
    "smaller valve"};
inline constexpr base::MessageForm kAdviceBelowScale{"advice_below_scale",
                                                     "its valve's table ends at {1} before it takes enough, "
                                                     "it will take {2} % of target; throttle it at another "
                                                     "place or fit a smaller valve"};
inline constexpr base::MessageForm kAdviceNoValve{
    "advice_no_valve",
    "it has no valve to set and will take {1} % of target; fit a balancing valve, or accept what it takes"};
inline constexpr base::MessageForm kAdviceSelfActing{
    "advice_self_acting",
    "it keeps its flow by itself and is left out of matching; check that its dp stays within its range"};
inline constexpr base::MessageForm kAdviceNextMove{
    "advice_next_move", "it takes {1} % of target, the most of what is left to set; turn it from {2} to {3}"};
inline constexpr base::MessageForm kAdviceOpenFirst{
    "advice_open_first", "it is the reference of its group and stands at {1}; open it fully to {2}"};
inline constexpr base::MessageForm kHelpfulClosed{"helpful_closed",
                                                  "shut this valve for a moment, read the dp across it and "
                                                  "set it back to {1}: it shows the head available here; "
                                                  "the largest uncertainty of a share falls by {2} %"};
inline constexpr base::MessageForm kHelpfulUnread{"helpful_unread",
                                                  "its valve has not been read; read its dp as it stands"};
inline constexpr base::MessageForm kHelpfulGroup{
    "helpful_group",
    "read the dp of this valve as it stands; the largest uncertainty of a share falls by {1} %"};
inline constexpr base::MessageForm kHelpfulRepeat{
    "helpful_repeat",
    "read this valve again as it stands; the largest uncertainty of a share falls by {1} %"};
inline constexpr base::MessageForm kHelpfulDoubtful{
    "helpful_doubtful", "a reading of this valve does not fit the others; read it again as it stands"};
inline constexpr base::MessageForm kPumpShort{"advice_pump_short",
                                              "the pump makes {1} at design flow, the index circuit needs "
                                              "{2}, {4} more: all circuits end at {3} % of design; see that "
                                              "the index path is open and its strainers and filters are "
                                              "clean, check speed and impeller: a larger impeller or pump is "
                                              "for the engineer to decide"};
inline constexpr base::MessageForm kPumpNearNeed{
    "advice_pump_near_need",
    "the pump makes {1} at design flow, the index circuit needs {2}: whether it is short cannot be told; "
    "read "
    "its gauges and every terminal again once all valves are set"};
inline constexpr base::MessageForm kPumpExcess{
    "advice_pump_excess",
    "by the loop's readings the pump makes {1} too much at design flow, {2w}; lower its speed or trim its "
    "impeller after the valves are set, by a licensed person and within the limits of the maker and the "
    "local "
    "code. The number under Decision in Pump is another one: from the pump's curve, at full speed"};
inline constexpr base::MessageForm kPumpOverRated{
    "advice_pump_over_rated",
    "design flow would need {1} % of full speed; ask the maker first, motor and shaft may not bear it"};
inline constexpr base::MessageForm kPumpBelowMinimum{
    "advice_pump_below_minimum",
    "the impeller would come below the maker's minimum of {1}; change the speed or the pump instead"};

}  // namespace ww::balancing
