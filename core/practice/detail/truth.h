// Draws how a practice building was really built, and places its faults. Not for its design
// (detail/design.h).
#pragma once

#include <cstdint>

#include "core/practice/hidden_truth.h"
#include "core/project/project.h"

namespace ww::practice::detail {

/// The truth behind a design of makeDesign() with the same plan and seed.
HiddenTruth drawTruth(const BuildingPlan& plan, std::uint64_t seed, const project::Project& design);

}  // namespace ww::practice::detail
