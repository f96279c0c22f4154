#include "core/balancing/excess_head.h"

#include "core/base/term.h"

namespace ww::balancing {

namespace {

std::string neededWords(ExcessBasis basis) {
    constexpr const char* kIndex = base::term("above the index circuit with open valves");
    const auto index = [&](const char* by) { return std::string(kIndex) + ", " + by; };
    switch (basis) {
        case ExcessBasis::ValvesAsRead:
            return base::term("above the loop with its valves as read");
        case ExcessBasis::IndexByDesign:
            return index(base::term("by the design losses"));
        case ExcessBasis::IndexByLearned:
            return index(base::term("by the learned loop"));
        case ExcessBasis::IndexByMeasured:
            break;
    }
    return index(base::term("by a balanced round"));
}

}  // namespace

ExcessHead excessHead(quantity::Head available, quantity::Head needed, ExcessBasis basis, ExcessSpeed speed) {
    return {available - needed, basis, speed};
}

std::string excessWords(ExcessBasis basis, ExcessSpeed speed) {
    return neededWords(basis) + ", " +
           (speed == ExcessSpeed::Full ? base::term("at full speed")
                                       : base::term("at the speed of the last round"));
}

}  // namespace ww::balancing
