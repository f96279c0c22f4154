// What the readings of a job say about its loop: resistances with standard errors, doubtful readings, misfit.
// Not for settings (advice/).
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <stop_token>
#include <vector>

#include "core/balancing/history.h"

namespace ww::balancing {

namespace detail {
struct LoopFits;
}

/// What is known before any reading, and how it is used. Standard deviations of natural logarithms.
struct LearnLoopOptions {
    Ratio circuitPrior = Ratio::si(0.3);    ///< of a circuit whose design loss is given
    Ratio runPrior = Ratio::si(0.3);        ///< of a run, likewise
    Ratio blankPrior = Ratio::si(0.8);      ///< of either where the design says nothing
    Ratio commonRunPrior = Ratio::si(0.2);  ///< of one factor on all runs
    Ratio pumpPrior = Ratio::si(0.03);      ///< of one factor on the pump's curve
    /// Error of a valve's table where it states no accuracy, and its tilt between fully open (nothing) and
    /// shut (all of it).
    Ratio tableBias = Ratio::si(0.02);
    Ratio tableTilt = Ratio::si(0.04);
    /// Accuracy of a dp or flow instrument that states none (common practice, no source).
    Ratio meterAccuracy = Ratio::si(0.01);
    /// What a steady loop still wanders by, of reading (common practice, no source).
    Ratio unsteadiness = Ratio::si(0.002);
    /// On the standard deviations of shares forecast from one state of the loop alone, where nothing shows
    /// whether loss exponents are 2 and circuits clear. With it 93 to 98 % of such forecasts lie within two
    /// standard deviations in simulated buildings of 3, 12 and 120 terminals (practice_bench).
    double surveyOnlyFactor = 1.15;
    bool findDoubtful = true;  ///< look for grossly wrong readings
    /// Branches times states with few readings, as after each move of a round that is read valve by valve:
    /// each is a solve and a dense row. Readings in more are left out, and LearnedLoop::faults says so.
    double mostStatesRatio = 1.2e6;
    std::stop_token stop;
    std::function<void(Ratio)> tellDone;  ///< may be empty; told now and then what part of the work is done
};

enum class LoopLearnOutcome {
    Learned,
    NotSettled,  ///< the fit did not converge; its numbers are the best reached
    Stopped,     ///< on request; there are no numbers
    Impossible,  ///< see `faults`; there are no numbers
};

/// A learned resistance.
struct LearnedResistance {
    Resistance value;
    Ratio relativeSd;              ///< standard deviation of its logarithm
    bool isFromDesign = true;      ///< the design gave a loss to start from
    bool isSeenByReadings = true;  ///< the readings say something about it beyond what was known before
};

struct LearnedBranch {
    std::optional<LearnedResistance> run;
    std::optional<LearnedResistance> circuit;
};

/// A reading (with its repeats) against the loop learned from all of them.
struct ComparedReading {
    std::vector<Id> readings;           ///< one, or the repeats whose mean counts
    std::optional<std::size_t> branch;  ///< nothing: of a pump
    std::optional<std::size_t> pump;
    std::size_t round = 0;                       ///< index into Project::rounds()
    bool isClosedValve = false;                  ///< a dp across the shut valve: head available, no flow
    std::optional<PressureDifference> read;      ///< of a dp or a pump's rise
    std::optional<PressureDifference> expected;  ///< what the learned loop makes there
    std::optional<VolumeFlow> flowRead;          ///< of a flow
    std::optional<VolumeFlow> flowExpected;
    double score = 0;        ///< residual over its own standard deviation; 0 where it cannot be checked
    Ratio redundancy;        ///< part of an error that shows
    bool isLeftOut = false;  ///< found wrong, and left out of the learning
    bool canBeChecked = true;
};

/// A reading that does not fit the others.
struct DoubtfulReading {
    std::size_t branch = 0;  ///< index into Project::branches()
    std::size_t round = 0;   ///< index into Project::rounds()
    std::vector<Id> readings;
    double score = 0;  ///< residual over its own standard deviation
    /// True: this reading is wrong. False: one of the readings of this branch is wrong, or this one is worth
    /// taking again before anything rests on it; a new reading settles it.
    bool isCertain = false;
    base::Fault why;  ///< which, how far off, what would explain it, what to do; subject: the tag
    std::optional<PressureDifference> explainedDp;  ///< the dp that the best explanation means
    std::optional<Setting> explainedSetting;        ///< or the setting
};

/// A round in which nearly all readings lie lower or higher than the other rounds make expect, by about the
/// same ratio. The learning takes it as another head of the pumps in that round.
struct ShiftedRound {
    std::size_t round = 0;  ///< index into Project::rounds()
    Ratio dpRatio;          ///< read over expected, of the dps
    Ratio flowRatio;        ///< its root: of the flows, and of the speed by the affinity laws
    base::Fault why;        ///< how far, against which round, what to look for; no subject
};

/// The learned loop. A value: outlives the project it was learned from, and holds for it as long as its
/// records do not change.
struct LearnedLoop {
    LoopLearnOutcome outcome = LoopLearnOutcome::Impossible;
    std::vector<base::Fault> faults;  ///< why it is impossible, or what was left aside
    History history;                  ///< as understood: the order of each round is the one that fits better
    LoopState present;                ///< after the last move, with the learned pump factor
    Resistances resistances;          ///< from the fit that trusts the valve tables: for settings
    std::vector<LearnedBranch> branches;    ///< in the order of Project::branches(), from that fit
    std::vector<ComparedReading> readings;  ///< against the fit that doubts the tables
    std::vector<DoubtfulReading> doubtful;  ///< largest score first
    std::vector<ShiftedRound> shifted;      ///< by number of the round
    bool isFromOneState = true;   ///< the readings are of one state of the loop: nothing verifies them yet
    bool isPriorWidened = false;  ///< design losses are far off; they were given less weight
    /// Probability of a misfit at least this large were all assumptions true; small: the loop has something
    /// the model lacks (a moving control valve, air, another law), and uncertainties are too small.
    double misfitProbability = 1;
    bool isMisfit = false;
    std::shared_ptr<const detail::LoopFits> fits;  ///< for advise(); null where there are no numbers
};

/// Learns from every standing reading of all rounds, each in the state of the loop at the moment it was taken
/// (history.h), but for those in too many states (LearnLoopOptions). Readings marked doubtful by hand are
/// left out, and dps above the range of their instrument for which no reason is given. Repeats count by their
/// mean. Whether a round was set first and then read, or valve by valve, is decided by which fits better.
/// Pure and usable from any thread. Limiters and pressure-independent valves stay as the project has them.
LearnedLoop learn(const project::Project& project, const LearnLoopOptions& options = {});

}  // namespace ww::balancing
