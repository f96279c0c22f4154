#include <array>

#include "core/balancing/checks/support.h"

namespace ww::balancing::checks {

std::span<const Check> allChecks() {
    static constexpr std::array kChecks{
        Check{"design sum", About::Design, designSum},
        Check{"dp at design flow", About::Design, designDp},
        Check{"instrument range", About::Readings, instrumentRange},
        Check{"calibration", About::Readings, calibration},
        Check{"stale reference", About::Readings, staleReference},
        Check{"reference open", About::Readings, referenceOpen},
        Check{"index path open", About::Readings, indexPathOpen},
        Check{"index rival", About::Readings, indexRival},
        Check{"sum closure", About::Readings, sumClosure},
        Check{"group spread", About::Readings, groupSpread},
        Check{"final off design", About::Readings, finalOffDesign},
        Check{"pump closure", About::Readings, pumpClosure},
        Check{"pump efficiency", About::Readings, pumpEfficiency},
        Check{"pump test points", About::Readings, pumpTestPoints},
        Check{"motor load", About::Readings, motorLoad},
        Check{"conductance", About::Readings, conductance},
        Check{"rose on closing", About::Readings, roseOnClosing},
        Check{"group rose on closing", About::Readings, groupRoseOnClosing},
        Check{"proportion", About::Readings, proportion},
        Check{"survey extremes", About::Readings, surveyExtremes},
        Check{"setting range", About::Readings, settingRange},
        Check{"valve noise", About::Readings, valveNoise},
        Check{"final order", About::Readings, finalOrder},
        Check{"too perfect", About::Readings, tooPerfect},
        Check{"mixed units", About::Readings, mixedUnits},
        Check{"fluid correction", About::Readings, fluidCorrection},
        Check{"typed flow", About::Readings, typedFlow},
        Check{"clock", About::Readings, clock},
        Check{"zero drift", About::Readings, zeroDrift},
        Check{"copied digits", About::Readings, copiedDigits},
        Check{"last digits", About::Readings, lastDigits},
        Check{"witness", About::Readings, witness},
        Check{"readiness", About::Readings, readinessOpen},
        Check{"comments", About::Readings, commentsOpen},
        Check{"self-acting in group", About::Design, selfActingInGroup},
    };
    return kChecks;
}

}  // namespace ww::balancing::checks
