// What the learned loop finds about a round, as findings to stand beside those of the checks. Not a check
// itself: learning is too much work for every stored reading.
#pragma once

#include "core/balancing/assessment.h"
#include "core/balancing/learning/learned_loop.h"

namespace ww::balancing {

/// Doubtful readings of the round as warnings, and that all of them are shifted; with `isLast` also that the
/// readings misfit the loop (warning), that design losses are far off and what was left out of the learning
/// (notes). Of a loop that could not be learned only what was left out. They do not change the verdict.
std::vector<Finding> modelFindings(const project::Project& project, const LearnedLoop& learned,
                                   const Id& round, bool isLast);

/// Above so many terminals judging a round does not wait for the learning, which takes up to
/// five seconds at this where valves were set before they were read.
inline constexpr std::size_t kMostTerminalsToCompare = 2'000;

/// Learns the loop and adds its findings to an assessment, in their place by severity; a note instead where
/// it has more than kMostTerminalsToCompare terminals. For the command line and for work in the background.
void addModelFindings(const project::Project& project, Assessment& assessment);

}  // namespace ww::balancing
