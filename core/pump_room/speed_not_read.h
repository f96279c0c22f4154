// Says of the running pumps whose speed nobody read in a round that nothing about them is certain. Not for
// the speed itself (balancing::PumpDuty).
#pragma once

#include <optional>
#include <string>

#include "core/balancing/assessment.h"

namespace ww::pump_room {

/// kSpeedNotRead, or kSpeedCarried where an earlier round, `speedRound`, gave `speedFraction` of rated speed,
/// about the pump `tag` in the round of that number.
base::Fault speedNotRead(const std::string& tag, int round, quantity::Ratio speedFraction,
                         std::optional<int> speedRound);
/// The same of the first running pump whose speed was not read in the round that the duty is taken from
/// (balancing::systemCurve); nothing where all were read or there is no duty.
std::optional<base::Fault> speedNotRead(const project::Project& project, const balancing::Assessment& round);

}  // namespace ww::pump_room
