#include "core/balancing/meant_dp.h"

#include <algorithm>
#include <cmath>

#include "core/balancing/meter_units.h"

namespace ww::balancing {

namespace {

/// How many places a point slips at most (common practice, no source): 17.10 typed without it is two off.
constexpr int kMostPlaces = 2;
/// How near two values are one for whoever reads them: 1 mmH2O is 2 % from a hundredth of a kilopascal.
constexpr double kSameDp = 0.03;

/// The same digits times ten to the power of `places`, with zeros where there are none.
base::Decimal withPointMoved(const base::Decimal& typed, int places) {
    std::string digits = typed.text();
    const std::size_t point = digits.find('.');
    int decimals = typed.decimals() - places;
    if (point != std::string::npos) {
        digits.erase(point, 1);
    }
    if (decimals < 0) {
        digits.append(static_cast<std::size_t>(-decimals), '0');
        decimals = 0;
    }
    const auto behind = static_cast<std::size_t>(decimals);
    if (digits.size() <= behind) {
        digits.insert(0, behind + 1 - digits.size(), '0');
    }
    const std::size_t before = digits.size() - behind;
    const std::size_t zeros = std::min(digits.find_first_not_of('0'), before - 1);
    std::string text = digits.substr(zeros, before - zeros);
    if (behind > 0) {
        text += '.' + digits.substr(before);
    }
    auto moved = base::Decimal::parse(text);
    return moved ? std::move(*moved) : typed;
}

}  // namespace

std::vector<MeantDp> meantDps(const quantity::Measured<PressureDifference>& typed,
                              quantity::Density density) {
    std::vector<MeantDp> meant;
    if (typed.digits.isNegative() || !(typed.value.si() > 0)) {
        return meant;
    }
    for (int places = -kMostPlaces; places <= kMostPlaces; ++places) {
        auto digits = withPointMoved(typed.digits, places);
        if (!(digits == typed.digits)) {
            meant.push_back({quantity::measuredDifference(std::move(digits), typed.unit, density), true});
        }
    }
    const std::size_t points = meant.size();
    for (const quantity::Unit unit : kDpMeterUnits) {
        auto dp = quantity::measuredDifference(typed.digits, unit, density);
        const auto isSame = [&](const MeantDp& other) {
            return std::abs(dp.value / other.dp.value - 1) < kSameDp;
        };
        const auto end = meant.begin() + static_cast<std::ptrdiff_t>(points);
        if (unit != typed.unit && std::none_of(meant.begin(), end, isSame)) {
            meant.push_back({std::move(dp), false});
        }
    }
    return meant;
}

}  // namespace ww::balancing
