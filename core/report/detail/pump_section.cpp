#include <cmath>

#include "core/balancing/detail/pump_duty.h"
#include "core/base/term.h"
#include "core/pump_room/decision_notes.h"
#include "core/report/detail/pump_numbers.h"
#include "core/report/detail/pump_words.h"
#include "core/report/detail/sections.h"

namespace ww::report::detail {
namespace {

using balancing::excessWords;
using balancing::PumpProposal;
using balancing::SystemCurve;
using quantity::Unit;

std::string withUncertainty(const std::string& value, const std::string& uncertainty) {
    return value.empty() || uncertainty.empty() ? value : value + " ± " + uncertainty;
}

std::string speedOf(const Source& source, const Assessment& round, const project::Pump& pump,
                    double fraction) {
    const project::PumpReading* reading =
        balancing::detail::countingPumpReading(source.project, *round.round, pump.id);
    if (reading != nullptr && reading->speed) {
        return typed(*reading->speed);
    }
    return Display::fixed(100 * fraction, 1) + " %, " + base::term("not read");
}

Table dutyTable(const Source& source) {
    const std::string flow = printed(source.display.flowUnit());
    Table table;
    table.title = say(kDutyTable);
    table.columns = {column(kRoundColumn, 10, Alignment::Right),
                     column(kPumpColumn, 14),
                     column(kHeadColumn, 24, Alignment::Right, printed(source.display.headUnit())),
                     column(kSumFlowColumn, 24, Alignment::Right, flow),
                     column(kCurveFlowColumn, 20, Alignment::Right, flow),
                     column(kRangeColumn, 28, Alignment::Right, flow),
                     column(kReadFlowColumn, 18, Alignment::Right, flow),
                     column(kSpeedColumn, 24, Alignment::Right)};
    for (const Assessment& round : source.rounds) {
        const auto system = balancing::systemCurve(source.project, round);
        std::string sum = source.display.flow(round.totalFlow);
        if (system) {
            sum = withUncertainty(sum, source.display.flow(system->flowUncertainty));
        }
        for (const balancing::PumpDuty& duty : round.pumps) {
            const project::Pump& pump = source.project.pumps()[duty.pump];
            std::string range;
            if (duty.flowLow && duty.flowHigh) {
                range = source.display.flow(duty.flowLow) + " – " + source.display.flow(duty.flowHigh);
            }
            table.rows.push_back({cell(std::to_string(round.roundNumber)), cell(pump.tag),
                                  cell(withUncertainty(source.display.head(duty.head),
                                                       source.display.head(duty.headUncertainty))),
                                  cell(sum), cell(source.display.flow(duty.flowFromCurve)), cell(range),
                                  cell(source.display.flow(duty.flowRead)),
                                  wordCell(speedOf(source, round, pump, duty.speedFraction))});
        }
    }
    return table;
}

const project::Pump* runningPump(const Project& project) {
    for (const project::Pump& pump : project.pumps()) {
        if (pump.isRunning) {
            return &pump;
        }
    }
    return nullptr;
}

void addImpeller(const PumpProposal& proposal, const project::Pump* pump, Section& section) {
    if (!proposal.impeller || pump == nullptr || !pump->impeller) {
        return;
    }
    const Unit unit = pump->impeller->unit;
    std::vector<std::string> arguments{pump->impeller->digits.text(),
                                       Display::fixed(proposal.speedFraction, 3),
                                       energy::diameterDigits(*proposal.impeller, unit), printed(unit)};
    if (proposal.isBelowMinimumImpeller && pump->impellerMinimum) {
        arguments.push_back(typed(*pump->impellerMinimum));
        section.facts.push_back({say(kImpellerLabel), say(kImpellerBelow, arguments), Mark::Fail});
    } else {
        section.facts.push_back({say(kImpellerLabel), say(kImpellerFormula, arguments)});
    }
}

bool isSpeedOrdered(const CountedExcess& counted, const base::Fault& order) {
    return counted.speed &&
           !(order.is(kOrderNothing) || order.is(kOrderRuns) || (counted.notYet && order == *counted.notYet));
}

/// The speed to order in rpm and what it does to the power of the shaft, as the decision has both.
void addOrderedSpeed(const Source& source, const base::Fault& order, Section& section) {
    const CountedExcess& counted = *source.excess;
    if (!isSpeedOrdered(counted, order)) {
        return;
    }
    if (auto rotation = orderedRotation(source, order)) {
        section.facts.push_back(std::move(*rotation));
    }
    if (counted.shaftThrottled && counted.shaftSlowed && *counted.shaftSlowed < *counted.shaftThrottled) {
        const PumpNumbers numbers(source.project);
        const double ratio = *counted.shaftSlowed / *counted.shaftThrottled;
        const auto power = [&](quantity::Power value) {
            return numbers.power(value) + " " + numbers.powerUnit();
        };
        section.facts.push_back(
            {say(kPowerLabel), say(kOrderPower, {power(*counted.shaftThrottled), power(*counted.shaftSlowed),
                                                 Display::fixed(100 * (1 - ratio), 1)})});
    }
}

void addProposal(const Source& source, const PumpProposal& proposal, Section& section) {
    const auto order = orderOf(source);
    const bool isOther = isOtherThanOrder(source, proposal.speedFraction);
    if (order) {
        section.facts.push_back({say(kOrderLabel), *order});
        addOrderedSpeed(source, *order, section);
        if (isOther) {
            section.facts.push_back({say(kAsReadLabel), say(kNotToOrderBy)});
        }
    }
    // A second speed beside the one to order by, so near to it, would only be mistaken for it.
    const bool isOrdered = order && !isOther;
    const std::string head = printed(source.display.headUnit());
    std::vector<std::string> design{source.display.head(proposal.headAtDesign),
                                    source.display.head(proposal.headAvailable),
                                    source.display.head(proposal.excess.head),
                                    head,
                                    std::to_string(source.last.roundNumber),
                                    excessWords(proposal.excess.basis, proposal.excess.speed),
                                    curveWords(source.curve)};
    if (source.excess) {
        const balancing::ExcessHead& counted = source.excess->excess;
        design.push_back(source.display.head(counted.head));
        design.push_back(excessWords(counted.basis, counted.speed));
    }
    section.facts.push_back(
        {say(kDesignLabel), say(source.excess ? kDesignHeadCompared : kDesignHead, design)});
    // The flow of similar points: where the system's parabola meets the pump curve.
    const quantity::VolumeFlow meeting = source.last.totalDesign / proposal.speedFraction;
    section.facts.push_back(
        {say(kSpeedLabel),
         say(kSpeedFormula,
             {source.display.flow(source.last.totalDesign), source.display.flow(meeting),
              Display::fixed(proposal.speedFraction, 3), Display::fixed(100 * proposal.speedFraction, 1),
              std::to_string(source.last.roundNumber), printed(source.display.flowUnit())})});
    // One percent of speed is less than what the readings can tell.
    if (std::abs(proposal.speedFraction - 1) < 0.01) {
        section.facts.push_back({say(kPowerLabel), say(kNoSavingTold)});
        return;
    }
    const project::Pump* pump = runningPump(source.project);
    if (!isOrdered && pump != nullptr && pump->speed && !source.last.pumps.empty()) {
        const double now =
            pump->speed->value.in(Unit::RevolutionPerMinute)*source.last.pumps.front().speedFraction;
        section.facts.push_back({plain(""), say(kSpeedRpm, {Display::fixed(now * proposal.speedFraction, 0),
                                                            Display::fixed(now, 0)})});
    }
    addImpeller(proposal, pump, section);
    if (proposal.powerRatio && !isOrdered) {
        const double ratio = proposal.powerRatio->si();
        section.facts.push_back(
            {say(kPowerLabel),
             say(kPowerFormula, {Display::fixed(ratio, 3), Display::fixed(100 * std::abs(1 - ratio), 0),
                                 ratio < 1 ? base::term("less") : base::term("more")})});
    }
}

base::Fault readingOf(const Source& source, const std::optional<SystemCurve>& system,
                      const std::optional<PumpProposal>& proposal) {
    if (!system || source.last.totalDesign.si() <= 0) {
        return say(kPumpReadingUnknown);
    }
    std::vector<std::string> arguments{source.display.flow(system->flow), printed(source.display.flowUnit()),
                                       source.display.head(system->head), printed(source.display.headUnit()),
                                       Display::fixed(100 * (system->flow / source.last.totalDesign), 1)};
    if (!proposal) {
        return say(kPumpReadingPlain, arguments);
    }
    if (source.excess && source.excess->isFitting) {
        return say(kPumpReadingPlain, arguments);
    }
    if (source.excess && source.excess->speed && !source.excess->notYet) {
        arguments.push_back(Display::fixed(100 * source.excess->speed->si(), 1));
        return say(kPumpReadingDecided, arguments);
    }
    arguments.push_back(Display::fixed(100 * proposal->speedFraction, 1));
    arguments.push_back(source.display.flow(source.last.totalDesign));
    return say(kPumpReading, arguments);
}

}  // namespace

std::optional<base::Fault> orderOf(const Source& source) {
    if (!source.excess) {
        return std::nullopt;
    }
    const CountedExcess& counted = *source.excess;
    if (counted.isFitting) {
        return say(kOrderNothing);
    }
    if (counted.notYet && !(counted.speed && counted.runsAsDecided)) {
        return counted.notYet;
    }
    const PumpNumbers numbers(source.project);
    const std::string speed = counted.speed ? Display::fixed(100 * counted.speed->si(), 1) : std::string();
    if (counted.speed && counted.runsAsDecided) {
        return say(kOrderRuns, {speed});
    }
    if (!counted.impeller || !counted.firstCut) {
        if (!counted.speed) {
            return std::nullopt;
        }
        const auto& pumps = source.project.pumps();
        const bool hasDrive = std::any_of(pumps.begin(), pumps.end(), [](const project::Pump& pump) {
            return pump.isRunning && pump.hasDrive;
        });
        return say(hasDrive ? kOrderSpeed : kOrderSpeedByDrive, {speed});
    }
    const std::string impeller = numbers.length(counted.impeller) + " " + numbers.lengthUnit();
    const std::string firstCut = numbers.length(counted.firstCut) + " " + numbers.lengthUnit();
    return counted.speed ? say(kOrderBoth, {speed, impeller, firstCut})
                         : say(kOrderTrim, {impeller, firstCut});
}

std::optional<Fact> orderedRotation(const Source& source, const base::Fault& order) {
    if (!source.excess || !isSpeedOrdered(*source.excess, order) || !source.excess->rotation ||
        !source.excess->fullRotation) {
        return std::nullopt;
    }
    const auto rpm = [](quantity::RotationalSpeed speed) {
        return Display::fixed(speed.in(Unit::RevolutionPerMinute), 0);
    };
    return Fact{plain(""),
                say(kOrderRpm, {rpm(*source.excess->rotation), rpm(*source.excess->fullRotation)})};
}

bool isOtherThanOrder(const Source& source, double speedFraction) {
    if (!source.excess || !source.excess->speed || !source.excess->asRead) {
        return true;
    }
    const CountedExcess& counted = *source.excess;
    const bool isAtFullSpeed =
        source.display.head(counted.asRead->head) == source.display.head(counted.excess.head);
    constexpr double kSameSpeed = 0.005;  // half of what the readings can tell
    return !isAtFullSpeed || std::abs(counted.speed->si() - speedFraction) > kSameSpeed;
}

std::string flowBasis(const Source& source, const std::optional<balancing::SystemCurve>& duty) {
    // A flow that the curve gives has no uncertainty of readings.
    if (duty && duty->flowUncertainty) {
        return base::term("by the sum of the flows");
    }
    return source.curve.isThroughGauges() ? base::term("by the curve through the gauges of round ") +
                                                std::to_string(source.curve.roundNumber)
                                          : std::string(base::term("by the pump's curve"));
}

Section pumpSection(const Source& source) {
    Section section;
    section.number = kPump;
    section.title = say(kPumpTitle);
    if (source.project.pumps().empty()) {
        section.statements.push_back(say(kNoPump));
        return section;
    }
    if (!source.hasRound()) {
        section.statements.push_back(say(kNoRound));
    }
    // What makes every number here doubtful stands above them.
    section.opening = source.curve.reasons;
    const auto system = balancing::systemCurve(source.project, source.last, source.curve.headFactor);
    const auto proposal = balancing::pumpProposal(source.project, source.last, source.curve);
    const base::Fault reading = readingOf(source, system, proposal);
    if (system && source.last.totalDesign.si() > 0) {
        section.facts.push_back(
            {say(kDutyLabel),
             say(kDuty, {source.display.flow(system->flow), printed(source.display.flowUnit()),
                         source.display.head(system->head), printed(source.display.headUnit()),
                         std::to_string(system->roundNumber),
                         Display::fixed(100 * (system->flow / source.last.totalDesign), 1),
                         flowBasis(source, system)})});
    }
    if (proposal) {
        addProposal(source, *proposal, section);
    }
    for (Fact& fact : powerReached(source)) {
        section.facts.push_back(std::move(fact));
    }
    section.figures.push_back({FigureKind::PumpAndSystem, say(kPumpFigure), reading});
    for (const Assessment& round : source.rounds) {
        const auto duty = balancing::systemCurve(source.project, round, source.curve.headFactor);
        if (duty && !duty->headUncertainty) {
            section.statements.push_back(say(kDutyByCurve, {std::to_string(round.roundNumber)}));
        }
    }
    if (source.hasRound()) {
        section.tables.push_back(dutyTable(source));
    }
    if (proposal) {
        section.closing.push_back(say(kAffinityCaution));
    }
    section.closing.push_back(say(kElectricalCaution));
    return section;
}

}  // namespace ww::report::detail
