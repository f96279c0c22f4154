// Which rounds a change of the job leaves as they were judged. Own cases.
#include "core/balancing/touched_rounds.h"

#include <gtest/gtest.h>

#include <climits>

#include "tests/core/balancing/small_loop.h"

namespace ww::balancing {
namespace {

using project::ChangeSet;
using project::RecordKind;

/// Three rounds with one reading each.
FieldJob jobOfThreeRounds() {
    FieldJob job = flatLoop(2);
    for (int round = 0; round < 3; ++round) {
        job.round(project::RoundKind::Adjusting);
        readAs(job, "A", 1.0, "3");
    }
    return job;
}

std::optional<int> touched(const FieldJob& before, const FieldJob& after, const ChangeSet& changes) {
    return firstRoundTouched(before.project(), after.project(), changes);
}

TEST(TouchedRounds, aReadingCountsFromItsRoundOn) {
    const FieldJob job = jobOfThreeRounds();
    const project::Reading& ofSecond = job.project().readings()[1];
    EXPECT_EQ(touched(job, job, {{{RecordKind::Reading, ofSecond.id}}, {}}), 2);
    EXPECT_EQ(
        touched(job, job,
                {{{RecordKind::Reading, job.project().readings()[2].id}, {RecordKind::Reading, ofSecond.id}},
                 {}}),
        2);
}

TEST(TouchedRounds, whatIsErasedIsLookedUpInTheJobBefore) {
    const FieldJob before = jobOfThreeRounds();
    FieldJob after = before;
    const base::Id gone = before.project().readings()[2].id;
    after.project().eraseReading(gone);
    EXPECT_EQ(touched(before, after, {{}, {{RecordKind::Reading, gone}}}), 3);
}

TEST(TouchedRounds, aNewRoundLeavesThoseBeforeIt) {
    const FieldJob before = jobOfThreeRounds();
    FieldJob after = before;
    const base::Id fourth = after.round(project::RoundKind::Final);
    EXPECT_EQ(touched(before, after, {{{RecordKind::Round, fourth}}, {}}), 4);
}

TEST(TouchedRounds, aCommentTouchesNoneAndTheDesignEvery) {
    const FieldJob job = jobOfThreeRounds();
    EXPECT_EQ(touched(job, job, {{{RecordKind::Comment, job.project().readings()[0].id}}, {}}), std::nullopt);
    EXPECT_EQ(touched(job, job, {{{RecordKind::Branch, job.idOf("A")}}, {}}), INT_MIN);
    EXPECT_EQ(touched(job, job, {}), INT_MIN) << "another job";
}

}  // namespace
}  // namespace ww::balancing
