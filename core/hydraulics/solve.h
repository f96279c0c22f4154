// The steady state of a network: every flow and every pressure.
#pragma once

#include "core/hydraulics/network.h"
#include "core/hydraulics/solution.h"

namespace ww::hydraulics {

/// Which way is taken. Both give the same answer within the tolerances.
enum class SolveWay {
    Fold,  ///< series and parallel links folded first, what is left solved by Newton's method: the usual way
    Global,  ///< every link of every loop in one Newton iteration: the independent check
};

struct SolveOptions {
    SolveWay way = SolveWay::Fold;
    int maxIterations = 60;  ///< Newton steps a block; at least 1
    /// Both must hold: the last step over the largest flow, and the largest mismatch of drops round a loop
    /// over the largest pump pressure. From 1e-14 to 1e-3.
    double flowToleranceFraction = 1e-12;
    double dropToleranceFraction = 1e-12;
    /// Loops of a kernel up to which it is solved by a dense matrix on its loops; above, by a sparse one on
    /// its nodes. At least 0.
    int maxDenseLoops = 40;
    /// Flows to start from, of any state of the same loop; nothing is needed. Borrowed.
    const Solution* start = nullptr;
};

/// Solves for mass at every node and energy round every loop. Closed links, links behind them and blocks in
/// which no pump runs are at rest, exactly. Newton's method on flows that balance at every node in every
/// step; a step is shortened where the content of the network (C. Cherry and W. Millar 1951; convex, as no
/// drop falls with flow) would rise again. Options outside their ranges are a broken contract.
Solution solve(const Network& network, const SolveOptions& options = {});

}  // namespace ww::hydraulics
