// An XLSX file (ISO/IEC 29500-1) as sheets of values. Formulas give the results that were stored with them;
// macros, links, pictures and everything else are left alone. Not for what the values mean.
#pragma once

#include <filesystem>
#include <vector>

#include "core/base/result.h"
#include "core/spreadsheet/sheet.h"

namespace ww::spreadsheet {

/// Beyond these a sheet is no table.
inline constexpr std::size_t kMostCells = 5'000'000;
inline constexpr std::size_t kMostTableColumns = 512;
inline constexpr std::size_t kMostText_MB = 256;  ///< of all cells together

/// All sheets of the file in their order, hidden ones too. Faults (spreadsheet_messages.h): no such file, no
/// XLSX, damaged, beyond the limits. A cell that holds an error instead of a value carries that fault itself.
base::Result<std::vector<ReadSheet>> readSpreadsheet(const std::filesystem::path& file);

}  // namespace ww::spreadsheet
