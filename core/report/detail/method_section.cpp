#include <algorithm>
#include <map>

#include "core/base/term.h"
#include "core/project/names.h"
#include "core/report/detail/record_words.h"
#include "core/report/detail/sections.h"

namespace ww::report::detail {
namespace {

Fact fluidFact(const Source& source) {
    const project::Job& job = source.project.job();
    const std::string density = Display::fixed(source.project.fluid().density().si(), 1);
    if (job.fluid == fluid::FluidKind::Water) {
        return {say(kFluidLabel), say(kFluidWater, {typed(job.temperature), density})};
    }
    const bool isEthylene = job.fluid == fluid::FluidKind::EthyleneGlycol;
    return {say(kFluidLabel),
            say(kFluidMixture, {isEthylene ? base::term("Ethylene glycol") : base::term("Propylene glycol"),
                                typed(job.concentration), typed(job.temperature), density})};
}

/// "+10" and "-10": the sign says which limit it is.
std::string withSign(const base::Decimal& digits) {
    return digits.isNegative() ? digits.text() : "+" + digits.text();
}

Table peopleTable(const Source& source) {
    Table table;
    table.title = say(kPeopleTable);
    table.columns = {column(kNameColumn, 40), column(kRoleColumn, 30), column(kFirmColumn, 40),
                     column(kCertificateColumn, 40)};
    for (const project::Person& person : source.project.people()) {
        table.rows.push_back({cell(person.name), wordCell(std::string(project::name(person.role))),
                              cell(person.firm), cell(person.certificate)});
    }
    return table;
}

Table instrumentsTable(const Source& source) {
    std::map<base::Id, int> used;
    for (const project::Reading* reading : source.readings()) {
        // A setting that was typed before its reading is none of the meter.
        if (reading->instrument && (reading->dp || reading->flow)) {
            ++used[*reading->instrument];
        }
    }
    for (const project::PumpReading* reading : source.pumpReadings()) {
        if (reading->instrument) {
            ++used[*reading->instrument];
        }
    }
    Table table;
    table.title = say(kInstrumentsTable);
    table.columns = {column(kTagColumn, 14),
                     column(kKindColumn, 28),
                     column(kSerialColumn, 17),
                     column(kMeterRangeColumn, 15, Alignment::Right),
                     column(kAccuracyColumn, 14, Alignment::Right),
                     column(kFloorColumn, 15, Alignment::Right),
                     column(kCalibratedColumn, 22),
                     column(kDueColumn, 22),
                     column(kCertificateColumn, 19),
                     column(kUsedColumn, 15, Alignment::Right)};
    for (const project::Instrument& meter : source.project.instruments()) {
        table.rows.push_back({cell(meter.tag), cell(meter.kind), cell(meter.serial), cell(typed(meter.range)),
                              cell(typed(meter.accuracy)), cell(typed(meter.accuracyFloor)),
                              cell(meter.calibrated ? meter.calibrated->date() : std::string()),
                              cell(meter.due ? meter.due->date() : std::string()), cell(meter.certificate),
                              cell(std::to_string(used[meter.id]))});
    }
    return table;
}

/// In the coefficient of the job's units, whichever the table was typed in.
std::string coefficientText(const Source& source, const project::ValveModel& valve,
                            const base::Decimal& digits) {
    const quantity::Unit unit =
        source.project.job().units == project::UnitSystem::US ? quantity::Unit::Cv : quantity::Unit::Kv;
    const auto typedIn = quantity::measured<quantity::FlowCoefficient>(digits, valve.coefficientUnit);
    return printed(unit) + " " + quantity::concise(typedIn.value.in(unit), 3);
}

/// Nothing where the table is taken as exact.
std::string accuracyText(const project::ValveModel& valve) {
    return valve.accuracy && valve.accuracy->value.si() > 0 ? typed(valve.accuracy) : std::string();
}

Table valvesTable(const Source& source) {
    Table table;
    table.title = say(kValvesTable);
    table.columns = {column(kModelColumn, 24),
                     column(kSizeColumn, 16),
                     column(kScaleColumn, 14),
                     column(kFullyOpenColumn, 16, Alignment::Right),
                     column(kCoefficientColumn, 22, Alignment::Right),
                     column(kMinimumColumn, 16, Alignment::Right),
                     column(kAccuracyColumn, 16, Alignment::Right)};
    for (const project::ValveModel& valve : source.project.valves()) {
        const auto open = std::max_element(
            valve.rows.begin(), valve.rows.end(),
            [](const auto& left, const auto& right) { return left.setting.value() < right.setting.value(); });
        const bool hasRows = open != valve.rows.end();
        table.rows.push_back(
            {cell(valve.model), cell(valve.size), wordCell(std::string(project::name(valve.scale))),
             cell(hasRows ? open->setting.text() : std::string()),
             cell(hasRows ? coefficientText(source, valve, open->coefficient) : std::string()),
             cell(typed(valve.minimumDp)), cell(accuracyText(valve))});
    }
    return table;
}

}  // namespace

Section methodSection(const Source& source) {
    const project::Job& job = source.project.job();
    Section section;
    section.number = kMethod;
    section.title = say(kMethodTitle);
    section.facts = {
        {say(kMethodLabel), say(kMethodText)},
        {say(kSharesLabel), say(kShareText)},
        {say(kFlowLabel), say(kFlowText)},
        {say(kUncertaintyLabel), say(kUncertaintyText)},
        {say(kToleranceLabel),
         say(kToleranceText, {withSign(job.toleranceLow.digits), withSign(job.toleranceHigh.digits),
                              job.matchingBand.digits.text()})},
        {say(kUnitsLabel),
         say(kUnitsText, {printed(source.display.flowUnit()), printed(source.display.headUnit())})},
        fluidFact(source),
    };
    section.statements = changesOf(source, 0, source.last.roundNumber - 1);
    if (source.project.people().empty()) {
        section.facts.push_back({say(kPeopleLabel), say(kNoPeople)});
    } else {
        section.tables.push_back(peopleTable(source));
    }
    if (source.project.instruments().empty()) {
        section.statements.push_back(say(kNoInstrument));
    } else {
        section.tables.push_back(instrumentsTable(source));
    }
    if (!source.project.valves().empty()) {
        section.tables.push_back(valvesTable(source));
    }
    return section;
}

}  // namespace ww::report::detail
