// How independent standard uncertainties add up. Not for how large each of them is.
#pragma once

#include <cmath>

namespace ww::base {

/// The root of the sum of squares (JCGM 100:2008, 5.1.2), several times as fast as std::hypot, which minds
/// squares too large or too small for a double; those of a loop's quantities are neither.
template <class... Parts>
double rootSumSquare(Parts... parts) {
    return std::sqrt(((parts * parts) + ...));
}

}  // namespace ww::base
