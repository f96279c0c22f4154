// Whether a setting can be stored at a branch. Not for where a valve stands (round_readings.h).
#pragma once

#include <optional>

#include "core/project/project.h"

namespace ww::balancing::detail {

/// Why not: it is not on the scale of the branch's valve; nothing where it can be stored, and without a
/// table.
std::optional<base::Fault> settingFault(const project::Project& project, const project::Branch& branch,
                                        const base::Decimal& setting);

}  // namespace ww::balancing::detail
