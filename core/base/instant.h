// A moment as written down on the job: ISO 8601, with or without a zone, kept to the second as typed.
// Not for measuring durations of code.
#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace ww::base {

/// A moment. Two moments without a zone are compared as wall-clock times of the same place.
struct Instant {
    std::int64_t seconds = 0;                 ///< since 1970-01-01T00:00:00, UTC (or wall clock, without a zone)
    std::optional<std::int16_t> zoneMinutes;  ///< offset from UTC as written; nothing: no zone was written

    /// ISO 8601: "2026-03-04T14:02:07", followed by "Z" or "+05:30" if a zone was written.
    std::string text() const;
    /// The date alone, "2026-03-04", in the written zone.
    std::string date() const;
    /// The number of that date, counted from 1970-01-01 as 0.
    std::int64_t dateNumber() const;
    /// "14:02:07" in the written zone.
    std::string timeOfDay() const;

    /// Reads ISO 8601 "YYYY-MM-DD", "YYYY-MM-DDTHH:MM" or "...:SS", a space may stand for the T, optional zone
    /// "Z", "+HH:MM" or "-HH:MM"; years 1900 to 2199. Nothing for any other text or an impossible date.
    static std::optional<Instant> fromText(std::string_view text);

    std::strong_ordering operator<=>(const Instant& other) const { return seconds <=> other.seconds; }
    bool operator==(const Instant& other) const { return seconds == other.seconds; }
};

/// Where "now" comes from. Programs use SystemClock; tests use a fixed clock.
class Clock {
  public:
    virtual ~Clock() = default;
    /// The moment of the call.
    virtual Instant now() = 0;
};

/// The computer's clock, in UTC.
class SystemClock : public Clock {
  public:
    Instant now() override;
};

}  // namespace ww::base
