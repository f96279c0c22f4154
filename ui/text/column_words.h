// The columns of the tables of a job, as the desk says them: those that can be brought in, and those of a
// workbook where two laptops differ. Not for files, which keep their own headings.
#pragma once

#include <QString>
#include <string_view>

namespace ww::ui::text {

/// What stands in a column of ours ("design_flow": "Design flow"); a column without words of its own is said
/// by its name.
QString columnWords(std::string_view name);

}  // namespace ww::ui::text
