// How the branches come together round by round, as data: of target over rounds, with the band.
#pragma once

#include <optional>
#include <span>

#include "core/balancing/assessment.h"
#include "ui/charts/chart_figure.h"

namespace ww::ui::charts {

/// Terminals that are matched, one thin line each; the selected branch and the three farthest from 100 % in
/// the last round are named. The spread of each round stands under the axis. Empty without a round.
ChartFigure convergenceChart(const project::Project& project, std::span<const balancing::Assessment> rounds,
                             std::optional<base::Id> selected = {});

}  // namespace ww::ui::charts
