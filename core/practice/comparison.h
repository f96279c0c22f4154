// The end of a practice job: what the building really is against what was found about it, and what the work
// came to. Not for a job on a real plant.
#pragma once

#include <optional>
#include <vector>

#include "core/practice/outcome.h"
#include "core/practice/practice_job.h"

namespace ww::practice {

/// One loss at design flow: by the papers, in truth and as learned from the readings.
struct ComparedLoss {
    std::size_t branch = 0;  ///< index into the building's branches
    bool isRun = false;      ///< its run; else its circuit without the valve
    PressureDifference design;
    PressureDifference real;                  ///< with the faults that stand always
    std::optional<PressureDifference> found;  ///< nothing where nothing could be learned
    Ratio foundUncertainty;                   ///< standard, relative
    bool isSeen = false;                      ///< the readings say something about it beyond the design
};

/// The work, and what the classical method by rule (reference's ratio, by groups) comes to on the same
/// building.
struct WorkDone {
    int rounds = 0;
    int moves = 0;     ///< of valves
    int readings = 0;  ///< gauges included, superseded ones too
};

struct Comparison {
    Outcome asFound;
    Outcome now;
    WorkDone work;
    Outcome classical;
    WorkDone classicalWork;
    /// Head that the pump would have to make for design flow at the least supplied terminal: as found less
    /// now. Nothing while a terminal is shut.
    std::optional<quantity::Head> headSaved;
    std::vector<ComparedLoss> losses;  ///< in the order of the branches, the run before the circuit
    std::vector<PlantedFault> faults;
    std::optional<base::Fault> notLearned;  ///< why there is nothing to compare the truth with
};

/// Truth against what the job's standing readings say. Pure; takes as long as learning the loop.
Comparison compare(const PracticeJob& job, const project::Project& project);

}  // namespace ww::practice
