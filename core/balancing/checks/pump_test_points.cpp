#include "core/balancing/checks/support.h"
#include "core/balancing/pump_doubts.h"

namespace ww::balancing::checks {

/// Readings of a pump's test that do not stand to reason; a reason given with the reading makes it a note.
void pumpTestPoints(const CheckContext& context, std::vector<Finding>& found) {
    for (const std::size_t index : context.project.pumpReadingsOf(context.round.id)) {
        const project::PumpReading& reading = context.project.pumpReadings()[index];
        if (reading.status != project::ReadingStatus::Standing) {
            continue;
        }
        for (base::Fault& doubt : pumpDoubts(context.project, reading)) {
            found.push_back({std::move(doubt), reading.reason.empty() ? Severity::Warning : Severity::Note,
                             std::nullopt, std::nullopt});
        }
    }
}

}  // namespace ww::balancing::checks
