#include "ui/charts/convergence_chart_data.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <iterator>

#include "core/balancing/share_count.h"
#include "ui/text/format.h"

namespace ww::ui::charts {
namespace {

using balancing::Assessment;
using balancing::BranchResult;

constexpr std::size_t kNamed = 3;

/// The rounds of a chart, in order; none is null.
using Rounds = std::span<const Assessment* const>;

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

Line lineOf(std::size_t branch, Rounds rounds) {
    Line line;
    for (const Assessment* round : rounds) {
        if (const auto& ofTarget = round->branches[branch].ofTarget) {
            line.points.emplace_back(round->roundNumber, 100 * ofTarget->si());
        }
    }
    return line;
}

/// One line in place of many: a value of each round that so many terminals lie at or below.
struct SummaryRule {
    QString name;
    double share = 0;  ///< of the terminals; 0: the smallest value
};

std::vector<SummaryRule> summaryRules() {
    return {{ConvergenceChartText::tr("largest"), 1.0},
            {ConvergenceChartText::tr("9 of 10 below"), 0.9},
            {ConvergenceChartText::tr("half below"), 0.5},
            {ConvergenceChartText::tr("1 of 10 below"), 0.1},
            {ConvergenceChartText::tr("smallest"), 0.0}};
}

/// Of target of these terminals in a round, sorted; those without a value are left out.
std::vector<double> sortedValues(const Assessment& round, const std::vector<std::size_t>& terminals) {
    std::vector<double> values;
    for (const std::size_t terminal : terminals) {
        if (const auto& ofTarget = round.branches[terminal].ofTarget) {
            values.push_back(ofTarget->si());
        }
    }
    std::sort(values.begin(), values.end());
    return values;
}

/// Nearest rank; `sorted` must not be empty.
double valueAt(const std::vector<double>& sorted, double share) {
    const auto rank = static_cast<std::size_t>(std::ceil(share * static_cast<double>(sorted.size()) - 1e-9));
    return sorted[std::max<std::size_t>(rank, 1) - 1];
}

/// A line and a row of the table for each rule.
void addSummaries(Rounds rounds, const std::vector<std::size_t>& terminals, ChartFigure& figure) {
    std::vector<std::vector<double>> values;
    for (const Assessment* round : rounds) {
        values.push_back(sortedValues(*round, terminals));
    }
    for (const SummaryRule& rule : summaryRules()) {
        Line line;
        line.role = LineRole::Summary;
        QStringList row{rule.name};
        for (std::size_t i = 0; i < rounds.size(); ++i) {
            if (values[i].empty()) {
                row << QString();
                continue;
            }
            const double value = valueAt(values[i], rule.share);
            line.points.emplace_back(rounds[i]->roundNumber, 100 * value);
            row << text::percent(quantity::Ratio::si(value));
        }
        if (line.points.empty()) {
            continue;
        }
        line.name = rule.name + ' ' + QString::number(line.points.back().y(), 'f', 0);
        figure.lines.push_back(std::move(line));
        figure.tableRows.push_back(std::move(row));
    }
}

/// A thin line for each terminal that is not singled out.
void addThinLines(Rounds rounds, std::span<const std::size_t> terminals, ChartFigure& figure) {
    for (const std::size_t terminal : terminals) {
        Line line = lineOf(terminal, rounds);
        if (!line.points.empty()) {
            line.role = LineRole::OneOfMany;
            figure.lines.push_back(std::move(line));
        }
    }
}

void addSingled(const project::Project& project, Rounds rounds, std::span<const std::size_t> terminals,
                ChartFigure& figure) {
    for (const std::size_t terminal : terminals) {
        Line line = lineOf(terminal, rounds);
        line.role = LineRole::Singled;
        line.name = QString::fromStdString(project.branches()[terminal].tag) + ' ' +
                    QString::number(line.points.back().y(), 'f', 0);
        figure.lines.push_back(std::move(line));
    }
}

/// Those of `worst` (worst first) that are drawn with their names: the selected one, and the first that lie
/// outside the band.
std::vector<std::size_t> singledOf(const project::Project& project, Rounds rounds,
                                   const std::vector<std::size_t>& worst, std::optional<base::Id> selected) {
    const double half = project.job().matchingBand.value.si();
    std::vector<std::size_t> singled;
    for (std::size_t place = 0; place < worst.size(); ++place) {
        const bool isSelected = selected && project.branches()[worst[place]].id == *selected;
        if (!isSelected && place >= kNamed) {
            continue;
        }
        const Line line = lineOf(worst[place], rounds);
        if (!line.points.empty() && (isSelected || std::abs(line.points.back().y() - 100) > 100 * half)) {
            singled.push_back(worst[place]);
        }
    }
    return singled;
}

void addHeads(Rounds rounds, ChartFigure& figure) {
    figure.tableHeads = {ConvergenceChartText::tr("Tag")};
    for (const Assessment* round : rounds) {
        figure.tableHeads << ConvergenceChartText::tr("Round %1").arg(round->roundNumber);
    }
}

void addTable(const project::Project& project, Rounds rounds, std::span<const std::size_t> order,
              ChartFigure& figure) {
    for (const std::size_t branch : order) {
        QStringList row{QString::fromStdString(project.branches()[branch].tag)};
        for (const Assessment* round : rounds) {
            const auto& ofTarget = round->branches[branch].ofTarget;
            row << (ofTarget ? text::percent(*ofTarget) : QString());
        }
        figure.tableRows.push_back(row);
    }
}

void addSpread(Rounds rounds, ChartFigure& figure) {
    figure.rowLabel = ConvergenceChartText::tr("spread");
    for (const Assessment* round : rounds) {
        figure.rowCells << (round->spread ? text::percent(*round->spread) : QString(QChar(0x2013)));
    }
}

void addAxes(const project::Project& project, Rounds rounds, ChartFigure& figure) {
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
    figure.x = Axis{ConvergenceChartText::tr("Round"), static_cast<double>(rounds.front()->roundNumber),
                    static_cast<double>(rounds.back()->roundNumber), 1, 0};
    if (figure.x.most <= figure.x.least) {
        figure.x.most = figure.x.least + 1;
    }
}

QString sentenceOf(const Assessment& last, const QStringList& spreads, bool isCrowded) {
    const balancing::ShareCount count = balancing::shareCount(last);
    QString said = count.onShare
                       ? ConvergenceChartText::tr("%1 of %2 terminals on share in round %3.")
                             .arg(QString::number(*count.onShare), QString::number(count.all),
                                  QString::number(last.roundNumber))
                       : ConvergenceChartText::tr("No share is known in round %1.").arg(last.roundNumber);
    if (!count.isComplete()) {
        said += ' ' + ConvergenceChartText::tr("%1 of %2 terminals are read.").arg(count.read).arg(count.all);
    }
    said += ' ' + ConvergenceChartText::tr("Spread by round %1 %.").arg(spreads.join(QStringLiteral(", ")));
    return isCrowded ? said + ' ' + ConvergenceChartText::tr("The lines in between stand in the table.")
                     : said;
}

}  // namespace

ChartFigure convergenceChartOver(const project::Project& project, Rounds rounds,
                                 std::optional<base::Id> selected) {
    ChartFigure figure;
    figure.name = ConvergenceChartText::tr("Of target by round");
    if (rounds.empty()) {
        return figure;
    }
    std::vector<std::size_t> order = worstFirst(*rounds.back());
    const bool isCrowded = order.size() > kMostTerminalLines;
    const std::vector<std::size_t> singled = singledOf(project, rounds, order, selected);
    const auto isSingled = [&singled](std::size_t terminal) {
        return std::find(singled.begin(), singled.end(), terminal) != singled.end();
    };
    addHeads(rounds, figure);
    if (isCrowded) {
        addSummaries(rounds, order, figure);
        // What is drawn stands at the head of a long table.
        std::stable_partition(order.begin(), order.end(), isSingled);
    } else {
        std::vector<std::size_t> others;
        std::remove_copy_if(order.begin(), order.end(), std::back_inserter(others), isSingled);
        addThinLines(rounds, others, figure);
    }
    addSingled(project, rounds, singled, figure);
    addAxes(project, rounds, figure);
    addSpread(rounds, figure);
    addTable(project, rounds, order, figure);
    figure.tableRows.push_back(QStringList(figure.rowLabel) + figure.rowCells);
    figure.sentence = sentenceOf(*rounds.back(), figure.rowCells, isCrowded);
    return figure;
}

ChartFigure convergenceChart(const project::Project& project, std::span<const Assessment> rounds,
                             std::optional<base::Id> selected) {
    std::vector<const Assessment*> each;
    for (const Assessment& round : rounds) {
        each.push_back(&round);
    }
    return convergenceChartOver(project, each, selected);
}

}  // namespace ww::ui::charts
