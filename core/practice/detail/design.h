// Draws the papers of a practice building: what its engineer designed. Not for how it was really built
// (detail/truth.h).
#pragma once

#include <cstdint>

#include "core/base/term.h"
#include "core/practice/building_plan.h"
#include "core/project/project.h"

namespace ww::practice::detail {

/// An id that follows from the seed alone.
base::Id seededId(std::uint64_t seed, std::uint64_t number);

/// A job without rounds: branches with design flows and losses, valves sized for a drop of at most 7 kPa wide
/// open, one pump with a reserve of head, a dp meter and a pump gauge. All invented. Names, places and kinds
/// are written in the words of `wording`; nothing else depends on it.
project::Project makeDesign(const BuildingPlan& plan, std::uint64_t seed, const base::Wording& wording = {});

/// The id of the pump's gauge in that design.
base::Id gaugeId(std::uint64_t seed);

}  // namespace ww::practice::detail
