// Why a round is not accepted, or cannot be judged. Not for single readings (doubt_forms.h).
#pragma once

#include "core/base/fault.h"

namespace ww::balancing {

inline constexpr base::MessageForm kNoRoundYet{"no_round_yet", "there is no round of readings yet; open one"};
inline constexpr base::MessageForm kNoTerminals{"no_terminals",
                                                "the job has no branches; add them before reading"};
inline constexpr base::MessageForm kTerminalsUnread{
    "terminals_unread", "not read in this round: {1} of {2} terminals ({3}); read them"};
inline constexpr base::MessageForm kTerminalsUnreadable{
    "terminals_unreadable",
    "could not be read: {1} of {2} terminals ({3}); find another way to measure them"};
inline constexpr base::MessageForm kShareUnknown{
    "share_unknown",
    "branches whose share is not known because a flow is missing: {1} ({2}); complete the readings"};
inline constexpr base::MessageForm kOffShare{"off_share",
                                             "outside {3} % around their target share: {1} of {2} branches "
                                             "({4}), the farthest is {5} with {6} % of target; adjust them"};
inline constexpr base::MessageForm kOffDesign{
    "off_design",
    "outside {3} to {4} % of design flow: {1} of {2} terminals ({5}), the farthest is {6} with {7} %; bring "
    "the total to design flow or record why not"};
inline constexpr base::MessageForm kSelfActingOutside{
    "self_acting_outside",
    "self-acting valves that work outside their range: {1} ({2}); bring their dp into the range"};
inline constexpr base::MessageForm kIndexValveThrottled{
    "index_valve_throttled",
    "{1} lies on the index circuit and its valve stands at {2} of {3}; open it fully and match the others to "
    "it"};
inline constexpr base::MessageForm kGroupWithoutOpenValve{
    "group_without_open_valve",
    "no valve of the group {1} is fully open, reference {2} stands at {3} of {4}; open it and match the "
    "others to it"};
inline constexpr base::MessageForm kReadingsDoubtful{
    "readings_doubtful", "doubtful readings: {1} ({2}); read again or give the reasons"};
inline constexpr base::MessageForm kDpUnreadable{
    "dp_unreadable",
    "under the readable minimum, so that the flow is only a range: {1} ({2}); read them another way"};
inline constexpr base::MessageForm kShareUncertain{
    "share_uncertain",
    "branches nearer to the limit of their share than they can be read: {1} ({2}); bring them nearer to "
    "target or read more accurately"};
inline constexpr base::MessageForm kDesignUncertain{
    "design_uncertain",
    "terminals nearer to the limit of design flow than they can be read: {1} ({2}); read more accurately"};

}  // namespace ww::balancing
