// Why something cannot be stored while walking a round, and what is still open. Not for doubts
// (doubt_forms.h).
#pragma once

#include "core/base/fault.h"

namespace ww::balancing {

inline constexpr base::MessageForm kAnotherRoundOpen{
    "another_round_open", "round {1} is still open; close it before opening the next"};
inline constexpr base::MessageForm kRoundAccepted{
    "round_accepted", "round {1} is accepted and takes no more changes; open a new round"};
inline constexpr base::MessageForm kRoundClosed{
    "round_closed",
    "round {1} is closed and takes only corrections of its readings; open a new round for new readings"};
inline constexpr base::MessageForm kRoundClosedAlready{"round_closed_already",
                                                       "round {1} is closed already; open a new round"};
inline constexpr base::MessageForm kBranchWithoutTable{"branch_without_table",
                                                       "this branch has no usable valve table, a dp gives no "
                                                       "flow here; add the table, or type its flow in Walk"};
inline constexpr base::MessageForm kNegativeFlow{"negative_flow",
                                                 "a flow of {1} is below zero and is not stored; turn the "
                                                 "flow meter round and type the flow without a sign"};
inline constexpr base::MessageForm kBranchWithoutValve{
    "branch_without_valve", "this branch has no valve, so there is no setting; store a reading without one"};
inline constexpr base::MessageForm kSettingBeyondScale{
    "setting_beyond_scale",
    "{1} is not on this valve's scale, {2} to {3}, and is not stored; correct the setting"};
inline constexpr base::MessageForm kNotReadYet{
    "not_read_yet", "not read yet; read it, or mark it as unreadable with the reason"};
inline constexpr base::MessageForm kNoReasonYet{"no_reason_yet", "could not be read; give the reason"};
inline constexpr base::MessageForm kGapsLoseShares{
    "gaps_lose_shares",
    "terminals without a flow in this round: {1} ({2}); closed like this it has no total flow, so no share "
    "of any "
    "branch and no index circuit: read them, or a valve above them, first"};
inline constexpr base::MessageForm kNothingToWitness{
    "nothing_to_witness", "no terminal has a flow that could be read again; read and close a final round"};
inline constexpr base::MessageForm kItemsOpen{
    "items_open", "items open in round {2}: {1}, the first is {3}; give each a reading or a reason"};
inline constexpr base::MessageForm kCommentsUnanswered{
    "comments_unanswered",
    "round {2} was sent back, and comments that nobody has answered: {1}, the first is \"{3}\"; answer or "
    "resolve each, then send it"};

}  // namespace ww::balancing
