// The practice job: its text, its content, and answers that follow from the records alone.
#include "core/practice/practice_job.h"

#include <gtest/gtest.h>

#include "core/balancing/walk.h"
#include "tests/support/counting_ids.h"
#include "tests/support/fixed_clock.h"

namespace ww::practice {
namespace {

class PracticeJobTest : public ::testing::Test {
  protected:
    PracticeJobTest() {
        apply(practiceContent(m_key, "Exercise"));
        apply(balancing::openRound(m_project, project::RoundKind::Survey, context()).value());
    }

    balancing::WalkContext context() { return {std::nullopt, std::nullopt, m_ids, m_clock.now()}; }
    void apply(const project::Edit& edit) {
        for (const project::AnyRecord& record : edit.put) {
            std::visit([&](const auto& r) { m_project.put(r); }, record);
        }
    }
    const base::Id& round() const { return m_project.lastRound()->id; }
    const base::Id& branch(const char* tag) const { return m_project.branchTagged(tag)->id; }
    void store(const char* tag, const DpAnswer& answer) {
        apply(balancing::storeDp(m_project, round(), branch(tag), answer.dp, {}, context()).value());
    }

    PracticeKey m_key{Difficulty::Steady, 17};
    project::Project m_project;
    PracticeJob m_job{m_key};
    support::CountingIds m_ids{1000};
    support::FixedClock m_clock;
};

TEST(PracticeKeyTest, textAndKeyGoBothWays) {
    for (const Difficulty difficulty : kDifficulties) {
        const PracticeKey key{difficulty, 999'999'999};
        const auto read = practiceKey(text(key));
        ASSERT_TRUE(read);
        EXPECT_EQ(*read, key);
    }
    EXPECT_EQ(text({Difficulty::LargeFaulty, 3}), "difficulty=large_faulty;seed=3");
}

TEST(PracticeKeyTest, otherTextsAreRefused) {
    for (const char* bad :
         {"", "seed=3", "difficulty=steady", "difficulty=hard;seed=3", "difficulty=steady;seed=0",
          "difficulty=steady;seed=3 ", "difficulty=steady;seed=-3", "difficulty=steady;seed=1000000000"}) {
        const auto read = practiceKey(bad);
        ASSERT_FALSE(read) << bad;
        EXPECT_TRUE(read.fault().is(kPracticeUnreadable));
    }
    EXPECT_TRUE(practiceSeed("12x").fault().is(kPracticeSeed));
}

TEST_F(PracticeJobTest, theJobNamesItsBuilding) {
    EXPECT_EQ(m_project.job().practice, "difficulty=steady;seed=17");
    EXPECT_EQ(m_project.job().name, "Exercise");
    EXPECT_EQ(m_project.branches().size(), 15u);
    for (const project::Branch& branch : m_project.branches()) {
        EXPECT_NE(m_project.characteristicOf(branch), nullptr);
    }
    EXPECT_NE(m_project.pumpCurve(m_project.pumps()[0].id), nullptr);
}

TEST_F(PracticeJobTest, anAnswerIsRepeatedUntilItIsStored) {
    const DpAnswer first = m_job.dp(m_project, round(), branch("B1-T1")).value();
    EXPECT_EQ(m_job.dp(m_project, round(), branch("B1-T1"))->dp, first.dp);
    EXPECT_EQ(PracticeJob(m_key).dp(m_project, round(), branch("B1-T1"))->dp, first.dp);
    // Other looks have other noise: of eight some differ.
    bool isAnyOther = false;
    for (int i = 0; i < 8; ++i) {
        store("B1-T1", *m_job.dp(m_project, round(), branch("B1-T1")));
        isAnyOther = isAnyOther || !(m_job.dp(m_project, round(), branch("B1-T1"))->dp == first.dp);
    }
    EXPECT_TRUE(isAnyOther);
}

TEST_F(PracticeJobTest, theLoopMovesWithTheSettingsNoted) {
    const auto before = m_job.dp(m_project, round(), branch("B1-T1"))->dp.value;
    apply(
        balancing::storeSetting(m_project, round(), branch("B1-T1"), *base::Decimal::parse("1.5"), context())
            .value());
    const auto after = m_job.dp(m_project, round(), branch("B1-T1"))->dp.value;
    EXPECT_GT(after, before * 2);
    const auto closed = m_job.closedDp(m_project, round(), branch("B1-T1"))->dp.value;
    EXPECT_GT(closed, after);
    EXPECT_LT(closed, m_job.pumpRise(m_project, round(), m_project.pumps()[0].id)->value);
    EXPECT_GT(m_job.flow(m_project, round(), branch("B1"))->value,
              m_job.flow(m_project, round(), branch("B1-T1"))->value);
}

TEST_F(PracticeJobTest, whatTheBuildingDoesNotHaveIsRefused) {
    project::Branch other;
    other.id = m_ids.next();
    other.tag = "X-1";
    m_project.put(other);
    const auto refused = m_job.dp(m_project, round(), other.id);
    ASSERT_FALSE(refused);
    EXPECT_TRUE(refused.fault().is(kPracticeNotABranch));
    EXPECT_EQ(refused.fault().subject, "X-1");
    EXPECT_TRUE(m_job.pumpRise(m_project, round(), other.id).fault().is(kPracticeNoPump));
    BuildingPlan plan = planOf(Difficulty::Steady);
    plan.hasBranchValves = false;
    const PracticeJob without{Building(plan, 17)};
    EXPECT_TRUE(without.dp(m_project, round(), branch("B1")).fault().is(kPracticeNoValve));
}

}  // namespace
}  // namespace ww::practice
