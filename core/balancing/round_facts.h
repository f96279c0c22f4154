// How a round was read: by whom, with which meters, how many readings are in doubt or were corrected. Not for
// what the readings say (assess.h).
#pragma once

#include <string>
#include <vector>

#include "core/balancing/assessment.h"

namespace ww::balancing {

struct RoundFacts {
    std::vector<std::string> readers;  ///< names, in the order of their first reading
    std::vector<std::string> meters;   ///< tags, likewise
    /// Branches whose reading is doubted, or stands with the reason that was given for a doubt.
    std::size_t doubtful = 0;
    std::size_t corrected = 0;  ///< readings, correctionCount()
};

/// Of the round that was assessed; readings that fill the gaps of an open round are left out.
RoundFacts roundFacts(const project::Project& project, const Assessment& assessed);

}  // namespace ww::balancing
