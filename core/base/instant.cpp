#include "core/base/instant.h"

#include <chrono>
#include <cstdio>
#include <cstdlib>

namespace ww::base {

namespace {

using namespace std::chrono;

/// Reads exactly `count` digits from the front of `text`; -1 if they are not there.
int takeDigits(std::string_view& text, std::size_t count) {
    if (text.size() < count) {
        return -1;
    }
    int value = 0;
    for (std::size_t i = 0; i < count; ++i) {
        if (text[i] < '0' || text[i] > '9') {
            return -1;
        }
        value = value * 10 + (text[i] - '0');
    }
    text.remove_prefix(count);
    return value;
}

bool take(std::string_view& text, char c) {
    if (text.empty() || text.front() != c) {
        return false;
    }
    text.remove_prefix(1);
    return true;
}

std::int64_t shownSeconds(const Instant& instant) {
    return instant.seconds + 60LL * instant.zoneMinutes.value_or(0);
}

}  // namespace

std::optional<Instant> Instant::fromText(std::string_view text) {
    const int yearNumber = takeDigits(text, 4);
    if (yearNumber < 1900 || yearNumber > 2199 || !take(text, '-')) {
        return std::nullopt;
    }
    const int monthNumber = takeDigits(text, 2);
    if (monthNumber < 0 || !take(text, '-')) {
        return std::nullopt;
    }
    const int dayNumber = takeDigits(text, 2);
    if (dayNumber < 0) {
        return std::nullopt;
    }
    const year_month_day date{year{yearNumber}, month{static_cast<unsigned>(monthNumber)},
                              day{static_cast<unsigned>(dayNumber)}};
    if (!date.ok()) {
        return std::nullopt;
    }
    int hourNumber = 0;
    int minuteNumber = 0;
    int secondNumber = 0;
    if (!text.empty()) {
        if (!take(text, 'T') && !take(text, ' ')) {
            return std::nullopt;
        }
        hourNumber = takeDigits(text, 2);
        if (!take(text, ':')) {
            return std::nullopt;
        }
        minuteNumber = takeDigits(text, 2);
        if (take(text, ':')) {
            secondNumber = takeDigits(text, 2);
        }
        if (hourNumber < 0 || hourNumber > 23 || minuteNumber < 0 || minuteNumber > 59 || secondNumber < 0 ||
            secondNumber > 59) {
            return std::nullopt;
        }
    }
    Instant instant;
    if (take(text, 'Z')) {
        instant.zoneMinutes = 0;
    } else if (!text.empty()) {
        const bool isWest = text.front() == '-';
        if (!take(text, '+') && !take(text, '-')) {
            return std::nullopt;
        }
        const int zoneHours = takeDigits(text, 2);
        if (zoneHours < 0 || zoneHours > 15 || !take(text, ':')) {
            return std::nullopt;
        }
        const int zoneRest = takeDigits(text, 2);
        if (zoneRest < 0 || zoneRest > 59) {
            return std::nullopt;
        }
        instant.zoneMinutes = static_cast<std::int16_t>((isWest ? -1 : 1) * (zoneHours * 60 + zoneRest));
    }
    if (!text.empty()) {
        return std::nullopt;
    }
    const std::int64_t days = sys_days{date}.time_since_epoch().count();
    instant.seconds = days * 86400 + hourNumber * 3600 + minuteNumber * 60 + secondNumber -
                      60LL * instant.zoneMinutes.value_or(0);
    return instant;
}

std::string Instant::date() const {
    const year_month_day shown{sys_days{days{dateNumber()}}};
    char buffer[40];
    std::snprintf(buffer, sizeof buffer, "%04d-%02u-%02u", static_cast<int>(shown.year()),
                  static_cast<unsigned>(shown.month()), static_cast<unsigned>(shown.day()));
    return buffer;
}

std::int64_t Instant::dateNumber() const {
    return floor<days>(sys_seconds{std::chrono::seconds{shownSeconds(*this)}}).time_since_epoch().count();
}

std::string Instant::timeOfDay() const {
    const std::int64_t shown = shownSeconds(*this);
    const std::int64_t inDay = ((shown % 86400) + 86400) % 86400;
    char buffer[40];
    std::snprintf(buffer, sizeof buffer, "%02d:%02d:%02d", static_cast<int>(inDay / 3600),
                  static_cast<int>(inDay / 60 % 60), static_cast<int>(inDay % 60));
    return buffer;
}

std::string Instant::text() const {
    std::string out = date() + "T" + timeOfDay();
    if (zoneMinutes) {
        if (*zoneMinutes == 0) {
            out += "Z";
        } else {
            const int minutes = std::abs(*zoneMinutes);
            char buffer[40];
            std::snprintf(buffer, sizeof buffer, "%c%02d:%02d", *zoneMinutes < 0 ? '-' : '+', minutes / 60,
                          minutes % 60);
            out += buffer;
        }
    }
    return out;
}

Instant SystemClock::now() {
    Instant instant;
    instant.seconds = duration_cast<std::chrono::seconds>(system_clock::now().time_since_epoch()).count();
    instant.zoneMinutes = 0;
    return instant;
}

}  // namespace ww::base
