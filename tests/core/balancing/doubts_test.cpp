// What makes a single reading doubtful, each with a case beside it that is not. Limits: common practice, no
// source.
#include <gtest/gtest.h>

#include <algorithm>

#include "core/balancing/checks/check_forms.h"
#include "core/balancing/doubt_forms.h"
#include "core/balancing/learning/learn_forms.h"
#include "core/balancing/learning/learned_loop.h"
#include "core/balancing/meant_dp.h"
#include "core/balancing/walk.h"
#include "core/balancing/walk_progress.h"
#include "tests/core/balancing/small_loop.h"

namespace ww::balancing {
namespace {

using project::RoundKind;

/// One terminal among three, read as 25 kPa at setting 4 in round 1, now as `digits`.
struct Reread {
    explicit Reread(const char* digits, const char* setting = "4") : job(flatLoop(3)) {
        job.round(RoundKind::Survey);
        for (const char* tag : {"A", "B", "C"}) {
            job.dp(tag, "25.0", "4");
        }
        job.round(RoundKind::Adjusting);
        job.dp("A", "25.0", "4");
        job.dp("B", "25.0", "4");
        reading = job.dp("C", digits, setting);
    }
    State state() const { return resultOf(job, assessNewest(job), "C").state; }
    const Finding* finding(const base::MessageForm& form) const {
        m_assessment = assessNewest(job);
        return findingOf(m_assessment, form, "C");
    }

    FieldJob job;
    base::Id reading;
    mutable Assessment m_assessment;
};

TEST(Doubts, farFromTheSameSettingBefore) {
    EXPECT_EQ(Reread("9.9").state(), State::Doubtful);  // under 0.4
    EXPECT_NE(Reread("10.1").state(), State::Doubtful);
    EXPECT_NE(Reread("62").state(), State::Doubtful);
    EXPECT_EQ(Reread("63").state(), State::Doubtful);  // over 2.5
    const Reread odd("150");                           // six times: no unit fits
    ASSERT_NE(odd.finding(kImplausible), nullptr);
    EXPECT_EQ(
        base::english(odd.finding(kImplausible)->fault),
        "150 kPa is far from 25.0 kPa read at the same setting in round 1; read again or give the reason");
}

TEST(Doubts, aSlipOfTheUnit) {
    const Reread psi("3.63");  // 25.0 kPa
    ASSERT_NE(psi.finding(kUnitSuspected), nullptr);
    EXPECT_EQ(base::english(psi.finding(kUnitSuspected)->fault),
              "3.63 kPa is far from the expected 25.0 kPa, in psi it would be 25.0 kPa; correct the unit, "
              "read again or "
              "give the reason");
    EXPECT_NE(Reread("100.4").finding(kUnitSuspected), nullptr);  // inches of water
    EXPECT_NE(Reread("8.36").finding(kUnitSuspected), nullptr);   // feet of water
    EXPECT_EQ(Reread("27").finding(kUnitSuspected), nullptr);
}

TEST(Doubts, aSlipOfThePoint) {
    const Reread slipped("251");
    ASSERT_NE(slipped.finding(kPointSuspected), nullptr);
    EXPECT_EQ(
        base::english(slipped.finding(kPointSuspected)->fault),
        "251 kPa is far from the expected 25.0 kPa, with the point moved it would be 25.1 kPa; correct it, "
        "read again or give the reason");
    EXPECT_EQ(slipped.finding(kUnitSuspected), nullptr) << "251 mbar is the same pressure";
    EXPECT_NE(Reread("2550").finding(kPointSuspected), nullptr);
    EXPECT_NE(Reread("0.25").finding(kPointSuspected), nullptr);
    // Far off, but no power of ten from what is expected; and large as its valve is.
    EXPECT_EQ(Reread("150").finding(kPointSuspected), nullptr);
    EXPECT_EQ(Reread("60").finding(kPointSuspected), nullptr);
    FieldJob job = flatLoop(3);
    job.round(RoundKind::Survey);
    job.dp("A", "171", "4");
    job.round(RoundKind::Adjusting);
    job.dp("A", "171", "4");
    EXPECT_EQ(findingOf(assessNewest(job), kPointSuspected), nullptr) << "it was read so before";
}

TEST(MeantDps, keepTheDigits) {
    const auto meant = [](const char* digits) {
        std::vector<std::string> texts;
        for (const MeantDp& each : meantDps(FieldJob().pressure(digits), quantity::Density::si(998))) {
            if (each.isPointMoved) {
                texts.push_back(each.dp.digits.text());
            }
        }
        return texts;
    };
    using Texts = std::vector<std::string>;
    EXPECT_EQ(meant("171"), (Texts{"1.71", "17.1", "1710", "17100"}));
    EXPECT_EQ(meant("1.80"), (Texts{"0.0180", "0.180", "18.0", "180"}));
    EXPECT_EQ(meant("0.25"), (Texts{"0.0025", "0.025", "2.5", "25"}));
    EXPECT_TRUE(meantDps(FieldJob().pressure("0"), quantity::Density::si(998)).empty());
}

TEST(Doubts, theFirstReadingIsComparedWithDesign) {
    const auto stateAt = [](const char* digits) {
        FieldJob job = flatLoop(1);  // design flow needs 25 kPa
        job.round(RoundKind::Survey);
        job.dp("A", digits, "4");
        return assessNewest(job).branches[0].state;
    };
    EXPECT_EQ(stateAt("1.2"), State::Doubtful);
    EXPECT_NE(stateAt("1.3"), State::Doubtful);
    EXPECT_NE(stateAt("199"), State::Doubtful);
    EXPECT_EQ(stateAt("201"), State::Doubtful);
}

TEST(Doubts, anotherSettingIsNotComparable) {
    // 80 kPa at setting 3 after 25 kPa at setting 4: compared with design (100 kPa), not with round 1.
    EXPECT_NE(Reread("80", "3").state(), State::Doubtful);
}

TEST(Doubts, negative) {
    const Reread negative("-3.2");
    EXPECT_EQ(negative.state(), State::Doubtful);
    ASSERT_NE(negative.finding(kNegativeDp), nullptr);
    EXPECT_EQ(negative.finding(kNegativeDp)->fault.arguments[1], "3.2 kPa");
}

TEST(Doubts, underTheReadableMinimum) {
    FieldJob job = flatLoop(1);
    job.round(RoundKind::Survey);
    job.dp("A", "0.6", "4");
    const Assessment a = assessNewest(job);
    ASSERT_NE(findingOf(a, kUnderReadable), nullptr);
    EXPECT_EQ(findingOf(a, kUnderReadable)->fault.arguments[1], "1.00 kPa");
    EXPECT_EQ(a.branches[0].source, FlowSource::Range);
    // 0.6 +- 2 x 0.1 kPa at Kv 8.
    EXPECT_NEAR(a.branches[0].flowLow->in(quantity::Unit::CubicMetrePerHour), 8 * std::sqrt(0.004), 0.001);
    EXPECT_NEAR(a.branches[0].flowHigh->in(quantity::Unit::CubicMetrePerHour), 8 * std::sqrt(0.008), 0.001);
    // Kv 8 sqrt(0.6/1) = 6.20 passes that flow at 1 kPa; the table tells the setting, the mark below is said.
    const auto& curve = *job.project().characteristicOf(job.project().branches()[0]);
    const double exact = curve.settingFor(curve::FlowCoefficient::si(8 * std::sqrt(0.6)))->si();
    const std::string mark = base::Decimal::fromNumber(std::floor(exact * 10) / 10, 1).text();
    EXPECT_TRUE(base::english(findingOf(a, kUnderReadable)->fault)
                    .find("; close the valve to " + mark + " to read") != std::string::npos)
        << base::english(findingOf(a, kUnderReadable)->fault);
    // Nothing flows, as far as was read: no setting makes that readable.
    FieldJob still = flatLoop(1);
    still.round(RoundKind::Survey);
    still.dp("A", "0", "4");
    const Assessment none = assessNewest(still);
    ASSERT_NE(findingOf(none, kUnderReadable), nullptr);
    EXPECT_EQ(findingOf(none, kUnderReadable)->fault.arguments[4], "further");
    // The valve's own table may ask for more.
    FieldJob strict = flatLoop(1);
    strict.change(strict.project().valves()[0],
                  [&](project::ValveModel& v) { v.minimumDp = strict.pressure("30"); });
    strict.round(RoundKind::Survey);
    strict.dp("A", "29", "4");
    EXPECT_EQ(assessNewest(strict).branches[0].source, FlowSource::Range);
    strict.dp("A", "31", "4");
    EXPECT_EQ(assessNewest(strict).branches[0].source, FlowSource::ValveDp);
}

TEST(Doubts, aboveTheRangeOfTheInstrument) {
    FieldJob job = flatLoop(3);
    const base::Id meter = job.instrument("1", "");
    job.change(job.project().instruments().at(meter),
               [&](project::Instrument& i) { i.range = job.pressure("40"); });
    job.round(RoundKind::Survey);
    job.dp("A", "40.0", "4");
    job.dp("B", "40.1", "4");
    const Assessment a = assessNewest(job);
    EXPECT_EQ(findingOf(a, kAboveInstrumentRange, "A"), nullptr);
    const Finding* above = findingOf(a, kAboveInstrumentRange, "B");
    ASSERT_NE(above, nullptr);
    EXPECT_EQ(base::english(above->fault),
              "40.1 kPa is above the range of instrument M-1, which ends at 40 kPa; read again, with another "
              "instrument if need be, or give the reason");
    EXPECT_EQ(resultOf(job, a, "B").state, State::Doubtful);
    EXPECT_EQ(openItems(job.project(), job.newestRound()).front().fault.subject, "B");
    // One reading may raise several doubts; the round waits for one answer.
    job.round(RoundKind::Adjusting);
    job.dp("A", "40.0", "4");
    job.dp("B", "4000", "4");
    const Assessment b = assessNewest(job);
    EXPECT_GT(std::count_if(b.findings.begin(), b.findings.end(),
                            [](const Finding& finding) {
                                return finding.fault.subject == "B" && finding.severity == Severity::Warning;
                            }),
              1);
    const auto items = openItems(job.project(), job.newestRound());
    EXPECT_EQ(std::count_if(items.begin(), items.end(),
                            [](const Finding& item) { return item.fault.subject == "B"; }),
              1);
}

TEST(Doubts, whatIsAboveTheRangeTeachesNothingUntilAReasonIsGiven) {
    FieldJob job = flatLoop(3);
    job.pump("P-1", {{"0", "10"}, {"6", "9"}, {"12", "6"}, {"18", "1"}});
    const base::Id meter = job.instrument("1", "");
    job.change(job.project().instruments().at(meter),
               [&](project::Instrument& i) { i.range = job.pressure("40"); });
    job.round(RoundKind::Survey);
    job.dp("A", "25.0", "4");
    const base::Id above = job.dp("B", "40.1", "4");
    job.dp("C", "24.0", "4");
    const auto isLearnedFrom = [&](const LearnedLoop& learned) {
        return std::any_of(learned.readings.begin(), learned.readings.end(),
                           [&](const ComparedReading& each) { return each.readings.front() == above; });
    };
    const LearnedLoop without = learn(job.project());
    EXPECT_FALSE(isLearnedFrom(without));
    EXPECT_TRUE(std::any_of(without.faults.begin(), without.faults.end(), [](const base::Fault& fault) {
        return fault.is(kLearnAboveRange) && fault.subject == "B";
    }));
    job.change(job.project().readings().at(above),
               [](project::Reading& reading) { reading.reason = "read with the wide range"; });
    EXPECT_TRUE(isLearnedFrom(learn(job.project())));
}

// The meter is found overdue, once; the reading counts (checks/calibration.cpp).
TEST(Doubts, anInstrumentOverdueOnTheDayOfTheReading) {
    Reread reread("25.0");
    const base::Id meter = reread.job.instrument("1", "");
    const auto stateWithDue = [&](const char* due) {
        reread.job.change(reread.job.project().instruments().at(meter),
                          [&](project::Instrument& i) { i.due = base::Instant::fromText(due); });
        reread.job.change(reread.job.project().readings().at(reread.reading),
                          [&](project::Reading& r) { r.instrument = meter; });
        return reread.state();
    };
    const auto severity = [&] { return severityOf(reread.job, kInstrumentOverdue, "M-1"); };
    EXPECT_EQ(stateWithDue("2026-03-01"), State::OnShare);
    EXPECT_EQ(severity(), Severity::BlocksSignature);
    EXPECT_EQ(stateWithDue("2026-03-02"), State::OnShare);  // the last day counts
    EXPECT_EQ(severity(), std::nullopt);
    // A reading without a time does not escape: the day on which its round was opened counts, else closed.
    stateWithDue("2026-03-01");
    reread.job.change(reread.job.project().readings().at(reread.reading),
                      [](project::Reading& r) { r.time.reset(); });
    const auto openedOn = [&](const char* day) {
        reread.job.change(reread.job.project().rounds().at(reread.job.newestRound()),
                          [&](project::Round& r) { r.opened = base::Instant::fromText(day); });
    };
    openedOn("2026-03-01");
    EXPECT_EQ(severity(), std::nullopt);
    openedOn("2026-03-02");
    EXPECT_EQ(severity(), Severity::BlocksSignature);
}

TEST(Doubts, markedByHandAndExplained) {
    Reread reread("25.0");
    reread.job.change(reread.job.project().readings().at(reread.reading),
                      [](project::Reading& r) { r.isDoubtful = true; });
    EXPECT_EQ(reread.state(), State::Doubtful);
    reread.job.change(reread.job.project().readings().at(reread.reading),
                      [](project::Reading& r) { r.reason = "read twice, same value"; });
    EXPECT_EQ(reread.state(), State::OnShare);
    ASSERT_NE(reread.finding(kMarkedDoubtful), nullptr);
    EXPECT_EQ(reread.finding(kMarkedDoubtful)->severity, Severity::Note);
}

TEST(Doubts, aSettingOutsideTheTableGivesNoFlow) {
    const Reread outside("25.0", "4.6");
    EXPECT_EQ(outside.state(), State::Doubtful);
    ASSERT_NE(outside.finding(kSettingOutside), nullptr);
    EXPECT_EQ(outside.finding(kSettingOutside)->severity, Severity::Error);
    EXPECT_FALSE(outside.m_assessment.branches[2].flow);
}

TEST(Doubts, aDpWithoutATable) {
    FieldJob job;
    job.branch("A", "", "4");
    job.round(RoundKind::Survey);
    job.dp("A", "20");
    EXPECT_NE(findingOf(assessNewest(job), kNoValveTable), nullptr);
    job.flow("A", "4.0");
    EXPECT_EQ(findingOf(assessNewest(job), kNoValveTable), nullptr);
    EXPECT_EQ(assessNewest(job).branches[0].source, FlowSource::DirectReading);
}

TEST(OfferedFix, theUnitOrTheSign) {
    const Reread psi("3.63");
    const auto unit = offeredFix(psi.job.project(), assessNewest(psi.job), psi.reading);
    ASSERT_TRUE(unit);
    EXPECT_EQ(unit->dp.text(), "3.63 psi");
    EXPECT_TRUE(unit->why.is(kUnitSuspected));
    const Reread negative("-25.0");
    const auto sign = offeredFix(negative.job.project(), assessNewest(negative.job), negative.reading);
    ASSERT_TRUE(sign);
    EXPECT_EQ(sign->dp.text(), "25.0 kPa");
    const Reread point("251");
    const auto moved = offeredFix(point.job.project(), assessNewest(point.job), point.reading);
    ASSERT_TRUE(moved);
    EXPECT_EQ(moved->dp.text(), "25.1 kPa");
    EXPECT_EQ(point.job.project().readings().at(point.reading).dp->text(), "251 kPa") << "only offered";
    const Reread fine("26");
    EXPECT_FALSE(offeredFix(fine.job.project(), assessNewest(fine.job), fine.reading));
    const Reread odd("150");
    EXPECT_FALSE(offeredFix(odd.job.project(), assessNewest(odd.job), odd.reading));
}

}  // namespace
}  // namespace ww::balancing
