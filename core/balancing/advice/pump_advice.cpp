#include "core/balancing/advice/pump_advice.h"

#include "core/balancing/advice/advice_forms.h"
#include "core/balancing/detail/wording.h"
#include "core/balancing/excess_head.h"

namespace ww::balancing {

namespace {

using project::Project;

/// A trim instead of a speed: one pump, and only smaller.
void fillImpeller(const Project& project, const HydraulicModel& model, PumpAdvice& pump) {
    if (model.pumps.size() != 1 || pump.excess.si() < 0) {
        return;
    }
    const project::Pump& record = project.pumps()[model.pumps.front()];
    if (!record.impeller) {
        return;
    }
    pump.impeller = record.impeller->value * pump.speedRatio->si();
    if (record.impellerMinimum && *pump.impeller < record.impellerMinimum->value) {
        pump.isBelowMinimumImpeller = true;
        pump.notes.push_back({&kPumpBelowMinimum, record.tag, {record.impellerMinimum->text()}});
    }
}

}  // namespace

bool PumpAdvice::isShort() const {
    // About one percent of speed: less cannot be told (common practice, no source).
    constexpr double kLeastShare = 0.02;
    return excess.si() < -kLeastShare * needed.si();
}

std::optional<PumpAdvice> pumpAdvice(const Project& project, const ProportionalBalance& balance,
                                     const LoopState& operation, const Resistances& resistances) {
    LoopState open = operation;
    open.settings.clear();
    open.closed.clear();
    const BuiltModel built = hydraulicModel(project, open, resistances);
    if (!built.model || operation.speedFraction <= 0) {
        return std::nullopt;
    }
    PumpAdvice pump;
    pump.needed = balance.neededAtDesign;
    pump.available = balance.availableAtDesign;
    pump.excess = pump.available - pump.needed;
    const auto headOf = [&](PressureDifference rise) {
        return detail::headText(project, project.fluid().head(rise));
    };
    if (pump.isShort()) {
        pump.notes.push_back({&kPumpShort,
                              "",
                              {headOf(pump.available), headOf(pump.needed),
                               detail::percentText(balance.ofDesign), headOf(-pump.excess)}});
    } else if (pump.excess.si() < 0) {
        pump.notes.push_back({&kPumpNearNeed, "", {headOf(pump.available), headOf(pump.needed)}});
    } else if (pump.excess.si() > 0) {
        // Of the loop as it was learned and the pump as it runs.
        pump.notes.push_back(
            {&kPumpExcess,
             "",
             {headOf(pump.excess), excessWords(ExcessBasis::IndexByLearned, ExcessSpeed::AsRead)}});
    }
    pump.speedFraction = speedFractionFor(*built.model, open, balance.designFlow, pump.needed);
    if (pump.speedFraction) {
        pump.speedRatio = Ratio::si(pump.speedFraction->si() / operation.speedFraction);
        constexpr double kRated = 1 + 1e-6;
        if (pump.speedFraction->si() > kRated) {
            pump.notes.push_back({&kPumpOverRated, "", {detail::percentText(*pump.speedFraction)}});
        }
        fillImpeller(project, *built.model, pump);
    }
    return pump;
}

}  // namespace ww::balancing
