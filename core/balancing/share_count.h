// How many terminals of a round are on share, counted the same way wherever it is said. Not for judging a
// share (assess.h).
#pragma once

#include <optional>

#include "core/balancing/assessment.h"

namespace ww::balancing {

/// Terminals of a round. A reading that was carried over from an earlier round counts nowhere.
struct ShareCount {
    std::size_t all = 0;                 ///< of a witness round those of its sample
    std::size_t read = 0;                ///< read in this round
    std::optional<std::size_t> onShare;  ///< of those read; nothing while no share of them is known

    bool isComplete() const { return read == all; }
};

/// No share is known where a terminal has no flow, neither its own nor one that stands in for it: shares are
/// parts of the sum of all.
ShareCount shareCount(const Assessment& round);

/// How many doubtful readings of terminals the total flow holds, those carried over from an earlier round
/// left out.
std::size_t doubtfulInTotal(const Assessment& round);

}  // namespace ww::balancing
