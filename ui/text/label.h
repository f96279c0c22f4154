// Labels of the journal in the language of the screen. Not for what they are in the record
// (core/project/edit_label.h).
#pragma once

#include <QString>
#include <string>

namespace ww::ui::text {

/// "DP 52.7 kPa, B-05" as the reader says it; a label of no known form stays as it is stored.
QString label(const std::string& stored);

}  // namespace ww::ui::text
