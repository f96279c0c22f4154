// What a number of excess head is counted above, and at which speed: several stand beside each other, and
// each names its basis in the same words wherever it is shown. Not for what to do about it
// (pump_room/pump_decision.h).
#pragma once

#include <string>

#include "core/quantity/quantity.h"

namespace ww::balancing {

/// What is needed at design flow.
enum class ExcessBasis {
    ValvesAsRead,     ///< by the loop with its valves as they stood in the round, by its system curve
    IndexByDesign,    ///< by the index circuit with its valves open, by the design losses
    IndexByLearned,   ///< likewise, by the loop learned from the readings
    IndexByMeasured,  ///< likewise, by the head read in a balanced round
};

/// At which speed the pump makes more than that.
enum class ExcessSpeed {
    Full,    ///< full speed: the decision about the pump counts this one
    AsRead,  ///< the speed that was read last
};

struct ExcessHead {
    quantity::Head head;  ///< below 0: the pump falls short
    ExcessBasis basis{};
    ExcessSpeed speed{};
};

/// Head available at design flow over the head needed there.
ExcessHead excessHead(quantity::Head available, quantity::Head needed, ExcessBasis basis, ExcessSpeed speed);

/// What an excess is counted above: "above the index circuit with open valves, by the learned loop, at full
/// speed". Words of the program (base/term.h), with commas between them.
std::string excessWords(ExcessBasis basis, ExcessSpeed speed);

}  // namespace ww::balancing
