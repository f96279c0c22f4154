// Every value that one branch ever had in the rounds, as the journal holds it: who, when, what.
// Not for records as a whole (Workbook::historyOfAll).
#pragma once

#include <string>
#include <vector>

#include "core/workbook/workbook.h"

namespace ww::workbook {

/// One value as one journal entry left it.
struct CellValue {
    project::Reading reading;   ///< as it then was
    int round = 0;              ///< number; 0: the round was undone
    std::int64_t sequence = 0;  ///< of the journal entry
    base::Instant stored;       ///< when the entry was made
    std::string person;         ///< who made it
    std::string label;          ///< of the entry
    bool isUndone = false;      ///< the entry took the reading back
    bool isGone = false;        ///< a later entry took the reading back, for good
};

/// All values of a branch in all rounds, oldest entry first, those of one entry by round, corrected, struck
/// and undone ones among them. Fails where the journal cannot be read.
base::Result<std::vector<CellValue>> cellHistory(const Workbook& workbook, const base::Id& branch);

}  // namespace ww::workbook
