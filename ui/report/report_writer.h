// Writes a balance report to a PDF file. Not for its layout (report_pages.h) nor for signing
// (core/workbook/report_signing.h).
#pragma once

#include <QByteArray>
#include <filesystem>
#include <functional>
#include <memory>

#include "core/base/result.h"
#include "core/project/project.h"
#include "core/report/report.h"
#include "core/workbook/report_signing.h"
#include "ui/report/report_pages.h"

namespace ww::ui::report {

inline constexpr base::MessageForm kReportNotWritten{
    "report_not_written",
    "the report could not be written to {1} ({2}); choose a folder that exists and may be written, with room "
    "on the "
    "disk"};

inline constexpr base::MessageForm kReportStopped{
    "report_stopped",
    "the report was stopped before its last page and nothing was written; make it again when there is time"};

/// What somebody who waits for a report knows and wants to be told; empty: nobody waits.
struct Waiting {
    std::shared_ptr<const ReportPages> pages;  ///< of the report, where they are laid out already
    Watch layingOut;
    Watch writing;  ///< told of the pages written
};

/// The bytes of the PDF without places for signatures: vectors and text that can be searched, fonts embedded,
/// no transparency, the record attached as tables and JSON, PDF/A-3b. Equal reports of equal projects give
/// equal bytes: dates and ids inside come from the report alone. Needs a QGuiApplication.
QByteArray pdf(const ww::report::Report& report, const project::Project& project);

/// The same bytes with the fields of those who are to sign, their waiting blocks, and the record as tables
/// and JSON. The report must have signers. Refused where it was stopped.
base::Result<workbook::ReportToSign> reportToSign(const ww::report::Report& report,
                                                  const project::Project& project,
                                                  const Waiting& waiting = {});

/// Writes what `make` gives so that the file appears whole or not at all; one that was there is replaced only
/// by a whole one; a workbook or a signed report never. Where the file cannot be opened nothing is made.
base::Outcome writeWhole(const std::filesystem::path& out,
                         const std::function<base::Result<QByteArray>()>& make);

/// Writes these bytes by writeWhole(), nothing where it was stopped.
base::Outcome writePdf(const ww::report::Report& report, const project::Project& project,
                       const std::filesystem::path& out, const Waiting& waiting = {});

}  // namespace ww::ui::report
