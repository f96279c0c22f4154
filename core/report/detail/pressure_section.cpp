#include <algorithm>

#include "core/base/term.h"
#include "core/project/setting_text.h"
#include "core/report/detail/pump_numbers.h"
#include "core/report/detail/pump_words.h"
#include "core/report/detail/sections.h"
#include "core/report/pump_sections.h"

namespace ww::report {

namespace {

using namespace detail;
using pump_room::CircuitComparison;
using pump_room::CircuitProfile;
using pump_room::ProfileElement;
using pump_room::ProfilePart;
using quantity::PressureDifference;

PressureDifference overAir(quantity::GaugePressure pressure) {
    return PressureDifference::si(pressure.si());
}

std::string air(const std::optional<quantity::Ratio>& ratio) {
    constexpr double kMillilitresPerLitre = 1000;
    return ratio ? Display::fixed(kMillilitresPerLitre * ratio->si(), 1) : std::string();
}

base::Fault unitSentence(const PumpNumbers& numbers, quantity::GaugePressure onReturn,
                         quantity::GaugePressure onSupply, const std::optional<quantity::Ratio>& airReturn,
                         const std::optional<quantity::Ratio>& airSupply) {
    const quantity::ShownUnits& units = numbers.units();
    std::vector<std::string> arguments{units.text(overAir(onReturn)), units.text(overAir(onSupply))};
    if (!airReturn || !airSupply) {
        return say(kUnitNoAir, std::move(arguments));
    }
    arguments.push_back(air(airReturn));
    arguments.push_back(air(airSupply));
    return say(kUnitAir, std::move(arguments));
}

/// Both profiles have the same elements; the valve stands at another place in them.
Table elementsTable(const Project& project, const CircuitProfile& shown, bool isOnReturn, bool isFillKnown) {
    const PumpNumbers numbers(project);
    const std::string unit = numbers.pressureUnit();
    Table table;
    table.title = say(isFillKnown ? kPressureTable : kOverFillTable);
    table.columns = {column(kElementColumn, 60),
                     column(kHeightColumn, 20, Alignment::Right,
                            numbers.units().head == quantity::Unit::Foot ? "ft" : "m"),
                     column(isOnReturn ? kReturnOnColumn : kSupplyOnColumn, 40, Alignment::Right, unit)};
    for (const ProfileElement& element : shown.elements) {
        table.rows.push_back({wordCell(nameOf(project, element)),
                              cell(numbers.head(quantity::Head::si(element.height.si()))),
                              cell(numbers.pressure(element.after))});
    }
    // Against the fill pressure a pump that is off shows heights only.
    if (isFillKnown) {
        table.columns.push_back(column(kAtRestColumn, 24, Alignment::Right, unit));
        for (std::size_t i = 0; i < table.rows.size(); ++i) {
            table.rows[i].push_back(cell(numbers.pressure(shown.elements[i].atRest)));
        }
    }
    return table;
}

/// The suction read with the pumps off in the newest round that has one; null where none has.
const project::PumpReading* suctionAtRest(const Project& project) {
    const auto order = project.roundsByNumber();
    for (auto at = order.rbegin(); at != order.rend(); ++at) {
        for (const std::size_t index : project.pumpReadingsOf(project.rounds()[*at].id)) {
            const project::PumpReading& reading = project.pumpReadings()[index];
            if (reading.point == project::PumpPoint::Static && reading.suction &&
                reading.status == project::ReadingStatus::Standing) {
                return &reading;
            }
        }
    }
    return nullptr;
}

/// "+3.2 kPa": what is only known as a difference.
std::string against(const PumpNumbers& numbers, quantity::GaugePressure pressure) {
    return (pressure.si() > 0 ? "+" : "") + numbers.pressure(pressure) + " " + numbers.pressureUnit();
}

/// Facts and figure of a circuit whose fill pressure is not known.
void addOverFill(const Project& project, const CircuitComparison& circuit, const CircuitProfile& shown,
                 Section& section) {
    const PumpNumbers numbers(project);
    section.facts = {
        {say(kUnitRunningLabel), say(kUnitOverFill, {against(numbers, circuit.onReturn->unitRunning),
                                                     against(numbers, circuit.onSupply->unitRunning)})}};
    // Where nothing stands below the fill pressure, the lowest is the vessel itself.
    constexpr double kNothing_Pa = 1;
    if (shown.lowest.si() < -kNothing_Pa) {
        section.facts.push_back(
            {say(kLowestLabel), say(kLowestOverFill, {against(numbers, shown.lowest),
                                                      nameOf(project, shown.elements[shown.lowestAt])})});
    }
    section.figures.push_back({FigureKind::PressureProfile, say(kOverFillFigure),
                               say(kPressureOverFill, {project.branches()[circuit.terminal].tag,
                                                       against(numbers, shown.unitRunning)})});
}

}  // namespace

std::string nameOf(const project::Project& project, const ProfileElement& element) {
    const std::string tag = element.branch ? project.branches()[*element.branch].tag : std::string();
    switch (element.part) {
        case ProfilePart::Pump:
            return base::term("pump");
        case ProfilePart::SupplyRun:
            return base::term("supply run to ") + tag;
        case ProfilePart::ReturnRun:
            return base::term("return run of ") + tag;
        case ProfilePart::BranchPath:
            return base::term("pipe of ") + tag;
        case ProfilePart::Unit:
            return base::term("unit of ") + tag;
        case ProfilePart::Valve:
            return base::term("valve ") + tag;
        case ProfilePart::DischargeThrottle:
            return base::term("discharge valve");
    }
    return "";
}

const CircuitProfile* asBuilt(const project::Project& project, const CircuitComparison& circuit) {
    const bool isSupply = project.branches()[circuit.terminal].side == project::Side::Supply;
    const auto& profile = isSupply ? circuit.onSupply : circuit.onReturn;
    return profile ? &*profile : nullptr;
}

std::optional<base::Fault> valveSentence(const project::Project& project, const CircuitComparison& circuit) {
    const project::Branch& branch = project.branches()[circuit.terminal];
    const CircuitProfile* shown = asBuilt(project, circuit);
    const auto* characteristic = project.characteristicOf(branch);
    if (project.lastRound() == nullptr || shown == nullptr || characteristic == nullptr) {
        return std::nullopt;
    }
    const auto valve =
        std::find_if(shown->elements.begin(), shown->elements.end(), [&](const ProfileElement& element) {
            return element.part == ProfilePart::Valve && element.branch == circuit.terminal;
        });
    if (valve == shown->elements.end()) {
        return std::nullopt;
    }
    if (!circuit.setting) {
        return say(kCircuitValveUnknown, {branch.tag});
    }
    const std::string takes = PumpNumbers(project).units().text(valve->before - valve->after, 3);
    if (*circuit.setting >= characteristic->fullyOpen()) {
        return say(circuit.isIndex ? kIndexValveOpen : kCircuitValveOpen, {branch.tag, takes});
    }
    return say(circuit.isIndex ? kIndexValveThrottled : kCircuitValveThrottled,
               {branch.tag, project::settingText(project, branch, *circuit.setting),
                project::settingText(project, branch, characteristic->fullyOpen()), takes});
}

Section pressureSection(const project::Project& project, const CircuitComparison& circuit) {
    const project::Branch& branch = project.branches()[circuit.terminal];
    const PumpNumbers numbers(project);
    Section section;
    section.title = say(kPressureTitle, {branch.tag});
    section.closing = circuit.advice;
    for (const base::Fault& finding : circuit.findings) {
        // What makes every number here another one stands above them.
        (finding.is(pump_room::kFillUnknown) ? section.opening : section.closing).push_back(finding);
    }
    const CircuitProfile* shown = asBuilt(project, circuit);
    if (shown == nullptr || !circuit.onSupply || !circuit.onReturn) {
        section.statements.push_back(say(kNoDecision));
        return section;
    }
    const project::Round* round = project.lastRound();
    section.statements.push_back(round != nullptr ? say(kProfileOfRound, {std::to_string(round->number)})
                                                  : say(kProfileOfDesign));
    if (std::any_of(shown->elements.begin(), shown->elements.end(),
                    [](const ProfileElement& element) { return element.available.has_value(); })) {
        section.statements.push_back(say(kAvailableAtTees));
    }
    if (const auto valve = valveSentence(project, circuit)) {
        section.statements.push_back(*valve);
    }
    section.tables.push_back(
        elementsTable(project, *shown, branch.side != project::Side::Supply, circuit.isFillKnown));
    if (!circuit.isFillKnown) {
        addOverFill(project, circuit, *shown, section);
        return section;
    }
    const quantity::ShownUnits& units = numbers.units();
    section.facts = {
        {say(kUnitRunningLabel),
         unitSentence(numbers, circuit.onReturn->unitRunning, circuit.onSupply->unitRunning,
                      circuit.onReturn->airRunning, circuit.onSupply->airRunning)},
        {say(kUnitAtRestLabel),
         unitSentence(numbers, circuit.onReturn->unitAtRest, circuit.onSupply->unitAtRest,
                      circuit.onReturn->airAtRest, circuit.onSupply->airAtRest)},
        {say(kLowestLabel), say(kLowestAt, {units.text(overAir(shown->lowest)),
                                            nameOf(project, shown->elements[shown->lowestAt])})}};
    if (const project::PumpReading* read = suctionAtRest(project)) {
        section.statements.push_back(
            say(kFillAndGauge, {typed(project.job().fillPressure), typed(read->suction)}));
    }
    section.figures.push_back({FigureKind::PressureProfile, say(kPressureFigure),
                               say(kPressureReading, {branch.tag, units.text(overAir(shown->unitRunning)),
                                                      units.text(overAir(shown->unitAtRest))})});
    return section;
}

}  // namespace ww::report
