// Names of files that are proposed: of a report, of what bears a job's name.
#pragma once

#include <QString>

#include "core/report/report.h"

namespace ww::ui::report {

/// A name as a file may bear it: what some file systems refuse in it turned into a line.
QString writableName(const QString& name);
/// Of a report where nobody chose one, from the job's name.
QString fileNameOf(const ww::report::Report& report);

}  // namespace ww::ui::report
