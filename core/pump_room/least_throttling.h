// The proof that a loop was balanced with the least throttling first, as energy codes ask. Not for shares
// (balancing/) nor for the excess power (energy/code_test.h).
#pragma once

#include <vector>

#include "core/balancing/assessment.h"

namespace ww::pump_room {

inline constexpr base::MessageForm kProofNoIndex{
    "proof_no_index",
    "the index circuit is not known from this round, so nothing can be proved; read every terminal"};
inline constexpr base::MessageForm kProofIndexThrottled{
    "proof_index_throttled",
    "this valve is on the index circuit and stands at {1}, not fully open at {2}; open it and match the "
    "others "
    "to it"};
inline constexpr base::MessageForm kProofGroupThrottled{
    "proof_group_throttled",
    "no valve of this group is fully open; open the one of the reference and match the others to it"};
inline constexpr base::MessageForm kProofRival{
    "proof_rival",
    "this terminal is fully open and takes less of design than the index circuit; match the groups again so "
    "that the index is proved"};
inline constexpr base::MessageForm kProofRivalUndecided{
    "proof_rival_undecided",
    "this terminal is fully open, and whether it takes less of design than the index circuit cannot be told; "
    "read both again with a finer meter"};
inline constexpr base::MessageForm kProofThrottle{"proof_throttle",
                                                  "the discharge valve of this pump stands at {1}, not fully "
                                                  "open at {2}; open it and trim or slow the pump, "
                                                  "or claim an exception"};
inline constexpr base::MessageForm kProofThrottleUnread{
    "proof_throttle_unread",
    "the position of this pump's discharge valve was not read in the final state; read it"};
inline constexpr base::MessageForm kProofNoThrottle{
    "proof_no_throttle", "no discharge valve is recorded for this pump; enter its tag if there is one"};

struct ThrottlingProof {
    bool isProved = false;
    std::vector<std::size_t> indexPath;  ///< from the pump outward
    std::vector<base::Fault> failures;   ///< what is against it; subject: a tag
    std::vector<base::Fault> notes;      ///< what is not recorded and does not fail it
};

/// Every valve on the index path fully open, at least one valve fully open in every group, no rival of the
/// index, and the discharge valve of every running pump fully open unless `isExceptionClaimed`. The last
/// reading up to this round that gives the discharge valve's position counts; it is percent of open, unless
/// its tag is that of a branch with a valve table. Self-acting valves and branches without a valve throttle
/// nothing by hand. The assessment is of `project`.
ThrottlingProof proveLeastThrottling(const project::Project& project, const balancing::Assessment& assessment,
                                     bool isExceptionClaimed);

}  // namespace ww::pump_room
