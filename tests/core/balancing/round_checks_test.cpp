// The checks that compare a round with the one before it. Thresholds: a usual list of automatic checks for a
// balance (common practice, no source) unless a line says otherwise.
#include <gtest/gtest.h>

#include <array>

#include "core/balancing/checks/check_forms.h"
#include "tests/core/balancing/small_loop.h"

namespace ww::balancing {
namespace {

using project::BranchKind;
using project::RoundKind;

/// Four terminals read twice; the second time with these flows and settings.
FieldJob twice(const std::array<double, 4>& flows, const std::array<const char*, 4>& settings) {
    FieldJob job = flatLoop(4);
    job.round(RoundKind::Adjusting);
    for (const char* tag : {"A", "B", "C", "D"}) {
        readAs(job, tag, 1.0, "3");
    }
    job.round(RoundKind::Adjusting);
    for (std::size_t i = 0; i < 4; ++i) {
        readAs(job, std::string(1, static_cast<char>('A' + i)), flows[i], settings[i]);
    }
    return job;
}

TEST(Checks, conductanceOfACircuitThatWasNotTouched) {
    const std::array<const char*, 4> same{"3", "3", "3", "3"};
    EXPECT_EQ(severityOf(twice({1.1, 1.1, 1.1, 1.1}, same), kConductanceChanged), std::nullopt);
    EXPECT_EQ(severityOf(twice({1.0, 1.0, 0.96, 1.0}, same), kConductanceChanged), std::nullopt);
    EXPECT_EQ(severityOf(twice({1.1, 1.1, 1.0, 1.1}, same), kConductanceChanged, "C"), Severity::Warning);
    EXPECT_EQ(severityOf(twice({1.1, 1.1, 1.0, 1.1}, {"3", "3", "2", "3"}), kConductanceChanged),
              std::nullopt);
}

TEST(Checks, whatWasReadBetweenTwoMovesIsNotCompared) {
    FieldJob job = flatLoop(4);
    job.round(RoundKind::Adjusting);
    for (const char* tag : {"A", "B", "D"}) {
        readAs(job, tag, 1.0, "3");
    }
    job.settingOnly("D", "2");
    readAs(job, "C", 1.1, "3");
    job.settingOnly("D", "3");
    job.round(RoundKind::Adjusting);
    for (const char* tag : {"A", "B", "C", "D"}) {
        readAs(job, tag, 1.0, "3");  // all settings are as they were
    }
    EXPECT_EQ(severityOf(job, kConductanceChanged), std::nullopt);
}

TEST(Checks, conductanceOfTheWholeLoop) {
    const auto secondRise = [](const char* rise) {
        FieldJob job = pumped("6.00");
        job.round(RoundKind::Adjusting);
        readAs(job, "A", 0.9);
        readAs(job, "B", 0.9);
        job.pumpRise(rise);
        return severityOf(job, kLoopConductanceChanged);
    };
    EXPECT_EQ(secondRise("4.86"), std::nullopt);  // 0.9 squared of 6 m
    EXPECT_EQ(secondRise("6.00"), Severity::Warning);
}

TEST(Checks, flowThatRoseWhenItsOwnValveWasClosed) {
    EXPECT_EQ(severityOf(twice({1.0, 1.2, 1.0, 1.0}, {"3", "2", "3", "3"}), kRoseOnClosing, "B"),
              Severity::Error);
    EXPECT_EQ(severityOf(twice({1.0, 0.8, 1.0, 1.0}, {"3", "2", "3", "3"}), kRoseOnClosing), std::nullopt);
    // With another valve closed too, the pump's head may rise enough.
    EXPECT_EQ(severityOf(twice({1.0, 1.2, 0.5, 1.0}, {"3", "2", "2", "3"}), kRoseOnClosing), std::nullopt);
    EXPECT_EQ(assessNewest(twice({1.0, 1.2, 1.0, 1.0}, {"3", "2", "3", "3"})).verdict, Verdict::NotAccepted);
}

TEST(Checks, groupThatRoseWhenItsValvesWereClosed) {
    EXPECT_EQ(severityOf(twice({1.2, 1.0, 1.2, 1.2}, {"3", "2", "3", "3"}), kGroupRoseOnClosing),
              Severity::Error);
    EXPECT_EQ(severityOf(twice({1.05, 0.8, 1.05, 1.05}, {"3", "2", "3", "3"}), kGroupRoseOnClosing),
              std::nullopt);
    EXPECT_EQ(severityOf(twice({1.2, 1.2, 1.2, 1.2}, {"3", "4", "3", "3"}), kGroupRoseOnClosing),
              std::nullopt);
}

TEST(Checks, membersBeyondAMovedValveKeepStep) {
    EXPECT_EQ(severityOf(twice({0.8, 1.1, 1.1, 1.1}, {"2", "3", "3", "3"}), kProportionBroken), std::nullopt);
    EXPECT_EQ(severityOf(twice({0.8, 1.1, 1.1, 1.0}, {"2", "3", "3", "3"}), kProportionBroken, "D"),
              Severity::Warning);
    // Upstream of the moved valve, members need not keep step.
    EXPECT_EQ(severityOf(twice({1.02, 1.05, 1.1, 0.8}, {"3", "3", "3", "2"}), kProportionBroken),
              std::nullopt);
}

TEST(Checks, membersOfAReverseReturnNeedNotKeepStep) {
    FieldJob job;
    const base::Id valve = usualValve(job);
    job.branch("R", "", "", std::nullopt, BranchKind::None);
    job.change(job.project().branches()[0],
               [](project::Branch& b) { b.returns = project::ReturnKind::Reverse; });
    for (const char* tag : {"A", "B", "C"}) {
        job.branch(tag, "R", "4", valve);
    }
    for (const double last : {1.0, 0.9}) {
        job.round(RoundKind::Adjusting);
        readAs(job, "A", last, last == 1.0 ? "3" : "2");
        readAs(job, "B", 1.0, "3");
        readAs(job, "C", last, "3");
    }
    EXPECT_EQ(severityOf(job, kProportionBroken), std::nullopt);
}

TEST(Checks, aRoundIsNotOlderThanTheOneBefore) {
    FieldJob job = twice({1, 1, 1, 1}, {"3", "3", "3", "3"});
    EXPECT_EQ(severityOf(job, kTimeBeforeEarlierRound), std::nullopt);
    const base::Id last = readAs(job, "D", 1.0, "3");
    job.change(job.project().readings().at(last),
               [](project::Reading& r) { r.time = base::Instant::fromText("2026-03-01T08:00:00"); });
    EXPECT_EQ(severityOf(job, kTimeBeforeEarlierRound, "D"), Severity::Warning);
}

}  // namespace
}  // namespace ww::balancing
