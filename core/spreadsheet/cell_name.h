// How a spreadsheet names a cell: "F12". Not for what it holds.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace ww::spreadsheet {

/// A cell's place. Rows count from 1, columns from 0.
struct CellPlace {
    int row = 1;
    std::size_t column = 0;
};

/// The bounds of a sheet (ISO/IEC 29500-1, 18.3.1.4 and 18.3.1.73 as all programs hold them).
inline constexpr int kMostRows = 1'048'576;
inline constexpr std::size_t kMostColumns = 16'384;

/// "A" for column 0, "AA" for column 26.
std::string columnName(std::size_t column);
std::string cellName(CellPlace place);
/// The place of "F12"; nothing for any other text and beyond the bounds of a sheet.
std::optional<CellPlace> cellPlace(std::string_view name);

}  // namespace ww::spreadsheet
