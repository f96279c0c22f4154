#include "core/balancing/detail/band_probability.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>

namespace ww::balancing::detail {

namespace {

double normal(double z) {
    return 0.5 * std::erfc(-z / std::numbers::sqrt2);
}

double polynomial(std::span<const double> coefficients, double at) {
    double sum = 0;
    for (auto c = coefficients.rbegin(); c != coefficients.rend(); ++c) {
        sum = sum * at + *c;
    }
    return sum;
}

/// Where the normal distribution reaches p: M. J. Wichura, algorithm AS 241, Appl. Statist. 37 (1988) 477
/// (PPND7, about seven figures).
double normalQuantile(double p) {
    constexpr double kTiny = 1e-300;
    const double q = p - 0.5;
    if (std::abs(q) <= 0.425) {
        constexpr double kA[] = {3.3871327179, 50.434271938, 159.29113202, 59.109374720};
        constexpr double kB[] = {1, 17.895169469, 78.757757664, 67.187563600};
        const double r = 0.180625 - q * q;
        return q * polynomial(kA, r) / polynomial(kB, r);
    }
    double r = std::sqrt(-std::log(std::max(kTiny, q < 0 ? p : 1 - p)));
    double z = 0;
    if (r <= 5) {
        constexpr double kC[] = {1.4234372777, 2.7568153900, 1.3067284816, 0.17023821103};
        constexpr double kD[] = {1, 0.73700164250, 0.12021132975};
        r -= 1.6;
        z = polynomial(kC, r) / polynomial(kD, r);
    } else {
        constexpr double kE[] = {6.6579051150, 3.0812263860, 0.42868294337, 0.017337203997};
        constexpr double kF[] = {1, 0.24197894225, 0.012258202635};
        r -= 5;
        z = polynomial(kE, r) / polynomial(kF, r);
    }
    return q < 0 ? -z : z;
}

/// Lower triangle of the root of a covariance, row by row; a pivot that is nothing is left a little above it.
std::vector<double> rootOf(std::span<const double> covariance, std::span<const std::size_t> order) {
    const std::size_t size = order.size();
    constexpr double kLeast = 1e-8;
    std::vector<double> root(size * size, 0.0);
    for (std::size_t i = 0; i < size; ++i) {
        for (std::size_t j = 0; j <= i; ++j) {
            double sum = covariance[order[i] * size + order[j]];
            const double own = sum;
            for (std::size_t k = 0; k < j; ++k) {
                sum -= root[i * size + k] * root[j * size + k];
            }
            if (i == j) {
                root[i * size + i] = std::sqrt(std::max({sum, kLeast * own, 1e-18}));
            } else {
                root[i * size + j] = sum / root[j * size + j];
            }
        }
    }
    return root;
}

std::vector<double> rootsOfPrimes(std::size_t count) {
    std::vector<double> roots;
    for (int candidate = 2; roots.size() < count; ++candidate) {
        bool isPrime = true;
        for (int divisor = 2; divisor * divisor <= candidate; ++divisor) {
            isPrime = isPrime && candidate % divisor != 0;
        }
        if (isPrime) {
            roots.push_back(std::sqrt(static_cast<double>(candidate)));
        }
    }
    return roots;
}

}  // namespace

double probabilityWithin(std::span<const double> means, std::span<const double> covariance, double low,
                         double high) {
    const std::size_t size = means.size();
    if (size == 0) {
        return 1;
    }
    // The least certain first: the integral then varies least.
    std::vector<std::size_t> order(size);
    std::iota(order.begin(), order.end(), 0);
    const auto own = [&](std::size_t i) {
        const double sd = std::sqrt(std::max(1e-18, covariance[i * size + i]));
        return normal((high - means[i]) / sd) - normal((low - means[i]) / sd);
    };
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return own(a) < own(b); });
    const std::vector<double> root = rootOf(covariance, order);
    const std::vector<double> steps = rootsOfPrimes(size);
    constexpr int kPoints = 1000;
    std::vector<double> drawn(size);
    double sum = 0;
    for (int point = 1; point <= kPoints; ++point) {
        double product = 1;
        for (std::size_t i = 0; i < size && product > 0; ++i) {
            double shift = means[order[i]];
            for (std::size_t j = 0; j < i; ++j) {
                shift += root[i * size + j] * drawn[j];
            }
            const double sd = root[i * size + i];
            const double from = normal((low - shift) / sd);
            const double to = normal((high - shift) / sd);
            product *= std::max(0.0, to - from);
            // The tent of the lattice point: periodic, so that the rule converges fast.
            const double lattice = std::fmod(point * steps[i], 1.0);
            const double tent = std::abs(2 * lattice - 1);
            drawn[i] = normalQuantile(std::clamp(from + tent * (to - from), 1e-15, 1 - 1e-15));
        }
        sum += product;
    }
    return sum / kPoints;
}

double leastProbabilityWithin(std::span<const double> means, std::span<const double> sds, double low,
                              double high) {
    double product = 1;
    for (std::size_t i = 0; i < means.size(); ++i) {
        const double reach = std::min(high - means[i], means[i] - low);
        if (reach <= 0) {
            return 0;
        }
        product *= sds[i] > 0 ? 2 * normal(reach / sds[i]) - 1 : 1;
    }
    return product;
}

}  // namespace ww::balancing::detail
