// The classical method played by rule on a practice building: throttle what is over its share, largest excess
// first, watching one aim, in passes. For comparison; it knows no model of the loop.
#pragma once

#include <vector>

#include "core/practice/building.h"
#include "core/practice/outcome.h"

namespace ww::practice {

/// What the player holds a valve's flow against while turning it.
enum class ClassicalAim {
    ReferenceRatio,  ///< the reference's flow over design, read after every turn
    SumOfBranches,   ///< share of the sum of the group's flows; the others are read once before each valve
    PumpCurveTotal,  ///< share of the total flow that the pump's curve gives for its gauges
};

struct ClassicalRules {
    ClassicalAim aim = ClassicalAim::ReferenceRatio;
    /// Group by group from the terminals inward, each with its own reference; otherwise all terminals against
    /// one reference, with the valves of branches and risers left open.
    bool isByGroups = true;
    int maxPasses = 5;
    /// A pass is the last once every share reads within this of target; a valve is turned where its flow is
    /// farther than half of it above its aim.
    Ratio band = Ratio::si(0.05);
};

/// After a pass; entry 0 is the survey.
struct ClassicalPass {
    int moves = 0;     ///< valves turned so far
    int readings = 0;  ///< values read so far, gauges included
    Outcome outcome;
};

struct ClassicalGame {
    std::vector<ClassicalPass> passes;
    LoopState state;            ///< at the end
    bool isWithinBand = false;  ///< by the last readings
};

/// Plays until the band is read everywhere, or for maxPasses.
ClassicalGame playClassical(const Building& building, const ClassicalRules& rules = {});

}  // namespace ww::practice
