// Unknowns that the readings cannot tell apart.
#pragma once

#include <cstddef>
#include <vector>

#include "core/estimation/learned.h"

namespace ww::estimation {

enum class ConfoundedKind {
    NotSeen,       ///< one unknown of which the readings say next to nothing
    OnlyTogether,  ///< more is known of a combination of them than of each
};

struct ConfoundedGroup {
    ConfoundedKind kind = ConfoundedKind::NotSeen;
    std::vector<std::size_t> unknowns;  ///< positions in Learning::unknowns, rising
};

/// Joined are unknowns that are known to no better than 5 % and that the readings correlate by more than 0.9;
/// not seen is one that is in no such group and whose standard deviation is no less than 0.9 of its prior's.
/// Held unknowns are never named.
std::vector<ConfoundedGroup> confoundedGroups(const Learned& learned);

}  // namespace ww::estimation
