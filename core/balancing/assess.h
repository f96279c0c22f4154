// Judges one round of readings. Pure: same project, same result; no clock, no file, any thread.
#pragma once

#include "core/balancing/assessment.h"

namespace ww::balancing {

struct AssessOptions {
    /// While a round is walked, gaps are filled with the newest earlier reading (isFromEarlierRound).
    bool fillGaps = false;
    /// Leaves out the checks that compare rounds or look at the whole record; the grid needs only the numbers.
    bool numbersOnly = false;
};

/// Shares, groups, index circuit, findings and verdict of a round. `round` must exist.
Assessment assess(const project::Project& project, const Id& round, AssessOptions options = {});

/// The round with the highest number, or an empty picture (design values only) where there is no round.
Assessment assessLast(const project::Project& project, AssessOptions options = {});

}  // namespace ww::balancing
