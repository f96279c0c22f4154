#include <cmath>

#include "core/balancing/checks/support.h"

namespace ww::balancing::checks {

namespace {

/// A motor runs well within 10 % of its plate's voltage (from memory: NEMA MG 1).
constexpr double kVoltageRatio = 0.10;

}  // namespace

/// Current against the plate times the service factor, and voltage against the plate. Imbalance of phases
/// needs three readings, which the record does not hold.
void motorLoad(const CheckContext& context, std::vector<Finding>& found) {
    for (const PumpDuty& duty : context.pumps) {
        const project::Pump& pump = context.project.pumps()[duty.pump];
        const auto* reading = detail::countingPumpReading(context.project, context.round.id, pump.id);
        if (reading == nullptr) {
            continue;
        }
        if (reading->amps && pump.amps) {
            const quantity::Current allowed =
                pump.amps->value * (pump.serviceFactor ? pump.serviceFactor->value() : 1.0);
            if (reading->amps->value > allowed) {
                const std::string limit = quantity::significant(allowed.si(), 3) + " " +
                                          std::string(quantity::symbol(quantity::Unit::Ampere));
                found.push_back({base::Fault{&kMotorOverloaded, pump.tag, {reading->amps->text(), limit}},
                                 Severity::Warning, std::nullopt, std::nullopt});
            }
        }
        if (reading->volts && pump.volts && pump.volts->value.si() > 0) {
            const double off = reading->volts->value / pump.volts->value - 1;
            if (std::abs(off) > kVoltageRatio) {
                found.push_back(
                    {base::Fault{&kVoltageOff,
                                 pump.tag,
                                 {reading->volts->text(), detail::percentText(Ratio::si(std::abs(off))),
                                  pump.volts->text()}},
                     Severity::Warning, std::nullopt, std::nullopt});
            }
        }
    }
}

}  // namespace ww::balancing::checks
