// The columns of the tables that can be brought in, as the desk says them. Not for files, which keep their
// own headings.
#pragma once

#include <QString>
#include <string_view>

namespace ww::ui {

/// What stands in a column of ours ("design_flow": "Design flow"); a column without words of its own is said
/// by its name.
QString columnWords(std::string_view name);

}  // namespace ww::ui
