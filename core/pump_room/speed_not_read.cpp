#include "core/pump_room/speed_not_read.h"

#include "core/balancing/system_curve.h"
#include "core/pump_room/pump_decision.h"
#include "core/quantity/measured.h"

namespace ww::pump_room {

base::Fault speedNotRead(const std::string& tag, int round, quantity::Ratio speedFraction,
                         std::optional<int> speedRound) {
    if (!speedRound) {
        return {&kSpeedNotRead, tag, {std::to_string(round)}};
    }
    return {
        &kSpeedCarried,
        tag,
        {std::to_string(round), quantity::percentDigits(speedFraction.si(), 4), std::to_string(*speedRound)}};
}

std::optional<base::Fault> speedNotRead(const project::Project& project, const balancing::Assessment& round) {
    const auto duty = balancing::systemCurve(project, round);
    if (!duty) {
        return std::nullopt;
    }
    for (const balancing::PumpDuty& pump : round.pumps) {
        if (project.pumps()[pump.pump].isRunning && pump.speedRound != duty->roundNumber) {
            return speedNotRead(project.pumps()[pump.pump].tag, duty->roundNumber,
                                quantity::Ratio::si(pump.speedFraction), pump.speedRound);
        }
    }
    return std::nullopt;
}

}  // namespace ww::pump_room
