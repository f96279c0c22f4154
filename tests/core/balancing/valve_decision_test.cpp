// One word at a valve, and why its share may say otherwise. One open valve in every group is common practice
// (no source); the rest is this program's own decision.
#include "core/balancing/valve_decision.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/core/balancing/small_loop.h"
#include "tests/support/solved_job.h"

namespace ww::balancing {
namespace {

/// Three terminals: A far over, B on share, C short. `setting` is where all three stand.
class ValveDecisionTest : public ::testing::Test {
  protected:
    void read(std::string_view setting) {
        m_job.round(project::RoundKind::Survey);
        readAs(m_job, "A", 1.3, setting);
        readAs(m_job, "B", 1.1, setting);
        readAs(m_job, "C", 0.8, setting);
        m_now = assessNewest(m_job);
    }
    ValveDecision decide(std::string_view tag, double at, AimWord byReading, AimBasis basis) const {
        AimFlow aimed;
        aimed.basis = basis;
        if (basis == AimBasis::Reference) {
            aimed.reference = m_job.indexOf("C");
            aimed.referenceOfDesign = Ratio::si(0.8);
        }
        return decideValve(m_job.project(), m_now, nullptr, aimed, m_job.indexOf(tag), Setting::si(at),
                           byReading);
    }

    FieldJob m_job = flatLoop(3);
    Assessment m_now;
};

TEST_F(ValveDecisionTest, theOpenReferenceIsLeftAsItIs) {
    read("4");
    EXPECT_EQ(referenceOf(m_now, nullptr, m_job.indexOf("A")), m_job.indexOf("C"));
    for (const AimWord byReading : {AimWord::AtStop, AimWord::Close, AimWord::Hold}) {
        const ValveDecision made = decide("C", 4, byReading, AimBasis::Branches);
        EXPECT_EQ(made.word, AimWord::Hold);
        ASSERT_TRUE(made.rule && made.apart);
        EXPECT_TRUE(made.rule->is(kReferenceOpen));
        EXPECT_TRUE(made.apart->is(kReferenceOpen)) << "short, and nothing is to be turned";
        EXPECT_EQ(made.rule->subject, "C");
    }
    EXPECT_EQ(decide("C", 4, AimWord::ReadAgain, AimBasis::Branches).word, AimWord::ReadAgain);
}

TEST_F(ValveDecisionTest, aReferenceIsOpenedWhereNoValveOfItsGroupIs) {
    read("3");
    ASSERT_EQ(referenceOf(m_now, nullptr, m_job.indexOf("C")), m_job.indexOf("C"));
    const ValveDecision made = decide("C", 3, AimWord::Hold, AimBasis::Branches);
    EXPECT_EQ(made.word, AimWord::Open);
    ASSERT_TRUE(made.rule);
    EXPECT_TRUE(made.rule->is(kReferenceToOpen));
    EXPECT_EQ(made.rule->arguments, (std::vector<std::string>{"3.0", "4.0"}));
    EXPECT_FALSE(made.apart) << "short and to be opened";
}

TEST_F(ValveDecisionTest, anotherOpenValveLeavesTheWordToTheReading) {
    m_job.round(project::RoundKind::Survey);
    readAs(m_job, "A", 1.3, "4");
    readAs(m_job, "B", 1.1, "3");
    readAs(m_job, "C", 0.8, "3");
    m_now = assessNewest(m_job);
    const ValveDecision made = decide("C", 3, AimWord::Open, AimBasis::Branches);
    EXPECT_EQ(made.word, AimWord::Open);
    EXPECT_FALSE(made.rule);
}

TEST_F(ValveDecisionTest, saysWhyTheShareStandsApartFromTheWord) {
    read("4");
    const auto apart = [&](std::string_view tag, AimWord word, AimBasis basis) -> std::string {
        const ValveDecision made = decide(tag, 4, word, basis);
        EXPECT_EQ(made.word, word);
        return made.apart ? std::string(made.apart->code()) : "";
    };
    EXPECT_EQ(apart("A", AimWord::Close, AimBasis::Model), "") << "over, and to be closed";
    EXPECT_EQ(apart("A", AimWord::Hold, AimBasis::Model), "word_counts_others_set");
    EXPECT_EQ(apart("A", AimWord::Hold, AimBasis::Reference), "word_matches_reference");
    EXPECT_EQ(apart("A", AimWord::Open, AimBasis::Branches), "word_counts_newest");
    EXPECT_EQ(apart("B", AimWord::Hold, AimBasis::Model), "");
    EXPECT_EQ(apart("B", AimWord::Close, AimBasis::Model), "word_counts_others_set");
    EXPECT_EQ(apart("B", AimWord::Close, AimBasis::Reference), "word_matches_reference");
}

TEST(ValveDecision, theReferenceOfTheAdviceCounts) {
    const support::SolvedJob job(6);
    const LearnedLoop learned = learn(job.project());
    const Advice advice = advise(job.project(), learned);
    ASSERT_TRUE(advice.isReady());
    const auto reference = std::find_if(advice.settings.begin(), advice.settings.end(),
                                        [](const SettingAdvice& each) { return each.isReference; });
    ASSERT_NE(reference, advice.settings.end());
    const Assessment now = assess(job.project(), job.project().lastRound()->id);
    EXPECT_EQ(referenceOf(now, &advice, advice.settings.front().branch), reference->branch);
    AimFlow aimed;
    aimed.basis = AimBasis::Model;
    for (const SettingAdvice& each : advice.settings) {
        const ValveDecision made =
            decideValve(job.project(), now, &advice, aimed, each.branch, Setting::si(3), AimWord::Hold);
        EXPECT_EQ(made.word, each.isReference ? AimWord::Open : AimWord::Hold);
        EXPECT_EQ(made.rule.has_value(), each.isReference);
    }
}

TEST(ValveDecision, whatWasNotTriedIsTurnedToItsAdvisedSettingFirst) {
    const support::SolvedJob job(6);
    const LearnedLoop learned = learn(job.project());
    Advice advice = advise(job.project(), learned);
    ASSERT_EQ(advice.status, AdviceStatus::Unverified);
    Assessment now = assess(job.project(), job.project().lastRound()->id);
    const auto own = std::find_if(advice.settings.begin(), advice.settings.end(),
                                  [](const SettingAdvice& each) { return !each.isFullyOpen; });
    ASSERT_NE(own, advice.settings.end());
    ValveDecision byReading;
    const auto decide = [&](AimWord word, double at, std::optional<AdviceStand> stand) {
        byReading.word = word;
        std::optional<AdviceBesideWord> beside;
        if (stand) {
            beside = AdviceBesideWord{*stand, {}, {}};
        }
        return decideUntried(job.project(), now, advice, own->branch, Setting::si(at), byReading, beside);
    };
    const double advised = own->setting.si();
    for (const AimWord word : {AimWord::Open, AimWord::Close, AimWord::Hold, AimWord::AtStop}) {
        const ValveDecision made = decide(word, 4, AdviceStand::HoldsForNow);
        EXPECT_EQ(made.word, AimWord::Close);
        ASSERT_TRUE(made.rule);
        EXPECT_TRUE(made.rule->is(word == AimWord::Close ? kAdviceFirst : kAdviceBeforeReading))
            << "a reading that says otherwise is called old";
        EXPECT_EQ(made.turnTo, own->setting);
        EXPECT_EQ(decide(word, advised - 0.5, {}).word, AimWord::Open);
        EXPECT_EQ(decide(word, advised, {}).word, word) << "it stands there";
    }
    EXPECT_EQ(decide(AimWord::ReadAgain, 4, {}).word, AimWord::ReadAgain);
    now.branches[own->branch].state = State::OnShare;
    EXPECT_EQ(decide(AimWord::Hold, 4, AdviceStand::HoldsToEnd).word, AimWord::Hold)
        << "on share, and right to the end";
    now.branches[own->branch].state = State::Short;
    EXPECT_EQ(decide(AimWord::Hold, 4, AdviceStand::HoldsToEnd).word, AimWord::Close);
    byReading.rule = base::Fault{&kReferenceOpen, "T-01", {}};
    EXPECT_EQ(decide(AimWord::Hold, 4, {}).word, AimWord::Hold) << "the rule of a reference stands";
    byReading.rule.reset();
    for (const AdviceStatus status : {AdviceStatus::NotReady, AdviceStatus::Verified}) {
        advice.status = status;
        EXPECT_EQ(decide(AimWord::Hold, 4, {}).word, AimWord::Hold);
    }
}

TEST(ValveDecision, aValveThatTheIndexProofWaitsForIsOpened) {
    const support::SolvedJob job(6);
    Advice advice = advise(job.project(), learn(job.project()));
    advice.status = AdviceStatus::Verified;
    const Assessment now = assess(job.project(), job.project().lastRound()->id);
    advice.indexSteps.push_back({2, Setting::si(2.1), base::Fault{&kOpensForIndex, "T-03", {}}});
    ValveDecision byReading;
    const auto decide = [&](AimWord word, std::size_t branch, double at) {
        byReading.word = word;
        return decideUntried(job.project(), now, advice, branch, Setting::si(at), byReading, {});
    };
    const ValveDecision made = decide(AimWord::Hold, 2, 2.0);
    EXPECT_EQ(made.word, AimWord::Open);
    ASSERT_TRUE(made.rule && made.turnTo);
    EXPECT_TRUE(made.rule->is(kOpensForIndex));
    EXPECT_EQ(made.turnTo->si(), 2.1);
    EXPECT_EQ(decide(AimWord::Hold, 2, 2.1).word, AimWord::Hold) << "it stands there";
    EXPECT_EQ(decide(AimWord::Hold, 1, 2.0).word, AimWord::Hold) << "another valve";
    EXPECT_EQ(decide(AimWord::ReadAgain, 2, 2.0).word, AimWord::ReadAgain);
}

}  // namespace
}  // namespace ww::balancing
