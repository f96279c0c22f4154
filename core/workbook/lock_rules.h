// What closed and accepted rounds refuse, and readings that take a number of their round twice.
// Not for the steps of a review (review_rules.h).
#pragma once

#include <optional>

#include "core/base/fault.h"
#include "core/workbook/edited_project.h"

namespace ww::workbook {

/// Why a round or a reading must not be put by the edit; nothing where it may, and for all other records.
std::optional<base::Fault> lockRefusal(const EditedProject& edited, const project::AnyRecord& put);

/// Why a round or a reading must not be erased; nothing where it may, and for all other records.
std::optional<base::Fault> lockRefusal(const EditedProject& edited, const project::Id& erased);

/// Two readings of one round with the same sequence, one of them put by the edit; nothing where there are
/// none.
std::optional<base::Fault> sequenceRefusal(const EditedProject& edited);

}  // namespace ww::workbook
