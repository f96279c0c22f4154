#include "core/balancing/detail/pump_duty.h"

#include <algorithm>
#include <cmath>

#include "core/balancing/detail/branch_flow.h"

namespace ww::balancing::detail {

namespace {

using project::Project;
using project::PumpReading;

/// Speed over rated of the newest reading up to this round that gives one; 1 where none does.
double speedFractionOf(const Project& project, const project::Round& round, const project::Pump& pump) {
    if (!pump.speed || pump.speed->value.si() <= 0) {
        return 1;
    }
    const auto order = project.roundsByNumber();
    for (auto at = order.rbegin(); at != order.rend(); ++at) {
        const project::Round& candidate = project.rounds()[*at];
        if (candidate.number > round.number) {
            continue;
        }
        const PumpReading* reading = countingPumpReading(project, candidate.id, pump.id);
        if (reading != nullptr && reading->speed && reading->speed->value.si() > 0) {
            return reading->speed->value / pump.speed->value;
        }
    }
    return 1;
}

/// A gauge pressure as a dp, for its digits and the instrument's accuracy.
quantity::Measured<PressureDifference> asDifference(
    const quantity::Measured<quantity::GaugePressure>& gauge) {
    return {gauge.digits, gauge.unit, PressureDifference::si(gauge.value.si())};
}

PumpDuty dutyOf(const Project& project, const project::Round& round, std::size_t index) {
    const project::Pump& pump = project.pumps()[index];
    PumpDuty duty;
    duty.pump = index;
    duty.speedFraction = speedFractionOf(project, round, pump);
    const PumpReading* reading = countingPumpReading(project, round.id, pump.id);
    if (reading == nullptr) {
        return duty;
    }
    if (reading->flow) {
        duty.flowRead = reading->flow->value;
    }
    const auto rise = riseOf(project, *reading);
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

}  // namespace

std::optional<PumpRise> riseOf(const Project& project, const PumpReading& reading) {
    const project::Instrument* instrument =
        reading.instrument ? project.instruments().find(*reading.instrument) : nullptr;
    const quantity::Density density = project.fluid().density();
    if (reading.gaugeRise) {
        const auto& rise = *reading.gaugeRise;
        return PumpRise{rise.value, dpUncertainty(rise, rise.value, instrument, density)};
    }
    if (!reading.suction || !reading.discharge) {
        return std::nullopt;
    }
    const auto suction = asDifference(*reading.suction);
    const auto discharge = asDifference(*reading.discharge);
    const double u_Pa = std::hypot(dpUncertainty(suction, suction.value, instrument, density).si(),
                                   dpUncertainty(discharge, discharge.value, instrument, density).si());
    return PumpRise{discharge.value - suction.value, PressureDifference::si(u_Pa)};
}

const PumpReading* countingPumpReading(const Project& project, const base::Id& round, const base::Id& pump) {
    const PumpReading* counting = nullptr;
    for (const std::size_t index : project.pumpReadingsOf(round)) {
        const PumpReading& reading = project.pumpReadings()[index];
        if (reading.pump == pump && reading.status == project::ReadingStatus::Standing) {
            counting = &reading;
        }
    }
    return counting;
}

std::vector<PumpDuty> pumpDuties(const Project& project, const project::Round& round) {
    std::vector<PumpDuty> duties;
    for (std::size_t i = 0; i < project.pumps().size(); ++i) {
        const project::Pump& pump = project.pumps()[i];
        if (pump.isRunning || countingPumpReading(project, round.id, pump.id) != nullptr) {
            duties.push_back(dutyOf(project, round, i));
        }
    }
    return duties;
}

std::optional<VolumeFlow> flowOfPumps(const Project& project, const std::vector<PumpDuty>& pumps, Head head,
                                      double speedFactor) {
    VolumeFlow total;
    bool hasPump = false;
    for (const PumpDuty& duty : pumps) {
        const project::Pump& pump = project.pumps()[duty.pump];
        if (!pump.isRunning) {
            continue;
        }
        const curve::PumpCurve* curve = project.pumpCurve(pump.id);
        if (curve == nullptr) {
            return std::nullopt;
        }
        hasPump = true;
        // Above its shutoff head a pump of a parallel set gives nothing; its check valve is shut.
        total += curve->flowAtHead(head, {duty.speedFraction * speedFactor, 1.0}).value_or(VolumeFlow());
    }
    return hasPump ? std::optional(total) : std::nullopt;
}

std::optional<Head> headOfPumps(const Project& project, const std::vector<PumpDuty>& pumps, VolumeFlow flow,
                                double speedFactor) {
    double low_m = 0;
    double high_m = 0;
    for (const PumpDuty& duty : pumps) {
        const project::Pump& pump = project.pumps()[duty.pump];
        if (const curve::PumpCurve* curve = pump.isRunning ? project.pumpCurve(pump.id) : nullptr) {
            high_m = std::max(high_m, curve->shutoffHead({duty.speedFraction * speedFactor, 1.0}).si());
        }
    }
    const auto most = flowOfPumps(project, pumps, Head::si(low_m), speedFactor);
    if (!most || *most < flow || flow.si() < 0) {
        return std::nullopt;
    }
    constexpr int kHalvings = 60;  // 2^-60 of the shutoff head: below the noise of doubles
    for (int i = 0; i < kHalvings; ++i) {
        const double middle_m = 0.5 * (low_m + high_m);
        (*flowOfPumps(project, pumps, Head::si(middle_m), speedFactor) > flow ? low_m : high_m) = middle_m;
    }
    return Head::si(0.5 * (low_m + high_m));
}

}  // namespace ww::balancing::detail
