// Rounds read valve by valve as one state each: against the fit of every state by itself.
#include "core/balancing/detail/merged_states.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/balancing/advice/advice.h"
#include "core/balancing/learning/learn_forms.h"
#include "tests/support/hidden_job.h"

namespace ww::balancing {
namespace {

using support::FieldJob;
using support::HiddenJob;

LoopState settingsOf(const project::Project& project, int round) {
    LoopState state;
    int number = 0;
    for (const project::Branch& branch : project.branches()) {
        state.settings[branch.id] = Setting::si(1.5 + 0.1 * ((number++ * 7 + round * 3) % 21));
    }
    return state;
}

/// A survey and rounds in which valve after valve was turned and read.
HiddenJob adjustedJob() {
    HiddenJob job(3, 8);
    job.hide();
    job.readRound(project::RoundKind::Survey, {});
    for (int round = 1; round < 4; ++round) {
        job.adjustRound(settingsOf(job.project(), round));
    }
    return job;
}

LearnedLoop learnedWith(const project::Project& project, double mostStatesRatio) {
    LearnLoopOptions options;
    options.mostStatesRatio = mostStatesRatio;
    return learn(project, options);
}

constexpr double kEachByItself = 1e12;
constexpr double kMerged = 0;

TEST(MergedStates, learnWhatEveryStateByItselfLearns) {
    const HiddenJob job = adjustedJob();
    const LearnedLoop exact = learnedWith(job.project(), kEachByItself);
    const LearnedLoop merged = learnedWith(job.project(), kMerged);
    ASSERT_EQ(exact.outcome, LoopLearnOutcome::Learned);
    ASSERT_EQ(merged.outcome, LoopLearnOutcome::Learned);
    EXPECT_EQ(merged.history.orders, exact.history.orders);
    ASSERT_EQ(merged.readings.size(), exact.readings.size());
    for (std::size_t i = 0; i < exact.branches.size(); ++i) {
        for (const auto part : {&LearnedBranch::circuit, &LearnedBranch::run}) {
            const auto& one = exact.branches[i].*part;
            const auto& other = merged.branches[i].*part;
            ASSERT_EQ(one.has_value(), other.has_value());
            if (one) {
                // A tenth of what is known of it, and its uncertainty to a tenth.
                const double sd = one->relativeSd.si();
                EXPECT_NEAR(std::log(other->value.si() / one->value.si()) / sd, 0, 0.1) << i;
                EXPECT_NEAR(other->relativeSd.si() / sd, 1, 0.1) << i;
            }
        }
    }
    const Advice byExact = advise(job.project(), exact);
    const Advice byMerged = advise(job.project(), merged);
    ASSERT_EQ(byMerged.settings.size(), byExact.settings.size());
    for (std::size_t i = 0; i < byExact.settings.size(); ++i) {
        const SettingAdvice& one = byExact.settings[i];
        const SettingAdvice& other = byMerged.settings[i];
        ASSERT_EQ(one.branch, other.branch);
        EXPECT_NEAR(other.exact.si(), one.exact.si(), 0.01) << i;
        EXPECT_NEAR(other.indicated.uncertainty.si(), one.indicated.uncertainty.si(), 0.001) << i;
        EXPECT_NEAR(other.actual.uncertainty.si(), one.actual.uncertainty.si(), 0.001) << i;
    }
}

TEST(MergedStates, aReadingIsComparedInItsOwnState) {
    const HiddenJob job = adjustedJob();
    const LearnedLoop exact = learnedWith(job.project(), kEachByItself);
    const LearnedLoop merged = learnedWith(job.project(), kMerged);
    ASSERT_EQ(merged.readings.size(), exact.readings.size());
    for (const ComparedReading& one : exact.readings) {
        const auto other = std::find_if(merged.readings.begin(), merged.readings.end(),
                                        [&](const ComparedReading& r) { return r.readings == one.readings; });
        ASSERT_NE(other, merged.readings.end());
        if (one.expected) {
            EXPECT_NEAR(*other->expected / *one.expected, 1, 0.003);
        }
    }
}

TEST(MergedStates, aSurveyIsLearnedAlike) {
    HiddenJob job(3, 8);
    job.hide();
    job.readRound(project::RoundKind::Survey, {});
    const LearnedLoop exact = learnedWith(job.project(), kEachByItself);
    const LearnedLoop merged = learnedWith(job.project(), kMerged);
    for (std::size_t i = 0; i < exact.branches.size(); ++i) {
        EXPECT_NEAR(merged.branches[i].circuit->value.si() / exact.branches[i].circuit->value.si(), 1, 1e-4)
            << i;
    }
}

FieldJob shutJob(int shutReadings) {
    FieldJob job;
    const base::Id valve = job.valve({{"0", "0"}, {"1", "1.1"}, {"4", "5.2"}});
    job.pump("P-1", {{"0", "20"}, {"4", "18"}, {"8", "12"}});
    for (const char* tag : {"T1", "T2"}) {
        const base::Id id = job.branch(tag, "", "1.0", valve);
        job.change(job.project().branches().at(id),
                   [&](project::Branch& branch) { branch.circuitLoss = job.pressure("20"); });
    }
    job.instrument("1", "0.05");
    job.round(project::RoundKind::Adjusting);
    job.dp("T1", "20.0", "4");
    for (int i = 0; i < shutReadings; ++i) {
        job.dp("T2", "120.0", "0");
        job.dp("T2", "20.0", "3");
    }
    job.dp("T1", "30.0", "2");
    return job;
}

TEST(MergedStates, aReadingAtAShutValveKeepsItsState) {
    const FieldJob job = shutJob(2);
    const History history = balancing::history(job.project());
    const detail::MergedStates merged(job.project(), history);
    EXPECT_EQ(merged.passedOver(), 0U);
    std::vector<bool> isMoved;
    for (const TakenReading& taken : history.readings) {
        isMoved.push_back(merged.isMoved(taken));
    }
    // T1; T2 shut, open, shut, open; T1 at the end of the round.
    EXPECT_EQ(isMoved, (std::vector{true, false, true, false, true, false}));
}

TEST(MergedStates, ofVeryManyAtShutValvesTheLastCountAndItIsSaid) {
    const FieldJob job = shutJob(static_cast<int>(detail::kMostOwnStates) + 3);
    const detail::MergedStates merged(job.project(), history(job.project()));
    EXPECT_EQ(merged.passedOver(), 3U);
    const LearnedLoop learned = learnedWith(job.project(), kMerged);
    EXPECT_TRUE(std::any_of(learned.faults.begin(), learned.faults.end(),
                            [](const base::Fault& fault) { return fault.is(kLearnShutPassedOver); }));
}

}  // namespace
}  // namespace ww::balancing
