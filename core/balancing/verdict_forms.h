// Why a round is not accepted, or cannot be judged. Not for single readings (doubt_forms.h).
#pragma once

#include "core/base/fault.h"

namespace ww::balancing {

inline constexpr base::MessageForm kNoRoundYet{"no_round_yet", "there is no round of readings yet; open one"};
inline constexpr base::MessageForm kNoTerminals{"no_terminals",
                                                "the job has no branches; add them before reading"};
inline constexpr base::MessageForm kTerminalsUnread{
    "terminals_unread", "{1} of {2} terminals have no reading in this round ({3}); read them"};
inline constexpr base::MessageForm kTerminalsUnreadable{
    "terminals_unreadable", "{1} of {2} terminals could not be read ({3}); find another way to measure them"};
inline constexpr base::MessageForm kShareUnknown{
    "share_unknown",
    "the share of {1} branches is not known ({2}); a flow is missing, complete the readings"};
inline constexpr base::MessageForm kOffShare{"off_share",
                                             "{1} of {2} branches are outside {3} % around their target "
                                             "share ({4}), the farthest is {5} with {6} % of "
                                             "target; adjust them"};
inline constexpr base::MessageForm kOffDesign{"off_design",
                                              "{1} of {2} terminals are outside {3} to {4} % of design flow "
                                              "({5}), the farthest is {6} with {7} %; bring the "
                                              "total to design flow or record why not"};
inline constexpr base::MessageForm kSelfActingOutside{
    "self_acting_outside",
    "{1} self-acting valves work outside their range ({2}); bring their dp into the range"};
inline constexpr base::MessageForm kIndexUnknown{
    "index_unknown", "the index circuit is not known; complete the readings of every group"};
inline constexpr base::MessageForm kIndexValveThrottled{
    "index_valve_throttled",
    "{1} lies on the index circuit and its valve stands at {2} of {3}; open it fully and match the others to "
    "it"};
inline constexpr base::MessageForm kGroupWithoutOpenValve{
    "group_without_open_valve",
    "no valve of the group {1} is fully open, reference {2} stands at {3} of {4}; open it and match the "
    "others to it"};
inline constexpr base::MessageForm kReadingsDoubtful{
    "readings_doubtful", "{1} readings are doubtful ({2}); read again or give the reasons"};
inline constexpr base::MessageForm kDpUnreadable{
    "dp_unreadable",
    "{1} dps are under the readable minimum ({2}), so their flows are only ranges; read them another way"};
inline constexpr base::MessageForm kShareUncertain{"share_uncertain",
                                                   "{1} branches lie nearer to the limit of their share than "
                                                   "they can be read ({2}); bring them nearer to target or "
                                                   "read more accurately"};
inline constexpr base::MessageForm kDesignUncertain{
    "design_uncertain",
    "{1} terminals lie nearer to the limit of design flow than they can be read ({2}); read more accurately"};

}  // namespace ww::balancing
