// Tail of the chi-square distribution. Inside estimation only.
#pragma once

#include <cstddef>

namespace ww::estimation::detail {

/// Probability that a chi-square variable with these degrees of freedom exceeds the score: the regularised
/// upper incomplete gamma function Q(n/2, score/2), by its series and its continued fraction (M. Abramowitz
/// and I. Stegun, Handbook of Mathematical Functions, 6.5.29 and 6.5.31). 1 for no degrees of freedom.
double chiSquareTailProbability(double score, std::size_t degreesOfFreedom);

}  // namespace ww::estimation::detail
