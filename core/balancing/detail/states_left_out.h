// Which readings a learning does without, where valves were turned between so many that the states of the
// loop they were taken in are too many to be fitted. Not for readings that are wrong or off a table.
#pragma once

#include <optional>
#include <unordered_set>

#include "core/balancing/learning/learned_loop.h"

namespace ww::balancing::detail {

/// Branches times rounds squared: the fit takes some 700 bytes for each, 1.4 gigabytes at this. A state
/// within a round that has readings enough for the sparse system counts as a round.
inline constexpr double kMostLearned = 2e6;

/// Readings of branches and pumps, up to a round (index into Project::rounds(); nothing: all). Rounds are
/// kept whole, newest first, as long as their states are not too many (LearnLoopOptions::mostStatesRatio). Of
/// one beyond that only the readings in states that a round ended in, or the first began in, are kept.
std::unordered_set<Id> readingsLeftOut(const project::Project& project, const History& history,
                                       const LearnLoopOptions& options, std::optional<std::size_t> lastRound);

}  // namespace ww::balancing::detail
