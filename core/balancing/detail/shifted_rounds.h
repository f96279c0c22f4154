// Rounds in which nearly all readings lie lower or higher than the other rounds make expect, by about the
// same ratio: the pump ran at another speed than was read, or something in the main stood otherwise. Not for
// single readings (doubtful.h).
#pragma once

#include <vector>

#include "core/balancing/detail/loop_fits.h"

namespace ww::balancing::detail {

/// From a loop in which something does not fit: the rounds with such a shift, by index into
/// Project::rounds(), the first round with readings being the measure of the others.
std::vector<std::size_t> shiftedRounds(const project::Project& project, const History& history,
                                       const LearnLoopOptions& options, LoopStates& states);

/// What is said of the shifted rounds of a loop that was learned with their own factors
/// (LearningScope::ownHead).
std::vector<ShiftedRound> toldShifts(const project::Project& project, const LoopLearning& loop,
                                     const estimation::Learned& fit);

}  // namespace ww::balancing::detail
