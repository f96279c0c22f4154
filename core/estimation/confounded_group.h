// Unknowns that the readings cannot tell apart.
#pragma once

#include <cstddef>
#include <vector>

#include "core/estimation/learned.h"

namespace ww::estimation {

enum class ConfoundedKind {
    NotSeen,       ///< one unknown of which the readings say next to nothing
    OnlyTogether,  ///< each is open, though something of them together is known
};

struct ConfoundedGroup {
    ConfoundedKind kind = ConfoundedKind::NotSeen;
    std::vector<std::size_t> unknowns;  ///< positions in Learning::unknowns, rising
};

/// Unknowns whose standard deviation the readings bring down to no less than 0.7 of the prior's, joined where
/// the readings correlate two of them by more than 0.3. Held unknowns are never named.
std::vector<ConfoundedGroup> confoundedGroups(const Learned& learned);

}  // namespace ww::estimation
