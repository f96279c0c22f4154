// A job's readings ready for a fit, and whether the valves of each round were set before it was read.
// Not for the fits that the result rests on (learning/).
#pragma once

#include "core/balancing/detail/loop_fits.h"
#include "core/estimation/learn_options.h"

namespace ww::balancing::detail {

/// Options of the fits of a job: valve tables trusted or carried as unknowns.
estimation::LearnOptions fitOptions(const LearnLoopOptions& options, bool hasTableErrors);

/// A learning, and where its fits start; empty: at the priors.
struct Prepared {
    LoopLearning loop;
    std::vector<double> start;
};

/// The learning of a history. Where single states would be too many, every round is one state, and a first
/// fit tells how far each reading's own state is from it. `start`: unknowns known so far; may be empty.
Prepared preparedLearning(const project::Project& project, const History& history,
                          const LearnLoopOptions& options, LoopStates& states,
                          std::optional<std::size_t> lastRound, std::vector<double> start);

struct FoundOrders {
    std::vector<RoundOrder> orders;  ///< by index into Project::rounds()
    std::vector<double> lnFactors;   ///< unknowns from the fit that they rest on; empty where none was needed
};

/// Takes for each round the order that fits the rounds before it better.
FoundOrders findOrders(const project::Project& project, const LearnLoopOptions& options, LoopStates& states);

}  // namespace ww::balancing::detail
