// The assessment of a round as the JSON document of `check`.
#pragma once

#include <string>

#include "core/balancing/assessment.h"

namespace ww::app {

/// SI values (_Pa, _m3s), ratios as fractions, null for what is not known.
std::string checkJson(const project::Project& project, const balancing::Assessment& assessment);

/// "accepted", "not_accepted", "undecidable"
std::string_view jsonName(balancing::Verdict verdict);
/// "not_read", "short" ...
std::string_view jsonName(balancing::State state);
std::string_view jsonName(balancing::Severity severity);

}  // namespace ww::app
