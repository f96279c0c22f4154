// Aligned columns for the terminal.
#pragma once

#include <string>
#include <vector>

namespace ww::app {

/// Rows of cells; the first row is the header. Columns listed in `leftAligned` are flush left, all others
/// right. Widths count Unicode code points.
std::string textTable(const std::vector<std::vector<std::string>>& rows,
                      const std::vector<std::size_t>& leftAligned);

}  // namespace ww::app
