// The reasons that merging and closing a round themselves write into records: English in the record, read
// back into what they say where they are shown. Not for the reasons that people give.
#pragma once

#include <optional>
#include <string_view>

#include "core/base/fault.h"

namespace ww::project {

/// The form of every such reason, all in this one file, so that a stored reason can be told by its text. A
/// text that changes is a form of its own: reasons of earlier merges stay readable.
namespace merge_reasons {

using base::MessageForm;

inline constexpr MessageForm kNotChosen{"merge_reason_not_chosen", "not chosen when merging; {1w} was"};
inline constexpr MessageForm kNotSeen{"merge_reason_not_seen", "not seen when round {1} was {2w} on {3}"};
inline constexpr MessageForm kLateReadings{"merge_reason_late_readings",
                                           "readings of the other laptop were taken in"};
inline constexpr MessageForm kSameRevision{
    "merge_reason_same_revision", "the same revision was signed on two laptops; the other one was chosen"};
/// Of the valves of an adjusting round that are given a reason together.
inline constexpr MessageForm kNotTurned{"reason_not_turned", "not turned in this round"};

}  // namespace merge_reasons

/// What a stored reason of a reading, a round or a report says; nothing where a person wrote it.
std::optional<base::Fault> readMergeReason(std::string_view reason);

}  // namespace ww::project
