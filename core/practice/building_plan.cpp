#include "core/practice/building_plan.h"

#include "core/base/expects.h"

namespace ww::practice {

std::string_view name(Difficulty difficulty) {
    switch (difficulty) {
        case Difficulty::First:
            return "first";
        case Difficulty::Steady:
            return "steady";
        case Difficulty::Faulty:
            return "faulty";
        case Difficulty::Large:
            return "large";
        case Difficulty::LargeFaulty:
            return "large_faulty";
    }
    EXPECTS(false);
    return {};
}

BuildingPlan planOf(Difficulty difficulty) {
    BuildingPlan plan;
    const bool isLarge = difficulty == Difficulty::Large || difficulty == Difficulty::LargeFaulty;
    if (isLarge) {
        plan.shape = {6, 5, 4};
    } else if (difficulty != Difficulty::First) {
        plan.shape = {3, 4};
    }
    if (difficulty != Difficulty::Faulty && difficulty != Difficulty::LargeFaulty) {
        // Nothing is wrong: the gauges meet the pump's curve.
        plan.designErrors.pumpFactor = 0;
    } else {
        // Turbulent flow in smooth pipes and coils loses with a power a little under 2; good valve tables are
        // within a few percent (common practice, no source).
        plan.coilExponent = 1.85;
        plan.runExponent = 1.88;
        plan.tableBias = Ratio::si(0.02);
        plan.tableTilt = Ratio::si(0.04);
        plan.faults = {FaultKind::ControlValve, FaultKind::DpDoubled};
        if (isLarge) {
            plan.faults = {FaultKind::AirInCoil,      FaultKind::CloggingStrainer, FaultKind::ControlValve,
                           FaultKind::SettingMisread, FaultKind::WrongUnit,        FaultKind::DpHalved};
        }
    }
    return plan;
}

int terminalCount(const BuildingPlan& plan) {
    int count = 1;
    for (const int members : plan.shape) {
        count *= members;
    }
    return count;
}

}  // namespace ww::practice
