// Everything that is computed of a job's pumps, once, for the command line, the place Pump and the report.
// Not for what a change would do (what_if.h).
#pragma once

#include <optional>
#include <vector>

#include "core/balancing/learning/learned_loop.h"
#include "core/pump_room/device_list.h"
#include "core/pump_room/pressure_profile.h"
#include "core/pump_room/pump_decision.h"
#include "core/pump_room/read_and_set.h"
#include "core/pump_room/set_point_sheet.h"
#include "core/pump_room/test_sheet.h"

namespace ww::pump_room {

/// Resistances that a learning of this job found, where it fits its readings; else none, so that the design's
/// hold. None for jobs above balancing::kMostTerminalsToCompare terminals.
balancing::Resistances usableResistances(const project::Project& project, const balancing::LearnedLoop& loop);

/// Learns the loop for these purposes; none likewise, and for jobs without rounds. Takes long enough to
/// belong off the screen's thread.
balancing::Resistances learnedResistances(const project::Project& project);

struct PumpPicture {
    balancing::Resistances learned;  ///< that it was made with
    PumpDecision decision;
    ReadAndSet readAndSet;
    std::vector<PumpSheet> sheets;             ///< of every pump, in the order of the project
    std::optional<CircuitComparison> circuit;  ///< of the index circuit; nothing where it is not known
    std::vector<DeviceRow> devices;
    std::vector<SetPointSheet> setPoints;
};

/// How the decision is made for a job: a drive that follows a dp set-point holds that head while the flow
/// goes down, other pumps ride their curves. `running`: these pumps instead of those marked.
PumpDecisionOptions decisionOptions(const project::Project& project, const balancing::Resistances& learned,
                                    std::vector<Id> running = {});

/// Pure: same job and resistances, same picture.
PumpPicture pumpPicture(const project::Project& project, const balancing::Resistances& learned);

/// The terminal of the index circuit: as the last round found it, else as the design has it; nothing where
/// neither says.
std::optional<std::size_t> indexTerminal(const project::Project& project, const PumpDecision& decision);

/// The pressures along a terminal's circuit as the last round left the loop.
CircuitComparison circuitOf(const project::Project& project, std::size_t terminal,
                            const balancing::Resistances& learned);

}  // namespace ww::pump_room
