// A note to a reading that is locked, as those of rounds are which are no longer open. Not for readings of an
// open round (setNote in walk.h).
#pragma once

#include <string>

#include "core/project/edit.h"
#include "core/project/project.h"

namespace ww::balancing {

/// The same reading once more with the note, in place of the one that is locked: isCorrection() says that it
/// corrects nothing. Empty where the note stands there already.
project::Edit noteAnew(const project::Project& project, const base::Id& reading, std::string note,
                       base::IdSource& ids);

}  // namespace ww::balancing
