// Looks for a kind of message in a list, for tests.
#pragma once

#include <algorithm>
#include <vector>

#include "core/base/fault.h"

namespace ww::support {

inline bool has(const std::vector<base::Fault>& faults, const base::MessageForm& form) {
    return std::any_of(faults.begin(), faults.end(),
                       [&](const base::Fault& fault) { return fault.is(form); });
}

}  // namespace ww::support
