// The test sheets of a job's pumps: what their records say, put before the evaluation of energy/. Not for the
// decision (pump_decision.h).
#pragma once

#include <vector>

#include "core/energy/pump_test.h"
#include "core/project/project.h"

namespace ww::pump_room {

using base::Id;

/// One pump's sheet.
struct PumpSheet {
    std::size_t pump = 0;      ///< index into Project::pumps()
    std::vector<Id> readings;  ///< the standing readings, by round and order; beside sheet.points
    std::vector<int> rounds;   ///< number of the round of each
    energy::PumpTestSheet sheet;
    energy::ShutoffAdvice shutoff;  ///< to be shown before anybody runs the pump shut
};

/// Of every pump, in the order of the project. The sum of the terminals counts beside a reading where its
/// round has one for every terminal and the pump runs alone. A reading's stated accuracy is that of its
/// instrument.
std::vector<PumpSheet> pumpSheets(const project::Project& project);

inline constexpr base::MessageForm kShutoffTitle{"shutoff_title", "Before a shutoff test"};
inline constexpr base::MessageForm kShutoffMay{
    "shutoff_may", "it may be made, by somebody who knows this plant; read the following first"};
inline constexpr base::MessageForm kShutoffNot{"shutoff_not",
                                               "it must not be made on this pump; the following says why"};

inline constexpr base::MessageForm kShutoffOnlyThen{
    "shutoff_only_then", "it must not be made yet; get the consent that is named below first"};
/// Which of the three sentences says whether it may be made.
const base::MessageForm& shutoffVerdict(const energy::ShutoffAdvice& advice);

/// What to know before anybody runs a pump (index into Project::pumps()) against a shut valve.
energy::ShutoffAdvice shutoffAdviceFor(const project::Project& project, std::size_t pump);

/// The family of a pump's curves where its table has several impellers; nothing otherwise, or where it is
/// unusable. `headFactor`: as of runningPumps().
std::optional<curve::ImpellerFamily> familyOf(const project::Pump& pump,
                                              quantity::Ratio headFactor = quantity::Ratio::si(1));

/// What a pump's plate and data say of its motor.
energy::MotorPlate motorPlate(const project::Pump& pump);

}  // namespace ww::pump_room
