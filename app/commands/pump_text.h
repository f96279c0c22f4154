// The answer of the command pump for a person at a terminal.
#pragma once

#include <string>

#include "app/commands/pump_json.h"

namespace ww::app {

/// In the units of the job.
std::string pumpText(const project::Project& project, const pump_room::PumpPicture& answer);

}  // namespace ww::app
