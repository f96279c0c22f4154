// One thing to do at a valve: how the word of its reading and its advised setting stand beside each other.
// The rule is this program's own decision: the reading decides; no outside source.
#include "core/balancing/advice_beside_word.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/support/solved_job.h"

namespace ww::balancing {
namespace {

/// A loop learned from its survey, every valve fully open, and a valve that the advice throttles.
class AdviceBesideWordTest : public ::testing::Test {
  protected:
    AdviceBesideWordTest()
        : m_job(6), m_learned(learn(m_job.project())), m_advice(advise(m_job.project(), m_learned)) {}

    /// The throttled valve with the lowest or the highest advised setting.
    const SettingAdvice& throttled(bool isHighest) const {
        const SettingAdvice* found = nullptr;
        for (const SettingAdvice& each : m_advice.settings) {
            const bool isBetter = found == nullptr ||
                                  (isHighest ? each.setting > found->setting : each.setting < found->setting);
            if (!each.isFullyOpen && isBetter) {
                found = &each;
            }
        }
        EXPECT_NE(found, nullptr);
        return *found;
    }
    std::optional<AdviceBesideWord> beside(const SettingAdvice& advised, AimWord word, double at) const {
        return adviceBesideWord(m_job.project(), advised.branch, word, Setting::si(at), m_learned, m_advice);
    }

    support::SolvedJob m_job;
    LearnedLoop m_learned;
    Advice m_advice;
};

TEST_F(AdviceBesideWordTest, aHoldAtTheAdvisedSettingNeedsNoReason) {
    const SettingAdvice& advised = throttled(true);
    const auto found = beside(advised, AimWord::Hold, advised.setting.si() + 0.4 * advised.step.si());
    ASSERT_TRUE(found.has_value());
    EXPECT_EQ(found->stand, AdviceStand::Agrees);
    EXPECT_FALSE(found->reason.has_value());
    EXPECT_FALSE(found->ofTarget.has_value());
}

TEST_F(AdviceBesideWordTest, aHoldNearTheAdvisedSettingStaysToTheEnd) {
    const SettingAdvice& advised = throttled(true);
    // Beyond half a step, on the side where the exact setting lies.
    const double side = advised.exact > advised.setting ? 0.6 : -0.6;
    const auto found = beside(advised, AimWord::Hold, advised.setting.si() + side * advised.step.si());
    ASSERT_TRUE(found.has_value());
    EXPECT_EQ(found->stand, AdviceStand::HoldsToEnd);
    ASSERT_TRUE(found->ofTarget.has_value());
    EXPECT_NEAR(found->ofTarget->si(), 1, 0.05);
    ASSERT_TRUE(found->reason.has_value());
    EXPECT_TRUE(found->reason->is(kHoldsToEnd));
    EXPECT_EQ(found->reason->subject, m_job.project().branches()[advised.branch].tag);
}

TEST_F(AdviceBesideWordTest, aHoldFarFromTheAdvisedSettingIsForNow) {
    const SettingAdvice& advised = throttled(false);
    ASSERT_LE(advised.setting.si() + 1, 4);
    const auto found = beside(advised, AimWord::Hold, advised.setting.si() + 1);
    ASSERT_TRUE(found.has_value());
    EXPECT_EQ(found->stand, AdviceStand::HoldsForNow);
    ASSERT_TRUE(found->ofTarget.has_value());
    EXPECT_GT(found->ofTarget->si(), 1.05);  // a turn further open takes more than its share
    EXPECT_TRUE(found->reason->is(kHoldsForNow));
}

TEST_F(AdviceBesideWordTest, aTurnTowardsTheAdvisedSettingAgrees) {
    const SettingAdvice& advised = throttled(false);
    EXPECT_EQ(beside(advised, AimWord::Close, 4)->stand, AdviceStand::Agrees);
    EXPECT_EQ(beside(advised, AimWord::Open, advised.setting.si() - 0.5)->stand, AdviceStand::Agrees);
}

TEST_F(AdviceBesideWordTest, theReadingLeadsWhereTheAdviceTurnsTheOtherWay) {
    const SettingAdvice& advised = throttled(false);
    for (const auto& [word, at] :
         {std::pair{AimWord::Open, advised.setting.si() + 0.5},
          std::pair{AimWord::Close, advised.setting.si() - 0.5},
          std::pair{AimWord::Close, advised.setting.si()}, std::pair{AimWord::AtStop, 4.0}}) {
        const auto found = beside(advised, word, at);
        ASSERT_TRUE(found.has_value());
        EXPECT_EQ(found->stand, AdviceStand::ReadingLeads);
        EXPECT_TRUE(found->reason->is(word == AimWord::AtStop ? kStopsForNow : kReadingLeads));
    }
}

TEST_F(AdviceBesideWordTest, nothingStandsBesideWhereNothingIsAdvisedOrRead) {
    const SettingAdvice& advised = throttled(false);
    EXPECT_FALSE(beside(advised, AimWord::ReadAgain, 2).has_value());
    EXPECT_FALSE(
        adviceBesideWord(m_job.project(), advised.branch, AimWord::Hold, advised.setting, m_learned, Advice{})
            .has_value());
}

}  // namespace
}  // namespace ww::balancing
