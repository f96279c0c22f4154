// The pump-and-system chart as data: pump curve, proposed speed, system curves, duties, design point.
#pragma once

#include <span>

#include "core/balancing/assessment.h"
#include "core/balancing/system_curve.h"
#include "ui/charts/chart_figure.h"

namespace ww::ui::charts {

/// Rounds in order of number; the last is the one that counts. Values in the flow and head units of the job.
/// Pumps that run side by side are drawn as the curve of the first that runs. Empty where there is neither a
/// curve nor a duty.
ChartFigure pumpChart(const project::Project& project, std::span<const balancing::Assessment> rounds);

/// Duty, design point and proposal as one sentence; empty where the duty is not known.
QString pumpSentence(const project::Project& project, std::span<const balancing::Assessment> rounds);

}  // namespace ww::ui::charts
