#include "core/pump_room/test_sheet.h"

#include <algorithm>
#include <cmath>

#include "core/balancing/assess.h"
#include "core/balancing/detail/branch_flow.h"
#include "core/balancing/detail/pump_duty.h"
#include "core/project/equipment_curves.h"
#include "core/project/units.h"

namespace ww::pump_room {

namespace {

using energy::PumpTestPoint;
using project::Project;
using project::PumpReading;
using quantity::PressureDifference;
using quantity::VolumeFlow;

template <class Q>
void addPhase(const std::optional<quantity::Measured<Q>>& typed, std::vector<Q>& phases) {
    if (typed) {
        phases.push_back(typed->value);
    }
}

/// Sum of the terminals of each round that read them all, with its uncertainty; by index into rounds().
std::vector<std::optional<energy::FlowValue>> sumsByRound(const Project& project) {
    std::vector<std::optional<energy::FlowValue>> sums(project.rounds().size());
    for (std::size_t i = 0; i < sums.size(); ++i) {
        balancing::AssessOptions options;
        options.numbersOnly = true;
        const auto picture = balancing::assess(project, project.rounds()[i].id, options);
        if (!picture.totalFlow || !picture.isComplete) {
            continue;
        }
        double square = 0;
        for (const balancing::BranchResult& branch : picture.branches) {
            if (branch.isTerminal && branch.flowUncertainty) {
                square += branch.flowUncertainty->si() * branch.flowUncertainty->si();
            }
        }
        sums[i] = energy::FlowValue{*picture.totalFlow, VolumeFlow::si(std::sqrt(square))};
    }
    return sums;
}

PumpTestPoint pointOf(const Project& project, const PumpReading& reading,
                      const std::optional<energy::FlowValue>& terminals) {
    PumpTestPoint point;
    point.kind = reading.point;
    point.gauges = balancing::detail::gaugesOf(reading);
    point.riseUncertainty = balancing::detail::riseUncertainty(project, reading);
    point.isGaugeStated = balancing::detail::isGaugeStated(project, reading);
    point.speed = quantity::valueOf(reading.speed);
    if (reading.flow) {
        // A meter whose accuracy nobody states: its last written place.
        const double place = VolumeFlow::from(reading.flow->digits.lastPlace(), reading.flow->unit).si();
        const project::Instrument* instrument =
            reading.instrument ? project.instruments().find(*reading.instrument) : nullptr;
        const double share =
            instrument != nullptr && instrument->accuracy ? instrument->accuracy->value.si() : 0;
        point.meter = energy::FlowValue{
            reading.flow->value,
            VolumeFlow::si(std::hypot(place / std::sqrt(12.0), share * reading.flow->value.si()))};
    }
    point.branches = terminals;
    addPhase(reading.volts, point.motor.volts);
    addPhase(reading.voltsSecond, point.motor.volts);
    addPhase(reading.voltsThird, point.motor.volts);
    addPhase(reading.amps, point.motor.amps);
    addPhase(reading.ampsSecond, point.motor.amps);
    addPhase(reading.ampsThird, point.motor.amps);
    point.motor.powerFactor = quantity::valueOf(reading.powerFactor);
    point.motor.inputPower = quantity::valueOf(reading.power);
    point.motor.speed = quantity::valueOf(reading.speed);
    return point;
}

energy::PumpTestInput inputOf(const Project& project, const project::Pump& pump) {
    energy::PumpTestInput input;
    input.curve = project.pumpCurve(pump.id);
    input.statedImpeller = quantity::valueOf(pump.impeller);
    input.ratedSpeed = quantity::valueOf(pump.speed);
    input.station = balancing::detail::gaugeStation(pump);
    input.plate = motorPlate(pump);
    input.units = project::shownUnits(project, pump);
    input.density = project.fluid().density();
    input.vapour = project.fluid().vapourPressure();
    if (project.job().altitude) {
        const double height_m = std::clamp(project.job().altitude->value.si(), -500.0, 11000.0);
        input.air = energy::airPressure(quantity::Length::si(height_m));
    }
    return input;
}

}  // namespace

std::optional<curve::ImpellerFamily> familyOf(const project::Pump& pump, quantity::Ratio headFactor) {
    std::vector<curve::PumpPoint> points;
    for (const project::PumpTableRow& row : pump.rows) {
        points.push_back(project::pumpPoint(row));
        points.back().head = points.back().head * headFactor.si();
        if (!points.back().impeller) {
            return std::nullopt;
        }
    }
    auto family = curve::ImpellerFamily::make(std::move(points), project::unitsOfTable(pump));
    if (!family || family->members().size() < 2) {
        return std::nullopt;
    }
    return std::move(family).value();
}

energy::MotorPlate motorPlate(const project::Pump& pump) {
    energy::MotorPlate plate;
    plate.power = quantity::valueOf(pump.motorPower);
    plate.volts = quantity::valueOf(pump.volts);
    plate.amps = quantity::valueOf(pump.amps);
    plate.efficiency = quantity::valueOf(pump.motorEfficiency);
    plate.powerFactor = quantity::valueOf(pump.powerFactor);
    plate.speed = quantity::valueOf(pump.plateSpeed);
    plate.synchronousSpeed = quantity::valueOf(pump.synchronousSpeed);
    plate.noLoadAmps = quantity::valueOf(pump.noLoadAmps);
    plate.serviceFactor =
        pump.serviceFactor && pump.serviceFactor->value() > 0 ? pump.serviceFactor->value() : 1;
    plate.isBehindDrive = pump.hasDrive;
    return plate;
}

const base::MessageForm& shutoffVerdict(const energy::ShutoffAdvice& advice) {
    return advice.isNever ? kShutoffNot : advice.isForbidden ? kShutoffOnlyThen : kShutoffMay;
}

energy::ShutoffAdvice shutoffAdviceFor(const Project& project, std::size_t index) {
    const project::Pump& pump = project.pumps()[index];
    energy::ShutoffCase shut;
    shut.curve = project.pumpCurve(pump.id);
    shut.units = project::shownUnits(project, pump);
    shut.speed = quantity::valueOf(pump.speed);
    shut.motor = quantity::valueOf(pump.motorPower);
    shut.temperature = project.fluid().temperature();
    shut.isPositiveDisplacement = pump.isPositiveDisplacement;
    shut.guardsSource = pump.guardsSource;
    return energy::shutoffAdvice(shut);
}

std::vector<PumpSheet> pumpSheets(const Project& project) {
    const auto sums = sumsByRound(project);
    std::size_t running = 0;
    for (const project::Pump& pump : project.pumps()) {
        running += pump.isRunning ? 1 : 0;
    }
    std::vector<PumpSheet> sheets;
    for (std::size_t i = 0; i < project.pumps().size(); ++i) {
        const project::Pump& pump = project.pumps()[i];
        PumpSheet out;
        out.pump = i;
        const auto family = familyOf(pump);
        energy::PumpTestInput input = inputOf(project, pump);
        input.family = family ? &*family : nullptr;
        const bool isAlone = running == 1 && pump.isRunning;
        for (const std::size_t roundIndex : project.roundsByNumber()) {
            const project::Round& round = project.rounds()[roundIndex];
            for (const std::size_t index : project.pumpReadingsOf(round.id)) {
                const PumpReading& reading = project.pumpReadings()[index];
                if (reading.pump != pump.id || reading.status != project::ReadingStatus::Standing) {
                    continue;
                }
                // The sum of the terminals belongs to the state of the walk, not to a pump run shut or
                // throttled for a test.
                const bool takesTerminals = isAlone && balancing::detail::isDuty(reading.point);
                out.readings.push_back(reading.id);
                out.rounds.push_back(round.number);
                input.points.push_back(
                    pointOf(project, reading, takesTerminals ? sums[roundIndex] : std::nullopt));
            }
        }
        out.sheet = energy::evaluate(input);
        out.shutoff = shutoffAdviceFor(project, i);
        sheets.push_back(std::move(out));
    }
    return sheets;
}

}  // namespace ww::pump_room
