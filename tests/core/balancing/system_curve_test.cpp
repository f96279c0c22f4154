// Duty points and proposals: the square law and the affinity laws (Karassik et al., Pump Handbook), by hand.
#include "core/balancing/system_curve.h"

#include <gtest/gtest.h>

#include "tests/core/balancing/small_loop.h"

namespace ww::balancing {
namespace {

using project::RoundKind;
using quantity::Unit;

/// Two terminals of 4 m3/h design; H = 10 - Q^2/16 m in the points of the table.
FieldJob loop(double flowRatio, std::size_t pumps = 1) {
    FieldJob job = flatLoop(2);
    for (std::size_t i = 0; i < pumps; ++i) {
        job.pump(
            "P-" + std::to_string(i + 1),
            {{"0", "10"}, {"2", "9.75"}, {"4", "9"}, {"6", "7.75"}, {"8", "6"}, {"10", "3.75"}, {"12", "1"}});
    }
    job.round(RoundKind::Survey);
    readAs(job, "A", flowRatio);
    readAs(job, "B", flowRatio);
    return job;
}

TEST(SystemCurve, headOfTheGaugesAndFlowOfTheTerminals) {
    FieldJob job = loop(1.0);
    job.pumpRise("5.90");
    const auto curve = systemCurve(job.project(), assessNewest(job));
    ASSERT_TRUE(curve);
    EXPECT_NEAR(curve->flow.in(Unit::CubicMetrePerHour), 8, 0.002);
    EXPECT_NEAR(curve->head.si(), 5.9, 1e-9);
    EXPECT_NEAR(curve->at(curve->flow * 2).si(), 4 * 5.9, 1e-9);
    EXPECT_EQ(curve->roundNumber, 1);
    EXPECT_TRUE(curve->flowUncertainty);
}

TEST(SystemCurve, withoutGaugesThePumpCurveGivesTheHead) {
    const FieldJob job = loop(1.0);
    const auto curve = systemCurve(job.project(), assessNewest(job));
    ASSERT_TRUE(curve);
    EXPECT_NEAR(curve->head.si(), 6.0, 0.01);
    EXPECT_FALSE(curve->headUncertainty);
}

TEST(SystemCurve, withoutTerminalsThePumpCurveGivesTheFlow) {
    FieldJob job = loop(1.0);
    job.round(RoundKind::Adjusting);
    job.pumpRise("6.00");
    const auto curve = systemCurve(job.project(), assessNewest(job));
    ASSERT_TRUE(curve);
    EXPECT_NEAR(curve->flow.in(Unit::CubicMetrePerHour), 8, 0.02);
}

TEST(SystemCurve, nothingFromNothing) {
    FieldJob job = flatLoop(2);
    job.round(RoundKind::Survey);
    EXPECT_FALSE(systemCurve(job.project(), assessNewest(job)));
    EXPECT_FALSE(pumpProposal(job.project(), assessNewest(job)));
    EXPECT_FALSE(systemCurve(job.project(), assessLast(FieldJob().project())));
}

TEST(SystemCurve, twoPumpsInParallelShareTheFlow) {
    const FieldJob job = loop(1.0, 2);
    const auto curve = systemCurve(job.project(), assessNewest(job));
    ASSERT_TRUE(curve);
    EXPECT_NEAR(curve->head.si(), 9.0, 0.01);  // each gives 4 m3/h
}

TEST(SystemCurve, suctionAndDischargeGauges) {
    FieldJob job = loop(1.0);
    const base::Id id = job.pumpRise("1");
    job.change(job.project().pumpReadings().at(id), [&](project::PumpReading& r) {
        const auto density = job.project().fluid().density();
        r.gaugeRise.reset();
        r.suction = quantity::measuredGauge(FieldJob::decimal("150.0"), Unit::Kilopascal, density);
        r.discharge = quantity::measuredGauge(FieldJob::decimal("208.7"), Unit::Kilopascal, density);
    });
    const Assessment a = assessNewest(job);
    ASSERT_TRUE(a.pumps[0].head);
    EXPECT_NEAR(a.pumps[0].head->si(), 58.7e3 / (998.3 * 9.80665), 0.001);
    EXPECT_GT(a.pumps[0].headUncertainty->si(), 0);
    ASSERT_TRUE(a.pumps[0].flowFromCurve);
    EXPECT_LT(*a.pumps[0].flowLow, *a.pumps[0].flowFromCurve);
    EXPECT_GT(*a.pumps[0].flowHigh, *a.pumps[0].flowFromCurve);
}

TEST(PumpProposal, slowsDownOrTrims) {
    // 25 % too much: 10 m3/h at 3.75 m; design 8 m3/h needs 3.75 * 0.64 = 2.4 m of the 6 m there. Speed 0.8.
    FieldJob job = loop(1.25);
    job.change(job.project().pumps()[0], [](project::Pump& p) {
        p.impeller = quantity::measured<quantity::Length>(FieldJob::decimal("200"), Unit::Millimetre);
        p.impellerMinimum = quantity::measured<quantity::Length>(FieldJob::decimal("170"), Unit::Millimetre);
    });
    job.pumpRise("3.75");
    const auto proposal = pumpProposal(job.project(), assessNewest(job));
    ASSERT_TRUE(proposal);
    EXPECT_NEAR(proposal->speedFraction, 0.8, 0.001);
    EXPECT_NEAR(proposal->headAtDesign.si(), 2.4, 0.003);
    EXPECT_NEAR(proposal->headAvailable.si(), 6.0, 0.01);
    EXPECT_NEAR(proposal->excess.head.si(), 3.6, 0.01);
    EXPECT_NEAR(proposal->powerRatio->si(), 0.512, 0.002);
    ASSERT_TRUE(proposal->impeller);
    EXPECT_NEAR(proposal->impeller->in(Unit::Millimetre), 160, 0.2);
    EXPECT_TRUE(proposal->isBelowMinimumImpeller);
}

TEST(PumpProposal, speedIsOfTheRoundsOwnSpeed) {
    // At 80 % speed and design flow there is nothing left to change.
    FieldJob job = loop(1.0);
    job.pumpRise("2.40", "1400");
    const Assessment a = assessNewest(job);
    EXPECT_NEAR(a.pumps[0].speedFraction, 0.8, 1e-9);
    const auto proposal = pumpProposal(job.project(), a);
    ASSERT_TRUE(proposal);
    EXPECT_NEAR(proposal->speedFraction, 1.0, 0.001);
    EXPECT_NEAR(proposal->excess.head.si(), 0.0, 0.01);
    job.round(RoundKind::Final);
    EXPECT_NEAR(assessNewest(job).pumps[0].speedFraction, 0.8, 1e-9);  // the speed stays as last read
}

}  // namespace
}  // namespace ww::balancing
