#include "core/practice/random_numbers.h"

#include <cmath>
#include <numbers>

#include "core/base/expects.h"

namespace ww::practice {

namespace {

constexpr std::uint64_t kGoldenGamma = 0x9E3779B97F4A7C15ULL;

std::uint64_t mixed(std::uint64_t bits) {
    bits = (bits ^ (bits >> 30)) * 0xBF58476D1CE4E5B9ULL;
    bits = (bits ^ (bits >> 27)) * 0x94D049BB133111EBULL;
    return bits ^ (bits >> 31);
}

}  // namespace

RandomNumbers::RandomNumbers(std::initializer_list<std::uint64_t> keys) {
    for (const std::uint64_t key : keys) {
        m_state = mixed(m_state + kGoldenGamma) ^ mixed(key + kGoldenGamma);
    }
}

std::uint64_t RandomNumbers::next() {
    m_state += kGoldenGamma;
    return mixed(m_state);
}

double RandomNumbers::uniformFraction() {
    return static_cast<double>(next() >> 11) * 0x1.0p-53;
}

double RandomNumbers::normalScore() {
    const double radius = std::sqrt(-2 * std::log(1 - uniformFraction()));
    return radius * std::cos(2 * std::numbers::pi * uniformFraction());
}

std::size_t RandomNumbers::below(std::size_t count) {
    EXPECTS(count >= 1);
    return static_cast<std::size_t>(uniformFraction() * static_cast<double>(count));
}

}  // namespace ww::practice
