// What is typed into a pump's test sheet as edits: one reading a point, pump and round. Not for evaluating it
// (test_sheet.h).
#pragma once

#include <optional>
#include <vector>

#include "core/balancing/walk.h"
#include "core/project/edit.h"
#include "core/project/project.h"

namespace ww::pump_room {

using base::Id;

inline constexpr base::MessageForm kTestNoRound{
    "pump_test_no_round", "no round is on record to keep this reading with; open a round first"};

/// The standing reading of a point of the test in a round; the newest where several stand; null for none.
const project::PumpReading* testReading(const project::Project& project, const Id& round, const Id& pump,
                                        project::PumpPoint point);

/// A reading to be typed into: the standing one, else a new one with the time, the person and the gauge that
/// this pump was read with last.
project::PumpReading testReadingToFill(const project::Project& project, const Id& round, const Id& pump,
                                       project::PumpPoint point, balancing::WalkContext context);

/// A speed that was read at a pump as it runs.
struct ReadSpeed {
    Id pump;
    quantity::Measured<quantity::RotationalSpeed> speed;
};

/// The speed at which a pump was read last as it runs, in whatever round and point of its test; without one
/// the rated speed. Nothing where neither is known.
std::optional<quantity::Measured<quantity::RotationalSpeed>> lastRunningSpeed(const project::Project& project,
                                                                              const Id& pump);

/// Adds speeds to the edit that opens a round (balancing::openRound), each as a reading of its pump as it
/// runs, so that both are one step.
void addSpeeds(const project::Project& project, project::Edit& opening, const std::vector<ReadSpeed>& speeds,
               balancing::WalkContext context);

/// The value that was changed, for the label of the action: its field in English, and what it is now.
struct TestedValue {
    std::string field;
    std::string text;
};

/// Stores a reading that testReadingToFill() gave and in which one value was changed. `isAdded`: the value
/// was empty before, so that an open round's reading is completed; else a new reading supersedes it.
project::Edit storeTestReading(const project::Project& project, project::PumpReading reading, bool isAdded,
                               const TestedValue& value, balancing::WalkContext context);

}  // namespace ww::pump_room
