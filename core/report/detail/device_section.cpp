#include <map>

#include "core/balancing/straight_pipe.h"
#include "core/base/term.h"
#include "core/project/names.h"
#include "core/report/detail/pump_numbers.h"
#include "core/report/detail/pump_words.h"
#include "core/report/detail/sections.h"
#include "core/report/pump_sections.h"

namespace ww::report {

namespace {

using namespace detail;
using pump_room::DeviceRow;

std::string pipe(const std::optional<base::Decimal>& has, quantity::Ratio needs) {
    return (has ? has->text() : std::string("?")) + " / " + quantity::concise(needs.si(), 3) + " D";
}

std::vector<Cell> branchRow(const Project& project, const DeviceRow& row) {
    const project::Branch& branch = project.branches()[*row.branch];
    std::vector<Cell> cells{cell(branch.tag), wordCell(row.hasDevice ? std::string(project::name(branch.kind))
                                                       : row.needsDevice ? base::term("missing")
                                                                         : base::term("not needed"))};
    const std::string policy(project::name(row.policy.policy));
    cells.push_back(row.policy.reason.empty() ? wordCell(policy)
                                              : cell({say(kWordAndText, {policy, row.policy.reason})}, ""));
    if (row.hasDevice) {
        cells.push_back(wordCell(std::string(project::name(branch.side))));
    }
    // What keeps its flow by itself is not read by its dp, so no straight pipe is asked of it.
    if (row.hasDevice && !isSelfActing(branch)) {
        const balancing::StraightPipe straight = balancing::straightPipe(branch);
        cells.push_back(cell(pipe(branch.upstreamDiameters, straight.upstreamNeed)));
        cells.push_back(cell(pipe(branch.downstreamDiameters, straight.downstreamNeed)));
        cells.push_back(cell(straight.isRecorded ? PumpNumbers::percent(straight.addedUncertainty, 0)
                                                 : std::string("?")));
    } else {
        cells.resize(7);
    }
    cells.push_back(cell(row.missing.empty() ? "" : std::to_string(row.missing.size())));
    return cells;
}

/// What is missing, each sentence once with the tags that it is said of.
Table missingTable(const std::vector<DeviceRow>& devices) {
    Table table;
    table.title = say(kDeviceMissingTable);
    table.columns = {column(kMissingColumn, 110), column(kTagColumn, 92)};
    std::map<std::string, std::size_t> rowOf;
    for (const DeviceRow& device : devices) {
        for (const base::Fault& one : device.missing) {
            const auto [found, isNew] = rowOf.try_emplace(base::english(one), table.rows.size());
            if (isNew) {
                table.rows.push_back(
                    {cell({base::Fault{one.form, {}, one.arguments}}, ""), cell(one.subject)});
            } else {
                table.rows[found->second][1].text += ", " + one.subject;
            }
        }
    }
    return table;
}

}  // namespace

Section deviceSection(const project::Project& project, const pump_room::PumpPicture& picture) {
    Section section;
    section.title = say(kDeviceTitle);
    Table table;
    table.title = say(kDeviceTable);
    table.columns = {column(kTagColumn, 22),
                     column(kDeviceColumn, 24),
                     column(kPolicyColumn, 44),
                     column(kSideColumn, 16),
                     column(kUpstreamColumn, 30, Alignment::Right),
                     column(kDownstreamColumn, 30, Alignment::Right),
                     column(kAddedColumn, 28, Alignment::Right, "%"),
                     column(kMissingColumn, 16, Alignment::Right)};
    std::size_t points = 0;
    std::size_t circuits = 0;
    std::size_t pumps = 0;
    for (const DeviceRow& row : picture.devices) {
        points += row.missing.size();
        (row.branch ? circuits : pumps) += row.missing.empty() ? 0 : 1;
        if (row.branch) {
            table.rows.push_back(branchRow(project, row));
        } else {
            table.rows.push_back(
                {cell(project.pumps()[*row.pump].tag),
                 wordCell(row.hasDevice ? base::term("discharge valve") : base::term("missing"))});
            table.rows.back().resize(table.columns.size() - 1);
            table.rows.back().push_back(cell(row.missing.empty() ? "" : std::to_string(row.missing.size())));
        }
    }
    section.facts.push_back(
        {say(kMissingLabel),
         points == 0 ? say(kDevicesInOrder)
                     : say(kDevicesMissing,
                           {std::to_string(points), std::to_string(circuits), std::to_string(pumps)}),
         points == 0 ? Mark::Pass : Mark::Fail});
    section.tables.push_back(std::move(table));
    if (points > 0) {
        section.tables.push_back(missingTable(picture.devices));
    }
    return section;
}

}  // namespace ww::report
