// Which rounds are to be judged anew after a change of the job. Not for judging (assess.h).
#pragma once

#include <optional>

#include "core/project/edit.h"
#include "core/project/project.h"

namespace ww::balancing {

/// The lowest number of a round whose judgement a change may have made untrue; those of the rounds before it
/// stand. Readings and rounds count from their own round on, as later rounds look back at them; what is
/// written about a round (comments, attachments, signatures) moves no number; any other change counts from
/// the first round, and so does another job (no record named). Nothing where every judgement stands. `before`
/// and `after` are the job before and after the change.
std::optional<int> firstRoundTouched(const project::Project& before, const project::Project& after,
                                     const project::ChangeSet& changes);

}  // namespace ww::balancing
