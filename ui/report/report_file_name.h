// The name that a report's file is given where nobody chose one.
#pragma once

#include <QString>

#include "core/report/report.h"

namespace ww::ui::report {

/// From the job's name, what some file systems refuse in it turned into a line.
QString fileNameOf(const ww::report::Report& report);

}  // namespace ww::ui::report
