// The loop in proportion with the least pump head: what every valve must take, before any scale is rounded.
// Not for how certain it is, nor for the order of work (advice.h).
#pragma once

#include <optional>
#include <vector>

#include "core/balancing/hydraulic_model.h"

namespace ww::balancing {

/// What keeps a branch from being set.
enum class BalanceReach {
    Set,         ///< its valve takes the difference
    FullyOpen,   ///< its valve stays fully open: it has the largest need of its group, or nothing to take
    BelowScale,  ///< its valve's table ends before it takes enough
    NoValve,     ///< there is no valve with a table to set
    SelfActing,  ///< keeps its flow by itself and is left out of matching
    NoFlow,      ///< no design flow: left out
};

/// One branch in the balanced loop.
struct BalancedBranch {
    std::size_t branch = 0;  ///< index into Project::branches()
    VolumeFlow flow;
    /// The least that must stand between its take-off and its return: own path, open valve, what is below.
    PressureDifference needed;
    BalanceReach reach = BalanceReach::NoFlow;
    std::optional<PressureDifference> valveDrop;           ///< with a valve to set
    std::optional<quantity::FlowCoefficient> coefficient;  ///< that takes it
    std::optional<Setting> setting;  ///< on the table; where the table ends before it, the table's end
    bool isReference = false;        ///< has the largest need of its group
    PressureDifference unspent;  ///< what nothing can take at this branch: it will take more than its share
};

struct ProportionalBalance {
    VolumeFlow totalFlow;
    PressureDifference pumpRise;           ///< with the pump as it runs in `operation`
    Ratio ofDesign;                        ///< flow over design flow, the same for all matched branches
    PressureDifference neededAtDesign;     ///< rise that the index circuit needs at design flow
    PressureDifference availableAtDesign;  ///< rise of the pump at design flow, as it runs in `operation`
    VolumeFlow designFlow;                 ///< of all terminals
    std::vector<BalancedBranch> branches;  ///< in the order of Project::branches()
    std::vector<std::size_t> indexPath;    ///< the largest needs from the pump outward
};

struct BalanceResult {
    std::optional<ProportionalBalance> balance;
    std::vector<base::Fault> faults;  ///< all that prevent it; subject: the tag
};

inline constexpr base::MessageForm kBalanceNoFlow{
    "balance_no_flow",
    "the pump stands still, or it is too weak to move water through the loop; check speed, curve and losses"};

/// At flows r times design every branch needs the largest sum of losses below it. In each group the member
/// with the largest need keeps its valve open and the other valves take the difference; where a branch has no
/// valve, the valves below it take what it would have taken. r follows from the pump: what it makes at the
/// total flow is what the index circuit needs. With square laws the settings do not depend on r; with other
/// laws r is the one root of a falling function. No setting with these shares needs less head: every path
/// needs its own losses with its valve open, and the largest is met exactly. Self-acting valves keep their
/// design flow and need the start of their range. Pumps run as in `operation`; its settings do not count.
BalanceResult proportionalBalance(const project::Project& project, const LoopState& operation,
                                  const Resistances& resistances = {});

/// Speed over the pump's rated speed at which the running pumps make this rise at this flow; nothing where
/// they cannot (from 5 % to 400 % of rated speed). Diameter and curve factor are those of `operation`.
std::optional<Ratio> speedFractionFor(const HydraulicModel& model, const LoopState& operation,
                                      VolumeFlow flow, PressureDifference rise);

}  // namespace ww::balancing
