#include <algorithm>
#include <cmath>

#include "core/balancing/checks/support.h"

namespace ww::balancing::checks {

/// An instrument whose zero moved by more than half of the least dp that can be read with it (common
/// practice, no source).
void zeroDrift(const CheckContext& context, std::vector<Finding>& found) {
    constexpr double kMostOfMinimum = 0.5;
    for (const project::Instrument& instrument : context.project.instruments()) {
        if (!instrument.zeroStart || !instrument.zeroEnd) {
            continue;
        }
        std::optional<PressureDifference> minimum;
        for (std::size_t i = 0; i < context.now.readings.size(); ++i) {
            const project::Reading* reading = context.now.readings[i].counting;
            if (reading == nullptr || !reading->dp || reading->instrument != instrument.id) {
                continue;
            }
            const project::Branch& branch = context.project.branches()[i];
            const project::ValveModel* valve =
                branch.valve ? context.project.valves().find(*branch.valve) : nullptr;
            const PressureDifference readable = detail::readableMinimum(branch, valve, &instrument);
            minimum = minimum ? std::min(*minimum, readable) : readable;
        }
        const PressureDifference drift =
            PressureDifference::si(std::abs((instrument.zeroEnd->value - instrument.zeroStart->value).si()));
        if (minimum && drift > *minimum * kMostOfMinimum) {
            const quantity::Density density = context.project.fluid().density();
            const quantity::Unit unit = instrument.zeroEnd->unit;
            found.push_back(
                {base::Fault{&kZeroDrifted,
                             instrument.tag,
                             {detail::dpIn(unit, drift, density), detail::dpIn(unit, *minimum, density)}},
                 Severity::Warning, std::nullopt, std::nullopt});
        }
    }
}

}  // namespace ww::balancing::checks
