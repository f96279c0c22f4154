// One typed cell of the branch table as an edit of the job. Not for showing.
#pragma once

#include <QString>

#include "core/base/result.h"
#include "core/project/edit.h"
#include "core/project/project.h"
#include "ui/models/system_model.h"

namespace ww::ui {

/// The edit that a text typed into a column of a branch means; empty where it means what stands already.
/// Refused: a value that cannot be read, a negative loss, a tag that is taken, an unknown valve, kind or
/// parent, a cycle.
base::Result<project::Edit> branchEdit(const project::Project& project, const base::Id& branch,
                                       SystemModel::Column column, const QString& text);

/// A new branch without a valve beside `neighbor` (or fed at the pump), with a tag of its own.
project::Edit newBranch(const project::Project& project, const std::optional<base::Id>& neighbor,
                        const base::Id& id);

/// The branch changes its place on its parent's pipe, and on the route, with the one before (-1) or after it
/// (1). Refused at either end of the pipe.
base::Result<project::Edit> movedBranch(const project::Project& project, const base::Id& branch, int steps);

}  // namespace ww::ui
