// The head available at a branch while its valve is adjusted: an aim above it cannot be reached. Not for the
// aim itself (aim.h).
#pragma once

#include "core/balancing/aim.h"

namespace ww::balancing {

/// What tells it, the surest first.
enum class HeadSource {
    ShutValve,  ///< read across the shut valve, and no other valve was turned since
    Tries,      ///< two tries, or one and what is known of the path: H = dp + r q^2
    Learned     ///< the learned loop, with this valve shut
};

struct AvailableHead {
    PressureDifference head;  ///< between take-off and return: no dp across the valve can exceed it
    HeadSource source = HeadSource::Learned;
};

/// The head available at a branch with a valve as the others stand now. `tries` as for branchCharacteristic
/// (aim.h); `learned` may be null. Nothing where nothing tells it. Pure.
std::optional<AvailableHead> availableHead(const project::Project& project, std::size_t branch,
                                           const std::vector<AimTry>& tries, const LearnedLoop* learned);

/// Whether even the lower end of the band lies above what is available: at this setting the aim cannot be
/// reached.
bool isBeyond(const AvailableHead& available, const AimRow& row);

}  // namespace ww::balancing
