// The answer of the command pump, and its JSON (the outside contract).
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/pump_room/pump_decision.h"
#include "core/pump_room/read_and_set.h"
#include "core/pump_room/test_sheet.h"

namespace ww::app {

/// Everything that the command says.
struct PumpAnswer {
    pump_room::PumpDecision decision;
    pump_room::ReadAndSet readAndSet;
    std::vector<pump_room::PumpSheet> sheets;
};

std::string_view jsonName(energy::PumpAction action);
std::string_view jsonName(energy::CodeDecision decision);
std::string_view jsonName(pump_room::HeadSource source);

/// Sentences put side by side with a blank between them; empty for none.
std::string sentences(const std::vector<base::Fault>& faults);

std::string pumpJson(const project::Project& project, const PumpAnswer& answer);

}  // namespace ww::app
