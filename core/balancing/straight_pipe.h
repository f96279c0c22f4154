// Straight pipe before and behind a balancing device: what it has, what it needs and what a lack of it does
// to the flow. Not for where air collects.
#pragma once

#include "core/project/records.h"
#include "core/quantity/quantity.h"

namespace ww::balancing {

using quantity::Ratio;

/// In pipe diameters. Common practice, no source: 5 before and 2 behind a balancing valve, 10 and 5 for a
/// fixed meter; twice as much before it behind a pump or two elbows out of plane.
struct StraightPipe {
    Ratio upstreamNeed;
    Ratio downstreamNeed;
    bool isRecorded = false;  ///< both lengths are
    bool isShort = false;     ///< a recorded length is less than needed
    /// Standard uncertainty to add to the flow's, relative: 3 % where a length is short, 5 % where it is less
    /// than half of what is needed (common practice, no source: 3 to 5 %); 0 otherwise.
    Ratio addedUncertainty;
};

/// What the record of a branch says of its straight pipe. A length that is not recorded is neither short nor
/// adds uncertainty.
StraightPipe straightPipe(const project::Branch& branch);

}  // namespace ww::balancing
