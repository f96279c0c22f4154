// Checks of the meter that a reading was taken with and of the reference that it is held against, each with a
// case that it finds and one that it leaves alone. Thresholds: a usual list of automatic checks for a balance
// (common practice, no source).
#include <gtest/gtest.h>

#include <algorithm>

#include "core/balancing/checks/check_forms.h"
#include "tests/core/balancing/small_loop.h"

namespace ww::balancing {
namespace {

using project::RoundKind;

TEST(ReadingChecks, instrumentRange) {
    FieldJob job = flatLoop(1);
    const base::Id meter = job.instrument("1", "");
    job.change(job.project().instruments().at(meter),
               [&](project::Instrument& i) { i.range = job.pressure("100"); });
    job.round(RoundKind::Survey);
    job.dp("A", "50", "4");
    EXPECT_EQ(severityOf(job, kOutsideInstrumentRange), std::nullopt);
    job.dp("A", "9.9", "4");
    EXPECT_EQ(severityOf(job, kOutsideInstrumentRange, "A"), Severity::Warning);
    const base::Id high = job.dp("A", "96", "4");
    EXPECT_EQ(severityOf(job, kOutsideInstrumentRange, "A"), Severity::Warning);
    job.change(job.project().readings().at(high), [](project::Reading& r) { r.reason = "no other"; });
    EXPECT_EQ(severityOf(job, kOutsideInstrumentRange, "A"), Severity::Note);
    job.dp("A", "101", "4");
    EXPECT_EQ(severityOf(job, kOutsideInstrumentRange), std::nullopt) << "above its range it is doubted";
}

TEST(ReadingChecks, calibration) {
    FieldJob job = flatLoop(1);
    const base::Id meter = job.instrument("1", "");
    job.pump("P-1", {{"0", "10"}, {"10", "5"}});
    job.round(RoundKind::Survey);
    job.dp("A", "25", "4");
    EXPECT_EQ(severityOf(job, kCalibrationUnknown, "M-1"), Severity::Note);
    const auto setDates = [&](const char* calibrated, const char* due) {
        job.change(job.project().instruments().at(meter), [&](project::Instrument& i) {
            i.calibrated = base::Instant::fromText(calibrated);
            i.due = base::Instant::fromText(due);
        });
    };
    setDates("2025-10-01", "2026-10-01");
    EXPECT_EQ(severityOf(job, kCalibrationUnknown), std::nullopt);
    EXPECT_EQ(severityOf(job, kCalibratedLater), std::nullopt);
    setDates("2026-03-05", "2027-03-05");
    EXPECT_EQ(severityOf(job, kCalibratedLater, "M-1"), Severity::Warning);
    const base::Id rise = job.pumpRise("8");
    job.change(job.project().pumpReadings().at(rise), [&](project::PumpReading& r) {
        r.instrument = meter;
        r.time = base::Instant::fromText("2026-03-02T09:00:00");
    });
    EXPECT_EQ(severityOf(job, kInstrumentOverdue), std::nullopt);
    setDates("2025-01-01", "2026-01-01");
    EXPECT_EQ(severityOf(job, kInstrumentOverdue, "M-1"), Severity::BlocksSignature);
    // One finding for the terminal and the pump together.
    const Assessment all = assessNewest(job);
    EXPECT_EQ(std::count_if(all.findings.begin(), all.findings.end(),
                            [](const Finding& finding) { return finding.fault.is(kInstrumentOverdue); }),
              1);
    EXPECT_EQ(findingOf(all, kInstrumentOverdue)->fault.arguments,
              (std::vector<std::string>{"2026-01-01", "2", "2026-03-02"}));
}

TEST(ReadingChecks, staleReference) {
    FieldJob job = flatLoop(2);
    job.round(RoundKind::Survey);
    readAs(job, "A", 1.0);
    readAs(job, "B", 1.4);
    job.round(RoundKind::Adjusting);
    readAs(job, "A", 1.1);
    readAs(job, "B", 1.1, "3");  // set before the walk began, as far as the record says
    EXPECT_EQ(severityOf(job, kReferenceStale), std::nullopt);
    job.settingOnly("B", "2");
    EXPECT_EQ(severityOf(job, kReferenceStale, "A"), Severity::Warning);
    readAs(job, "A", 1.1);
    EXPECT_EQ(severityOf(job, kReferenceStale), std::nullopt);
}

/// Two risers of two terminals; B is the reference of R1, which is not on the index circuit.
FieldJob withReferenceAt(RoundKind kind, const char* setting) {
    FieldJob job = twoRisers();
    job.round(kind);
    readAs(job, "A", 1.2, "4");
    readAs(job, "B", 1.0, setting);
    readAs(job, "C", 0.9, "4");
    readAs(job, "D", 0.9, "4");
    return job;
}

TEST(ReadingChecks, onTheWayAReferenceIsJudgedByReadingsOfOneState) {
    FieldJob job = withReferenceAt(RoundKind::Adjusting, "3");
    job.settingOnly("R1", "4");
    job.settingOnly("R1", "3");
    readAs(job, "A", 1.1, "4");  // B was read before the riser was moved
    EXPECT_EQ(severityOf(job, kReferenceThrottled, "B"), std::nullopt);
    readAs(job, "B", 1.0, "3");
    EXPECT_EQ(severityOf(job, kReferenceThrottled, "B"), Severity::Warning);
}

TEST(ReadingChecks, referenceOpenAtTheFinish) {
    const auto severityIn = [](RoundKind kind, const char* setting) {
        return severityOf(withReferenceAt(kind, setting), kReferenceThrottled, "B");
    };
    EXPECT_EQ(severityIn(RoundKind::Final, "3"), Severity::Error);
    EXPECT_EQ(severityIn(RoundKind::Adjusting, "3"), Severity::Warning);
    EXPECT_EQ(severityIn(RoundKind::Final, "4"), std::nullopt);
}

}  // namespace
}  // namespace ww::balancing
