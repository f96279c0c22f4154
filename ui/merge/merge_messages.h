// What the main window says about merging. Not for refusals, which core words (workbook.h).
#pragma once

#include "core/base/fault.h"

namespace ww::ui {

inline constexpr base::MessageForm kMerged{
    "merged",
    "{1} actions of {2} were taken over, {3} values are left to decide; undo takes all back at once"};
inline constexpr base::MessageForm kNothingNew{
    "merge_nothing_new", "the other copy holds nothing that is not here; there is nothing to merge"};

}  // namespace ww::ui
