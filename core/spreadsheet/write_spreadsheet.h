// Sheets of typed cells as an XLSX file. A text is always written as a text, never as a formula.
#pragma once

#include <filesystem>
#include <vector>

#include "core/base/result.h"
#include "core/spreadsheet/sheet.h"

namespace ww::spreadsheet {

/// Writes the sheets in their order, under another name first so that no half file takes the place of an
/// older one. Headings are bold, columns as wide as what they hold. Faults: kSpreadsheetNotWritten.
base::Outcome writeSpreadsheet(const std::vector<WrittenSheet>& sheets, const std::filesystem::path& file);

}  // namespace ww::spreadsheet
