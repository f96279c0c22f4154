// The walk sheet on pages, to a printer or a PDF file. Not for what stands on it (core/report/walk_sheet.h).
#pragma once

#include <filesystem>

#include "core/base/result.h"
#include "core/report/walk_sheet.h"
#include "ui/report/report_pages.h"

namespace ww::ui::report {

/// The sheet laid out: Letter for US units, A4 otherwise, lying on its side. Needs a QGuiApplication.
ReportPages layOutWalkSheet(const ww::report::WalkSheet& sheet, bool isLetter);

/// Writes the sheet of the job as PDF, whole or not at all; a workbook or signed report is never replaced.
base::Outcome writeWalkSheet(const project::Project& project, const std::filesystem::path& out);

}  // namespace ww::ui::report
