// The whole job as one XLSX file: a summary of the last round, then the tables of the contract, one sheet
// each. Not for reading it back (exchange/table_source.h).
#pragma once

#include <filesystem>

#include "core/base/result.h"
#include "core/project/project.h"
#include "core/spreadsheet/sheet.h"

namespace ww::report {

/// "Summary": every branch in the last round that is no witness round (flow, share, of target, state), of
/// target round by round, and a chart of it.
spreadsheet::WrittenSheet summarySheet(const project::Project& project);

/// Writes the summary and the tables. The files of a job's attachments go into the folder "NAME_attachments"
/// beside NAME.xlsx. Faults: a file cannot be written.
base::Outcome writeJobSpreadsheet(const project::Project& project, const std::filesystem::path& file);

}  // namespace ww::report
