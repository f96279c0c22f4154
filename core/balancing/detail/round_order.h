// Whether the valves of each round were set before it was read. Not for the fits that a result rests on
// (learning/).
#pragma once

#include "core/balancing/detail/loop_fits.h"
#include "core/estimation/learn_options.h"

namespace ww::balancing::detail {

/// Options of the fits of a job: valve tables trusted or carried as unknowns.
estimation::LearnOptions fitOptions(const LearnLoopOptions& options, bool hasTableErrors);

/// Takes for each round, by index into Project::rounds(), the order that fits the rounds before it better.
std::vector<RoundOrder> findOrders(const project::Project& project, const LearnLoopOptions& options,
                                   LoopStates& states);

}  // namespace ww::balancing::detail
