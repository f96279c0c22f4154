// How a solve ended, with its evidence.
#pragma once

#include <cstddef>
#include <optional>

#include "core/hydraulics/network.h"

namespace ww::hydraulics {

enum class SolveOutcome {
    Converged,
    /// Nothing flows anywhere: no pump runs, or every way round is shut (dead-headed pumps keep their
    /// pressure).
    AtRest,
    /// The steps allowed were not enough; flows and pressures are the best reached.
    NotConverged,
};

/// What was done. Folding alone is exact for series and parallel links; a kernel that does not fold
/// (reverse return, several pumps at different places, a ladder with a bridge) is solved on its loops or
/// nodes.
enum class SolveMethod { SeriesParallel, LoopNewton, NodalNewton };

struct SolveSummary {
    SolveOutcome outcome = SolveOutcome::AtRest;
    /// The most that any block used of this network.
    SolveMethod method = SolveMethod::SeriesParallel;
    /// Newton steps of the block that took the most; the first estimate counts as one.
    int iterations = 0;
    /// Largest flow change of the last step.
    VolumeFlow lastStep;

    VolumeFlow largestFlow;
    /// Largest drop of a link, or the shutoff pressure of a pump where that is more.
    PressureDifference largestPressure;
    /// Largest sum of flows at a node, and the node.
    VolumeFlow massResidual;
    std::optional<NodeIndex> massWhere;
    /// Largest difference between a link's own drop and the pressures at its ends, and the link.
    PressureDifference energyResidual;
    std::optional<LinkIndex> energyWhere;

    std::size_t blocks = 0;        ///< parts in which water moves, independent of each other
    std::size_t kernelLoops = 0;   ///< loops left after folding, of the largest block
    std::size_t workingBytes = 0;  ///< memory the solve took for itself, without the solution

    /// The residuals as fractions of the largest flow and pressure; 0 at rest.
    double massFraction() const { return largestFlow.si() > 0 ? massResidual / largestFlow : 0; }
    double energyFraction() const { return largestPressure.si() > 0 ? energyResidual / largestPressure : 0; }
};

}  // namespace ww::hydraulics
