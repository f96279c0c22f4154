// A field that two copies changed differently, in words for people. Not for finding it (store/row_merge.h).
#pragma once

#include "core/project/project.h"
#include "core/store/last_changes.h"
#include "core/store/row_merge.h"

namespace ww::workbook {

/// The conflict as a record: place, both values as entered, who entered them, when and with what instrument.
/// `merged` names what ids stand for.
project::MergeConflict conflictOf(const store::FieldConflict& found, const project::Project& merged,
                                  const store::LastChanges& ourChanges,
                                  const store::LastChanges& theirChanges);

}  // namespace ww::workbook
