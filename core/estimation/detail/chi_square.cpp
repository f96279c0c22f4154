#include "core/estimation/detail/chi_square.h"

#include <cmath>
#include <limits>

namespace ww::estimation::detail {

namespace {

constexpr int kMostTerms = 100000;
constexpr double kEpsilon = std::numeric_limits<double>::epsilon();

/// x^a e^-x / Gamma(a).
double front(double a, double x) {
    return std::exp(a * std::log(x) - x - std::lgamma(a));
}

double lowerBySeries(double a, double x) {
    double term = 1 / a;
    double sum = term;
    for (int n = 1; n < kMostTerms && term > sum * kEpsilon; ++n) {
        term *= x / (a + n);
        sum += term;
    }
    return sum * front(a, x);
}

/// The fraction from its front, by W. Lentz's method.
double upperByFraction(double a, double x) {
    constexpr double kTiny = std::numeric_limits<double>::min() / kEpsilon;
    double b = x + 1 - a;
    double c = 1 / kTiny;
    double d = 1 / b;
    double fraction = d;
    for (int n = 1; n < kMostTerms; ++n) {
        const double numerator = -n * (n - a);
        b += 2;
        d = numerator * d + b;
        d = 1 / (std::abs(d) < kTiny ? kTiny : d);
        c = b + numerator / c;
        c = std::abs(c) < kTiny ? kTiny : c;
        fraction *= c * d;
        if (std::abs(c * d - 1) < kEpsilon) {
            break;
        }
    }
    return fraction * front(a, x);
}

}  // namespace

double chiSquareTailProbability(double score, std::size_t degreesOfFreedom) {
    if (degreesOfFreedom == 0 || !(score > 0)) {
        return 1;
    }
    const double a = static_cast<double>(degreesOfFreedom) / 2;
    const double x = score / 2;
    return x < a + 1 ? 1 - lowerBySeries(a, x) : upperByFraction(a, x);
}

}  // namespace ww::estimation::detail
