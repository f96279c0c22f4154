// The figures of a report: charts, the one-line diagram, photos. Part of report_pages.
#pragma once

#include "ui/report/page_builder.h"

namespace ww::ui::report {

/// Whether the figures of a section want a page that lies.
bool wantsLandscape(const ww::report::Section& section, const project::Project& project);

/// Adds a figure; a loop that is too wide for one page is drawn small as a whole, then in parts.
void addFigure(PageBuilder& builder, const ww::report::Figure& figure, const ww::report::Report& report,
               const project::Project& project);

}  // namespace ww::ui::report
