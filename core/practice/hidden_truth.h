// What only the simulated building knows. Not for the design that the trainee is given (building.h).
#pragma once

#include <cstddef>
#include <vector>

#include "core/practice/building_plan.h"
#include "core/quantity/quantity.h"

namespace ww::practice {

/// One branch as it really is, in the order of the design's branches.
struct TrueBranch {
    PressureDifference runLoss;      ///< of its run at the design flow that the run carries
    PressureDifference circuitLoss;  ///< of its circuit without the valve at its own design flow, as built
    double tableBiasFactor = 1;      ///< true over tabulated coefficient, fully open
    double tableTilt_ratio = 0;  ///< added to the logarithm of that, times the way closed (0 open, 1 shut)
};

/// A fault with its place.
struct PlantedFault {
    FaultKind kind{};
    std::size_t branch = 0;  ///< index into the design's branches
    int round = 0;           ///< number of the round in which a slip of reading happens; 0: stands always
    double factor = 1;       ///< on the resistance or on the dp; turns off for a misread setting
};

/// The whole of it.
struct HiddenTruth {
    std::vector<TrueBranch> branches;
    double pumpFactor = 1;  ///< on the rise of the pump's table
    std::vector<PlantedFault> faults;
};

}  // namespace ww::practice
