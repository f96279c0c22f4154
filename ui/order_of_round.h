// A working order of the valves as the desk keeps it, so that it is the same after the program was killed. It
// is no fact of a job.
#pragma once

#include <vector>

#include "core/base/id.h"

namespace ww::ui {

struct OrderOfRound {
    base::Id round;  ///< the last one that was closed when the order was made
    std::vector<base::Id> branches;
    bool isAdvised = false;
    bool isChanged = false;  ///< by a person

    bool operator==(const OrderOfRound&) const = default;
};

}  // namespace ww::ui
