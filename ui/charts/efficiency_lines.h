// Lines of equal efficiency over a pump's curves, by the affinity laws. Part of the pump-and-system chart.
#pragma once

#include "core/curve/pump_set.h"
#include "core/project/project.h"
#include "ui/charts/chart_figure.h"

namespace ww::ui::charts {

/// The flow of the last point of the curves: together where they stand side by side, else of the longest.
quantity::VolumeFlow lastFlow(const curve::PumpSet& set);

/// Where the table gives efficiencies: one line for each round tenth that the pumps cross, from the full
/// speed of `set` down to half of it; flow and head in these units. Empty where the table says nothing.
std::vector<Line> efficiencyLines(const curve::PumpSet& set, quantity::Density density, quantity::Unit flow,
                                  quantity::Unit head);

}  // namespace ww::ui::charts
