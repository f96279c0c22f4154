#include <algorithm>

#include "core/balancing/checks/support.h"
#include "core/project/calibration.h"

namespace ww::balancing::checks {

namespace {

/// First and last use of an instrument in the round.
struct Use {
    std::optional<base::Instant> first;
    bool isUsed = false;

    void add(const std::optional<base::Instant>& time) {
        isUsed = true;
        if (time && (!first || *time < *first)) {
            first = time;
        }
    }
};

}  // namespace

/// Calibration dates of what was used. A branch reading with an overdue instrument is doubtful by itself
/// (detail/doubts.h); here are pump readings, missing dates and certificates that are newer than the reading.
void calibration(const CheckContext& context, std::vector<Finding>& found) {
    const auto& instruments = context.project.instruments();
    std::vector<Use> uses(instruments.size());
    for (const detail::BranchReadings& readings : context.now.readings) {
        if (readings.hasValue() && readings.counting->instrument &&
            instruments.contains(*readings.counting->instrument)) {
            uses[instruments.indexOf(*readings.counting->instrument)].add(readings.counting->time);
        }
    }
    for (const PumpDuty& duty : context.pumps) {
        const project::Pump& pump = context.project.pumps()[duty.pump];
        const auto* reading = detail::countingPumpReading(context.project, context.round.id, pump.id);
        if (reading == nullptr || !reading->instrument || !instruments.contains(*reading->instrument)) {
            continue;
        }
        const project::Instrument& instrument = instruments.at(*reading->instrument);
        uses[instruments.indexOf(instrument.id)].add(reading->time);
        if (project::isOverdue(instrument, reading->time)) {
            found.push_back(
                {base::Fault{&kPumpInstrumentOverdue,
                             pump.tag,
                             {instrument.tag, instrument.due->date(), pump.tag, reading->time->date()}},
                 project::isOverdueUnexplained(instrument, reading->time) ? Severity::BlocksSignature
                                                                          : Severity::Note,
                 std::nullopt, std::nullopt, instrument.overdueReason});
        }
    }
    for (std::size_t i = 0; i < uses.size(); ++i) {
        if (!uses[i].isUsed) {
            continue;
        }
        const project::Instrument& instrument = instruments[i];
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
