// A job as unknowns, states and readings for the estimation, and the two fits made of them.
// Not for what is told of them (learning/, advice/).
#pragma once

#include <map>
#include <optional>
#include <span>
#include <unordered_set>
#include <vector>

#include "core/balancing/learning/learned_loop.h"
#include "core/estimation/learned.h"
#include "core/estimation/learning.h"

namespace ww::balancing::detail {

/// What an observation stands for.
struct ObservationSource {
    std::vector<Id> readings;
    std::optional<std::size_t> branch;
    std::optional<std::size_t> pump;
    std::size_t round = 0;
    bool isClosedValve = false;
};

/// Where the unknowns of a branch stand in Learning::unknowns.
struct BranchUnknowns {
    std::optional<std::size_t> run;
    std::optional<std::size_t> circuit;
    std::optional<std::size_t> tableBias;
    std::optional<std::size_t> tableTilt;
};

/// Makes networks of states of one loop, all of the same shape.
class LoopStates {
  public:
    LoopStates(const project::Project& project, Resistances priors)
        : m_project(&project), m_priors(std::move(priors)) {}

    /// The loop with all valves open at a speed, and everything that prevents it.
    const BuiltModel& openAt(double speedFraction);
    /// The network of a state; openAt() of its speed must have a model.
    hydraulics::Network networkOf(const LoopState& state);
    /// How far a valve's handle stands from fully open towards shut, 0 to 1; 0 without a table.
    double closedFraction(const LoopState& state, std::size_t branch) const;
    const Resistances& priors() const { return m_priors; }

  private:
    const project::Project* m_project;
    Resistances m_priors;
    std::map<double, BuiltModel> m_bySpeed;
};

/// A round in which the pumps have a factor of their own on their heads at every flow.
struct RoundHead {
    std::size_t round = 0;    ///< index into Project::rounds()
    std::size_t unknown = 0;  ///< in Learning::unknowns
};

/// All that a job gives the estimation.
struct LoopLearning {
    estimation::Learning learning;
    std::vector<ObservationSource> sources;  ///< beside learning.observations
    std::vector<BranchUnknowns> branches;    ///< in the order of Project::branches()
    std::optional<std::size_t> commonRun;
    std::optional<std::size_t> pump;
    std::vector<RoundHead> roundHeads;  ///< beside LearningScope::ownHead
    std::size_t presentRound = 0;       ///< the last one with a reading
    Resistances priors;
    std::shared_ptr<const HydraulicModel> model;  ///< all valves open: where the links are; null with faults
    std::vector<base::Fault> faults;

    /// Adds a state without readings, for a forecast; gives its position.
    std::size_t addCase(LoopStates& states, const LoopState& state);
};

/// All resistances by design, with guesses where the design gives none: the median of the losses it gives,
/// else parts of the pump's head (four tenths for a circuit, three tenths along the longest path for the
/// runs; common practice, no source). Absent: no loss, or no design flow.
Resistances priorResistances(const project::Project& project);

/// Which readings.
struct LearningScope {
    std::optional<std::size_t> lastRound;  ///< index in order of number; nothing: all
    /// Readings of branches; null: all but those whose states are too many (states_left_out.h).
    const std::unordered_set<Id>* onlyThese = nullptr;
    /// Rounds, as indices into Project::rounds(), whose pumps have a factor of their own.
    std::span<const std::size_t> ownHead = {};
};

/// The readings of a job as observations, each in its own state.
LoopLearning loopLearning(const project::Project& project, const History& history,
                          const LearnLoopOptions& options, LoopStates& states,
                          const LearningScope& scope = {});

inline constexpr std::size_t kMostWithPosterior = 300;

/// What advise() needs: the learning and both fits. Of a job with more terminals than kMostWithPosterior
/// neither has its posterior, which would hold some hundred megabytes.
struct LoopFits {
    LoopLearning loop;
    estimation::Learned trusting;  ///< valve tables held
    estimation::Learned doubting;  ///< valve tables carried as unknowns
    double shareSdFactor = 1;      ///< on standard deviations of shares forecast from it
};

}  // namespace ww::balancing::detail
