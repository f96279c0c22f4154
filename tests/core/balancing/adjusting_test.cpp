// Tries, holds, references and dp across a shut valve: the edits, what they refuse, what is kept. The rules
// are this program's own decisions; no outside source.
#include "core/balancing/adjusting.h"

#include <gtest/gtest.h>

#include "core/balancing/assess.h"
#include "core/balancing/standing_readings.h"
#include "core/balancing/walk_forms.h"
#include "tests/core/balancing/small_loop.h"
#include "tests/support/fixed_clock.h"

namespace ww::balancing {
namespace {

using project::Edit;
using project::Reading;
using project::ReadingPurpose;
using project::ReadingStatus;
using project::RoundKind;
using project::RoundState;

/// Three terminals with a closed survey, and what a workbook would do with edits.
class AdjustingTest : public ::testing::Test {
  protected:
    AdjustingTest() : m_job(flatLoop(3)) {
        m_job.round(RoundKind::Survey);
        readAs(m_job, "A", 1.3);
        readAs(m_job, "B", 1.1);
        readAs(m_job, "C", 0.8);
    }
    const project::Project& project() const { return m_job.project(); }
    WalkContext context() { return {std::nullopt, std::nullopt, m_ids, m_clock.now()}; }
    base::Id branch(std::string_view tag) const { return m_job.idOf(tag); }
    /// As applied(); a minute later.
    std::string apply(const base::Result<Edit>& edit) {
        if (edit) {
            m_clock.advance(std::chrono::minutes(1));
        }
        return applied(m_job, edit);
    }
    std::string tryAt(std::string_view tag, std::string_view dp, std::string_view setting,
                      bool isHold = false) {
        return apply(storeTry(project(), branch(tag),
                              {m_job.pressure(dp), FieldJob::decimal(setting), isHold, false}, context()));
    }
    const Reading* counting(std::string_view tag) const {
        return countingReading(project(), project().lastRound()->id, branch(tag));
    }
    std::string settingOf(std::string_view tag) const {
        return standingSetting(project(), project().lastRound()->id, branch(tag))->text();
    }
    Assessment assessed() const { return assessLast(project(), {.fillGaps = true}); }

    FieldJob m_job;
    support::CountingIds m_ids{1000};
    support::FixedClock m_clock;
};

TEST_F(AdjustingTest, theFirstTryOpensAnAdjustingRound) {
    EXPECT_EQ(tryAt("A", "40.0", "3"), "DP 40.0 kPa at 3, A");
    ASSERT_EQ(project().rounds().size(), 2U);
    EXPECT_EQ(project().lastRound()->kind, RoundKind::Adjusting);
    EXPECT_EQ(project().lastRound()->state, RoundState::Open);
    EXPECT_EQ(counting("A")->purpose, ReadingPurpose::Try);
    EXPECT_EQ(settingOf("A"), "3");
    EXPECT_EQ(tryAt("A", "50.0", "2"), "DP 50.0 kPa at 2, A");
    EXPECT_EQ(project().rounds().size(), 2U);
}

TEST_F(AdjustingTest, triesStandBesideEachOther) {
    tryAt("A", "40.0", "3");
    tryAt("A", "50.0", "2");
    const auto tries = triesOf(project(), branch("A"));
    ASSERT_EQ(tries.size(), 2U);
    EXPECT_EQ(tries[0]->dp->text(), "40.0 kPa");
    EXPECT_EQ(tries[0]->status, ReadingStatus::Standing);
    EXPECT_EQ(counting("A")->dp->text(), "50.0 kPa");
    // Once another valve is turned, the tries before are of another state of the loop.
    EXPECT_EQ(lastTried(project()), branch("A"));
    EXPECT_FALSE(hasEarlierTries(project(), branch("A")));
    tryAt("B", "30.0", "3");
    EXPECT_EQ(lastTried(project()), branch("B"));
    EXPECT_TRUE(hasEarlierTries(project(), branch("A")));
    EXPECT_FALSE(hasEarlierTries(project(), branch("C")));
    tryAt("A", "48.0", "2");
    EXPECT_EQ(triesOf(project(), branch("A")).size(), 1U);
}

// A slip of the keys is typed again: it must not go on pulling the aim.
TEST_F(AdjustingTest, aTryTypedAnewAtItsSettingTakesThePlaceOfTheFormer) {
    tryAt("A", "50.0", "2");
    tryAt("A", "4.0", "3");
    const base::Id slip = triesOf(project(), branch("A")).back()->id;
    EXPECT_EQ(tryAt("A", "40.0", "3.0"), "DP 40.0 kPa in place of 4.0 kPa, A");
    const auto tries = triesOf(project(), branch("A"));
    ASSERT_EQ(tries.size(), 2U);
    EXPECT_EQ(tries[1]->dp->text(), "40.0 kPa");
    EXPECT_EQ(tries[1]->supersedes, slip);
    EXPECT_EQ(project().readings().at(slip).status, ReadingStatus::Superseded);
    // With another valve turned between, both are true for their own state of the loop.
    tryAt("B", "30.0", "3");
    tryAt("A", "38.0", "3");
    EXPECT_EQ(project().readings().at(tries[1]->id).status, ReadingStatus::Standing);
}

TEST_F(AdjustingTest, refusesWhatCannotBeATry) {
    EXPECT_EQ(tryAt("A", "40.0", "4.5"), "setting_beyond_scale");
    m_job.branch("D", "", "4", {}, project::BranchKind::None);
    EXPECT_EQ(tryAt("D", "40.0", "3"), "branch_without_table");
    EXPECT_EQ(project().rounds().size(), 1U);
    m_job.round(RoundKind::Final, RoundState::Open);
    EXPECT_EQ(tryAt("A", "40.0", "3"), "round_of_one_state");
}

TEST_F(AdjustingTest, holdingNeedsAReadingAtThatSetting) {
    const auto hold = [&](std::string_view setting) {
        return apply(holdHere(project(), branch("A"), FieldJob::decimal(setting)));
    };
    EXPECT_EQ(hold("4"), "not_tried_here");
    tryAt("A", "40.0", "3");
    EXPECT_EQ(hold("2"), "not_tried_here");
    EXPECT_FALSE(isHeld(project(), branch("A")));
    EXPECT_EQ(hold("3.0"), "hold at 3.0, A");
    EXPECT_TRUE(isHeld(project(), branch("A")));
    EXPECT_EQ(counting("A")->purpose, ReadingPurpose::Hold);
    EXPECT_EQ(counting("A")->setting->text(), "3");
    tryAt("A", "41.0", "2");
    EXPECT_FALSE(isHeld(project(), branch("A")));
}

TEST_F(AdjustingTest, aReferenceReadingKeepsTheSettingAndTheEarlierReading) {
    EXPECT_EQ(apply(storeReference(project(), branch("C"), m_job.pressure("12.0"), context())),
              "DP 12.0 kPa at the reference, C");
    EXPECT_EQ(counting("C")->purpose, ReadingPurpose::Reference);
    EXPECT_EQ(settingOf("C"), "4");
    apply(storeReference(project(), branch("C"), m_job.pressure("13.0"), context()));
    int standing = 0;
    for (const Reading& reading : project().readings()) {
        standing += reading.branch == branch("C") && reading.status == ReadingStatus::Standing ? 1 : 0;
    }
    EXPECT_EQ(standing, 3);  // with that of the survey
}

TEST_F(AdjustingTest, aDpAcrossAShutValveIsNoFlowAndNoSetting) {
    tryAt("A", "40.0", "3");
    const auto before = assessed();
    EXPECT_EQ(apply(storeShutValve(project(), branch("A"), m_job.pressure("88.0"), context())),
              "DP 88.0 kPa with the valve shut, A");
    EXPECT_EQ(counting("A")->dp->text(), "40.0 kPa");
    EXPECT_EQ(settingOf("A"), "3");
    EXPECT_EQ(assessed().branches[0].flow, before.branches[0].flow);
    ASSERT_NE(shutReading(project(), branch("A")), nullptr);
    EXPECT_EQ(shutReading(project(), branch("A"))->dp->text(), "88.0 kPa");
    EXPECT_EQ(shutReading(project(), branch("B")), nullptr);
    EXPECT_EQ(apply(storeShutValve(project(), branch("A"), m_job.pressure("-1"), context())),
              "shut_dp_not_positive");
}

TEST_F(AdjustingTest, aWalkReadingLeavesTriesStanding) {
    tryAt("A", "40.0", "3", true);
    const base::Id round = project().lastRound()->id;
    apply(storeDp(project(), round, branch("A"), m_job.pressure("39.0"), std::nullopt, context()));
    EXPECT_EQ(counting("A")->dp->text(), "39.0 kPa");
    EXPECT_EQ(triesOf(project(), branch("A")).size(), 1U);
    // The next walk reading stands in place of the one before.
    apply(storeDp(project(), round, branch("A"), m_job.pressure("38.0"), std::nullopt, context()));
    int standing = 0;
    for (const std::size_t i : project().readingsOf(round)) {
        standing += project().readings()[i].status == ReadingStatus::Standing ? 1 : 0;
    }
    EXPECT_EQ(standing, 2);
}

TEST_F(AdjustingTest, aCorrectedSettingTouchesTheCountingReadingAlone) {
    tryAt("A", "40.0", "3");
    tryAt("A", "50.0", "2");
    const base::Id round = project().lastRound()->id;
    apply(storeSetting(project(), round, branch("A"), FieldJob::decimal("1.9"), context()));
    const auto tries = triesOf(project(), branch("A"));
    ASSERT_EQ(tries.size(), 2U);
    EXPECT_EQ(tries[0]->setting->text(), "3");
    EXPECT_EQ(tries[1]->setting->text(), "1.9");
    EXPECT_EQ(tries[1]->dp->text(), "50.0 kPa");
}

TEST_F(AdjustingTest, aCorrectionKeepsWhatTheReadingWasFor) {
    tryAt("A", "5.8", "3");
    const Reading before = *counting("A");
    EXPECT_EQ(apply(correctReading(project(), before.id, m_job.pressure("40.0"), std::nullopt, context())),
              "DP 40.0 kPa in place of 5.8 kPa, A");
    const Reading& after = *counting("A");
    EXPECT_EQ(after.purpose, ReadingPurpose::Try);
    EXPECT_EQ(after.setting, before.setting);
    EXPECT_EQ(after.time, before.time);
    EXPECT_EQ(after.supersedes, before.id);
    EXPECT_EQ(project().readings().at(before.id).status, ReadingStatus::Superseded);
    EXPECT_EQ(apply(correctReading(project(), after.id, std::nullopt, FieldJob::decimal("7"), context())),
              "setting_beyond_scale");
}

TEST_F(AdjustingTest, withoutAdviceTheLargestOfTargetComesFirst) {
    const auto order = workingOrder(project(), assessed(), nullptr);
    ASSERT_EQ(order.size(), 2U);  // C, the lowest of design, is the reference
    EXPECT_EQ(project().branches()[order[0]].tag, "A");
    EXPECT_EQ(project().branches()[order[1]].tag, "B");
    EXPECT_EQ(nextToAdjust(project(), order, order[0]), order[1]);
    EXPECT_EQ(nextToAdjust(project(), order, order[1]), order[0]);
    tryAt("A", "40.0", "3", true);
    EXPECT_EQ(nextToAdjust(project(), order, order[1]), std::nullopt);
}

/// A riser R with the terminals A and B, and the terminal C beside it, in a survey.
FieldJob riserBesideATerminal() {
    FieldJob job;
    const base::Id valve = usualValve(job);
    job.branch("R", "", "", valve);
    job.branch("A", "R", "4", valve);
    job.branch("B", "R", "4", valve);
    job.branch("C", "", "4", valve);
    job.round(RoundKind::Survey);
    return job;
}

TEST_F(AdjustingTest, whatTheAdviceTurnsIsLeftAndWaitsForNoOther) {
    FieldJob job = riserBesideATerminal();
    const auto at = [&](const char* tag) { return job.indexOf(tag); };
    const std::vector<std::size_t> order{at("A"), at("B"), at("R"), at("C")};
    Advice advice;
    for (const std::size_t branch : order) {
        SettingAdvice advised;
        advised.branch = branch;
        advised.isSet = branch == at("B");
        advice.settings.push_back(advised);
    }
    using Left = std::vector<std::size_t>;
    // B stands as advised: its riser is offered in its order, not after a valve of another one.
    EXPECT_EQ(leftToTurn(job.project(), order, at("A"), advice), (Left{at("R"), at("C")}));
    EXPECT_EQ(leftToTurn(job.project(), order, at("C"), advice), (Left{at("A")})) << "R waits for A";
    EXPECT_EQ(leftToTurn(job.project(), order, job.project().branches().size(), advice),
              (Left{at("A"), at("C")}));
    EXPECT_EQ(nextToAdjust(job.project(), order, at("A")), at("B"))
        << "without advice every valve is visited";
}

TEST_F(AdjustingTest, aBranchWaitsUntilAllBelowItIsHeld) {
    FieldJob job = riserBesideATerminal();
    const auto at = [&](const char* tag) { return job.indexOf(tag); };
    const std::vector<std::size_t> order{at("A"), at("B"), at("R"), at("C")};
    EXPECT_EQ(nextToAdjust(job.project(), order, at("B")), at("C"));  // A is not held yet
    EXPECT_EQ(nextToAdjust(job.project(), order, at("C")), at("A"));
    job.round(RoundKind::Adjusting, RoundState::Open);
    const base::Id held = job.dp("A", "25.0", "4");
    job.change(job.project().readings().at(held), [](Reading& r) { r.purpose = ReadingPurpose::Hold; });
    EXPECT_EQ(nextToAdjust(job.project(), order, at("B")), at("R"));
}

TEST_F(AdjustingTest, whatWasLeftAsReadCountsAsHeld) {
    FieldJob job = riserBesideATerminal();
    const auto at = [&](const char* tag) { return job.indexOf(tag); };
    const std::vector<std::size_t> order{at("A"), at("B"), at("R"), at("C")};
    const std::vector<base::Id> left{job.idOf("A"), job.idOf("B")};
    EXPECT_EQ(nextToAdjust(job.project(), order, at("B"), left), at("R")) << "it waits for them no longer";
    EXPECT_EQ(nextToAdjust(job.project(), order, at("C"), left), at("R"));
    EXPECT_EQ(nextToAdjust(job.project(), order, at("C"), {left[0], left[1], job.idOf("R")}), std::nullopt);
    Advice advice;
    for (const std::size_t branch : order) {
        SettingAdvice advised;
        advised.branch = branch;
        advice.settings.push_back(advised);
    }
    EXPECT_EQ(leftToTurn(job.project(), order, at("C"), advice, left), std::vector{at("R")});
}

TEST_F(AdjustingTest, aDoubtfulTryMustBeReadAgain) {
    tryAt("A", "25.0", "3");
    EXPECT_FALSE(mustBeReadAgain(assessed(), counting("A")->id));
    tryAt("A", "-25.0", "3");
    EXPECT_TRUE(mustBeReadAgain(assessed(), counting("A")->id));
}

}  // namespace
}  // namespace ww::balancing
