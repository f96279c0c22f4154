#include "core/base/term.h"
#include "core/project/names.h"
#include "core/report/detail/once.h"
#include "core/report/detail/pump_numbers.h"
#include "core/report/detail/pump_words.h"
#include "core/report/detail/sections.h"
#include "core/report/pump_sections.h"

namespace ww::report {

namespace {

using namespace detail;

template <class Q>
std::string typedOr(const std::optional<quantity::Measured<Q>>& value, const char* otherwise) {
    return value ? typed(*value) : std::string(otherwise);
}

std::string wordOr(std::string_view word, const char* otherwise) {
    return word.empty() ? std::string(otherwise) : std::string(word);
}

void addFacts(const project::SetPoint& record, const pump_room::SetPointSheet& sheet, Section& section) {
    const std::string place = record.location.empty() ? base::term("place not entered") : record.location;
    section.facts.push_back({say(kSensorLabel), say(kSensorAt, {record.sensor, place})});
    section.facts.push_back(
        {say(kFoundByLabel), detail::word(wordOr(project::name(record.method), base::term("not stated")))});
    section.facts.push_back({say(kZeroCheckLabel), detail::word(typedOr(record.zero, base::term("not read"))),
                             record.zero ? Mark::None : Mark::Open});
    section.facts.push_back(
        {say(kHeldLabel),
         say(kHeldAt,
             {typedOr(record.dp, base::term("not entered")), typedOr(record.lowLimit, base::term("none")),
              typedOr(record.highLimit, base::term("none")), typedOr(record.flow, base::term("not read")),
              typedOr(record.speed, base::term("not read"))}),
         record.dp ? Mark::None : Mark::Open});
    section.facts.push_back({say(kResetLabel), detail::word(std::string(project::name(record.reset)))});
    if (sheet.indexOfDesign) {
        section.facts.push_back(
            {say(kIndexThereLabel), say(kIndexThere, {PumpNumbers::percent(sheet.indexOfDesign)})});
    }
}

Table lawTable(const Project& project, const project::SetPoint& record,
               const pump_room::SetPointSheet& sheet) {
    const PumpNumbers numbers(project);
    Table table;
    table.title = say(kLawTable, {record.sensor});
    table.columns = {column(kOfDesignFlowColumn, 30, Alignment::Right, "%"),
                     column(kFlowColumn, 30, Alignment::Right, numbers.flowUnit()),
                     column(kComputedColumn, 30, Alignment::Right, numbers.pressureUnit()),
                     column(kSetColumn, 30, Alignment::Right, numbers.pressureUnit())};
    for (std::size_t i = 0; i < sheet.points.size(); ++i) {
        const pump_room::SetPointAtFlow& point = sheet.points[i];
        table.rows.push_back({cell(std::to_string(20 * (i + 1))), cell(numbers.flow(point.flow)),
                              cell(numbers.pressure(point.computed)),
                              cell(numbers.pressure(point.setPoint))});
    }
    return table;
}

}  // namespace

Section setPointSection(const project::Project& project, const pump_room::PumpPicture& picture) {
    Section section;
    section.title = say(kSetPointTitle);
    for (const pump_room::SetPointSheet& sheet : picture.setPoints) {
        const project::SetPoint& record = project.setPoints().at(sheet.setPoint);
        addFacts(record, sheet, section);
        if (!sheet.points.empty()) {
            section.tables.push_back(lawTable(project, record, sheet));
        }
        addOnce(sheet.findings, section.closing);
    }
    if (picture.setPoints.empty()) {
        section.statements.push_back(say(kNoSetPoint));
    }
    return section;
}

std::vector<Section> pumpSections(const project::Project& project, const pump_room::PumpPicture& picture) {
    std::vector<Section> sections;
    for (std::size_t i = 0; i < picture.sheets.size(); ++i) {
        if (!picture.sheets[i].readings.empty()) {
            sections.push_back(pumpTestSection(project, picture, i));
        }
    }
    if (!project.pumps().empty()) {
        sections.push_back(pumpDecisionSection(project, picture));
        sections.push_back(energyCodeSection(project, picture));
    }
    if (!picture.readAndSet.valves.empty()) {
        sections.push_back(readAndSetSection(project, picture));
    }
    if (picture.circuit) {
        sections.push_back(pressureSection(project, *picture.circuit));
    }
    if (!picture.devices.empty()) {
        sections.push_back(deviceSection(project, picture));
    }
    if (!picture.setPoints.empty()) {
        sections.push_back(setPointSection(project, picture));
    }
    return sections;
}

}  // namespace ww::report
