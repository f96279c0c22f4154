// The JSON of `advise`. Not for its text.
#pragma once

#include <string>

#include "core/balancing/advice/advice.h"
#include "core/pump_room/pump_picture.h"

namespace ww::app {

/// The document of the outside contract, with more fields; numbers in SI.
std::string adviseJson(const project::Project& project, const balancing::LearnedLoop& learned,
                       const balancing::Advice& advice, const pump_room::PumpDecision& decision);

}  // namespace ww::app
