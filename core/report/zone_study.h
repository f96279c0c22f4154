// A study as a document: what a zone that is added, taken away or changed does, before anything is built. Not
// for the balance report (report.h), which tells only what was read.
#pragma once

#include "core/pump_room/what_if.h"
#include "core/report/report.h"

namespace ww::report {

/// The study of `whatIf`, which was computed of `project`; give the report the changed copy (WhatIf::project)
/// where it is drawn. Of the options only journal digest, workbook id and time are used. Its one section is
/// zoneSection(), with what the computation rests on. Never signed: a forecast is no reading.
Report zoneStudy(const project::Project& project, const pump_room::WhatIf& whatIf,
                 const ReportOptions& options);

}  // namespace ww::report
