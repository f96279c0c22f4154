// Every value that one branch ever had in the rounds, as the journal holds it: who, when, what.
// Not for records as a whole (Workbook::historyOf).
#pragma once

#include <string>
#include <vector>

#include "core/workbook/workbook.h"

namespace ww::workbook {

/// One value as one journal entry left it.
struct CellValue {
    project::Reading reading;  ///< as it then was
    int round = 0;             ///< number
    base::Instant stored;      ///< when the entry was made
    std::string person;        ///< who made it
    std::string label;         ///< of the entry
};

/// All values of a branch in all rounds, oldest entry first, corrected and struck ones among them. Readings
/// that were undone are left out. Fails where the journal cannot be read.
base::Result<std::vector<CellValue>> cellHistory(const Workbook& workbook, const base::Id& branch);

}  // namespace ww::workbook
