// Rounds in which valves were turned between readings, in loops too large to fit every state.
#include "core/balancing/detail/states_left_out.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/balancing/advice/advice.h"
#include "core/balancing/learning/learn_forms.h"
#include "core/balancing/learning/model_findings.h"
#include "tests/support/hidden_job.h"

namespace ww::balancing {
namespace {

using support::FieldJob;
using support::HiddenJob;

constexpr int kAdjusted = 3;

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
    for (int round = 1; round <= kAdjusted; ++round) {
        job.adjustRound(settingsOf(job.project(), round));
    }
    return job;
}

LearnLoopOptions withMost(double statesRatio) {
    LearnLoopOptions options;
    options.mostStatesRatio = statesRatio;
    return options;
}

std::size_t leftOutOf(const LearnedLoop& learned) {
    for (const base::Fault& fault : learned.faults) {
        if (fault.is(kLearnTurnedLeftOut)) {
            return static_cast<std::size_t>(std::stoul(fault.arguments.front()));
        }
    }
    return 0;
}

TEST(StatesLeftOut, whereStatesAreFewEveryReadingCounts) {
    const HiddenJob job = adjustedJob();
    const LearnedLoop learned = learn(job.project());
    EXPECT_EQ(leftOutOf(learned), 0U);
    EXPECT_EQ(learned.readings.size(), job.project().readings().size() + job.project().pumpReadings().size());
}

TEST(StatesLeftOut, theOthersTeachWhatTheyTeachAlone) {
    // Readings that are marked doubtful teach nothing either, and their settings hold all the same.
    HiddenJob job = adjustedJob();
    const LearnLoopOptions none = withMost(0);
    const LearnedLoop learned = learn(job.project(), none);
    const auto leftOut = detail::readingsLeftOut(job.project(), learned.history, none, {});
    const std::size_t branches = job.project().branches().size();
    EXPECT_EQ(leftOut.size(), kAdjusted * (branches - 1));
    EXPECT_EQ(leftOutOf(learned), leftOut.size());
    job.markDoubtful(leftOut);
    const LearnedLoop alone = learn(job.project());
    EXPECT_EQ(leftOutOf(alone), 0U);
    ASSERT_EQ(learned.outcome, LoopLearnOutcome::Learned);
    ASSERT_EQ(alone.outcome, LoopLearnOutcome::Learned);
    ASSERT_EQ(alone.history.orders, learned.history.orders);
    for (std::size_t i = 0; i < branches; ++i) {
        for (const auto part : {&LearnedBranch::circuit, &LearnedBranch::run}) {
            const auto& one = learned.branches[i].*part;
            const auto& other = alone.branches[i].*part;
            ASSERT_EQ(one.has_value(), other.has_value());
            if (one) {
                EXPECT_DOUBLE_EQ(one->value.si(), other->value.si()) << i;
                EXPECT_DOUBLE_EQ(one->relativeSd.si(), other->relativeSd.si()) << i;
            }
        }
    }
}

TEST(StatesLeftOut, aRoundsFindingsSayHowManyAreLeftOut) {
    const HiddenJob job = adjustedJob();
    const project::Round& last = *job.project().lastRound();
    const auto count = [&](const LearnedLoop& learned, bool isLast) {
        const auto found = modelFindings(job.project(), learned, last.id, isLast);
        return std::count_if(found.begin(), found.end(), [](const Finding& finding) {
            return finding.fault.is(kLearnTurnedLeftOut) && finding.severity == Severity::Note;
        });
    };
    const LearnedLoop few = learn(job.project(), withMost(0));
    EXPECT_EQ(count(few, true), 1);
    EXPECT_EQ(count(few, false), 0) << "once, with the last round";
    EXPECT_EQ(count(learn(job.project()), true), 0);
}

TEST(StatesLeftOut, theLoopIsKnownNoBetterThanFromAll) {
    const HiddenJob job = adjustedJob();
    const LearnedLoop all = learn(job.project());
    const LearnedLoop few = learn(job.project(), withMost(0));
    for (std::size_t i = 0; i < all.branches.size(); ++i) {
        ASSERT_TRUE(all.branches[i].run.has_value());
        const double sdOfFew = few.branches[i].run->relativeSd.si();
        EXPECT_GT(sdOfFew, 0.95 * all.branches[i].run->relativeSd.si()) << i;
        const double apart = std::log(few.branches[i].run->value.si() / all.branches[i].run->value.si());
        EXPECT_LT(std::abs(apart), 4 * sdOfFew) << i;
    }
}

TEST(StatesLeftOut, roundsAreKeptNewestFirst) {
    const HiddenJob job = adjustedJob();
    const History record = history(job.project());
    const auto branches = static_cast<double>(job.project().branches().size());
    const auto leftOut = detail::readingsLeftOut(job.project(), record, withMost(branches * branches), {});
    const std::size_t newest = *job.project().roundsByNumber().rbegin();
    EXPECT_EQ(leftOut.size(), (kAdjusted - 1) * (job.project().branches().size() - 1));
    for (const TakenReading& taken : record.readings) {
        EXPECT_FALSE(taken.round == newest && leftOut.contains(taken.reading));
    }
    // Up to an earlier round that one is the newest.
    const std::size_t before = job.project().roundsByNumber()[2];
    const auto earlier =
        detail::readingsLeftOut(job.project(), record, withMost(branches * branches), before);
    EXPECT_EQ(earlier.size(), job.project().branches().size() - 1);
    for (const TakenReading& taken : record.readings) {
        EXPECT_FALSE(taken.round >= before && earlier.contains(taken.reading));
    }
}

TEST(StatesLeftOut, roundsThatWereSetBeforeCountWhole) {
    HiddenJob job(3, 8);
    job.hide();
    job.readRound(project::RoundKind::Survey, {});
    job.readRound(project::RoundKind::Final, settingsOf(job.project(), 1));
    const LearnedLoop learned = learn(job.project(), withMost(0));
    EXPECT_EQ(learned.outcome, LoopLearnOutcome::Learned);
    EXPECT_EQ(leftOutOf(learned), 0U);
}

/// One valve is turned, all others are read as they stand, and the last is turned.
FieldJob turnedTwice(int terminals) {
    FieldJob job;
    const base::Id valve = job.valve({{"1", "1.1"}, {"4", "5.2"}});
    for (int i = 0; i < terminals; ++i) {
        job.branch("T" + std::to_string(i), "", "1.0", valve);
    }
    job.instrument("1", "0.05");
    job.round(project::RoundKind::Adjusting);
    for (int i = 0; i < terminals; ++i) {
        job.dp("T" + std::to_string(i), "20.0", i == 0 || i == terminals - 1 ? "2" : "4");
    }
    return job;
}

TEST(StatesLeftOut, aStateThatManyReadingsShareIsNoSingleOne) {
    constexpr int kFew = 20;
    const FieldJob few = turnedTwice(kFew);
    EXPECT_EQ(detail::readingsLeftOut(few.project(), history(few.project()), withMost(0), {}).size(),
              kFew - 1);
    const FieldJob many = turnedTwice(60);
    EXPECT_TRUE(detail::readingsLeftOut(many.project(), history(many.project()), withMost(0), {}).empty());
}

/// Two terminals in a round of tries, the second shut for a moment now and then.
FieldJob shutJob() {
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
    job.dp("T2", "120.0", "0");
    job.dp("T2", "20.0", "3");
    job.dp("T1", "30.0", "2");
    return job;
}

TEST(StatesLeftOut, ofARoundBeyondTheLimitTheStateItEndedInCounts) {
    const FieldJob job = shutJob();
    const History record = history(job.project());
    const auto leftOut = detail::readingsLeftOut(job.project(), record, withMost(0), {});
    std::vector<bool> isLeftOut;
    for (const TakenReading& taken : record.readings) {
        isLeftOut.push_back(leftOut.contains(taken.reading));
    }
    // T1 as it was found; T2 shut, then at 3; T1 at the end of the round.
    EXPECT_EQ(isLeftOut, (std::vector{false, true, true, false}));
}

TEST(StatesLeftOut, aValveShutForAMomentIsAStateOfItsOwn) {
    FieldJob job = shutJob();
    job.round(project::RoundKind::Final);
    job.dp("T1", "30.0", "2");
    const base::Id shut = job.dp("T2", "120.0", "3");
    job.change(job.project().readings().at(shut),
               [](project::Reading& reading) { reading.purpose = project::ReadingPurpose::ShutValve; });
    const History record = history(job.project());
    EXPECT_TRUE(detail::readingsLeftOut(job.project(), record, withMost(0), {}).contains(shut));
    // One state in a loop of two branches; the older round has two more.
    const auto leftOut = detail::readingsLeftOut(job.project(), record, withMost(2), {});
    EXPECT_EQ(leftOut.size(), 2U);
    EXPECT_FALSE(leftOut.contains(shut));
}

}  // namespace
}  // namespace ww::balancing
