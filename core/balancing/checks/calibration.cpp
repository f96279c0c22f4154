#include <algorithm>

#include "core/balancing/checks/support.h"
#include "core/project/calibration.h"

namespace ww::balancing::checks {

namespace {

/// The use of an instrument in the round.
struct Use {
    std::optional<base::Instant> first;
    bool isUsed = false;
    std::size_t overdue = 0;  ///< readings taken after it was due
    std::optional<base::Instant> lastOverdue;

    void add(const project::Instrument& instrument, const std::optional<base::Instant>& time) {
        isUsed = true;
        if (time && (!first || *time < *first)) {
            first = time;
        }
        if (project::isOverdue(instrument, time)) {
            ++overdue;
            if (!lastOverdue || *lastOverdue < *time) {
                lastOverdue = time;
            }
        }
    }
};

}  // namespace

/// Calibration dates of what was used, one finding an instrument: overdue, without a date, or with a
/// certificate that is newer than the reading. No reading is doubtful for it.
void calibration(const CheckContext& context, std::vector<Finding>& found) {
    const auto& instruments = context.project.instruments();
    std::vector<Use> uses(instruments.size());
    const auto add = [&](const auto& reading) {
        if (reading.instrument && instruments.contains(*reading.instrument)) {
            const std::size_t index = instruments.indexOf(*reading.instrument);
            uses[index].add(instruments[index],
                            project::takenAt(context.project, reading.time, context.round.id));
        }
    };
    for (const detail::BranchReadings& readings : context.now.readings) {
        if (readings.hasValue()) {
            add(*readings.counting);
        }
    }
    for (const std::size_t index : context.project.pumpReadingsOf(context.round.id)) {
        const project::PumpReading& reading = context.project.pumpReadings()[index];
        if (reading.status == project::ReadingStatus::Standing) {
            add(reading);
        }
    }
    for (std::size_t i = 0; i < uses.size(); ++i) {
        if (!uses[i].isUsed) {
            continue;
        }
        const project::Instrument& instrument = instruments[i];
        if (uses[i].overdue > 0) {
            found.push_back({base::Fault{&kInstrumentOverdue,
                                         instrument.tag,
                                         {instrument.due->date(), std::to_string(uses[i].overdue),
                                          uses[i].lastOverdue->date()}},
                             instrument.overdueReason.empty() ? Severity::BlocksSignature : Severity::Note,
                             std::nullopt, std::nullopt, instrument.overdueReason});
        }
        if (!instrument.due) {
            found.push_back({base::Fault{&kCalibrationUnknown, instrument.tag, {}}, Severity::Note,
                             std::nullopt, std::nullopt});
        }
        if (instrument.calibrated && uses[i].first &&
            instrument.calibrated->seconds > uses[i].first->seconds) {
            found.push_back({base::Fault{&kCalibratedLater,
                                         instrument.tag,
                                         {instrument.calibrated->date(), uses[i].first->date()}},
                             Severity::Warning, std::nullopt, std::nullopt});
        }
    }
}

}  // namespace ww::balancing::checks
