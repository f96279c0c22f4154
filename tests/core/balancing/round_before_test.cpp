// What is kept of the round before, against computing it anew: the two must say the same. Own cases.
#include "core/balancing/round_before.h"

#include <gtest/gtest.h>

#include "core/balancing/detail/round_numbers.h"
#include "tests/core/balancing/small_loop.h"

namespace ww::balancing {
namespace {

using project::RecordKind;
using project::RoundKind;

/// Two rounds of three terminals: the first on share, the second with A over.
FieldJob jobOfTwoRounds() {
    FieldJob job = flatLoop(3);
    for (const double flowOfA : {1.00, 1.20}) {
        job.round(RoundKind::Adjusting);
        readAs(job, "A", flowOfA, "3");
        readAs(job, "B", 1.00, "3");
        readAs(job, "C", 1.00, "4");
    }
    return job;
}

project::ChangeSet put(RecordKind kind, const base::Id& id) {
    return {{{kind, id}}, {}};
}

const project::Round& firstRound(const FieldJob& job) {
    return *job.project().roundNumbered(1);
}

TEST(RoundBefore, isKeptWhileTheLaterRoundIsRead) {
    FieldJob job = jobOfTwoRounds();
    RoundBefore before;
    const detail::RoundNumbers* kept = &before.numbers(job.project(), firstRound(job));
    const base::Id reading = readAs(job, "B", 1.10, "3");
    before.take(job.project(), put(RecordKind::Reading, reading));
    EXPECT_EQ(&before.numbers(job.project(), firstRound(job)), kept);
    job.project().eraseReading(reading);
    before.take(job.project(), {{}, {{RecordKind::Reading, reading}}});
    EXPECT_EQ(&before.numbers(job.project(), firstRound(job)), kept) << "undone";
    before.take(job.project(), put(RecordKind::Round, job.round(RoundKind::Final)));
    EXPECT_EQ(&before.numbers(job.project(), firstRound(job)), kept) << "the next round opened";
    before.take(job.project(), put(RecordKind::Round, firstRound(job).id));
    EXPECT_EQ(before.numbers(job.project(), firstRound(job)).round->number, 1);
}

TEST(RoundBefore, isComputedAnewAfterWhatItRestsOnChanged) {
    FieldJob job = jobOfTwoRounds();
    RoundBefore before;
    const auto flowOfA = [&] { return before.numbers(job.project(), firstRound(job)).branches[0].flow; };
    const auto then = flowOfA();
    project::Reading corrected = job.project().readings()[0];
    ASSERT_EQ(corrected.round, firstRound(job).id);
    corrected.dp = job.pressure("12.3");
    job.project().put(corrected);
    EXPECT_EQ(flowOfA(), then) << "nothing was told yet";
    before.take(job.project(), put(RecordKind::Reading, corrected.id));
    EXPECT_NE(flowOfA(), then) << "a reading of the round itself";
    job.project().eraseReading(corrected.id);
    before.take(job.project(), {{}, {{RecordKind::Reading, corrected.id}}});
    EXPECT_FALSE(flowOfA()) << "taken out";
    job.change(job.project().branches()[1], [](project::Branch& branch) { branch.valve.reset(); });
    before.take(job.project(), put(RecordKind::Branch, job.project().branches()[1].id));
    EXPECT_FALSE(before.numbers(job.project(), firstRound(job)).branches[1].flow) << "a valve is gone";
}

TEST(RoundBefore, isOfTheRoundThatIsAskedFor) {
    const FieldJob job = jobOfTwoRounds();
    RoundBefore before;
    EXPECT_EQ(before.numbers(job.project(), firstRound(job)).round->number, 1);
    EXPECT_EQ(before.numbers(job.project(), *job.project().lastRound()).round->number, 2);
    before.forget();
    EXPECT_EQ(before.numbers(job.project(), firstRound(job)).round->number, 1);
}

TEST(RoundBefore, changesNoJudgement) {
    FieldJob job = jobOfTwoRounds();
    RoundBefore before;
    for (const double flowOfB : {1.00, 1.30, 0.70}) {
        before.take(job.project(), put(RecordKind::Reading, readAs(job, "B", flowOfB, "3")));
        const Assessment kept = assessNewest(job, {.before = &before});
        const Assessment anew = assessNewest(job);
        EXPECT_EQ(kept.verdict, anew.verdict);
        ASSERT_EQ(kept.findings.size(), anew.findings.size());
        for (std::size_t i = 0; i < anew.findings.size(); ++i) {
            EXPECT_EQ(kept.findings[i].fault.code(), anew.findings[i].fault.code());
        }
        for (std::size_t i = 0; i < anew.branches.size(); ++i) {
            EXPECT_EQ(kept.branches[i].state, anew.branches[i].state);
        }
    }
    EXPECT_EQ(resultOf(job, assessNewest(job, {.before = &before}), "A").state, State::Drifted);
}

}  // namespace
}  // namespace ww::balancing
