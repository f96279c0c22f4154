#include "core/balancing/detail/pump_duty.h"

#include <algorithm>
#include <cmath>

#include "core/balancing/detail/branch_flow.h"
#include "core/curve/pump_set.h"

namespace ww::balancing::detail {

namespace {

using project::Project;
using project::PumpReading;

/// The newest standing speed of a pump in a round, read while it ran in the loop as it stands; null where
/// none was.
const PumpReading* speedReadIn(const Project& project, const base::Id& round, const base::Id& pump) {
    const PumpReading* newest = nullptr;
    for (const std::size_t index : project.pumpReadingsOf(round)) {
        const PumpReading& reading = project.pumpReadings()[index];
        if (reading.pump == pump && reading.status == project::ReadingStatus::Standing &&
            isDuty(reading.point) && reading.speed && reading.speed->value.si() > 0) {
            newest = &reading;
        }
    }
    return newest;
}

/// Takes speed over rated from the newest reading up to this round that gives one.
void takeSpeed(const Project& project, const project::Round& round, const project::Pump& pump,
               PumpDuty& duty) {
    if (!pump.speed || pump.speed->value.si() <= 0) {
        return;
    }
    const auto order = project.roundsByNumber();
    for (auto at = order.rbegin(); at != order.rend(); ++at) {
        const project::Round& candidate = project.rounds()[*at];
        const PumpReading* reading =
            candidate.number <= round.number ? speedReadIn(project, candidate.id, pump.id) : nullptr;
        if (reading != nullptr) {
            duty.speedFraction = reading->speed->value / pump.speed->value;
            duty.speedRound = candidate.number;
            return;
        }
    }
}

/// The gauge that a reading names; null where it names none.
const project::Instrument* gaugeOf(const Project& project, const PumpReading& reading) {
    return reading.instrument ? project.instruments().find(*reading.instrument) : nullptr;
}

/// A gauge pressure as a dp, for its digits and the instrument's accuracy.
quantity::Measured<PressureDifference> asDifference(
    const quantity::Measured<quantity::GaugePressure>& gauge) {
    return {gauge.digits, gauge.unit, PressureDifference::si(gauge.value.si())};
}

/// How the gauges of a pump differed in its last reading with the pump off, corrected for their heights.
std::optional<PressureDifference> zeroOf(const Project& project, const base::Id& pump,
                                         const energy::GaugeStation& station) {
    std::optional<PressureDifference> zero;
    for (const std::size_t round : project.roundsByNumber()) {
        for (const std::size_t index : project.pumpReadingsOf(project.rounds()[round].id)) {
            const PumpReading& reading = project.pumpReadings()[index];
            if (reading.pump == pump && reading.status == project::ReadingStatus::Standing &&
                reading.point == project::PumpPoint::Static) {
                const auto found = energy::gaugeZero(gaugesOf(reading), station, project.fluid().density());
                zero = found ? found : zero;
            }
        }
    }
    return zero;
}

PumpDuty dutyOf(const Project& project, const project::Round& round, std::size_t index,
                std::optional<VolumeFlow> sum) {
    const project::Pump& pump = project.pumps()[index];
    PumpDuty duty;
    duty.pump = index;
    takeSpeed(project, round, pump, duty);
    const PumpReading* reading = countingPumpReading(project, round.id, pump.id);
    if (reading == nullptr) {
        return duty;
    }
    if (reading->flow) {
        duty.flowRead = reading->flow->value;
    }
    const auto rise = riseOf(project, *reading, sum);
    if (!rise) {
        return duty;
    }
    duty.head = project.fluid().head(rise->value);
    duty.headUncertainty = project.fluid().head(rise->uncertainty);
    const curve::PumpCurve* curve = project.pumpCurve(pump.id);
    if (curve == nullptr || duty.head->si() <= 0) {
        return duty;
    }
    const curve::PumpState state{duty.speedFraction, 1.0};
    duty.flowFromCurve = curve->flowAtHead(*duty.head, state);
    if (duty.flowFromCurve) {
        duty.flowLow = curve->flowAtHead(*duty.head + *duty.headUncertainty, state).value_or(VolumeFlow());
        duty.flowHigh = curve->flowAtHead(*duty.head - *duty.headUncertainty, state);
    }
    return duty;
}

/// The running pumps at their speeds in the round; nothing where one has no curve, or where some stand in
/// series and others side by side.
std::optional<curve::PumpSet> setOf(const Project& project, const std::vector<PumpDuty>& pumps,
                                    double speedFactor, Ratio headFactor) {
    std::vector<curve::PumpMember> members;
    std::size_t inSeries = 0;
    for (const PumpDuty& duty : pumps) {
        const project::Pump& pump = project.pumps()[duty.pump];
        if (!pump.isRunning) {
            continue;
        }
        const curve::PumpCurve* curve = project.pumpCurve(pump.id);
        const double speed = duty.speedFraction * speedFactor;
        if (curve == nullptr || speed <= 0) {
            return std::nullopt;
        }
        members.push_back(
            {headFactor.si() == 1 ? *curve : curve::withHeads(*curve, headFactor), {speed, 1.0}});
        inSeries += pump.arrangement == project::PumpArrangement::Series ? 1 : 0;
    }
    const bool isSeries = members.size() > 1 && inSeries == members.size();
    if (members.empty() || (members.size() > 1 && inSeries > 0 && !isSeries)) {
        return std::nullopt;
    }
    return curve::PumpSet(std::move(members),
                          isSeries ? curve::PumpJoint::Series : curve::PumpJoint::Parallel);
}

}  // namespace

bool isDuty(project::PumpPoint point) {
    using project::PumpPoint;
    return point == PumpPoint::Running || point == PumpPoint::FullOpen || point == PumpPoint::Final;
}

energy::GaugeStation gaugeStation(const project::Pump& pump) {
    return {quantity::valueOf(pump.suctionGaugeHeight), quantity::valueOf(pump.dischargeGaugeHeight),
            quantity::valueOf(pump.suctionDiameter), quantity::valueOf(pump.dischargeDiameter)};
}

energy::GaugeReading gaugesOf(const PumpReading& reading) {
    return {quantity::valueOf(reading.suction), quantity::valueOf(reading.discharge),
            quantity::valueOf(reading.gaugeRise)};
}

bool isGaugeStated(const Project& project, const PumpReading& reading) {
    const project::Instrument* instrument = gaugeOf(project, reading);
    return instrument != nullptr && (instrument->accuracy || instrument->accuracyFloor);
}

PressureDifference riseUncertainty(const Project& project, const PumpReading& reading) {
    const project::Instrument* instrument = gaugeOf(project, reading);
    const quantity::Density density = project.fluid().density();
    const double usual = isGaugeStated(project, reading) ? 0 : kUsualGaugeAccuracy;
    const auto uncertainty = [&](const quantity::Measured<PressureDifference>& read) {
        return std::hypot(dpUncertainty(read, read.value, instrument, density).si(), usual * read.value.si());
    };
    if (reading.gaugeRise) {
        return PressureDifference::si(uncertainty(*reading.gaugeRise));
    }
    const auto ofGauge = [&](const std::optional<quantity::Measured<quantity::GaugePressure>>& gauge) {
        return gauge ? uncertainty(asDifference(*gauge)) : 0.0;
    };
    return PressureDifference::si(std::hypot(ofGauge(reading.suction), ofGauge(reading.discharge)));
}

std::optional<PumpRise> riseOf(const Project& project, const PumpReading& reading,
                               std::optional<VolumeFlow> sum) {
    const project::Pump* pump = project.pumps().find(reading.pump);
    const energy::GaugeStation station = pump != nullptr ? gaugeStation(*pump) : energy::GaugeStation{};
    const auto zero = zeroOf(project, reading.pump, station);
    const quantity::Density density = project.fluid().density();
    const auto read = reading.flow ? quantity::valueOf(reading.flow) : sum;
    const curve::PumpCurve* curve = pump != nullptr ? project.pumpCurve(pump->id) : nullptr;
    const bool knowsSpeed = pump != nullptr && pump->speed && pump->speed->value.si() > 0 && reading.speed &&
                            reading.speed->value.si() > 0;
    const curve::PumpState state{knowsSpeed ? reading.speed->value / pump->speed->value : 1.0, 1.0};
    const auto head = read || curve == nullptr
                          ? energy::pumpHead(gaugesOf(reading), station, zero, read, density)
                          : energy::pumpHeadOnCurve(gaugesOf(reading), station, zero, *curve, state, density);
    if (!head) {
        return std::nullopt;
    }
    return PumpRise{quantity::pressureOf(head->total, density), riseUncertainty(project, reading)};
}

const PumpReading* countingPumpReading(const Project& project, const base::Id& round, const base::Id& pump) {
    const PumpReading* counting = nullptr;
    for (const std::size_t index : project.pumpReadingsOf(round)) {
        const PumpReading& reading = project.pumpReadings()[index];
        if (reading.pump == pump && reading.status == project::ReadingStatus::Standing &&
            isDuty(reading.point)) {
            counting = &reading;
        }
    }
    return counting;
}

std::vector<PumpDuty> pumpDuties(const Project& project, const project::Round& round,
                                 std::optional<VolumeFlow> sum) {
    const bool isOne = std::count_if(project.pumps().begin(), project.pumps().end(),
                                     [](const project::Pump& pump) { return pump.isRunning; }) == 1;
    std::vector<PumpDuty> duties;
    for (std::size_t i = 0; i < project.pumps().size(); ++i) {
        const project::Pump& pump = project.pumps()[i];
        if (pump.isRunning || countingPumpReading(project, round.id, pump.id) != nullptr) {
            // The terminals' flow goes through a pump that runs alone.
            duties.push_back(dutyOf(project, round, i, isOne && pump.isRunning ? sum : std::nullopt));
        }
    }
    return duties;
}

std::optional<ShutoffRatio> shutoffRatio(const Project& project, const project::Pump& pump, int upToRound) {
    const curve::PumpCurve* curve = project.pumpCurve(pump.id);
    if (curve == nullptr) {
        return std::nullopt;
    }
    const energy::GaugeStation station = gaugeStation(pump);
    const quantity::Density density = project.fluid().density();
    std::optional<ShutoffRatio> found;
    for (const std::size_t index : project.roundsByNumber()) {
        const project::Round& round = project.rounds()[index];
        for (const std::size_t at : project.pumpReadingsOf(round.id)) {
            const PumpReading& reading = project.pumpReadings()[at];
            if (round.number > upToRound || reading.pump != pump.id ||
                reading.status != project::ReadingStatus::Standing ||
                reading.point != project::PumpPoint::Shutoff) {
                continue;
            }
            const auto head = energy::pumpHead(gaugesOf(reading), station, zeroOf(project, pump.id, station),
                                               std::nullopt, density);
            if (!head) {
                continue;
            }
            const bool knowsSpeed =
                pump.speed && pump.speed->value.si() > 0 && reading.speed && reading.speed->value.si() > 0;
            const Head ofCurve =
                curve->shutoffHead({knowsSpeed ? reading.speed->value / pump.speed->value : 1.0, 1.0});
            const Head uncertainty = quantity::headOf(riseUncertainty(project, reading), density);
            found = ShutoffRatio{Ratio::si(head->total / ofCurve), Ratio::si(uncertainty / ofCurve),
                                 reading.instrument};
        }
    }
    return found;
}

std::optional<VolumeFlow> flowOfPumps(const Project& project, const std::vector<PumpDuty>& pumps, Head head,
                                      double speedFactor, Ratio headFactor) {
    const auto set = setOf(project, pumps, speedFactor, headFactor);
    // Above its shutoff head a pump gives nothing; its check valve is shut.
    return set ? std::optional(set->flowAtHead(head).value_or(VolumeFlow())) : std::nullopt;
}

std::optional<Head> headOfPumps(const Project& project, const std::vector<PumpDuty>& pumps, VolumeFlow flow,
                                double speedFactor, Ratio headFactor) {
    const auto set = setOf(project, pumps, speedFactor, headFactor);
    const auto head = set && flow.si() >= 0 ? set->head(flow) : std::nullopt;
    return head && head->si() >= 0 ? head : std::nullopt;
}

}  // namespace ww::balancing::detail
