#include "core/base/age.h"

#include <algorithm>
#include <cmath>

#include "core/base/term.h"

namespace ww::base {
namespace {

constexpr std::int64_t kMinute_s = 60;
constexpr std::int64_t kHour_s = 60 * kMinute_s;
constexpr std::int64_t kDay_s = 24 * kHour_s;
/// A twelfth of the mean Gregorian year of 365.2425 days.
constexpr double kMonth_s = 30.436875 * static_cast<double>(kDay_s);
constexpr std::int64_t kMostHours_s = 2 * kDay_s;
constexpr std::int64_t kMostDays_s = 60 * kDay_s;
constexpr long kMostMonths = 24;
constexpr long kMonthsAYear = 12;

/// An age as a number and the word that stands behind it.
struct Said {
    std::string number;
    std::string word;
    std::string wordAgo;
};

Said said(std::int64_t seconds) {
    if (seconds < kMinute_s) {
        return {std::to_string(std::max<std::int64_t>(0, seconds)), " s", std::string(term(" s ago"))};
    }
    if (seconds < kMostHours_s) {
        const std::int64_t hours = seconds / kHour_s;
        const std::int64_t minutes = seconds % kHour_s / kMinute_s;
        if (minutes == 0) {
            return {std::to_string(hours), " h", std::string(term(" h ago"))};
        }
        return {(hours > 0 ? std::to_string(hours) + " h " : std::string()) + std::to_string(minutes), " min",
                std::string(term(" min ago"))};
    }
    if (seconds < kMostDays_s) {
        return {std::to_string(seconds / kDay_s), std::string(term(" days")), std::string(term(" days ago"))};
    }
    const long months = std::lround(static_cast<double>(seconds) / kMonth_s);
    if (months < kMostMonths) {
        return {std::to_string(months), std::string(term(" months")), std::string(term(" months ago"))};
    }
    return {std::to_string(months / kMonthsAYear), std::string(term(" years")),
            std::string(term(" years ago"))};
}

}  // namespace

std::string ageText(std::int64_t seconds) {
    const Said age = said(seconds);
    return age.number + age.word;
}

std::string agoText(std::int64_t seconds) {
    const Said age = said(seconds);
    return age.number + age.wordAgo;
}

}  // namespace ww::base
