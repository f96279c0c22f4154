#include "core/energy/motor_condition.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/quantity/measured.h"
#include "core/quantity/shown_units.h"

namespace ww::energy {

namespace {

template <class Q>
std::optional<Ratio> imbalanceOf(const std::vector<Q>& phases) {
    if (phases.size() < 2) {
        return std::nullopt;
    }
    const Q mean = std::accumulate(phases.begin(), phases.end(), Q()) / static_cast<double>(phases.size());
    if (mean.si() <= 0) {
        return std::nullopt;
    }
    double largest = 0;
    for (const Q& phase : phases) {
        largest = std::max(largest, std::abs(phase / mean - 1));
    }
    return Ratio::si(largest);
}

void checkImbalance(const std::optional<Ratio>& found, Ratio limit, const base::MessageForm& form,
                    std::vector<base::Fault>& findings) {
    if (found && *found > limit) {
        findings.push_back(
            {&form, "", {quantity::percentDigits(found->si(), 3), quantity::percentDigits(limit.si(), 3)}});
    }
}

}  // namespace

std::optional<Ratio> voltageImbalance(const MotorReading& reading) {
    return imbalanceOf(reading.volts);
}

std::optional<Ratio> currentImbalance(const MotorReading& reading) {
    return imbalanceOf(reading.amps);
}

MotorCondition motorCondition(const MotorPlate& plate, const MotorReading& reading,
                              const MotorLimits& limits) {
    MotorCondition out;
    out.voltageImbalance = voltageImbalance(reading);
    out.currentImbalance = currentImbalance(reading);
    checkImbalance(out.voltageImbalance, limits.voltageImbalance, kVoltageImbalance, out.findings);
    checkImbalance(out.currentImbalance, limits.currentImbalance, kCurrentImbalance, out.findings);
    if (!reading.amps.empty() && plate.amps && plate.amps->si() > 0) {
        const Current most = *std::max_element(reading.amps.begin(), reading.amps.end());
        const Current allowed = *plate.amps * plate.serviceFactor;
        out.ampsOfPlate = Ratio::si(most / *plate.amps);
        out.ampsOfServiceFactor = Ratio::si(most / allowed);
        const auto amps = [](Current current) { return quantity::concise(current.si(), 4); };
        if (most > allowed) {
            out.findings.push_back({&kMotorOverloaded, "", {amps(most), amps(allowed)}});
        } else if (most > *plate.amps) {
            out.findings.push_back({&kMotorInService, "", {amps(most), amps(*plate.amps)}});
        }
    }
    if (!reading.volts.empty() && plate.volts && plate.volts->si() > 0 && !plate.isBehindDrive) {
        const Voltage sum = std::accumulate(reading.volts.begin(), reading.volts.end(), Voltage());
        out.voltsOfPlate = Ratio::si(sum / (*plate.volts * static_cast<double>(reading.volts.size())));
        // NEMA MG 1: plus or minus 10 % of rated voltage.
        if (out.voltsOfPlate->si() < 0.9 || out.voltsOfPlate->si() > 1.1) {
            out.findings.push_back(
                {&kVoltageOffPlate, "", {quantity::percentDigits(out.voltsOfPlate->si(), 3)}});
        }
    }
    return out;
}

}  // namespace ww::energy
