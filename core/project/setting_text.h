// How a setting is written: one way for every screen, message and table. Not for what was typed, which keeps
// its digits where it is shown as typed.
#pragma once

#include <string>

#include "core/project/project.h"

namespace ww::project {

/// With the decimals of the scale's division (a tenth of a turn, a degree, a percent), and up to two more
/// where the setting stands between two marks: "4.0", "2.35" turns, "45" degrees.
base::Decimal writtenSetting(Scale scale, quantity::Setting setting);
/// The same at a branch, for the scale of its valve; as turns where it has none.
std::string settingText(const Project& project, const Branch& branch, quantity::Setting setting);

}  // namespace ww::project
