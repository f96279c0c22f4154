#include "core/balancing/detail/branch_flow.h"

#include <algorithm>
#include <cmath>

#include "core/balancing/straight_pipe.h"
#include "core/base/root_sum_square.h"
#include "core/curve/valve_flow.h"

namespace ww::balancing::detail {

namespace {

using project::Branch;
using project::Instrument;
using project::Project;
using project::ValveModel;

/// Uncertainty of a position known to half a division: a rectangular distribution (JCGM 100:2008, 4.3.7).
double positionUncertaintyRatio(const ValveModel& valve, const base::Decimal* typed,
                                const curve::ValveCharacteristic& curve, Setting setting) {
    if (isSameSetting(setting, curve.fullyOpen())) {
        return 0;  // The handle stands against its stop.
    }
    double division = scaleDivisionFraction(valve.scale);
    if (typed != nullptr) {
        division = std::min(division, typed->lastPlace());
    }
    return curve.logSlope(setting) * 0.5 * division / std::sqrt(3.0);
}

double accuracyRatio(const ValveModel* valve) {
    return valve != nullptr && valve->accuracy ? valve->accuracy->value.si() : kUsualValveAccuracy;
}

BranchFlow fromValve(const Project& project, const Branch& branch, const ValveModel& valve,
                     const curve::ValveCharacteristic& curve, const BranchReadings& readings,
                     Setting setting) {
    const Instrument* instrument =
        readings.counting->instrument ? project.instruments().find(*readings.counting->instrument) : nullptr;
    const quantity::Density density = project.fluid().density();
    const PressureDifference dp = readings.dpMean;
    const curve::FlowCoefficient coefficient = curve.coefficient(setting);
    BranchFlow out;
    out.source = FlowSource::ValveDp;
    out.flow = curve::valveFlow(coefficient, dp, density);

    const PressureDifference instrumental = dpUncertainty(*readings.counting->dp, dp, instrument, density);
    const double repeats_Pa = 0.5 * (readings.dpHigh - readings.dpLow).si() / std::sqrt(3.0);
    double u_Pa = base::rootSumSquare(instrumental.si(), repeats_Pa);
    const PressureDifference minimum = readableMinimum(branch, &valve, instrument);
    if (dp < minimum) {
        const double floor_Pa = minimum.si() / kFloorsToReadable;
        u_Pa = std::max(u_Pa, floor_Pa);
        out.source = FlowSource::Range;
        out.low =
            curve::valveFlow(coefficient, PressureDifference::si(std::max(0.0, dp.si() - 2 * u_Pa)), density);
        out.high =
            curve::valveFlow(coefficient, PressureDifference::si(std::max(0.0, dp.si() + 2 * u_Pa)), density);
    }
    if (dp.si() == 0 || coefficient.si() == 0) {
        // The square root has no slope here: half the range stands in for the uncertainty.
        const VolumeFlow reach = curve::valveFlow(coefficient, PressureDifference::si(u_Pa), density);
        out.uncertainty = out.readingUncertainty = reach;
        return out;
    }
    const base::Decimal* typed = readings.setAt != nullptr ? &*readings.setAt->setting : nullptr;
    curve::FlowUncertaintyParts parts;
    parts.pressure = u_Pa / std::abs(dp.si());
    const double size_m3s = std::abs(out.flow->si());
    out.readingUncertainty = VolumeFlow::si(size_m3s * curve::flowUncertainty(parts));
    parts.coefficient =
        base::rootSumSquare(accuracyRatio(&valve), straightPipe(branch).addedUncertainty.si());
    parts.position = positionUncertaintyRatio(valve, typed, curve, setting);
    out.uncertainty = VolumeFlow::si(size_m3s * curve::flowUncertainty(parts));
    return out;
}

BranchFlow fromDirect(const Project& project, const project::Reading& reading) {
    const Instrument* instrument =
        reading.instrument ? project.instruments().find(*reading.instrument) : nullptr;
    BranchFlow out;
    out.source = FlowSource::DirectReading;
    out.flow = reading.flow->value;
    const double digits_m3s =
        VolumeFlow::from(reading.flow->digits.lastPlace(), reading.flow->unit).si() / std::sqrt(12.0);
    const double accuracy =
        instrument != nullptr && instrument->accuracy ? instrument->accuracy->value.si() : 0;
    out.uncertainty = VolumeFlow::si(base::rootSumSquare(accuracy * reading.flow->value.si(), digits_m3s));
    out.readingUncertainty = out.uncertainty;
    return out;
}

BranchFlow fromRange(const Branch& branch, const ValveModel* valve, PressureDifference dp) {
    BranchFlow out;
    if (!branch.designFlow) {
        return out;
    }
    double factor = 1;
    const int place = placeInRange(valve, dp);
    if (place < 0) {
        factor = std::sqrt(std::max(0.0, dp / valve->minimumDp->value));
    } else if (place > 0) {
        factor = std::sqrt(dp / valve->maximumDp->value);
    }
    out.source = FlowSource::ValveDp;
    out.flow = branch.designFlow->value * factor;
    out.uncertainty = *out.flow * accuracyRatio(valve);
    return out;
}

}  // namespace

double scaleDivisionFraction(project::Scale scale) {
    return scale == project::Scale::Turns ? 0.1 : 1.0;
}

PressureDifference readableMinimum(const Branch& branch, const ValveModel* valve,
                                   const Instrument* instrument) {
    std::optional<PressureDifference> minimum;
    if (valve != nullptr && valve->minimumDp && !isSelfActing(branch)) {
        minimum = valve->minimumDp->value;
    }
    if (instrument != nullptr && instrument->accuracyFloor) {
        const PressureDifference own = instrument->accuracyFloor->value * kFloorsToReadable;
        minimum = minimum ? std::max(*minimum, own) : own;
    }
    return minimum.value_or(kUsualReadableMinimum);
}

PressureDifference dpUncertainty(const quantity::Measured<PressureDifference>& dp, PressureDifference mean,
                                 const Instrument* instrument, quantity::Density density) {
    const double last = dp.digits.lastPlace();
    const double place_Pa = quantity::isHeadUnit(dp.unit)
                                ? quantity::pressureOf(Head::from(last, dp.unit), density).si()
                                : PressureDifference::from(last, dp.unit).si();
    const double ofReading_Pa =
        instrument != nullptr && instrument->accuracy ? instrument->accuracy->value.si() * mean.si() : 0;
    const double floor_Pa =
        instrument != nullptr && instrument->accuracyFloor ? instrument->accuracyFloor->value.si() : 0;
    return PressureDifference::si(base::rootSumSquare(ofReading_Pa, floor_Pa, place_Pa / std::sqrt(12.0)));
}

int placeInRange(const ValveModel* valve, PressureDifference dp) {
    if (valve == nullptr) {
        return 0;
    }
    if (valve->minimumDp && dp < valve->minimumDp->value) {
        return -1;
    }
    return valve->maximumDp && dp > valve->maximumDp->value ? 1 : 0;
}

BranchFlow branchFlow(const Project& project, const Branch& branch, const BranchReadings& readings,
                      std::optional<Setting> setting) {
    if (!readings.hasValue()) {
        return {};
    }
    const ValveModel* valve = branch.valve ? project.valves().find(*branch.valve) : nullptr;
    const bool isDirect = readings.counting->flow.has_value();
    if (isSelfActing(branch)) {
        return isDirect ? fromDirect(project, *readings.counting) : fromRange(branch, valve, readings.dpMean);
    }
    if (readings.dpCount > 0 && valve != nullptr) {
        const curve::ValveCharacteristic* curve = project.characteristic(valve->id);
        if (curve != nullptr && setting && curve->covers(*setting)) {
            BranchFlow out = fromValve(project, branch, *valve, *curve, readings, *setting);
            if (out.source != FlowSource::Range || !isDirect) {
                return out;
            }
        }
    }
    return isDirect ? fromDirect(project, *readings.counting) : BranchFlow{};
}

}  // namespace ww::balancing::detail
