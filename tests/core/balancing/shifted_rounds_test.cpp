// A round read while the pump ran at another speed than anybody read: one finding, and no valve is blamed.
// The readings are those of a solved loop. Flow goes with speed and dp with its square (affinity laws on a
// square-law loop: common practice; Schaschke's ex. 9.10 rests on them).
#include <gtest/gtest.h>

#include "core/balancing/learning/learn_forms.h"
#include "core/balancing/learning/model_findings.h"
#include "tests/support/hidden_job.h"

namespace ww::balancing {
namespace {

using project::RoundKind;
using support::HiddenJob;

LoopState stateOf(const HiddenJob& job, double setting, double speed) {
    LoopState state;
    state.speedFraction = speed;
    int place = 0;
    for (const project::Branch& branch : job.project().branches()) {
        const bool isTerminal = branch.parent.has_value();
        state.settings[branch.id] = Setting::si(isTerminal ? setting - 0.1 * (place++ % 4) : 4.0);
    }
    return state;
}

/// A survey at full speed, then a final round at other settings and this speed, which nobody read.
HiddenJob readAtSpeed(double speed, int risers = 2, int terminals = 4) {
    HiddenJob job(risers, terminals);
    job.hide();
    job.readRound(RoundKind::Survey, stateOf(job, 4, 1));
    job.readRound(RoundKind::Final, stateOf(job, 3, speed));
    return job;
}

TEST(ShiftedRounds, aSlowedRoundIsOneFindingAndBlamesNoValve) {
    for (const double speed : {0.84, 0.7}) {
        const HiddenJob job = readAtSpeed(speed);
        const LearnedLoop learned = learn(job.project());
        ASSERT_EQ(learned.outcome, LoopLearnOutcome::Learned);
        ASSERT_EQ(learned.shifted.size(), 1U) << speed;
        EXPECT_EQ(job.project().rounds()[learned.shifted[0].round].number, 2);
        EXPECT_NEAR(learned.shifted[0].flowRatio.si(), speed, 0.02);
        EXPECT_NEAR(learned.shifted[0].dpRatio.si(), speed * speed, 0.03);
        EXPECT_TRUE(learned.shifted[0].why.is(kModelRoundLower));
        EXPECT_TRUE(learned.doubtful.empty()) << base::english(learned.doubtful.front().why);
        EXPECT_FALSE(learned.isMisfit);
        const auto found = modelFindings(job.project(), learned, job.project().lastRound()->id, true);
        ASSERT_FALSE(found.empty());
        EXPECT_TRUE(found.front().fault.is(kModelRoundLower)) << base::english(found.front().fault);
        EXPECT_EQ(found.front().severity, Severity::Warning);
        EXPECT_FALSE(found.front().branch.has_value());
        EXPECT_TRUE(modelFindings(job.project(), learned, job.project().rounds()[0].id, false).empty());
    }
}

// What the loop learned is that of the same job with no round at another speed.
TEST(ShiftedRounds, theResistancesAreThoseOfTheLoop) {
    const HiddenJob slowed = readAtSpeed(0.84);
    const HiddenJob full = readAtSpeed(1);
    const LearnedLoop one = learn(slowed.project());
    const LearnedLoop other = learn(full.project());
    EXPECT_TRUE(other.shifted.empty());
    for (std::size_t i = 0; i < one.branches.size(); ++i) {
        if (one.branches[i].circuit && other.branches[i].circuit) {
            EXPECT_NEAR(one.branches[i].circuit->value.si() / other.branches[i].circuit->value.si(), 1, 0.06)
                << i;
        }
    }
    EXPECT_LT(one.present.pumpCurveFactor, 0.8);
    EXPECT_GT(other.present.pumpCurveFactor, 0.95);
}

TEST(ShiftedRounds, aRoundReadFasterIsHigher) {
    HiddenJob job(2, 4);
    job.hide();
    job.readRound(RoundKind::Survey, stateOf(job, 4, 0.8));
    job.readRound(RoundKind::Final, stateOf(job, 3, 1));
    const LearnedLoop learned = learn(job.project());
    ASSERT_EQ(learned.shifted.size(), 1U);
    EXPECT_TRUE(learned.shifted[0].why.is(kModelRoundHigher));
    EXPECT_NEAR(learned.shifted[0].flowRatio.si(), 1 / 0.8, 0.03);
}

// The speed that was read explains the readings, and one odd reading is still one odd reading.
TEST(ShiftedRounds, aSmallChangeIsNone) {
    EXPECT_TRUE(learn(readAtSpeed(0.98).project()).shifted.empty());
}

TEST(ShiftedRounds, aWrongReadingInASlowedRoundIsStillNamed) {
    HiddenJob job = readAtSpeed(0.84, 3, 5);
    const base::Id round = job.project().lastRound()->id;
    const auto& indices = job.project().readingsOf(round);
    project::Reading wrong = job.project().readings()[indices[indices.size() / 2 + 1]];
    const std::string digits = base::Decimal::fromNumber(1.9 * wrong.dp->digits.value(), 2).text();
    wrong.dp = quantity::measuredDifference(*base::Decimal::parse(digits), wrong.dp->unit,
                                            job.project().fluid().density());
    project::Project project = job.project();
    project.put(wrong);
    const LearnedLoop learned = learn(project);
    EXPECT_EQ(learned.shifted.size(), 1U);
    ASSERT_EQ(learned.doubtful.size(), 1U);
    EXPECT_EQ(learned.doubtful[0].readings.front(), wrong.id);
}

}  // namespace
}  // namespace ww::balancing
