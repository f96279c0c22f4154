// How the branches come together round by round, as data: of target over rounds, with the band.
#pragma once

#include <optional>
#include <span>

#include "core/balancing/assessment.h"
#include "ui/charts/chart_figure.h"

namespace ww::ui::charts {

/// Above so many matched terminals their lines are too many to be told apart and are not drawn one by one.
inline constexpr std::size_t kMostTerminalLines = 60;

/// Terminals that are matched, one thin line each; the selected branch and the three farthest from 100 % in
/// the last round are named. Above kMostTerminalLines, in place of the thin lines: the largest and the
/// smallest value of each round, and those that one, five and nine of ten terminals lie at or below (nearest
/// rank). The table lists every terminal, below what is drawn. The spread of each round stands under the axis.
/// Empty without a round.
ChartFigure convergenceChart(const project::Project& project, std::span<const balancing::Assessment> rounds,
                             std::optional<base::Id> selected = {});

/// The same of rounds that lie apart; none may be null.
ChartFigure convergenceChartOver(const project::Project& project,
                                 std::span<const balancing::Assessment* const> rounds,
                                 std::optional<base::Id> selected = {});

}  // namespace ww::ui::charts
