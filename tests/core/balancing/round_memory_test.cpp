// What is kept from one judgement to the next, against computing it anew: the two must say the same. Own
// cases.
#include "core/balancing/round_memory.h"

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

TEST(RoundMemory, isKeptWhileTheLaterRoundIsRead) {
    FieldJob job = jobOfTwoRounds();
    RoundMemory memory;
    const detail::RoundNumbers* kept = &memory.before(job.project(), firstRound(job));
    const base::Id reading = readAs(job, "B", 1.10, "3");
    memory.take(job.project(), put(RecordKind::Reading, reading));
    EXPECT_EQ(&memory.before(job.project(), firstRound(job)), kept);
    job.project().eraseReading(reading);
    memory.take(job.project(), {{}, {{RecordKind::Reading, reading}}});
    EXPECT_EQ(&memory.before(job.project(), firstRound(job)), kept) << "undone";
    memory.take(job.project(), put(RecordKind::Round, job.round(RoundKind::Final)));
    EXPECT_EQ(&memory.before(job.project(), firstRound(job)), kept) << "the next round opened";
    memory.take(job.project(), put(RecordKind::Round, firstRound(job).id));
    EXPECT_EQ(memory.before(job.project(), firstRound(job)).round->number, 1);
}

TEST(RoundMemory, isComputedAnewAfterWhatItRestsOnChanged) {
    FieldJob job = jobOfTwoRounds();
    RoundMemory memory;
    const auto flowOfA = [&] { return memory.before(job.project(), firstRound(job)).branches[0].flow; };
    const auto then = flowOfA();
    project::Reading corrected = job.project().readings()[0];
    ASSERT_EQ(corrected.round, firstRound(job).id);
    corrected.dp = job.pressure("12.3");
    job.project().put(corrected);
    EXPECT_EQ(flowOfA(), then) << "nothing was told yet";
    memory.take(job.project(), put(RecordKind::Reading, corrected.id));
    EXPECT_NE(flowOfA(), then) << "a reading of the round itself";
    job.project().eraseReading(corrected.id);
    memory.take(job.project(), {{}, {{RecordKind::Reading, corrected.id}}});
    EXPECT_FALSE(flowOfA()) << "taken out";
    job.change(job.project().branches()[1], [](project::Branch& branch) { branch.valve.reset(); });
    memory.take(job.project(), put(RecordKind::Branch, job.project().branches()[1].id));
    EXPECT_FALSE(memory.before(job.project(), firstRound(job)).branches[1].flow) << "a valve is gone";
}

TEST(RoundMemory, isOfTheRoundThatIsAskedFor) {
    const FieldJob job = jobOfTwoRounds();
    RoundMemory memory;
    EXPECT_EQ(memory.before(job.project(), firstRound(job)).round->number, 1);
    EXPECT_EQ(memory.before(job.project(), *job.project().lastRound()).round->number, 2);
    memory.forget();
    EXPECT_EQ(memory.before(job.project(), firstRound(job)).round->number, 1);
}

TEST(RoundMemory, changesNoJudgement) {
    FieldJob job = jobOfTwoRounds();
    RoundMemory memory;
    for (const double flowOfB : {1.00, 1.30, 0.70}) {
        memory.take(job.project(), put(RecordKind::Reading, readAs(job, "B", flowOfB, "3")));
        const Assessment kept = assessNewest(job, {.memory = &memory});
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
    EXPECT_EQ(resultOf(job, assessNewest(job, {.memory = &memory}), "A").state, State::Drifted);
}

/// Every number and state of both, and the doubts.
void expectSame(const Assessment& kept, const Assessment& anew, const std::string& when) {
    EXPECT_EQ(kept.totalFlow, anew.totalFlow) << when;
    EXPECT_EQ(kept.spread, anew.spread) << when;
    EXPECT_EQ(kept.readCount, anew.readCount) << when;
    EXPECT_EQ(kept.index.path, anew.index.path) << when;
    EXPECT_EQ(kept.findings.size(), anew.findings.size()) << when;
    ASSERT_EQ(kept.branches.size(), anew.branches.size());
    for (std::size_t i = 0; i < anew.branches.size(); ++i) {
        const BranchResult& now = anew.branches[i];
        EXPECT_EQ(kept.branches[i].flow, now.flow) << when << ", branch " << i;
        EXPECT_EQ(kept.branches[i].ofTarget, now.ofTarget) << when << ", branch " << i;
        EXPECT_EQ(kept.branches[i].ofTargetUncertainty, now.ofTargetUncertainty) << when << ", branch " << i;
        EXPECT_EQ(kept.branches[i].setting, now.setting) << when << ", branch " << i;
        EXPECT_EQ(kept.branches[i].reading, now.reading) << when << ", branch " << i;
        EXPECT_EQ(kept.branches[i].isFromEarlierRound, now.isFromEarlierRound) << when << ", branch " << i;
        EXPECT_EQ(kept.branches[i].state, now.state) << when << ", branch " << i;
    }
}

TEST(RoundMemory, onlyWhatWasReadIsComputedAnewAndAllIsTheSame) {
    FieldJob job = flatLoop(40);
    job.round(RoundKind::Survey);
    std::vector<std::string> tags;
    for (const project::Branch& branch : job.project().branches()) {
        tags.push_back(branch.tag);
    }
    for (const std::string& tag : tags) {
        readAs(job, tag, 1.00, "4");
    }
    job.round(RoundKind::Adjusting);
    RoundMemory memory;
    const AssessOptions options{.fillGaps = true, .numbersOnly = true, .memory = &memory};
    const auto judge = [&](const std::string& when) {
        expectSame(assessNewest(job, options), assessNewest(job, {.fillGaps = true, .numbersOnly = true}),
                   when);
    };
    judge("nothing read");
    std::vector<base::Id> readings;
    for (std::size_t i = 0; i < tags.size(); i += 2) {
        readings.push_back(readAs(job, tags[i], 0.80 + 0.02 * double(i % 20), i % 4 == 0 ? "3" : "2"));
        memory.take(job.project(), put(RecordKind::Reading, readings.back()));
        judge(tags[i]);
    }
    job.project().eraseReading(readings.back());
    memory.take(job.project(), {{}, {{RecordKind::Reading, readings.back()}}});
    judge("undone");
    project::Reading struck = job.project().readings().at(readings[1]);
    struck.status = project::ReadingStatus::Struck;
    job.project().put(struck);
    memory.take(job.project(), put(RecordKind::Reading, struck.id));
    judge("struck");
    project::Reading ofSurvey = job.project().readings()[2];
    ofSurvey.dp = job.pressure("12.3");
    job.project().put(ofSurvey);
    memory.take(job.project(), put(RecordKind::Reading, ofSurvey.id));
    judge("a reading of the round before corrected");
    project::Reading moved = job.project().readings().at(readings[2]);
    moved.branch = job.project().branches()[7].id;
    job.project().put(moved);
    memory.take(job.project(), put(RecordKind::Reading, moved.id));
    judge("a reading given to another valve");
    job.change(job.project().branches()[3], [](project::Branch& branch) { branch.valve.reset(); });
    memory.take(job.project(), put(RecordKind::Branch, job.project().branches()[3].id));
    judge("a valve is gone");
    memory.take(job.project(), put(RecordKind::Round, job.round(RoundKind::Adjusting)));
    judge("the next round");
    memory.forget();
    judge("another job");
}

}  // namespace
}  // namespace ww::balancing
