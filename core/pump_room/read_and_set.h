// What setting every terminal to its design flow on the pump as it is would leave across the valves, against
// a proportional balance with the pump reduced. Not for the settings themselves (balancing/).
#pragma once

#include "core/pump_room/pump_decision.h"

namespace ww::pump_room {

using quantity::PressureDifference;

/// One terminal's balancing valve at design flow.
struct ValveLeft {
    std::size_t branch = 0;           ///< index into Project::branches()
    PressureDifference open;          ///< dp of the fully open valve
    PressureDifference proportional;  ///< dp left by the proportional balance with the pump reduced
    PressureDifference readAndSet;    ///< dp left by read-and-set on the pump as it is
    bool isIndex = false;
};

inline constexpr base::MessageForm kReadAndSetSame{
    "read_and_set_same",
    "the pump makes no excess head, so both ways leave the same; there is nothing to save"};

struct ReadAndSet {
    std::vector<ValveLeft> valves;     ///< terminals with a balancing valve, in walking order
    std::optional<Head> wasted;        ///< across the index valve beyond its open drop, by read-and-set
    std::optional<Power> wastedPower;  ///< shaft power of it
    /// Yearly, of read-and-set less the pump slowed (or trimmed where it cannot be slowed).
    std::optional<quantity::Energy> energy;
    std::optional<energy::Money> cost;
    std::vector<base::Fault> findings;
};

/// Read-and-set: each terminal takes design flow and its own valve takes all that the pump makes beyond its
/// path. The decision is of `project` with the same resistances.
ReadAndSet compareReadAndSet(const project::Project& project, const PumpDecision& decision,
                             const balancing::Resistances& learned = {});

}  // namespace ww::pump_room
