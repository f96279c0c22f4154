// The checks of pump and motor. Thresholds: a usual list of automatic checks for a balance (common practice,
// no source) unless a line says otherwise.
#include <gtest/gtest.h>

#include "core/balancing/checks/check_forms.h"
#include "tests/core/balancing/small_loop.h"

namespace ww::balancing {
namespace {

using project::RoundKind;
using quantity::Unit;

TEST(Checks, pumpClosure) {
    EXPECT_EQ(severityOf(pumped("6.00"), kPumpSumOpen), std::nullopt);
    EXPECT_EQ(severityOf(pumped("3.50"), kPumpSumOpen, "P-1"),
              Severity::Warning);  // about 10 m3/h by the curve
}

TEST(Checks, pumpClosureByMeter) {
    const auto withMeter = [](const char* flow) {
        FieldJob job = pumped("6.00");
        job.change(job.project().pumpReadings()[0],
                   [&](project::PumpReading& r) { r.flow = job.flowOf(flow); });
        return severityOf(job, kPumpMeterSumOpen, "P-1");
    };
    EXPECT_EQ(withMeter("8.5"), std::nullopt);
    EXPECT_EQ(withMeter("10"), Severity::Warning);
}

TEST(Checks, pumpEfficiency) {
    const auto withPower = [](const char* kW) {
        FieldJob job = pumped("6.00");  // water power 0.131 kW
        job.change(job.project().pumpReadings()[0], [&](project::PumpReading& r) {
            r.power = quantity::measured<quantity::Power>(FieldJob::decimal(kW), Unit::Kilowatt);
        });
        return severityOf(job, kPumpEfficiencyOdd, "P-1");
    };
    EXPECT_EQ(withPower("0.25"), std::nullopt);
    EXPECT_EQ(withPower("0.14"), Severity::Warning);  // 104 %
    EXPECT_EQ(withPower("1.0"), Severity::Warning);   // 15 %
}

TEST(Checks, motorLoad) {
    const auto withReading = [](const char* amps, const char* volts, const base::MessageForm& form) {
        FieldJob job = pumped("6.00");
        job.change(job.project().pumps()[0], [&](project::Pump& p) {
            p.amps = quantity::measured<quantity::Current>(FieldJob::decimal("10"), Unit::Ampere);
            p.volts = quantity::measured<quantity::Voltage>(FieldJob::decimal("400"), Unit::Volt);
            p.serviceFactor = FieldJob::decimal("1.15");
        });
        job.change(job.project().pumpReadings()[0], [&](project::PumpReading& r) {
            r.amps = quantity::measured<quantity::Current>(FieldJob::decimal(amps), Unit::Ampere);
            r.volts = quantity::measured<quantity::Voltage>(FieldJob::decimal(volts), Unit::Volt);
        });
        return severityOf(job, form, "P-1");
    };
    EXPECT_EQ(withReading("11.4", "400", kMotorOverloaded), std::nullopt);
    EXPECT_EQ(withReading("11.6", "400", kMotorOverloaded), Severity::Warning);
    EXPECT_EQ(withReading("8", "365", kVoltageOff), std::nullopt);
    EXPECT_EQ(withReading("8", "355", kVoltageOff), Severity::Warning);
}

TEST(Checks, finalReadingsComeAfterTheLastSpeed) {
    FieldJob job = pumped("6.00");
    job.round(RoundKind::Final);
    readAs(job, "A", 1.0);
    readAs(job, "B", 1.0);
    const auto timed = [&](const char* rpm, const char* time) {
        const base::Id id = job.pumpRise("6.00", rpm);
        job.change(job.project().pumpReadings().at(id),
                   [&](project::PumpReading& r) { r.time = base::Instant::fromText(time); });
    };
    timed("1750", "2026-03-02T08:00:00");
    EXPECT_EQ(severityOf(job, kReadBeforeLastSpeed), std::nullopt);
    timed("1600", "2026-03-02T12:00:00");
    EXPECT_EQ(severityOf(job, kReadBeforeLastSpeed, "A"), Severity::Error);
}

}  // namespace
}  // namespace ww::balancing
