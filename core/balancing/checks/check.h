// One check of a round: looks at what is known and says what it found. The list of them all is here too.
// Not for single readings (detail/doubts.h) nor for the verdict.
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "core/balancing/detail/round_numbers.h"

namespace ww::balancing::checks {

/// Everything a check may look at. Nothing of it changes while checks run.
struct CheckContext {
    const project::Project& project;
    const project::Round& round;
    const detail::RoundNumbers& now;
    const detail::RoundNumbers* before = nullptr;  ///< the round before; null for the first
    const std::vector<PumpDuty>& pumps;
    const std::vector<PumpDuty>* pumpsBefore = nullptr;  ///< of the round before
};

/// What a check is about, for what its errors mean.
enum class About {
    Design,    ///< the job as designed: an error stays visible, and the round can still be accepted
    Readings,  ///< this round, or what changed since the round before: an error keeps it from being accepted
};

using CheckFunction = void (*)(const CheckContext&, std::vector<Finding>&);

struct Check {
    std::string_view name;
    About about = About::Readings;
    CheckFunction run = nullptr;
};

/// All checks, in the order of running.
std::span<const Check> allChecks();

}  // namespace ww::balancing::checks
