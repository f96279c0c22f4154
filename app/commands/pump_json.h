// The answer of the command pump, and its JSON (the outside contract).
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/pump_room/pump_picture.h"

namespace ww::app {

std::string_view jsonName(energy::PumpAction action);
std::string_view jsonName(balancing::CurveBasis basis);
std::string_view jsonName(energy::CodeDecision decision);
std::string_view jsonName(pump_room::HeadSource source);

/// Sentences put side by side with a blank between them; empty for none.
std::string sentences(const std::vector<base::Fault>& faults);

std::string pumpJson(const project::Project& project, const pump_room::PumpPicture& answer);

}  // namespace ww::app
