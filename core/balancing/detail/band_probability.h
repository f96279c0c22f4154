// The probability that several normal quantities all lie within one band. Not for what they are.
#pragma once

#include <span>
#include <vector>

namespace ww::balancing::detail {

/// Of quantities with these means and this covariance (row by row) all between low and high: a lattice rule
/// on the transformed integral (A. Genz, J. Comput. Graph. Statist. 1 (1992) 141), to about 0.01. Same input,
/// same output. The covariance may be singular.
double probabilityWithin(std::span<const double> means, std::span<const double> covariance, double low,
                         double high);

/// A lower bound of it from the variances alone: the band shrunk to be symmetric about each mean (Z. Sidak,
/// J. Amer. Statist. Assoc. 62 (1967) 626). 0 where a mean lies outside the band.
double leastProbabilityWithin(std::span<const double> means, std::span<const double> sds, double low,
                              double high);

}  // namespace ww::balancing::detail
