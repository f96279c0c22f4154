// The checks of the record itself: believable data, calibration, witness, readiness, comments, and the
// reasons that answer them. Thresholds: a usual list of automatic checks for a balance (common practice, no
// source) unless a line says otherwise.
#include <gtest/gtest.h>

#include <array>

#include "core/balancing/checks/check_forms.h"
#include "core/balancing/doubt_forms.h"
#include "core/balancing/readiness.h"
#include "core/balancing/review_steps.h"
#include "core/balancing/standing_readings.h"
#include "tests/core/balancing/small_loop.h"

namespace ww::balancing {
namespace {

using project::RoundKind;
using quantity::Unit;

std::optional<Severity> reviewSeverity(const FieldJob& job, const base::MessageForm& form,
                                       std::string_view subject = "") {
    const Assessment a = assessNewest(job);
    const Finding* finding = findingOf(a, form, subject);
    return finding != nullptr ? std::optional(finding->severity) : std::nullopt;
}

base::Instant at(std::string_view text) {
    return *base::Instant::fromText(text);
}

TEST(ReviewChecks, aTypedFlowWhereADpCouldBeRead) {
    FieldJob job = flatLoop(1);
    job.branch("N", "", "4");
    job.round(RoundKind::Survey);
    job.flow("N", "4", "");
    EXPECT_EQ(reviewSeverity(job, kFlowTyped), std::nullopt) << "no valve table there";
    const base::Id typed = job.flow("A", "4.1", "4");
    EXPECT_EQ(reviewSeverity(job, kFlowTyped, "A"), Severity::Warning);
    job.change(job.project().readings().at(typed), [](project::Reading& r) { r.reason = "ports leak"; });
    EXPECT_EQ(reviewSeverity(job, kFlowTyped, "A"), Severity::Note);
    readAs(job, "A", 1.0);
    EXPECT_EQ(reviewSeverity(job, kFlowTyped), std::nullopt);
}

TEST(ReviewChecks, aClockThatGoesBack) {
    FieldJob job = flatLoop(3);
    job.round(RoundKind::Survey);
    readAs(job, "A", 1.0);
    readAs(job, "B", 1.1);
    const base::Id last = readAs(job, "C", 1.2);
    EXPECT_EQ(reviewSeverity(job, kClockWentBack), std::nullopt);
    job.change(job.project().readings().at(last),
               [](project::Reading& r) { r.time = at("2026-03-02T05:00:00"); });
    EXPECT_EQ(reviewSeverity(job, kClockWentBack, "C"), Severity::Warning);
    job.change(job.project().readings().at(last), [&](project::Reading& r) { r.supersedes = r.id; });
    EXPECT_EQ(reviewSeverity(job, kClockWentBack), std::nullopt) << "a correction keeps the time it corrects";
}

TEST(ReviewChecks, aClockThatWasSetRightIsNoFinding) {
    FieldJob job = flatLoop(3);
    job.round(RoundKind::Survey);
    readAs(job, "A", 1.0);
    readAs(job, "B", 1.1);
    const base::Id last = readAs(job, "C", 1.2);
    job.change(job.project().readings().at(last),
               [](project::Reading& r) { r.time = at("2026-03-02T05:00:00"); });
    ASSERT_EQ(reviewSeverity(job, kClockWentBack, "C"), Severity::Warning);
    project::ClockOffset offset;
    offset.id = support::CountingIds::numbered(900'001);
    offset.machine = "LT-1";
    offset.own = offset.showed = at("2026-03-02T05:10:00");
    offset.stated = at("2026-03-02T09:10:00");
    offset.uncertainSince = at("2026-03-02T05:00:00");
    job.project().put(offset);
    EXPECT_EQ(reviewSeverity(job, kClockWentBack), std::nullopt);
    offset.uncertainSince = at("2026-03-02T05:09:00");
    job.project().put(offset);
    EXPECT_EQ(reviewSeverity(job, kClockWentBack, "C"), Severity::Warning)
        << "written before the clock was wrong";
}

TEST(ReviewChecks, aZeroThatDrifts) {
    FieldJob job = flatLoop(1);
    const base::Id meter = job.instrument("1", "");  // least readable dp: 1 kPa where nothing says otherwise
    job.round(RoundKind::Survey);
    readAs(job, "A", 1.0);
    const auto drift = [&](const char* end) {
        job.change(job.project().instruments().at(meter), [&](project::Instrument& i) {
            i.zeroStart = job.pressure("0.05");
            i.zeroEnd = job.pressure(end);
        });
        return reviewSeverity(job, kZeroDrifted, "M-1");
    };
    EXPECT_EQ(drift("0.54"), std::nullopt);
    EXPECT_EQ(drift("0.56"), Severity::Warning);
    EXPECT_EQ(drift("-0.46"), Severity::Warning);
}

TEST(ReviewChecks, digitsCopiedFromTheRoundBefore) {
    const auto copied = [](std::size_t count) {
        FieldJob job = flatLoop(6);
        const std::array<const char*, 6> first{"20.11", "21.22", "22.33", "23.44", "24.55", "25.66"};
        const std::array<const char*, 6> second{"20.12", "21.25", "22.38", "23.41", "24.59", "25.67"};
        job.round(RoundKind::Survey);
        for (std::size_t i = 0; i < 6; ++i) {
            job.dp(std::string(1, static_cast<char>('A' + i)), first[i], "4");
        }
        job.round(RoundKind::Adjusting);
        for (std::size_t i = 0; i < 6; ++i) {
            job.dp(std::string(1, static_cast<char>('A' + i)), i < count ? first[i] : second[i], "4");
        }
        return reviewSeverity(job, kDigitsCopied);
    };
    EXPECT_EQ(copied(0), std::nullopt);
    EXPECT_EQ(copied(1), std::nullopt);
    EXPECT_EQ(copied(2), Severity::Warning);
}

// Chi-square for counts of 60 readings, 9 degrees of freedom; limit 27.877 at 0.001 (NIST/SEMATECH e-Handbook
// of Statistical Methods, 1.3.6.7.4). By hand: six of each digit gives 0; 24 of one digit and 4 of each other
// gives (18^2 + 9 * 2^2) / 6 = 60; 12, 8 and eight times 5 gives (36 + 4 + 8) / 6 = 8.
TEST(ReviewChecks, lastDigitsThatAreNoChance) {
    const auto withCounts = [](const std::array<int, 10>& counts) {
        FieldJob job = flatLoop(1);
        job.instrument("1", "");
        job.round(RoundKind::Survey);
        int tenths = 100;
        for (int digit = 0; digit < 10; ++digit) {
            for (int i = 0; i < counts[static_cast<std::size_t>(digit)]; ++i) {
                const std::string text = std::to_string(tenths++ % 80 + 20) + "." + std::to_string(digit);
                job.dp("A", text, "4");
            }
        }
        return reviewSeverity(job, kLastDigitsOdd);
    };
    EXPECT_EQ(withCounts({6, 6, 6, 6, 6, 6, 6, 6, 6, 6}), std::nullopt);
    EXPECT_EQ(withCounts({12, 8, 5, 5, 5, 5, 5, 5, 5, 5}), std::nullopt);
    EXPECT_EQ(withCounts({24, 4, 4, 4, 4, 4, 4, 4, 4, 4}), Severity::Warning);
    EXPECT_EQ(withCounts({30, 0, 0, 0, 0, 30, 0, 0, 0, 0}), std::nullopt) << "a scale that shows 0 and 5";
    EXPECT_EQ(withCounts({12, 2, 2, 2, 2, 2, 2, 2, 2, 2}), std::nullopt) << "too few to say";
}

TEST(ReviewChecks, aTerminalOffDesignNeedsADeficiency) {
    FieldJob job = flatLoop(2);
    job.round(RoundKind::Final);
    readAs(job, "A", 1.0);
    readAs(job, "B", 0.7);
    EXPECT_EQ(reviewSeverity(job, kFinalOffDesign, "B"), Severity::BlocksSignature);
    const Verdict before = assessNewest(job).verdict;
    support::CountingIds ids(900);
    project::Deficiency deficiency =
        newDeficiency(job.project(), job.idOf("B"), {"A. Fields", ids, at("2026-03-02T12:00:00Z")});
    EXPECT_EQ(deficiency.number, 1);
    EXPECT_EQ(deficiency.reading, countingReading(job.project(), job.newestRound(), job.idOf("B"))->id);
    for (const auto status : {project::DeficiencyStatus::Open, project::DeficiencyStatus::Closed}) {
        deficiency.status = status;
        job.project().put(deficiency);
        EXPECT_EQ(reviewSeverity(job, kFinalOffDesign, "B"), Severity::Warning);
    }
    EXPECT_EQ(assessNewest(job).verdict, before) << "a deficiency makes no flow better";
}

TEST(ReviewChecks, aReasonForATerminalOffDesignIsToldAndDoesNotLiftIt) {
    FieldJob job = flatLoop(2);
    job.round(RoundKind::Final);
    readAs(job, "A", 1.0);
    readAs(job, "B", 0.7);
    const Assessment before = assessNewest(job);
    const base::Fault fault = findingOf(before, kFinalOffDesign, "B")->fault;
    support::CountingIds ids(900);
    const auto edit =
        giveFindingReason(job.project(), fault, "coil is oversized", {"K. Moor", ids, at("2026-03-02")});
    job.project().put(std::get<project::FindingReason>(edit.put.front()));
    const Assessment after = assessNewest(job);
    const Finding* finding = findingOf(after, kFinalOffDesign, "B");
    ASSERT_NE(finding, nullptr);
    EXPECT_EQ(finding->severity, Severity::BlocksSignature);
    EXPECT_EQ(finding->reason, "coil is oversized");
    EXPECT_EQ(finding->fault, fault);
    EXPECT_EQ(after.verdict, before.verdict) << "a reason makes no flow better";
    const auto back = giveFindingReason(job.project(), fault, "", {"K. Moor", ids, at("2026-03-02")});
    ASSERT_EQ(back.erase.size(), 1U);
    EXPECT_EQ(edit.label, "reason: B");
    EXPECT_EQ(back.label, "reason removed: B");
}

TEST(ReviewChecks, anOverdueInstrumentNeedsAReason) {
    FieldJob job = flatLoop(1);
    const base::Id meter = job.instrument("1", "");
    job.round(RoundKind::Survey);
    readAs(job, "A", 1.0);
    job.change(job.project().instruments().at(meter),
               [](project::Instrument& i) { i.due = at("2026-01-01"); });
    EXPECT_EQ(reviewSeverity(job, kInstrumentOverdue, "M-1"), Severity::BlocksSignature);
    job.change(job.project().instruments().at(meter),
               [](project::Instrument& i) { i.overdueReason = "checked against M-3 that day"; });
    EXPECT_EQ(reviewSeverity(job, kInstrumentOverdue, "M-1"), Severity::Note);
}

TEST(Readiness, usualLinesStandInEnglishAndAreKnownInTheWordsOfAnEarlierList) {
    FieldJob job = flatLoop(1);
    support::CountingIds ids(900);
    const base::Wording shouted = [](std::string_view word) { return std::string(word) + "!"; };
    const auto list = addUsualReadiness(job.project(), ids, shouted);
    for (const project::AnyRecord& record : list.put) {
        auto line = std::get<project::ReadinessLine>(record);
        EXPECT_TRUE(isUsualReadiness(line.text)) << line.text;
        line.text += "!";
        EXPECT_FALSE(isUsualReadiness(line.text)) << line.text;
        job.project().put(line);
    }
    EXPECT_TRUE(addUsualReadiness(job.project(), ids, shouted).put.empty());
    EXPECT_EQ(addUsualReadiness(job.project(), ids).put.size(), list.put.size());
}

TEST(ReviewChecks, openReadinessAndCommentsBlock) {
    FieldJob job = flatLoop(1);
    support::CountingIds ids(900);
    const auto list = addUsualReadiness(job.project(), ids);
    EXPECT_GT(list.put.size(), 8U);
    for (const project::AnyRecord& record : list.put) {
        job.project().put(std::get<project::ReadinessLine>(record));
    }
    EXPECT_TRUE(addUsualReadiness(job.project(), ids).put.empty()) << "not twice";
    job.round(RoundKind::Adjusting);
    EXPECT_EQ(reviewSeverity(job, kReadinessOpen), std::nullopt);
    job.round(RoundKind::Final);
    readAs(job, "A", 1.0);
    EXPECT_EQ(reviewSeverity(job, kReadinessOpen), Severity::BlocksSignature);
    std::vector<project::ReadinessLine> lines(job.project().readiness().begin(),
                                              job.project().readiness().end());
    for (project::ReadinessLine& line : lines) {
        line.state = project::ReadinessState::Done;
        job.project().put(line);
    }
    EXPECT_EQ(reviewSeverity(job, kReadinessOpen), std::nullopt);
    const ReviewContext context{"K. Moor", ids, at("2026-03-02T12:00:00Z")};
    const auto comment =
        addComment(job.project(), {job.newestRound(), job.idOf("A"), {}, "dp"}, "Meter zeroed?", context);
    job.project().put(std::get<project::Comment>(comment.put.front()));
    EXPECT_EQ(reviewSeverity(job, kCommentsOpen), Severity::BlocksSignature);
    const base::Id id = job.project().comments()[0].id;
    job.project().put(
        std::get<project::Comment>(resolveComment(job.project(), id, true, context).put.front()));
    EXPECT_EQ(reviewSeverity(job, kCommentsOpen), std::nullopt);
}

TEST(ReviewChecks, aShutValveIsNeitherFlowNorSetting) {
    FieldJob job = flatLoop(2);
    job.round(RoundKind::Final, project::RoundState::Open);
    readAs(job, "A", 1.0, "3");
    readAs(job, "B", 1.0, "3");
    const Assessment before = assessNewest(job);
    const base::Id shut = job.dp("A", "90", "0");
    job.change(job.project().readings().at(shut),
               [](project::Reading& r) { r.purpose = project::ReadingPurpose::ShutValve; });
    const Assessment after = assessNewest(job);
    EXPECT_EQ(resultOf(job, after, "A").flow, resultOf(job, before, "A").flow);
    EXPECT_EQ(resultOf(job, after, "A").setting, resultOf(job, before, "A").setting);
    EXPECT_EQ(after.verdict, before.verdict);
    EXPECT_EQ(findingOf(after, kReadBeforeLastMove), nullptr) << "shut for a moment is no move";
    EXPECT_NE(countingReading(job.project(), job.newestRound(), job.idOf("A"))->id, shut);
    EXPECT_EQ(standingSetting(job.project(), job.newestRound(), job.idOf("A"))->text(), "3");
    job.round(RoundKind::Adjusting, project::RoundState::Open);
    EXPECT_EQ(standingSetting(job.project(), job.newestRound(), job.idOf("A"))->text(), "3");
    EXPECT_NE(earlierReading(job.project(), job.newestRound(), job.idOf("A"))->id, shut);
    EXPECT_EQ(assessNewest(job, {.fillGaps = true}).branches[0].flow, resultOf(job, before, "A").flow);
}

}  // namespace
}  // namespace ww::balancing
