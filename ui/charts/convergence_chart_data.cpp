#include "ui/charts/convergence_chart_data.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "ui/text/format.h"

namespace ww::ui::charts {
namespace {

using balancing::Assessment;
using balancing::BranchResult;

constexpr std::size_t kNamed = 3;

/// The texts of this file.
struct ConvergenceChartText {
    Q_DECLARE_TR_FUNCTIONS(ConvergenceChart)
};

/// Matched terminals, farthest from 100 % in the last round first.
std::vector<std::size_t> worstFirst(const Assessment& last) {
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < last.branches.size(); ++i) {
        const BranchResult& branch = last.branches[i];
        if (branch.isTerminal && !branch.isSelfActing) {
            order.push_back(i);
        }
    }
    const auto distance = [&last](std::size_t i) {
        return last.branches[i].ofTarget ? std::abs(last.branches[i].ofTarget->si() - 1) : -1.0;
    };
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t left, std::size_t right) { return distance(left) > distance(right); });
    return order;
}

Line lineOf(std::size_t branch, std::span<const Assessment> rounds) {
    Line line;
    for (const Assessment& round : rounds) {
        if (const auto& ofTarget = round.branches[branch].ofTarget) {
            line.points.emplace_back(round.roundNumber, 100 * ofTarget->si());
        }
    }
    return line;
}

void addTable(const project::Project& project, std::span<const Assessment> rounds,
              const std::vector<std::size_t>& order, ChartFigure& figure) {
    figure.tableHeads = {ConvergenceChartText::tr("Tag")};
    for (const Assessment& round : rounds) {
        figure.tableHeads << ConvergenceChartText::tr("Round %1").arg(round.roundNumber);
    }
    for (const std::size_t branch : order) {
        QStringList row{QString::fromStdString(project.branches()[branch].tag)};
        for (const Assessment& round : rounds) {
            const auto& ofTarget = round.branches[branch].ofTarget;
            row << (ofTarget ? text::percent(*ofTarget) : QString());
        }
        figure.tableRows.push_back(row);
    }
}

void addSpread(std::span<const Assessment> rounds, ChartFigure& figure) {
    figure.rowLabel = ConvergenceChartText::tr("spread");
    for (const Assessment& round : rounds) {
        figure.rowCells << (round.spread ? text::percent(*round.spread) : QString());
    }
}

void addAxes(const project::Project& project, std::span<const Assessment> rounds, ChartFigure& figure) {
    const double half = project.job().matchingBand.value.si() * 100;
    double low = 100 - half;
    double high = 100 + half;
    for (const Line& line : figure.lines) {
        for (const QPointF& point : line.points) {
            low = std::min(low, point.y());
            high = std::max(high, point.y());
        }
    }
    figure.band = Band{100 - half, 100 + half};
    figure.y = niceAxis(ConvergenceChartText::tr("Of target, %"), low - 2, high + 2, 5);
    figure.x = Axis{ConvergenceChartText::tr("Round"), static_cast<double>(rounds.front().roundNumber),
                    static_cast<double>(rounds.back().roundNumber), 1, 0};
    if (figure.x.most <= figure.x.least) {
        figure.x.most = figure.x.least + 1;
    }
}

}  // namespace

ChartFigure convergenceChart(const project::Project& project, std::span<const Assessment> rounds,
                             std::optional<base::Id> selected) {
    ChartFigure figure;
    figure.name = ConvergenceChartText::tr("Of target by round");
    if (rounds.empty()) {
        return figure;
    }
    const std::vector<std::size_t> order = worstFirst(rounds.back());
    const double half = project.job().matchingBand.value.si();
    std::vector<Line> named;
    for (std::size_t place = 0; place < order.size(); ++place) {
        Line line = lineOf(order[place], rounds);
        if (line.points.empty()) {
            continue;
        }
        const project::Branch& branch = project.branches()[order[place]];
        const bool isSelected = selected && branch.id == *selected;
        const double last = line.points.back().y();
        if (isSelected || (place < kNamed && std::abs(last - 100) > 100 * half)) {
            line.role = LineRole::Singled;
            line.name = QString::fromStdString(branch.tag) + ' ' + QString::number(last, 'f', 0);
            named.push_back(std::move(line));
        } else {
            line.role = LineRole::OneOfMany;
            figure.lines.push_back(std::move(line));
        }
    }
    figure.lines.insert(figure.lines.end(), named.begin(), named.end());
    addAxes(project, rounds, figure);
    addSpread(rounds, figure);
    addTable(project, rounds, order, figure);
    figure.tableRows.push_back(QStringList(figure.rowLabel) + figure.rowCells);
    const Assessment& last = rounds.back();
    figure.sentence =
        ConvergenceChartText::tr("%1 of %2 terminals on share in round %3; spread by round %4 %.")
            .arg(last.onShareCount)
            .arg(last.terminalCount)
            .arg(last.roundNumber)
            .arg(figure.rowCells.join(QStringLiteral(", ")));
    return figure;
}

}  // namespace ww::ui::charts
