// Numbers inside sentences, in the units of the job. Not for tables and screens.
#pragma once

#include <string>

#include "core/project/project.h"

namespace ww::balancing::detail {

/// "12.4 kPa": three significant figures in that unit; a length is a head of the fluid of this density.
std::string dpIn(quantity::Unit unit, quantity::PressureDifference dp, quantity::Density density);
/// In psi or kPa.
std::string dpText(const project::Project& project, quantity::PressureDifference dp);
/// In gpm or m3/h.
std::string flowText(const project::Project& project, quantity::VolumeFlow flow);
/// In ft or m of the flowing fluid, as every page writes a head.
std::string headText(const project::Project& project, quantity::Head head);
/// "102.3", without the sign.
std::string percentText(quantity::Ratio ratio);
/// A small probability in percent: "0.05", below that "under 0.01".
std::string smallPercentText(double probability);
std::string numberText(std::size_t count);

}  // namespace ww::balancing::detail
