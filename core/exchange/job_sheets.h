// The tables of a job as sheets of a spreadsheet. Not for the file (spreadsheet/write_spreadsheet.h).
#pragma once

#include <filesystem>
#include <vector>

#include "core/exchange/table_source.h"
#include "core/spreadsheet/sheet.h"

namespace ww::exchange {

/// The tables that writeJobFolder() writes, one sheet each in the order of tableFiles(): "branches" holds
/// what branches.csv does, headings and all.
std::vector<spreadsheet::WrittenSheet> jobSheets(const project::Project& project);

/// Writes the files that the sheet "attachments" names; the folder is made where there are any.
base::Outcome writeAttachments(const project::Project& project, const std::filesystem::path& folder);

}  // namespace ww::exchange
