#include <cmath>

#include "core/balancing/checks/support.h"

namespace ww::balancing::checks {

namespace {

constexpr double kApartRatio = 0.10;
constexpr double kScore = 2;

void compare(const CheckContext& context, VolumeFlow pumps, double uncertainty_m3s,
             const base::MessageForm& form, std::vector<Finding>& found) {
    const VolumeFlow total = *context.now.total;
    double square = uncertainty_m3s * uncertainty_m3s;
    for (const BranchResult& result : context.now.branches) {
        if (result.isTerminal && result.flowUncertainty) {
            square += result.flowUncertainty->si() * result.flowUncertainty->si();
        }
    }
    const double apart_m3s = std::abs((pumps - total).si());
    if (apart_m3s > kApartRatio * total.si() && apart_m3s > kScore * std::sqrt(square)) {
        const project::Pump& first = context.project.pumps()[context.pumps.front().pump];
        found.push_back({base::Fault{&form,
                                     context.pumps.size() == 1 ? first.tag : "",
                                     {detail::flowText(context.project, pumps),
                                      detail::flowText(context.project, total)}},
                         Severity::Warning, std::nullopt, std::nullopt});
    }
}

}  // namespace

/// Flow of the pumps, by curve and by meter, against the sum of the terminals.
void pumpClosure(const CheckContext& context, std::vector<Finding>& found) {
    if (!context.now.total || context.now.total->si() <= 0) {
        return;
    }
    VolumeFlow byCurve;
    VolumeFlow byMeter;
    double curveSquare = 0;
    bool hasCurve = !context.pumps.empty();
    bool hasMeter = !context.pumps.empty();
    for (const PumpDuty& duty : context.pumps) {
        if (!context.project.pumps()[duty.pump].isRunning) {
            continue;
        }
        hasCurve = hasCurve && duty.flowFromCurve;
        hasMeter = hasMeter && duty.flowRead;
        if (duty.flowFromCurve) {
            byCurve += *duty.flowFromCurve;
            const VolumeFlow high = duty.flowHigh.value_or(*duty.flowFromCurve);
            const double u_m3s = 0.5 * (high - duty.flowLow.value_or(*duty.flowFromCurve)).si();
            curveSquare += u_m3s * u_m3s;
        }
        byMeter += duty.flowRead.value_or(VolumeFlow());
    }
    if (hasCurve && byCurve.si() > 0) {
        compare(context, byCurve, std::sqrt(curveSquare), kPumpSumOpen, found);
    }
    if (hasMeter && byMeter.si() > 0) {
        compare(context, byMeter, 0, kPumpMeterSumOpen, found);
    }
}

}  // namespace ww::balancing::checks
