// How long ago something was, as people say it. Not for measuring (Instant).
#pragma once

#include <cstdint>
#include <string>

namespace ww::base {

/// "40 s", "12 min", "3 h 20 min", "4 days", "3 months", "2 years": minutes and hours up to two days, days up
/// to two months, months (of 30.44 days, rounded) up to two years, and never one of a kind that has another
/// form for one. Below zero it is "0 s". In English, of words that a screen translates (term.h).
std::string ageText(std::int64_t seconds);

/// The same with "ago": "4 days ago".
std::string agoText(std::int64_t seconds);

}  // namespace ww::base
