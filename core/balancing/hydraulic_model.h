// The hydraulic network of a job: its branch tree, valves at their settings and pumps as elements of a loop.
// Not for solving it (hydraulics/) nor for learning its resistances (estimation/).
#pragma once

#include <optional>
#include <unordered_map>
#include <vector>

#include "core/balancing/assessment.h"
#include "core/hydraulics/network.h"
#include "core/hydraulics/solution.h"

namespace ww::balancing {

using quantity::Resistance;

/// Resistances that are known better than by design, by branch. What is absent comes from the design losses.
struct BranchResistance {
    std::optional<Resistance> run;      ///< supply + return from the previous take-off on the same parent
    std::optional<Resistance> circuit;  ///< own path without its balancing valve
};
using Resistances = std::unordered_map<Id, BranchResistance>;

/// The state of the loop that a network is built for.
struct LoopState {
    /// Of a throttled discharge valve behind all running pumps; nothing: fully open, its loss is in the
    /// design.
    std::optional<Resistance> throttle;
    /// Settings by branch; a branch that is absent has its valve fully open.
    std::unordered_map<Id, quantity::Setting> settings;
    std::vector<Id> closed;         ///< branches shut off, whatever their setting
    double speedFraction = 1.0;     ///< of rated speed, all running pumps; 0: stopped
    double diameterFraction = 1.0;  ///< of the impeller of the curve
    double pumpCurveFactor =
        1.0;  ///< on the rise of every pump: a worn pump, or a curve that is a little off
};

inline constexpr base::MessageForm kModelNoPump{
    "model_no_pump", "no running pump has a usable curve; enter at least two points of it"};
inline constexpr base::MessageForm kModelNoBranches{"model_no_branches",
                                                    "the job has no branches; add the first one in System"};
inline constexpr base::MessageForm kModelCircuitUnknown{
    "model_circuit_unknown",
    "the loss of this circuit is not known; enter circuit_loss from the design, or learn it from a survey"};
inline constexpr base::MessageForm kModelDesignFlowUnknown{
    "model_design_flow_unknown",
    "the design flow is not known; enter it, its losses are stated at that flow"};
inline constexpr base::MessageForm kModelSettingOutside{
    "model_setting_outside",
    "setting {1} is outside the valve's scale, {2} to {3}; give a setting on the scale"};
inline constexpr base::MessageForm kModelLimiterRange{
    "model_limiter_range",
    "the dp range of this self-acting valve is not known; enter minimum_dp in its valve table"};

/// The network and where a branch stands in it.
struct HydraulicModel {
    hydraulics::Network network;
    /// By branch (index into Project::branches()): the link that carries its flow.
    std::vector<hydraulics::LinkIndex> circuitLink;
    /// By branch: the link of its balancing valve; nothing without one.
    std::vector<std::optional<hydraulics::LinkIndex>> valveLink;
    /// By branch: the link of its run from the previous take-off; nothing where it has no loss.
    std::vector<std::optional<hydraulics::LinkIndex>> runLink;
    /// By branch in a group of reverse return: the return pipe from the take-off before it.
    std::vector<std::optional<hydraulics::LinkIndex>> returnRunLink;
    /// By branch: the return pipe of its children from the last of them back, where they return in reverse.
    std::vector<std::optional<hydraulics::LinkIndex>> lastReturnLink;
    std::vector<hydraulics::LinkIndex> pumpLinks;
    std::vector<std::size_t> pumps;  ///< index into Project::pumps(), beside pumpLinks
    bool arePumpsInSeries = false;   ///< one behind the other; else side by side
};

struct BuiltModel {
    std::optional<HydraulicModel> model;
    std::vector<base::Fault> faults;  ///< all that prevent it; subject: the tag
};

/// Builds the loop. Losses follow the square law through their design point: a run at the design flow of
/// everything downstream of it on the same parent, a circuit at its own design flow. A blank run counts as no
/// loss. Direct return is one lumped run per take-off. Reverse return splits each run in a supply and a
/// return pipe of equal resistance: one carries what is downstream, the other what has been taken off before;
/// before the first take-off both carry all. Running pumps work in parallel, each behind a non-return valve,
/// or one behind the other where all of them are recorded in series; at the same speed and diameter fraction.
BuiltModel hydraulicModel(const project::Project& project, const LoopState& state,
                          const Resistances& resistances = {});

/// What a network's pumps do together.
struct PumpsTogether {
    VolumeFlow flow;          ///< sum in parallel; of one in series
    PressureDifference rise;  ///< sum in series; of one in parallel
};
/// Of the model's running pumps in this solution of its network; zero where none runs.
PumpsTogether pumpsTogether(const HydraulicModel& model, const hydraulics::Solution& solution);

/// The state as the last round left it: standing settings, speed of the last pump reading over rated.
LoopState stateOfLastRound(const project::Project& project);

}  // namespace ww::balancing
