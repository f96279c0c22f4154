// Sentences put together, each only once. Not for findings that must be counted.
#pragma once

#include <algorithm>
#include <vector>

#include "core/base/fault.h"

namespace ww::report::detail {

/// Adds those that are not there yet, in their order.
inline void addOnce(const std::vector<base::Fault>& more, std::vector<base::Fault>& all) {
    for (const base::Fault& fault : more) {
        if (std::find(all.begin(), all.end(), fault) == all.end()) {
            all.push_back(fault);
        }
    }
}

}  // namespace ww::report::detail
