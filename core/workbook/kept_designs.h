// What closed rounds are judged by is kept when the design or the limits of a job change. Not for judging by
// it (project/earlier_design.h).
#pragma once

#include <optional>
#include <vector>

#include "core/project/edit.h"
#include "core/project/project.h"

namespace ww::workbook {

/// The edit together with what it must keep: a branch that comes, or whose design flow changes, keeps for
/// every closed round what it was then; a closed round keeps the limits of a job that are changed; a round
/// that is opened again or sent back gives up both, but no branch comes into one that was sent back. Nothing
/// where the edit is whole as it is. `before` is the job before it.
std::optional<project::Edit> withKeptDesigns(const project::Project& before, const project::Edit& edit);

/// After two copies came together: what the rounds that one side closed since keep of that side's design and
/// limits, where `merged` has others. Records of `merged` to be put.
std::vector<project::AnyRecord> keptOfSides(const project::Project& ours, const project::Project& theirs,
                                            const project::Project& merged);

}  // namespace ww::workbook
