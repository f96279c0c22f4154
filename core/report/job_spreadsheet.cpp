#include "core/report/job_spreadsheet.h"

#include <algorithm>
#include <cmath>

#include "core/balancing/assess.h"
#include "core/balancing/design_changes.h"
#include "core/exchange/job_sheets.h"
#include "core/exchange/spreadsheet_source.h"
#include "core/project/names.h"
#include "core/report/detail/display.h"
#include "core/report/detail/sections.h"
#include "core/spreadsheet/write_spreadsheet.h"

namespace ww::report {

namespace {

using balancing::Assessment;
using balancing::BranchResult;
using spreadsheet::WrittenCell;

/// More lines than these cannot be told apart.
constexpr std::size_t kMostLines = 24;

std::string stateWord(const BranchResult& result) {
    if (!result.isInLoop) {
        return "added later";
    }
    switch (result.state) {
        case balancing::State::NotRead:
            return "not read";
        case balancing::State::Short:
            return "short";
        case balancing::State::Over:
            return "over";
        case balancing::State::OnShare:
            return result.isSelfActing ? "in range" : "on share";
        case balancing::State::Drifted:
            return "drifted";
        case balancing::State::AtStop:
            return result.ofTarget && result.ofTarget->si() > 1 ? "at shut stop" : "at open stop";
        case balancing::State::Doubtful:
            return "doubtful";
    }
    return {};
}

/// Digits that were computed, as a number; empty where there are none.
WrittenCell number(const std::string& digits) {
    if (digits.empty()) {
        return std::monostate();
    }
    auto decimal = base::Decimal::parse(digits);
    return decimal ? WrittenCell(std::move(*decimal)) : WrittenCell(digits);
}

std::vector<Assessment> ownRounds(const project::Project& project) {
    std::vector<Assessment> rounds;
    for (const std::size_t index : project.roundsByNumber()) {
        const project::Round& round = project.rounds()[index];
        if (round.kind != project::RoundKind::Witness) {
            rounds.push_back(balancing::assess(project, round.id, {.numbersOnly = true}));
        }
    }
    return rounds;
}

std::vector<WrittenCell> headings(const detail::Display& display, const std::vector<Assessment>& rounds) {
    const std::string flowUnit = "[" + std::string(quantity::symbol(display.flowUnit())) + "]";
    std::vector<WrittenCell> head{std::string("tag"),
                                  std::string("parent"),
                                  std::string("serves"),
                                  "design_flow" + flowUnit,
                                  "flow" + flowUnit,
                                  std::string("share[%]"),
                                  std::string("target_share[%]"),
                                  std::string("of_target[%]"),
                                  std::string("of_design[%]"),
                                  std::string("state")};
    for (const Assessment& round : rounds) {
        head.emplace_back("round " + std::to_string(round.roundNumber));
    }
    return head;
}

std::vector<WrittenCell> branchRow(const project::Project& project, const detail::Display& display,
                                   const BranchResult& result, const std::vector<Assessment>& rounds) {
    const project::Branch& branch = project.branches()[result.branch];
    const project::Branch* parent = branch.parent ? project.branches().find(*branch.parent) : nullptr;
    std::vector<WrittenCell> row{branch.tag,
                                 parent != nullptr ? parent->tag : std::string(),
                                 branch.serves,
                                 number(display.flow(result.designFlow)),
                                 number(display.flow(result.flow)),
                                 number(display.percent(result.share)),
                                 number(display.percent(result.targetShare)),
                                 number(display.percent(result.ofTarget)),
                                 number(display.percent(result.ofDesign)),
                                 stateWord(result)};
    for (const Assessment& round : rounds) {
        row.push_back(number(display.percent(round.branches[result.branch].ofTarget)));
    }
    return row;
}

/// The terminals of a chart: those farthest from their target share in the last round, in the order of rows.
std::vector<std::size_t> linesOf(const Assessment& last, const std::vector<std::size_t>& order,
                                 std::size_t firstRow) {
    std::vector<std::pair<double, std::size_t>> byDistance;
    for (std::size_t i = 0; i < order.size(); ++i) {
        const BranchResult& result = last.branches[order[i]];
        if (result.isTerminal && !result.isSelfActing && result.ofTarget) {
            byDistance.emplace_back(-std::abs(result.ofTarget->si() - 1), firstRow + i);
        }
    }
    std::stable_sort(byDistance.begin(), byDistance.end());
    byDistance.resize(std::min(byDistance.size(), kMostLines));
    std::vector<std::size_t> rows;
    for (const auto& [distance, row] : byDistance) {
        rows.push_back(row);
    }
    std::sort(rows.begin(), rows.end());
    return rows;
}

}  // namespace

spreadsheet::WrittenSheet summarySheet(const project::Project& project) {
    const detail::Display display(project);
    const Assessment last = balancing::assessLast(project);
    const std::vector<Assessment> rounds = ownRounds(project);
    spreadsheet::WrittenSheet sheet;
    sheet.name = "Summary";
    sheet.rows.push_back({project.job().name});
    sheet.rows.push_back({project.job().site});
    const std::string round = last.round ? "Round " + std::to_string(last.roundNumber) + " (" +
                                               std::string(project::name(last.kind)) +
                                               "), by the readings: " + detail::word(last.verdict)
                                         : std::string("No round of readings has been walked yet");
    sheet.rows.push_back({round});
    if (last.round) {
        sheet.rows.push_back(
            {base::english(detail::say(detail::kAcceptanceLabel)) + ": " +
             base::english(detail::acceptanceText(project, project.rounds().at(*last.round)))});
    }
    for (const base::Fault& change : balancing::changesSince(project, 0)) {
        sheet.rows.push_back({base::english(change)});
    }
    sheet.rows.push_back({std::string("Of target round by round stands in the last columns, in percent.")});
    sheet.boldRows = {0, 2};
    if (const auto simulated = detail::simulated(project)) {
        sheet.boldRows.push_back(sheet.rows.size());
        sheet.rows.push_back({"SIMULATED. " + base::english(*simulated)});
    }
    sheet.headRow = sheet.rows.size();
    sheet.rows.push_back(headings(display, rounds));
    const std::size_t firstRow = sheet.rows.size();
    const auto walked = project.tree().walkingOrder();
    const std::vector<std::size_t> order(walked.begin(), walked.end());
    for (const std::size_t branch : order) {
        sheet.rows.push_back(branchRow(project, display, last.branches[branch], rounds));
    }
    const std::size_t columns = sheet.rows[*sheet.headRow].size();
    const std::vector<std::size_t> lines = linesOf(last, order, firstRow);
    if (!rounds.empty() && !lines.empty()) {
        spreadsheet::LineChart chart;
        chart.title = "Of target by round";
        chart.upTitle = "of target, %";
        chart.lineRows = lines;
        chart.headRow = *sheet.headRow;
        chart.firstColumn = columns - rounds.size();
        chart.columnCount = rounds.size();
        chart.anchorRow = *sheet.headRow;
        chart.anchorColumn = columns + 1;
        sheet.charts.push_back(std::move(chart));
    }
    return sheet;
}

base::Outcome writeJobSpreadsheet(const project::Project& project, const std::filesystem::path& file) {
    std::vector<spreadsheet::WrittenSheet> sheets{summarySheet(project)};
    for (spreadsheet::WrittenSheet& sheet : exchange::jobSheets(project)) {
        sheets.push_back(std::move(sheet));
    }
    const base::Outcome beside = exchange::writeAttachments(project, exchange::attachmentsBeside(file));
    return beside ? spreadsheet::writeSpreadsheet(sheets, file) : beside;
}

}  // namespace ww::report
