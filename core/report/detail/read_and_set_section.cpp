#include "core/base/term.h"
#include "core/report/detail/pump_numbers.h"
#include "core/report/detail/pump_words.h"
#include "core/report/detail/sections.h"
#include "core/report/pump_sections.h"

namespace ww::report {

namespace {

using namespace detail;

Table valvesTable(const Project& project, const pump_room::ReadAndSet& comparison) {
    const PumpNumbers numbers(project);
    const std::string unit = numbers.pressureUnit();
    Table table;
    table.title = say(kReadAndSetTable);
    table.columns = {column(kTagColumn, 30), column(kServesColumn, 60),
                     column(kOpenDpColumn, 24, Alignment::Right, unit),
                     column(kProportionalColumn, 26, Alignment::Right, unit),
                     column(kReadAndSetColumn, 26, Alignment::Right, unit)};
    for (const pump_room::ValveLeft& valve : comparison.valves) {
        const project::Branch& branch = project.branches()[valve.branch];
        table.rows.push_back({valve.isIndex ? cell({say(kIndexTag, {branch.tag})}, "") : cell(branch.tag),
                              cell(branch.serves), cell(numbers.pressure(valve.open)),
                              cell(numbers.pressure(valve.proportional)),
                              cell(numbers.pressure(valve.readAndSet))});
    }
    return table;
}

const pump_room::ValveLeft* indexValve(const pump_room::ReadAndSet& comparison) {
    for (const pump_room::ValveLeft& valve : comparison.valves) {
        if (valve.isIndex) {
            return &valve;
        }
    }
    return nullptr;
}

}  // namespace

Section readAndSetSection(const project::Project& project, const pump_room::PumpPicture& picture) {
    const pump_room::ReadAndSet& comparison = picture.readAndSet;
    const PumpNumbers numbers(project);
    Section section;
    section.title = say(kReadAndSetTitle);
    section.opening = picture.decision.curve.ruling();
    section.closing = comparison.findings;
    if (comparison.valves.empty()) {
        section.statements.push_back(say(kNoDecision));
        return section;
    }
    const quantity::ShownUnits& units = numbers.units();
    const pump_room::ValveLeft* index = indexValve(comparison);
    const std::string tag = index != nullptr ? project.branches()[index->branch].tag : std::string("?");
    if (comparison.wasted) {
        section.facts.push_back(
            {say(kWastedLabel),
             say(kWasted, {units.written(*comparison.wasted), tag,
                           comparison.wastedPower ? units.text(*comparison.wastedPower, 3)
                                                  : std::string(base::term("a power that is not known"))})});
    }
    if (comparison.energy) {
        const std::string currency = project.job().currency;
        section.facts.push_back(
            {say(kYearLabel),
             say(kYearSaved, {PumpNumbers::kilowattHours(comparison.energy),
                              comparison.cost ? PumpNumbers::money(comparison.cost) + " " + currency
                                              : std::string(base::term("a cost that is not known"))})});
    }
    if (index != nullptr) {
        section.figures.push_back({FigureKind::ReadAndSet, say(kReadAndSetFigure),
                                   say(kReadAndSetReading, {units.text(index->readAndSet, 3), tag,
                                                            units.text(index->proportional, 3)})});
    }
    section.tables.push_back(valvesTable(project, comparison));
    return section;
}

}  // namespace ww::report
