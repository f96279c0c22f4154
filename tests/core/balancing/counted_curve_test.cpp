// Which curve counts where gauges and curve contradict each other. Loops by hand: two terminals of 4 m3/h;
// the pump makes H = 10 - Q^2/16 m in the points of its table, 6.0 m at the 8 m3/h that are read. The limits
// are common practice, no source (counted_curve.h); two uncertainties by JCGM 100:2008, 6.3.3.
#include "core/balancing/counted_curve.h"

#include <gtest/gtest.h>

#include "core/balancing/system_curve.h"
#include "tests/core/balancing/small_loop.h"
#include "tests/support/faults.h"

namespace ww::balancing {
namespace {

using project::PumpPoint;
using project::RoundKind;
using quantity::Unit;
using support::has;

/// Reads a head with a gauge, against the shut valve or not.
void gauge(FieldJob& job, const std::string& rise, base::Id instrument,
           PumpPoint point = PumpPoint::Running) {
    const base::Id id = job.pumpRise(rise);
    job.change(job.project().pumpReadings().at(id), [&](project::PumpReading& reading) {
        reading.point = point;
        reading.instrument = instrument;
    });
}

/// A survey at design flow with this head on the gauges, all read to half a percent through valves of 1 %;
/// empty: none was read.
FieldJob surveyed(const std::string& rise, std::size_t pumps = 1) {
    FieldJob job = flatLoop(2);
    job.change(job.project().valves()[0], [](project::ValveModel& valve) {
        valve.accuracy = quantity::measured<quantity::Ratio>(FieldJob::decimal("1"), Unit::Percent);
    });
    for (std::size_t i = 0; i < pumps; ++i) {
        job.pump(
            "P-" + std::to_string(i + 1),
            {{"0", "10"}, {"2", "9.75"}, {"4", "9"}, {"6", "7.75"}, {"8", "6"}, {"10", "3.75"}, {"12", "1"}});
    }
    const base::Id instrument = job.instrument("0.5", "0.01");
    job.round(RoundKind::Survey);
    readAs(job, "A", 1.0);
    readAs(job, "B", 1.0);
    if (!rise.empty()) {
        gauge(job, rise, instrument);
    }
    return job;
}

base::Id instrumentOf(const FieldJob& job) {
    return job.project().instruments()[0].id;
}

/// Adds a head read against the shut valve with the same gauge.
void shut(FieldJob& job, const std::string& rise) {
    gauge(job, rise, instrumentOf(job), PumpPoint::Shutoff);
}

CountedCurve counted(const FieldJob& job) {
    return countedCurve(job.project(), assessNewest(job));
}

TEST(CountedCurve, gaugesThatAgreeLeaveTheCurveAsItIs) {
    const CountedCurve curve = counted(surveyed("6.00"));
    EXPECT_EQ(curve.basis, CurveBasis::Published);
    EXPECT_EQ(curve.headFactor.si(), 1);
    EXPECT_EQ(curve.roundNumber, 1);
    EXPECT_TRUE(curve.reasons.empty());
    EXPECT_EQ(curveWords(curve), "from the pump's curve");
    EXPECT_EQ(counted(surveyed("")).roundNumber, 0) << "no gauge was read";
}

TEST(CountedCurve, anAccuracyThatExplainsTheDifferenceLeavesIt) {
    FieldJob job = surveyed("");
    gauge(job, "5.50", job.instrument("5", "0"));
    EXPECT_EQ(counted(job).basis, CurveBasis::Published) << "0.5 m are within two times 5 % of 5.5 m";
}

// The loop takes its design flow at the present speed, whatever the curve says: no speed takes anything away.
TEST(CountedCurve, aCurveThatIsContradictedGoesThroughTheGauges) {
    for (const char* rise : {"5.50", "6.30"}) {
        const FieldJob job = surveyed(rise);
        const CountedCurve curve = counted(job);
        EXPECT_EQ(curve.basis, CurveBasis::ThroughGauges) << rise;
        EXPECT_NEAR(curve.headFactor.si(), std::stod(rise) / 6.0, 0.001);
        EXPECT_TRUE(has(curve.reasons, kDutyApart));
        EXPECT_TRUE(has(curve.reasons, kCountsGauges));
        EXPECT_EQ(curveWords(curve), "from the pump's curve through the gauges of round 1");
        const auto proposal = pumpProposal(job.project(), assessNewest(job));
        ASSERT_TRUE(proposal);
        EXPECT_NEAR(proposal->speedFraction, 1.0, 0.0005) << rise;
        EXPECT_NEAR(proposal->excess.head.si(), 0.0, 0.01) << rise;
        EXPECT_NEAR(proposal->headAvailable.si(), std::stod(rise), 0.01);
    }
}

TEST(CountedCurve, whatNoPumpDoesIsNotTrusted) {
    for (const char* rise : {"4.70", "6.70"}) {  // 78 and 112 % of the curve
        const FieldJob job = surveyed(rise);
        const CountedCurve curve = counted(job);
        EXPECT_EQ(curve.basis, CurveBasis::Untrusted) << rise;
        EXPECT_EQ(curve.headFactor.si(), 1);
        EXPECT_TRUE(has(curve.reasons, kCurveImplausible));
        EXPECT_FALSE(pumpProposal(job.project(), assessNewest(job))) << "no number is proposed";
    }
}

TEST(CountedCurve, aShutoffTestThatSaysTheSameMakesItSure) {
    FieldJob job = surveyed("4.50");
    shut(job, "7.50");
    const CountedCurve curve = counted(job);
    EXPECT_EQ(curve.basis, CurveBasis::ThroughGauges) << "75 % at both";
    EXPECT_TRUE(has(curve.reasons, kShutoffAgrees));
}

TEST(CountedCurve, aShutoffTestOnTheCurveIsToldAndTheDutyCounts) {
    FieldJob job = surveyed("5.50");
    shut(job, "10.00");
    const CountedCurve curve = counted(job);
    EXPECT_EQ(curve.basis, CurveBasis::ThroughGauges) << "one gauge, so the flow makes the difference";
    EXPECT_TRUE(has(curve.reasons, kShutoffOnCurve));
    FieldJob far = surveyed("4.50");
    shut(far, "10.00");
    EXPECT_EQ(counted(far).basis, CurveBasis::Untrusted);
    FieldJob other = surveyed("5.50");
    gauge(other, "10.00", other.instrument("1", "0"), PumpPoint::Shutoff);
    const CountedCurve two = counted(other);
    EXPECT_EQ(two.basis, CurveBasis::Untrusted) << "of two gauges one is wrong";
    EXPECT_TRUE(has(two.reasons, kGaugesDiffer));
}

TEST(CountedCurve, aShutoffTestOffTheCurveIsToldWhereTheDutyLiesOnIt) {
    FieldJob job = surveyed("6.00");
    shut(job, "9.60");
    const CountedCurve curve = counted(job);
    EXPECT_EQ(curve.basis, CurveBasis::Published);
    EXPECT_TRUE(has(curve.reasons, kShutoffOff));
    FieldJob near = surveyed("6.00");
    shut(near, "9.80");  // within 3 %
    EXPECT_TRUE(counted(near).reasons.empty());
}

TEST(CountedCurve, aRoundWithoutGaugesCountsThoseOfTheRoundBefore) {
    FieldJob job = surveyed("5.50");
    job.round(RoundKind::Final);
    readAs(job, "A", 0.9);
    readAs(job, "B", 0.9);
    const CountedCurve curve = counted(job);
    EXPECT_EQ(curve.roundNumber, 1);
    EXPECT_NEAR(curve.headFactor.si(), 5.5 / 6.0, 0.001);
    // Flow by the terminals: the speed follows from it alone.
    const auto proposal = pumpProposal(job.project(), assessNewest(job));
    ASSERT_TRUE(proposal);
    EXPECT_NEAR(proposal->speedFraction, 1 / 0.9, 0.001);
}

// What two rounds read of one curve differs: something changed between them, or one was misread.
TEST(CountedCurve, aRoundBeforeThatReadAnotherFactorIsTold) {
    FieldJob job = surveyed("6.00");
    job.round(RoundKind::Final);
    readAs(job, "A", 1.0);
    readAs(job, "B", 1.0);
    gauge(job, "5.50", instrumentOf(job));
    const CountedCurve changed = counted(job);
    EXPECT_EQ(changed.basis, CurveBasis::ThroughGauges);
    EXPECT_EQ(changed.roundNumber, 2);
    EXPECT_TRUE(has(changed.reasons, kRoundsDiffer));
    FieldJob same = surveyed("5.45");
    same.round(RoundKind::Final);
    readAs(same, "A", 1.0);
    readAs(same, "B", 1.0);
    gauge(same, "5.50", instrumentOf(same));
    EXPECT_FALSE(has(counted(same).reasons, kRoundsDiffer));
}

TEST(CountedCurve, twoPumpsSideBySideHaveOneFactor) {
    const FieldJob job = surveyed("8.50", 2);  // each gives 4 m3/h at 9.0 m
    const CountedCurve curve = counted(job);
    EXPECT_EQ(curve.basis, CurveBasis::ThroughGauges);
    EXPECT_NEAR(curve.headFactor.si(), 8.5 / 9.0, 0.001);
    EXPECT_NEAR(pumpProposal(job.project(), assessNewest(job))->speedFraction, 1.0, 0.0005);
}

}  // namespace
}  // namespace ww::balancing
