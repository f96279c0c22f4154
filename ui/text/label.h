// Labels of the journal in the language of the screen. Not for what they are in the record
// (core/project/edit_label.h).
#pragma once

#include <QString>
#include <string>

#include "core/workbook/workbook.h"

namespace ww::ui::text {

/// "DP 52.7 kPa, B-05" as the reader says it; a label of no known form stays as it is stored.
QString label(const std::string& stored);
/// What an entry of the journal did: also that it took another back, or did it again.
QString label(const workbook::JournalEntry& entry);

}  // namespace ww::ui::text
