// The flow coefficient of a valve over its setting, as a chart. Not for its table (valve_page.h).
#pragma once

#include "core/project/project.h"
#include "ui/charts/chart_figure.h"

namespace ww::ui {

/// Says what to do where no valve model is there.
charts::ChartFigure noValveChart();

/// The points of the table and the line that the program reads between them; the points alone, and why, where
/// the table cannot be used. Empty for a valve without points.
charts::ChartFigure valveChart(const project::ValveModel& valve);

}  // namespace ww::ui
