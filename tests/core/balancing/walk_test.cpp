// Walking a round: the edits, what they refuse, and what is kept.
#include "core/balancing/walk.h"

#include <gtest/gtest.h>

#include "core/balancing/checks/check_forms.h"
#include "core/balancing/standing_readings.h"
#include "core/balancing/walk_forms.h"
#include "core/balancing/walk_progress.h"
#include "tests/core/balancing/small_loop.h"
#include "tests/support/fixed_clock.h"

namespace ww::balancing {
namespace {

using project::Edit;
using project::Reading;
using project::ReadingStatus;
using project::RoundKind;
using project::RoundState;

/// A loop of three and what a workbook would do with edits.
class WalkTest : public ::testing::Test {
  protected:
    WalkTest() : m_job(flatLoop(3)) { m_round = m_job.round(RoundKind::Survey, RoundState::Open); }

    const project::Project& project() const { return m_job.project(); }
    WalkContext context() { return {m_meter, m_person, m_ids, m_clock.now()}; }
    base::Id branch(std::string_view tag) const { return m_job.idOf(tag); }
    quantity::Measured<PressureDifference> kPa(std::string_view digits) const {
        return m_job.pressure(digits);
    }
    /// As applied(); a minute later.
    std::string apply(const base::Result<Edit>& edit) {
        if (edit) {
            m_clock.advance(std::chrono::minutes(1));
        }
        return applied(m_job, edit);
    }
    std::string storeDpAt(std::string_view tag, std::string_view digits,
                          std::optional<base::Decimal> setting = {}) {
        return apply(storeDp(project(), m_round, branch(tag), kPa(digits), std::move(setting), context()));
    }
    const Reading* counting(std::string_view tag) const {
        return countingReading(project(), m_round, branch(tag));
    }
    void setState(RoundState state) {
        m_job.change(project().rounds().at(m_round), [&](project::Round& r) { r.state = state; });
    }

    FieldJob m_job;
    base::Id m_round;
    support::CountingIds m_ids{1000};
    support::FixedClock m_clock;
    std::optional<base::Id> m_meter;
    std::optional<base::Id> m_person;
};

TEST_F(WalkTest, opensTheNextRoundOnceTheLastIsClosed) {
    EXPECT_EQ(apply(openRound(project(), RoundKind::Adjusting, context())), "another_round_open");
    setState(RoundState::Closed);
    EXPECT_EQ(apply(openRound(project(), RoundKind::Adjusting, context())), "open round 2");
    ASSERT_NE(project().roundNumbered(2), nullptr);
    EXPECT_EQ(project().roundNumbered(2)->kind, RoundKind::Adjusting);
    EXPECT_EQ(project().roundNumbered(2)->state, RoundState::Open);
    EXPECT_TRUE(project().roundNumbered(2)->opened);
}

TEST_F(WalkTest, storesADpWithTheSettingThatStands) {
    EXPECT_EQ(storeDpAt("B", "25.0"), "DP 25.0 kPa, B");
    const Reading* reading = counting("B");
    ASSERT_NE(reading, nullptr);
    EXPECT_EQ(reading->dp->digits.text(), "25.0");
    EXPECT_EQ(reading->setting->text(), "4");  // fully open where nothing else is known
    EXPECT_EQ(reading->sequence, 1);
    EXPECT_TRUE(reading->time);
    EXPECT_EQ(storeDpAt("C", "24.0", m_job.decimal("3.5")), "DP 24.0 kPa, C");
    EXPECT_EQ(counting("C")->sequence, 2);
    EXPECT_EQ(standingSetting(project(), m_round, branch("C"))->text(), "3.5");
}

TEST_F(WalkTest, aSecondDpSupersedesTheFirstAndKeepsIt) {
    storeDpAt("B", "2.50", m_job.decimal("3"));
    const base::Id first = counting("B")->id;
    apply(setNote(project(), first, "noisy"));
    storeDpAt("B", "25.0");
    const Reading* second = counting("B");
    EXPECT_EQ(second->supersedes, first);
    EXPECT_EQ(second->setting->text(), "3");
    EXPECT_EQ(second->note, "noisy");
    EXPECT_EQ(project().readings().at(first).status, ReadingStatus::Superseded);
    EXPECT_EQ(project().readings().at(first).dp->digits.text(), "2.50");
    EXPECT_EQ(project().readings().size(), 2u);
}

TEST_F(WalkTest, aRepeatStandsBesideTheFirst) {
    EXPECT_EQ(apply(storeRepeat(project(), m_round, branch("A"), kPa("24"), context())), "DP 24 kPa, A");
    EXPECT_EQ(apply(storeRepeat(project(), m_round, branch("A"), kPa("26"), context())),
              "DP 26 kPa read again, A");
    const Assessment a = assess(project(), m_round);
    EXPECT_NEAR(a.branches[0].dp->in(quantity::Unit::Kilopascal), 25, 1e-9);
    storeDpAt("A", "30");
    EXPECT_NEAR(assess(project(), m_round).branches[0].dp->in(quantity::Unit::Kilopascal), 30, 1e-9);
}

TEST_F(WalkTest, aSettingBeforeTheDp) {
    EXPECT_EQ(apply(storeSetting(project(), m_round, branch("A"), m_job.decimal("2.5"), context())),
              "setting 2.5, A");
    EXPECT_EQ(counting("A"), nullptr);
    EXPECT_EQ(standingSetting(project(), m_round, branch("A"))->text(), "2.5");
    EXPECT_EQ(assess(project(), m_round).branches[0].setting->si(), 2.5);
    EXPECT_EQ(assess(project(), m_round).branches[0].state, State::NotRead);
    storeDpAt("A", "25");
    EXPECT_EQ(counting("A")->setting->text(), "2.5");
}

TEST_F(WalkTest, aSettingAfterTheDpKeepsWhatWasRead) {
    storeDpAt("A", "24");
    apply(storeRepeat(project(), m_round, branch("A"), kPa("26"), context()));
    const std::optional<base::Instant> readAt = counting("A")->time;
    apply(storeSetting(project(), m_round, branch("A"), m_job.decimal("3"), context()));
    EXPECT_EQ(counting("A")->setting->text(), "3");
    EXPECT_EQ(counting("A")->dp->digits.text(), "26");
    EXPECT_EQ(counting("A")->time, readAt);
    EXPECT_NEAR(assess(project(), m_round).branches[0].dp->in(quantity::Unit::Kilopascal), 25, 1e-9);
    const auto again = storeSetting(project(), m_round, branch("A"), m_job.decimal("3"), context());
    ASSERT_TRUE(again);
    EXPECT_TRUE(again->isEmpty());
}

TEST_F(WalkTest, refusesWhatCannotBeStored) {
    EXPECT_EQ(storeDpAt("A", "25", m_job.decimal("4.6")), "setting_beyond_scale");
    EXPECT_EQ(apply(storeSetting(project(), m_round, branch("A"), m_job.decimal("-1"), context())),
              "setting_beyond_scale");
    const auto refused = storeSetting(project(), m_round, branch("A"), m_job.decimal("4.6"), context());
    EXPECT_EQ(base::englishWithSubject(refused.fault()),
              "A: 4.6 is not on this valve's scale, 0.0 to 4.0, and is not stored; correct the setting");
    m_job.branch("N", "", "4");
    EXPECT_EQ(storeDpAt("N", "25"), "branch_without_table");
    EXPECT_EQ(apply(storeSetting(project(), m_round, branch("N"), m_job.decimal("1"), context())),
              "branch_without_valve");
    EXPECT_TRUE(project().readings().empty());
}

TEST_F(WalkTest, suspiciousValuesAreStoredAllTheSame) {
    EXPECT_EQ(storeDpAt("A", "-3.2"), "DP -3.2 kPa, A");
    EXPECT_EQ(assess(project(), m_round).branches[0].state, State::Doubtful);
}

TEST_F(WalkTest, aClosedRoundTakesCorrectionsOnly) {
    storeDpAt("A", "25");
    setState(RoundState::Closed);
    EXPECT_EQ(storeDpAt("A", "26"), "DP 26 kPa, A");
    EXPECT_EQ(storeDpAt("B", "26"), "round_closed");
    EXPECT_EQ(apply(storeRepeat(project(), m_round, branch("A"), kPa("27"), context())), "round_closed");
    setState(RoundState::Accepted);
    EXPECT_EQ(storeDpAt("A", "28"), "round_accepted");
    EXPECT_EQ(apply(giveReason(project(), counting("A")->id, "why")), "round_accepted");
    EXPECT_EQ(counting("A")->dp->digits.text(), "26");
}

TEST_F(WalkTest, aFlowIsStoredWithoutAValve) {
    m_job.branch("N", "", "4", std::nullopt, project::BranchKind::None);
    EXPECT_EQ(apply(storeFlow(project(), m_round, branch("N"), m_job.flowOf("3.9"), context())),
              "flow 3.9 m3/h, N");
    const Assessment a = assess(project(), m_round, {.fillGaps = true});
    const BranchResult& result = resultOf(m_job, a, "N");
    EXPECT_EQ(result.source, FlowSource::DirectReading);
    EXPECT_TRUE(result.share);
    EXPECT_EQ(findingOf(a, kFlowTyped, "N"), nullptr) << "there is no dp to be read instead";
    const base::Id first = counting("N")->id;
    EXPECT_EQ(apply(storeFlow(project(), m_round, branch("N"), m_job.flowOf("3.8"), context())),
              "flow 3.8 m3/h, N");
    EXPECT_EQ(counting("N")->supersedes, first);
    EXPECT_EQ(project().readings().at(first).status, ReadingStatus::Superseded);
    EXPECT_EQ(apply(storeFlow(project(), m_round, branch("N"), m_job.flowOf("-3.8"), context())),
              "negative_flow");
    EXPECT_EQ(counting("N")->flow->digits.text(), "3.8");
}

TEST_F(WalkTest, onlyWithoutATableAFlowIsReadInPlaceOfADp) {
    const auto isByFlow = [&](std::string_view tag) {
        return isReadByFlow(project(), project().branches().at(branch(tag)));
    };
    m_job.branch("N", "", "4");
    m_job.branch("L", "", "4", std::nullopt, project::BranchKind::Limiter);
    EXPECT_TRUE(isByFlow("N"));
    EXPECT_FALSE(isByFlow("A"));
    EXPECT_FALSE(isByFlow("L")) << "it keeps its flow by itself: its dp tells whether it does";
    EXPECT_EQ(storeDpAt("L", "25"), "DP 25 kPa, L");
}

TEST_F(WalkTest, aFlowNamesTheMeterThatReadItAndNoDpMeter) {
    m_job.branch("N", "", "4");
    m_meter = m_job.instrument("2", "0.1");  // its floor is a pressure
    apply(storeFlow(project(), m_round, branch("N"), m_job.flowOf("3.9"), context()));
    EXPECT_FALSE(counting("N")->instrument);
    m_meter = m_job.instrument("2", "");
    apply(storeFlow(project(), m_round, branch("N"), m_job.flowOf("3.9"), context()));
    EXPECT_EQ(counting("N")->instrument, m_meter);
    const auto isNamed = [&](std::string_view kind) {
        m_job.change(project().instruments().at(*m_meter),
                     [&](project::Instrument& meter) { meter.kind = kind; });
        apply(storeFlow(project(), m_round, branch("N"), m_job.flowOf("3.9"), context()));
        return counting("N")->instrument == m_meter;
    };
    EXPECT_FALSE(isNamed(project::kUsualInstrumentKind));
    for (const char* kind :
         {"DP meter", "\u0394p-Messger\u00e4t", "manom\u00e8tre \u0394p", "medidor de \u2206p"}) {
        EXPECT_FALSE(isNamed(kind)) << kind;
    }
    for (const char* kind : {"", "Handpumpe", "clamp-on flow meter", "d\u00e9bitm\u00e8tre"}) {
        EXPECT_TRUE(isNamed(kind)) << kind;
    }
}

TEST_F(WalkTest, aClosedRoundTakesAFlowAsACorrectionOnly) {
    m_job.branch("N", "", "4");
    m_job.branch("M", "", "4");
    apply(storeFlow(project(), m_round, branch("N"), m_job.flowOf("3.9"), context()));
    setState(RoundState::Closed);
    EXPECT_EQ(apply(storeFlow(project(), m_round, branch("M"), m_job.flowOf("3.9"), context())),
              "round_closed");
    EXPECT_EQ(apply(storeFlow(project(), m_round, branch("N"), m_job.flowOf("3.7"), context())),
              "flow 3.7 m3/h, N");
}

TEST_F(WalkTest, closingAsksForEveryTerminal) {
    storeDpAt("A", "25");
    apply(storeCannotBeRead(project(), m_round, branch("B"), context()));
    storeDpAt("C", "-25");
    auto items = openItems(project(), m_round);
    ASSERT_EQ(items.size(), 2u);
    EXPECT_TRUE(items[0].fault.is(kNoReasonYet));
    EXPECT_EQ(items[0].fault.subject, "B");
    EXPECT_EQ(items[1].fault.subject, "C");
    EXPECT_EQ(apply(closeRound(project(), m_round, context())), "items_open");
    EXPECT_EQ(apply(giveReason(project(), counting("B")->id, "port blocked")), "reason, B");
    EXPECT_EQ(apply(giveReason(project(), counting("C")->id, "hoses swapped")), "reason, C");
    EXPECT_TRUE(openItems(project(), m_round).empty());
    EXPECT_EQ(apply(closeRound(project(), m_round, context())), "close round 1");
    EXPECT_EQ(project().rounds().at(m_round).state, RoundState::Closed);
    EXPECT_TRUE(project().rounds().at(m_round).closed);
    EXPECT_EQ(apply(closeRound(project(), m_round, context())), "round_closed_already");
}

TEST(WalkProgress, countsEveryBranchWithAValve) {
    FieldJob job;
    const base::Id valve = usualValve(job);
    job.branch("R", "", "", valve);
    job.branch("S", "", "");  // no valve: there is nothing to read
    job.branch("A", "R", "4", valve);
    job.branch("B", "S", "4", valve);
    job.round(RoundKind::Survey);
    job.dp("A", "25.0", "4");
    job.cannotBeRead("B", "");
    const WalkProgress progress = walkProgress(job.project(), job.project().rounds().at(job.newestRound()));
    EXPECT_EQ(progress.all, 3U);
    EXPECT_EQ(progress.read, 1U);
    EXPECT_EQ(progress.unread, std::vector<base::Id>{job.idOf("R")});
}

/// Source: own decision; groups are balanced against each other at their own valves (common practice).
TEST(WalkProgress, aGroupValveWithoutAReadingKeepsTheRoundOpen) {
    FieldJob job;
    const base::Id valve = usualValve(job);
    job.branch("R", "", "", valve);
    job.branch("S", "", "");  // no valve: nothing is asked for
    job.branch("A", "R", "4", valve);
    job.branch("B", "S", "4", valve);
    const base::Id round = job.round(RoundKind::Survey, RoundState::Open);
    job.dp("A", "25.0", "4");
    job.dp("B", "25.0", "4");
    support::CountingIds ids(1000);
    const WalkContext context{{}, {}, ids, {}};
    const auto items = openItems(job.project(), round);
    ASSERT_EQ(items.size(), 1U);
    EXPECT_TRUE(items.front().fault.is(kNotReadYet));
    EXPECT_EQ(items.front().branch, job.idOf("R"));
    const auto refused = closeRound(job.project(), round, context);
    ASSERT_FALSE(refused.ok());
    EXPECT_TRUE(refused.fault().is(kItemsOpen));
    // A closed round takes no new readings: what its closing let pass is not asked for again.
    job.change(job.project().rounds().at(round), [](project::Round& r) { r.state = RoundState::Closed; });
    EXPECT_TRUE(openItems(job.project(), round).empty());
    job.change(job.project().rounds().at(round), [](project::Round& r) { r.state = RoundState::Open; });
    job.cannotBeRead("R", "no test points");
    EXPECT_TRUE(openItems(job.project(), round).empty()) << "a reason answers it";
    EXPECT_TRUE(closeRound(job.project(), round, context).ok());
}

TEST_F(WalkTest, anUnreadTerminalIsAnOpenItem) {
    const auto items = openItems(project(), m_round);
    ASSERT_EQ(items.size(), 3u);
    EXPECT_TRUE(items[0].fault.is(kNotReadYet));
}

TEST(WalkProgress, whatNobodyTurnedInAnAdjustingRoundGetsOneReason) {
    support::FieldJob job = flatLoop(4);
    const base::Id survey = job.round(RoundKind::Survey, RoundState::Open);
    EXPECT_TRUE(notTurned(job.project(), survey).empty()) << "a survey asks for every reading";
    job.change(job.project().rounds().at(survey), [](project::Round& r) { r.state = RoundState::Closed; });
    const base::Id round = job.round(RoundKind::Adjusting, RoundState::Open);
    job.dp("A", "25.0", "3");
    support::CountingIds ids(1000);
    const WalkContext context{{}, {}, ids, {}};
    ASSERT_EQ(applied(job, storeSetting(job.project(), round, job.idOf("B"), job.decimal("2"), context)),
              "setting 2, B");
    const std::vector<base::Id> left{job.idOf("C"), job.idOf("D")};
    EXPECT_EQ(notTurned(job.project(), round), left) << "a valve that was set is still to be read";
    const Edit edit = storeNotTurned(job.project(), round, context);
    EXPECT_EQ(edit.put.size(), 2U);
    EXPECT_EQ(applied(job, edit), "valves not turned in round 2: 2");
    EXPECT_TRUE(notTurned(job.project(), round).empty());
    EXPECT_TRUE(storeNotTurned(job.project(), round, context).put.empty());
    const auto items = openItems(job.project(), round);
    ASSERT_EQ(items.size(), 1U);
    EXPECT_EQ(items.front().branch, job.idOf("B"));
    const project::Reading* marked = countingReading(job.project(), round, job.idOf("C"));
    ASSERT_NE(marked, nullptr);
    EXPECT_TRUE(marked->cannotBeRead);
    EXPECT_EQ(marked->reason, "not turned in this round");
    EXPECT_NE(marked->sequence, countingReading(job.project(), round, job.idOf("D"))->sequence);
}

TEST_F(WalkTest, aMarkAndItsReason) {
    storeDpAt("A", "25");
    const base::Id id = counting("A")->id;
    EXPECT_EQ(apply(markDoubtful(project(), id, true)), "doubtful, A");
    EXPECT_TRUE(project().readings().at(id).isDoubtful);
    EXPECT_EQ(apply(markDoubtful(project(), id, false)), "not doubtful, A");
    const auto same = markDoubtful(project(), id, false);
    ASSERT_TRUE(same);
    EXPECT_TRUE(same->isEmpty());
}

TEST_F(WalkTest, earlierReadingsAndSettings) {
    storeDpAt("A", "25", m_job.decimal("3"));
    EXPECT_EQ(earlierReading(project(), m_round, branch("A")), nullptr);
    setState(RoundState::Closed);
    const base::Id second = m_job.round(RoundKind::Adjusting, RoundState::Open);
    ASSERT_NE(earlierReading(project(), second, branch("A")), nullptr);
    EXPECT_EQ(earlierReading(project(), second, branch("A"))->dp->digits.text(), "25");
    EXPECT_EQ(standingSetting(project(), second, branch("A"))->text(), "3");
    m_job.change(project().branches().at(branch("B")),
                 [&](project::Branch& b) { b.setting = m_job.decimal("2.2"); });
    EXPECT_EQ(standingSetting(project(), second, branch("B"))->text(), "2.2");
}

// Before a survey is closed with gaps it is said what is lost: shares are of the whole.
TEST(WalkGaps, aSurveyWithGapsSaysWhatIsLost) {
    FieldJob job = flatLoop(3);
    job.round(project::RoundKind::Survey, project::RoundState::Open);
    readAs(job, "A", 1.0);
    const auto lost = lostByGaps(job.project(), job.newestRound());
    ASSERT_TRUE(lost.has_value());
    EXPECT_TRUE(lost->is(kGapsLoseShares));
    EXPECT_EQ(lost->arguments, (std::vector<std::string>{"2", "B, C"}));
    EXPECT_FALSE(assessNewest(job).totalFlow.has_value()) << "this is what is lost";
    readAs(job, "B", 1.0);
    readAs(job, "C", 1.0);
    EXPECT_FALSE(lostByGaps(job.project(), job.newestRound()).has_value());
}

// The valve of a riser tells the flow of all below it; an adjusting round is not read as a whole.
TEST(WalkGaps, nothingIsLostBelowAReadRiserNorInAnAdjustingRound) {
    FieldJob job = twoRisers();
    job.round(project::RoundKind::Survey, project::RoundState::Open);
    readAs(job, "R1", 1.0);
    readAs(job, "C", 1.0);
    const auto lost = lostByGaps(job.project(), job.newestRound());
    ASSERT_TRUE(lost.has_value());
    EXPECT_EQ(lost->arguments, (std::vector<std::string>{"1", "D"}));
    FieldJob turned = flatLoop(2);
    turned.round(project::RoundKind::Adjusting, project::RoundState::Open);
    readAs(turned, "A", 1.0);
    EXPECT_FALSE(lostByGaps(turned.project(), turned.newestRound()).has_value());
}

}  // namespace
}  // namespace ww::balancing
