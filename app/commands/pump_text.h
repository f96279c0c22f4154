// The answer of the command pump for a person at a terminal.
#pragma once

#include <string>

#include "app/commands/pump_json.h"

namespace ww::app {

/// What the decision uses: heads, excess, and whether the loop is to be balanced first; in the units of the
/// job. The same lines stand in pumpText().
std::string pumpFiguresText(const project::Project& project, const pump_room::PumpDecision& decision);

/// In the units of the job.
std::string pumpText(const project::Project& project, const pump_room::PumpPicture& answer);

}  // namespace ww::app
