#include "core/report/walk_sheet.h"

#include "core/balancing/standing_readings.h"
#include "core/exchange/csv_table.h"
#include "core/project/names.h"
#include "core/report/detail/display.h"
#include "core/report/detail/sections.h"

namespace ww::report {

namespace {

using base::MessageForm;
using detail::say;

constexpr MessageForm kWalkTable{"walk_sheet_table", "Round {1} ({2w}): readings in the order of the route"};
constexpr MessageForm kServesHead{"walk_sheet_serves", "Serves"};
constexpr MessageForm kValveHead{"walk_sheet_valve", "Valve"};
constexpr MessageForm kNowHead{"walk_sheet_now", "Set now"};
constexpr MessageForm kLastHead{"walk_sheet_last", "Last dp"};
constexpr MessageForm kSetHead{"walk_sheet_set", "Setting found"};
constexpr MessageForm kReadHead{"walk_sheet_read", "dp read"};
constexpr MessageForm kTimeHead{"walk_sheet_time", "Time"};
constexpr MessageForm kNoteHead{"walk_sheet_note", "Note"};
constexpr MessageForm kWhoBlank{"walk_sheet_who",
                                "Read by: ____________________    Date: ______________    Unit of dp: {1}"};
constexpr MessageForm kMeterBlank{
    "walk_sheet_meter",
    "Meter: {1}    Serial: ____________    Zero before: __________    Zero after: __________"};
constexpr MessageForm kUnreadHint{
    "walk_sheet_unread",
    "Write x as the dp where a valve cannot be read, and note why; closing the round asks for "
    "the reason."};
constexpr MessageForm kCaution{
    "walk_sheet_caution",
    "Caution: hot or chilled water and pressure. Check rating and fittings of the hoses, open test ports "
    "slowly, vent the meter, keep clear of moving and live parts; local codes and the site's rules come "
    "first."};

/// The last dp that counts at a branch, of the newest round that has one.
const project::Reading* lastReading(const project::Project& project, const base::Id& branch) {
    const auto rounds = project.roundsByNumber();
    for (std::size_t i = rounds.size(); i > 0; --i) {
        const project::Reading* reading =
            balancing::countingReading(project, project.rounds()[rounds[i - 1]].id, branch);
        if (reading != nullptr && reading->dp) {
            return reading;
        }
    }
    return nullptr;
}

std::optional<base::Decimal> settingNow(const project::Project& project, const project::Branch& branch) {
    const project::Round* last = project.lastRound();
    return last == nullptr ? branch.setting : balancing::standingSetting(project, last->id, branch.id);
}

std::string valveText(const project::Project& project, const project::Branch& branch) {
    const project::ValveModel* valve = branch.valve ? project.valves().find(*branch.valve) : nullptr;
    return valve == nullptr ? std::string(project::name(branch.kind))
                            : valve->model + (valve->size.empty() ? "" : " " + valve->size);
}

std::vector<const project::Branch*> routeOf(const project::Project& project) {
    std::vector<const project::Branch*> route;
    for (const std::size_t index : project.tree().walkingOrder()) {
        const project::Branch& branch = project.branches()[index];
        if (project.tree().isTerminal(index) || branch.valve) {
            route.push_back(&branch);
        }
    }
    return route;
}

struct SheetRound {
    int number = 1;
    project::RoundKind kind = project::RoundKind::Survey;
};

SheetRound roundOf(const project::Project& project) {
    const project::Round* last = project.lastRound();
    if (last == nullptr) {
        return {};
    }
    return last->state == project::RoundState::Open
               ? SheetRound{last->number, last->kind}
               : SheetRound{last->number + 1, project::RoundKind::Adjusting};
}

/// psi or kPa, as the job; the unit of the newest dp where there is one.
quantity::Unit dpUnit(const project::Project& project) {
    for (std::size_t i = project.readings().size(); i > 0; --i) {
        if (const auto& dp = project.readings()[i - 1].dp) {
            return dp->unit;
        }
    }
    return project.job().units == project::UnitSystem::US ? quantity::Unit::Psi : quantity::Unit::Kilopascal;
}

std::string meters(const project::Project& project) {
    std::string tags;
    for (const project::Instrument& instrument : project.instruments()) {
        tags += (tags.empty() ? "" : " / ") + instrument.tag;
    }
    return tags.empty() ? "____________" : tags;
}

}  // namespace

WalkSheet walkSheet(const project::Project& project) {
    const SheetRound round = roundOf(project);
    const std::string unit = detail::printed(dpUnit(project));
    WalkSheet sheet;
    sheet.jobName = project.job().name;
    for (const std::string& line : {project.job().site, project.job().client}) {
        if (!line.empty()) {
            sheet.titleLines.push_back(line);
        }
    }
    sheet.roundNumber = round.number;
    sheet.kind = round.kind;
    sheet.blanks = {say(kWhoBlank, {unit}), say(kMeterBlank, {meters(project)}), say(kUnreadHint)};
    sheet.cautions = {say(kCaution)};
    sheet.table.title =
        say(kWalkTable, {std::to_string(round.number), std::string(project::name(round.kind))});
    sheet.table.isLandscape = true;
    sheet.table.isForm = true;
    sheet.table.columns = {
        {say(detail::kTagColumn), "", Alignment::Left, 1.1}, {say(kServesHead), "", Alignment::Left, 1.8},
        {say(kValveHead), "", Alignment::Left, 1.3},         {say(kNowHead), "", Alignment::Right, 0.8},
        {say(kLastHead), "", Alignment::Right, 1.0},         {say(kSetHead), "", Alignment::Left, 1.1},
        {say(kReadHead), unit, Alignment::Left, 1.3},        {say(kTimeHead), "", Alignment::Left, 0.9},
        {say(kNoteHead), "", Alignment::Left, 2.6}};
    for (const project::Branch* branch : routeOf(project)) {
        const auto setting = settingNow(project, *branch);
        const project::Reading* last = lastReading(project, branch->id);
        std::vector<Cell> row(sheet.table.columns.size());
        row[0].text = branch->tag;
        row[1].text = branch->serves;
        row[2].text = valveText(project, *branch);
        row[3].text = setting ? setting->text() : std::string();
        row[4].text = last != nullptr ? detail::typed(last->dp) : std::string();
        sheet.table.rows.push_back(std::move(row));
    }
    return sheet;
}

std::string walkSheetCsv(const project::Project& project) {
    const SheetRound round = roundOf(project);
    exchange::CsvTable table(std::vector<std::string>{"round", "kind", "tag", "serves", "valve",
                                                      "setting_now", "last_dp", "setting", "dp", "time",
                                                      "instrument", "person", "note"});
    for (const char* column : {"last_dp", "dp"}) {
        table.setUsualUnit(column, dpUnit(project));
    }
    for (const project::Branch* branch : routeOf(project)) {
        const project::Reading* last = lastReading(project, branch->id);
        table.begin();
        table.add(round.number);
        table.add(std::string(project::name(round.kind)));
        table.add(branch->tag);
        table.add(branch->serves);
        table.add(valveText(project, *branch));
        table.add(settingNow(project, *branch));
        if (last != nullptr) {
            table.add(*last->dp);
        } else {
            table.add(std::string());
        }
        for (int blank = 0; blank < 6; ++blank) {
            table.add(std::string());
        }
    }
    return table.written();
}

}  // namespace ww::report
