// What a dp may have been meant as where it does not fit: the same digits with the point moved, or in another
// unit. Not for deciding whether it fits (detail/doubts.h, learning/).
#pragma once

#include <vector>

#include "core/balancing/assessment.h"
#include "core/quantity/measured.h"

namespace ww::balancing {

/// Another reading of the same digits.
struct MeantDp {
    quantity::Measured<PressureDifference> dp;
    bool isPointMoved = false;  ///< in the unit that was typed; false: in another unit
};

/// All that the digits may have meant: with the point one or two places off, then in each unit of a dp
/// meter. A unit that gives what a moved point gives (171 mbar and 17.1 kPa) is left out: the value is the
/// same and the unit that was typed stays. The density is that of the fluid, for units that are heads.
std::vector<MeantDp> meantDps(const quantity::Measured<PressureDifference>& typed, quantity::Density density);

}  // namespace ww::balancing
