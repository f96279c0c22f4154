// Seeded loops for the tests of the solver.
#pragma once

#include <cstdint>

#include "core/hydraulics/network_builder.h"

namespace ww::hydraulics {

/// What may stand in a random loop besides fixed resistances.
struct RandomMix {
    bool hasOnlySquareLaws = false;
    bool hasCheckValves = true;  ///< half of them against the flow
    double closedFraction = 0.15;
    double resistanceDecades = 9;
};

/// Nested risers and branches with direct return: series and parallel links only, one pump.
Network randomTree(std::uint64_t seed, const RandomMix& mix);

/// Any graph: a spanning tree, loops across it, doubled links, several pumps anywhere, of which some are
/// throttled to shutoff and others run out.
Network randomMesh(std::uint64_t seed, const RandomMix& mix);

}  // namespace ww::hydraulics
