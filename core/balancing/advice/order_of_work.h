// In which order the valves of a loop are set. Not for their settings (advice.h).
#pragma once

#include <vector>

#include "core/balancing/assessment.h"

namespace ww::balancing {

/// All branches in order of work: in every group the member with the largest excess first, what is below a
/// branch before its own valve (common practice, no source). `excess` by index into Project::branches(), such
/// as the share over its target; a tie goes to the farther one.
std::vector<std::size_t> orderOfWork(const project::Project& project, const std::vector<Ratio>& excess);

}  // namespace ww::balancing
