// Whether the reading of a reference is fresh enough to match to. Not for whether it is right (learning/).
#pragma once

#include "core/balancing/history.h"
#include "core/quantity/quantity.h"

namespace ww::balancing {

inline constexpr base::MessageForm kReferenceUnread{"reference_unread",
                                                    "the reference has not been read; read it first"};
inline constexpr base::MessageForm kReferenceOld{
    "reference_old", "the reference was read {1w}, the limit is {2w}; read it again"};
inline constexpr base::MessageForm kReferenceMovedOver{
    "reference_moved_over",
    "the valve of {1} was moved after the reference was read; read the reference again"};
inline constexpr base::MessageForm kReferenceJoinedOver{
    "reference_joined_over", "{1} was added after the reference was read; read the reference again"};
inline constexpr base::MessageForm kReferenceDrifted{"reference_drifted",
                                                     "the reference went from {1} to {2} % of design between "
                                                     "its last two readings, more than the band of {3} %; "
                                                     "read it again"};

inline constexpr quantity::Duration kUsualReferenceAge = quantity::Duration::si(30 * 60);

/// What makes a reference unfit to match to at a moment; empty: it is fresh. Subject: its tag. Not read;
/// older than `limit` (of the wall clock where times are known); a valve of its group or above moved or added
/// since; its last two readings further apart than the matching band without a move of its own valve.
std::vector<base::Fault> staleReference(const project::Project& project, const History& history,
                                        std::size_t reference, std::optional<base::Instant> now,
                                        quantity::Duration limit = kUsualReferenceAge);

}  // namespace ww::balancing
