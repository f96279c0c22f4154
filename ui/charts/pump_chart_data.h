// The pump-and-system chart as data: pump curve, proposed speed, system curves, duties, design point.
#pragma once

#include <span>

#include "core/balancing/assessment.h"
#include "core/balancing/system_curve.h"
#include "core/pump_room/pump_decision.h"
#include "ui/charts/chart_figure.h"

namespace ww::ui::charts {

/// Rounds in order of number; the last is the one that counts. Values in the flow and head units of the job.
/// All running pumps are drawn together, and each by itself where there are several. With a decision the
/// pumps trimmed and slowed as it says stand beside them; else slowed as the last round's duty asks. Lines of
/// equal efficiency where the table gives it. Where the curve through the gauges counts, it is drawn as the
/// pumps' curve and the one as published beside it. The cross and the sentence are of what is drawn: with a
/// decision design flow and the head that it counts. Empty where there is neither a curve nor a duty.
ChartFigure pumpChart(const project::Project& project, std::span<const balancing::Assessment> rounds,
                      const pump_room::PumpDecision* decision = nullptr);

}  // namespace ww::ui::charts
