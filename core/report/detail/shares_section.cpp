#include <algorithm>

#include "core/base/term.h"
#include "core/project/names.h"
#include "core/report/detail/sections.h"

namespace ww::report::detail {
namespace {

constexpr std::size_t kRoundsATable = 12;

Table roundsTable(const Source& source) {
    Table table;
    table.title = say(kRoundsTable);
    table.columns = {column(kRoundColumn, 10, Alignment::Right),
                     column(kKindColumn, 18),
                     column(kDatesColumn, 26),
                     column(kReadColumn, 17, Alignment::Right),
                     column(kOnShareColumn, 17, Alignment::Right),
                     column(kSpreadColumn, 14, Alignment::Right, "%"),
                     column(kFlowColumn, 16, Alignment::Right, printed(source.display.flowUnit())),
                     column(kOfDesignColumn, 18, Alignment::Right, "%"),
                     column(kVerdictColumn, 30)};
    for (const Assessment& round : source.rounds) {
        std::optional<quantity::Ratio> ofDesign;
        if (round.totalFlow && round.totalDesign.si() > 0) {
            ofDesign = quantity::Ratio::si(*round.totalFlow / round.totalDesign);
        }
        const balancing::ShareCount count = balancing::shareCount(round);
        const std::string all = std::to_string(count.all);
        table.rows.push_back(
            {cell(std::to_string(round.roundNumber)), wordCell(std::string(project::name(round.kind))),
             cell(datesOf(source, round.round)), cell({say(kOfCount, {std::to_string(count.read), all})}, ""),
             count.onShare ? cell({say(kOfCount, {std::to_string(*count.onShare), all})}, "") : cell("–"),
             cell(source.display.percent(round.spread)), cell(source.display.flow(round.totalFlow)),
             cell(source.display.percent(ofDesign)), wordCell(word(round.verdict))});
    }
    return table;
}

Table sharesTable(const Source& source, std::size_t from, std::size_t to) {
    Table table;
    table.title = say(kSharesTable);
    table.isLandscape = to - from > 6;
    table.columns = {column(kTagColumn, 22), column(kServesColumn, 40)};
    for (std::size_t round = from; round < to; ++round) {
        table.columns.push_back(
            Column{say(kRoundNumberColumn, {std::to_string(source.rounds[round].roundNumber)}), "",
                   Alignment::Right, 16});
    }
    table.columns.push_back(column(kStateColumn, 26));
    table.totals = {wordCell(base::term("Spread")), wordCell(base::term("largest of any group"))};
    for (const auto& [index, depth] : source.outline()) {
        std::string tag(static_cast<std::size_t>(depth) * 3, ' ');
        tag += source.branch(index).tag;
        std::vector<Cell> row{cell(tag), cell(source.branch(index).serves)};
        for (std::size_t round = from; round < to; ++round) {
            row.push_back(cell(source.display.percent(source.rounds[round].branches[index].ofTarget)));
        }
        const BranchResult& result = source.rounds[to - 1].branches[index];
        row.push_back(stateCell(result));
        table.rows.push_back(std::move(row));
    }
    for (std::size_t round = from; round < to; ++round) {
        table.totals.push_back(cell(source.display.percent(source.rounds[round].spread)));
    }
    table.totals.push_back(cell(""));
    return table;
}

}  // namespace

Section sharesSection(const Source& source) {
    Section section;
    section.number = kShares;
    section.title = say(kSharesTitle);
    if (!source.hasRound()) {
        section.statements.push_back(say(kNoRound));
        return section;
    }
    std::string spreads;
    std::string counts;
    for (const Assessment& round : source.rounds) {
        const std::string number =
            (spreads.empty() ? "" : ", ") + std::string("R") + std::to_string(round.roundNumber);
        spreads +=
            number + " " + (round.spread ? source.display.percent(round.spread) + " %" : std::string("-"));
        const auto onShare = balancing::shareCount(round).onShare;
        counts += number + " " + (onShare ? std::to_string(*onShare) : std::string("-"));
    }
    section.figures.push_back(
        {FigureKind::Convergence, say(kConvergenceFigure),
         say(kConvergenceReading, {spreads, counts, std::to_string(source.last.terminalCount)})});
    section.tables.push_back(roundsTable(source));
    for (std::size_t from = 0; from < source.rounds.size(); from += kRoundsATable) {
        section.tables.push_back(
            sharesTable(source, from, std::min(from + kRoundsATable, source.rounds.size())));
    }
    return section;
}

}  // namespace ww::report::detail
