// What the pump should do once the valves of a loop are set. Not for power and cost (energy/).
#pragma once

#include <optional>
#include <vector>

#include "core/balancing/advice/proportional_balance.h"

namespace ww::balancing {

/// What the pump should do once the valves are set.
struct PumpAdvice {
    PressureDifference needed;                 ///< rise that the index circuit needs at design flow
    PressureDifference available;              ///< rise of the pump at design flow, at its present speed
    PressureDifference excess;                 ///< negative: the pump cannot reach design flow
    std::optional<Ratio> speedFraction;        ///< of rated speed, to reach design flow
    std::optional<Ratio> speedRatio;           ///< of the present speed
    std::optional<quantity::Length> impeller;  ///< first estimate of a trim instead of a speed
    bool isBelowMinimumImpeller = false;
    std::vector<base::Fault> notes;

    /// Whether it makes less than is needed, by more than 2 %: less cannot be told.
    bool isShort() const;
};

/// From a balance of the loop with its pumps as in `operation`. An impeller is named for one pump of known
/// diameter that makes too much: a first estimate by the affinity laws, to be confirmed by measurement.
/// Nothing where the loop cannot be built.
std::optional<PumpAdvice> pumpAdvice(const project::Project& project, const ProportionalBalance& balance,
                                     const LoopState& operation, const Resistances& resistances);

}  // namespace ww::balancing
