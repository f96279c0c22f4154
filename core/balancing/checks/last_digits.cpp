#include <algorithm>
#include <array>
#include <map>

#include "core/balancing/checks/support.h"

namespace ww::balancing::checks {

namespace {

/// Fewer readings say nothing: five of each digit are wanted for the test.
constexpr std::size_t kFewestReadings = 50;
/// Chi-square with 9 degrees of freedom that chance exceeds once in 1000 times (NIST/SEMATECH e-Handbook of
/// Statistical Methods, 1.3.6.7.4).
constexpr double kCriticalChiSquare = 27.877;

using Counts = std::array<std::size_t, 10>;

/// Whether a last digit can be chance: from the third written digit on.
std::optional<std::size_t> freeDigit(const base::Decimal& number) {
    std::size_t digits = 0;
    std::size_t last = 0;
    for (const char c : number.text()) {
        if (c >= '0' && c <= '9' && (c != '0' || digits > 0)) {
            ++digits;
            last = static_cast<std::size_t>(c - '0');
        }
    }
    return digits >= 3 ? std::optional(last) : std::nullopt;
}

double chiSquare(const Counts& counts, std::size_t total) {
    const double expected = static_cast<double>(total) / static_cast<double>(counts.size());
    double sum = 0;
    for (const std::size_t count : counts) {
        const double apart = static_cast<double>(count) - expected;
        sum += apart * apart / expected;
    }
    return sum;
}

}  // namespace

/// Last digits of what was read with one instrument up to this round: an instrument that shows every digit
/// gives each about equally often. One that shows only some of them (by 5, say) is left out: there the
/// others never come up.
void lastDigits(const CheckContext& context, std::vector<Finding>& found) {
    const project::Project& project = context.project;
    std::map<std::size_t, Counts> byInstrument;
    for (const project::Reading& reading : project.readings()) {
        const project::Round* round = project.rounds().find(reading.round);
        const bool isCounted = reading.dp && reading.instrument &&
                               reading.status == project::ReadingStatus::Standing && round != nullptr &&
                               round->number <= context.round.number &&
                               project.instruments().contains(*reading.instrument);
        const auto digit = isCounted ? freeDigit(reading.dp->digits) : std::nullopt;
        if (digit) {
            ++byInstrument[project.instruments().indexOf(*reading.instrument)][*digit];
        }
    }
    for (const auto& [instrument, counts] : byInstrument) {
        std::size_t total = 0;
        std::size_t seen = 0;
        for (const std::size_t count : counts) {
            total += count;
            seen += count > 0 ? 1U : 0U;
        }
        const bool showsFew = seen <= counts.size() / 2;
        if (total < kFewestReadings || showsFew || chiSquare(counts, total) <= kCriticalChiSquare) {
            continue;
        }
        const auto most = std::max_element(counts.begin(), counts.end());
        found.push_back({base::Fault{&kLastDigitsOdd,
                                     "",
                                     {detail::numberText(total), project.instruments()[instrument].tag,
                                      detail::numberText(*most), std::to_string(most - counts.begin())}},
                         Severity::Warning, std::nullopt, std::nullopt});
    }
}

}  // namespace ww::balancing::checks
