#include "core/balancing/checks/support.h"

namespace ww::balancing::checks {

namespace {

constexpr double kLowestEfficiency = 0.2;
constexpr double kHighestEfficiency = 0.9;
/// Where the motor's plate does not say it (common practice, no source).
constexpr double kUsualMotorEfficiency = 0.9;

}  // namespace

/// Water power over shaft power, from head, flow and the power read.
void pumpEfficiency(const CheckContext& context, std::vector<Finding>& found) {
    for (const PumpDuty& duty : context.pumps) {
        const project::Pump& pump = context.project.pumps()[duty.pump];
        const auto* reading = detail::countingPumpReading(context.project, context.round.id, pump.id);
        if (reading == nullptr || !reading->power || reading->power->value.si() <= 0 || !duty.head) {
            continue;
        }
        std::optional<VolumeFlow> flow = duty.flowRead;
        if (!flow && context.pumps.size() == 1) {
            flow = context.now.total;
        }
        if (!flow) {
            flow = duty.flowFromCurve;
        }
        if (!flow) {
            continue;
        }
        const double water_W = context.project.fluid().pressure(*duty.head).si() * flow->si();
        const double motor = pump.motorEfficiency ? pump.motorEfficiency->value.si() : kUsualMotorEfficiency;
        const double efficiency = water_W / (reading->power->value.si() * motor);
        if (efficiency < kLowestEfficiency || efficiency > kHighestEfficiency) {
            found.push_back(
                {base::Fault{&kPumpEfficiencyOdd, pump.tag, {detail::percentText(Ratio::si(efficiency))}},
                 Severity::Warning, std::nullopt, std::nullopt});
        }
    }
}

}  // namespace ww::balancing::checks
