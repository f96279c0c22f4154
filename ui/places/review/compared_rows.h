// A comparison of two rounds as the rows of a table. Not for showing them.
#pragma once

#include "core/balancing/round_comparison.h"
#include "ui/models/text_table.h"

namespace ww::ui {

/// One row for each branch and, below it, one struck through for each of its corrections, in the columns of
/// ReviewPlace. `dpUnit`: of the column of dps, where they are written without it. `day`: when the later
/// round was walked; times of that date stand without it.
std::vector<TextRow> comparedRows(const project::Project& project,
                                  const std::vector<balancing::ComparedBranch>& branches, bool isChangedOnly,
                                  quantity::Unit dpUnit, const std::optional<base::Instant>& day);

}  // namespace ww::ui
