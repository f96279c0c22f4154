// What is odd about a reading of a pump's test. That a pump's head falls as flow rises, and heads at another
// speed go with its square: affinity laws and pump curves of the trade; the ratios 0.4 to 2.5, 110 % and 2 %
// are common practice, no source.
#include "core/balancing/pump_doubts.h"

#include <gtest/gtest.h>

#include "core/balancing/checks/check_forms.h"
#include "core/balancing/detail/pump_duty.h"
#include "tests/core/balancing/small_loop.h"

namespace ww::balancing {
namespace {

using project::PumpPoint;
using project::PumpReading;
using quantity::Unit;

class PumpDoubts : public testing::Test {
  protected:
    PumpDoubts() : job(flatLoop(1)) {
        job.pump("P-1", {{"0", "20"}, {"10", "10"}});
        job.round(project::RoundKind::Survey);
    }

    template <class Q>
    static quantity::Measured<Q> typed(const char* digits, Unit unit) {
        return quantity::measured<Q>(*base::Decimal::parse(digits), unit);
    }

    /// A point with this rise in kPa and current in A; empty: not read.
    PumpReading point(PumpPoint kind, const char* rise, const char* amps, const char* speed = "1750") {
        PumpReading made;
        made.id = job.ids().next();
        made.round = job.newestRound();
        made.pump = job.project().pumps()[0].id;
        made.point = kind;
        if (*rise != 0) {
            made.gaugeRise = job.pressure(rise);
        }
        if (*amps != 0) {
            made.amps = typed<quantity::Current>(amps, Unit::Ampere);
        }
        if (*speed != 0) {
            made.speed = typed<quantity::RotationalSpeed>(speed, Unit::RevolutionPerMinute);
        }
        job.project().put(made);
        return made;
    }
    std::vector<base::Fault> doubts(const PumpReading& reading) {
        job.project().put(reading);
        return pumpDoubts(job.project(), reading);
    }
    /// The only doubt; its form is this one.
    void expectOnly(const PumpReading& reading, const base::MessageForm& form) {
        const auto found = doubts(reading);
        ASSERT_EQ(found.size(), 1U) << (found.empty() ? "nothing" : base::english(found[0]));
        EXPECT_TRUE(found[0].is(form)) << base::english(found[0]);
        EXPECT_EQ(found[0].subject, "P-1");
    }

    FieldJob job;
};

TEST_F(PumpDoubts, aTestThatStandsToReasonIsNone) {
    const PumpReading all[] = {
        point(PumpPoint::Static, "0.5", "", "0"), point(PumpPoint::Shutoff, "190", "1.6"),
        point(PumpPoint::ThrottledToDesign, "160", "2.0"), point(PumpPoint::FullOpen, "120", "2.3"),
        point(PumpPoint::Final, "85", "1.4", "1470")};
    for (const PumpReading& reading : all) {
        EXPECT_TRUE(doubts(reading).empty()) << base::english(doubts(reading).front());
    }
}

TEST_F(PumpDoubts, suctionAboveDischarge) {
    PumpReading shut = point(PumpPoint::Shutoff, "", "");
    shut.suction = typed<quantity::GaugePressure>("250", Unit::Kilopascal);
    shut.discharge = typed<quantity::GaugePressure>("148", Unit::Kilopascal);
    expectOnly(shut, kPumpSuctionAbove);
    shut.point = PumpPoint::Static;
    EXPECT_TRUE(doubts(shut).empty()) << "at rest either may be higher";
}

TEST_F(PumpDoubts, aCurrentTenTimesThatOfTheOtherPoints) {
    point(PumpPoint::Shutoff, "", "1.9");
    point(PumpPoint::FullOpen, "", "2.3");
    const PumpReading slip = point(PumpPoint::Final, "", "23");
    expectOnly(slip, kPumpPointMoved);
    EXPECT_EQ(doubts(slip)[0].arguments[3], "2.3 A");
    expectOnly(point(PumpPoint::Running, "", "6.5"), kPumpFarFromPoints);
    // At half the speed the current is another.
    EXPECT_TRUE(doubts(point(PumpPoint::Running, "", "0.5", "875")).empty());
}

TEST_F(PumpDoubts, headThatRisesWithFlow) {
    point(PumpPoint::Shutoff, "150", "");
    // Read at more speed it is none: 190 kPa at 2000 rpm are 145 kPa at 1750 rpm.
    const auto faster = doubts(point(PumpPoint::ThrottledToDesign, "190", "", "2000"));
    EXPECT_TRUE(std::none_of(faster.begin(), faster.end(),
                             [](const base::Fault& one) { return one.is(kPumpHeadRises); }));
    expectOnly(point(PumpPoint::FullOpen, "190", ""), kPumpHeadRises);
}

TEST_F(PumpDoubts, nothingReadWhileItRuns) {
    PumpReading reading = point(PumpPoint::Running, "", "2.3");
    reading.power = typed<quantity::Power>("0", Unit::Kilowatt);
    expectOnly(reading, kPumpNothingRead);
}

TEST_F(PumpDoubts, speedAboveOneHundredAndTenPercent) {
    EXPECT_TRUE(doubts(point(PumpPoint::Running, "", "", "1925")).empty());
    expectOnly(point(PumpPoint::Running, "", "", "1950"), kPumpSpeedHigh);
}

// It is a finding of the round, never refused; a reason makes it a note.
TEST_F(PumpDoubts, isAFindingThatAReasonExplains) {
    PumpReading fast = point(PumpPoint::Running, "", "", "1950");
    EXPECT_EQ(severityOf(job, kPumpSpeedHigh, "P-1"), Severity::Warning);
    fast.reason = "the drive allows it";
    job.project().put(fast);
    EXPECT_EQ(severityOf(job, kPumpSpeedHigh, "P-1"), Severity::Note);
}

TEST_F(PumpDoubts, aGaugeThatNobodyNamesIsNoMoreExactThanOneThatIs) {
    PumpReading reading = point(PumpPoint::Running, "100.0", "");
    const double unnamed = detail::riseUncertainty(job.project(), reading).si();
    EXPECT_NEAR(unnamed, 2000, 5) << "2 % of 100 kPa";
    EXPECT_FALSE(detail::isGaugeStated(job.project(), reading));
    const base::Id gauge = job.instrument("1", "");
    reading.instrument = gauge;
    const double named = detail::riseUncertainty(job.project(), reading).si();
    EXPECT_TRUE(detail::isGaugeStated(job.project(), reading));
    EXPECT_NEAR(named, 1000, 5);
    EXPECT_GT(unnamed, named);
}

TEST_F(PumpDoubts, aHeadFarAboveTheCurveIsOddAtOnce) {
    // The table ends at 20 m of water at no flow, about 196 kPa.
    EXPECT_TRUE(doubts(point(PumpPoint::Running, "190", "")).empty());
    EXPECT_TRUE(doubts(point(PumpPoint::Final, "250", "")).empty()) << "curves differ from pumps";
    expectOnly(point(PumpPoint::Running, "1450", ""), kPumpAboveCurve);
    // A head that the speed does not bear either.
    expectOnly(point(PumpPoint::Running, "190", "", "1200"), kPumpAboveCurve);
}

}  // namespace
}  // namespace ww::balancing
