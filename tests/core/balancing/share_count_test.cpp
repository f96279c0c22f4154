// How many terminals are on share: the same words count the same everywhere. Own cases.
#include "core/balancing/share_count.h"

#include <gtest/gtest.h>

#include "tests/core/balancing/small_loop.h"

namespace ww::balancing {
namespace {

using project::RoundKind;
using project::RoundState;

/// A survey of three terminals on share, and an open round in which A alone is read, on share too.
FieldJob openRound() {
    FieldJob job = flatLoop(3);
    job.round(RoundKind::Survey);
    for (const char* tag : {"A", "B", "C"}) {
        readAs(job, tag, 1.0);
    }
    job.round(RoundKind::Adjusting, RoundState::Open);
    readAs(job, "A", 1.0);
    return job;
}

TEST(ShareCount, ofAnOpenRoundCountsWhatIsReadInIt) {
    const FieldJob job = openRound();
    const ShareCount count = shareCount(assessAsShown(job.project(), job.newestRound()));
    EXPECT_EQ(count.all, 3U);
    EXPECT_EQ(count.read, 1U);
    EXPECT_EQ(count.onShare, 1U) << "B and C are carried over and count nowhere";
    EXPECT_FALSE(count.isComplete());
}

TEST(ShareCount, isNotKnownWhereTheSumOfAllIsNot) {
    const FieldJob job = openRound();
    const ShareCount count = shareCount(assessNewest(job));
    EXPECT_EQ(count.read, 1U);
    EXPECT_EQ(count.onShare, std::nullopt) << "by itself the round says nothing of shares yet";
}

TEST(ShareCount, ofAClosedRoundIsTheSameBothWays) {
    FieldJob job = openRound();
    job.change(job.project().rounds().at(job.newestRound()),
               [](project::Round& round) { round.state = RoundState::Closed; });
    EXPECT_EQ(shareCount(assessAsShown(job.project(), job.newestRound())).onShare, std::nullopt);
    readAs(job, "B", 1.0);
    readAs(job, "C", 1.3);
    const ShareCount count = shareCount(assessAsShown(job.project(), job.newestRound()));
    EXPECT_TRUE(count.isComplete());
    EXPECT_EQ(count.onShare, shareCount(assessNewest(job)).onShare);
    EXPECT_EQ(count.onShare, 0U);
}

TEST(ShareCount, namesTheDoubtfulReadingsThatTheTotalHolds) {
    FieldJob job = openRound();
    EXPECT_EQ(doubtfulInTotal(assessAsShown(job.project(), job.newestRound())), 0U);
    const base::Id marked = readAs(job, "B", 1.0);
    readAs(job, "C", 1.0);
    job.change(job.project().readings().at(marked), [](project::Reading& r) { r.isDoubtful = true; });
    const Assessment doubted = assessAsShown(job.project(), job.newestRound());
    ASSERT_TRUE(doubted.totalFlow.has_value());
    EXPECT_EQ(doubtfulInTotal(doubted), 1U) << "it counts, and is told";
    job.change(job.project().readings().at(marked), [](project::Reading& r) { r.reason = "read twice"; });
    EXPECT_EQ(doubtfulInTotal(assessAsShown(job.project(), job.newestRound())), 0U) << "a reason settles it";
}

TEST(ShareCount, ofNoRoundIsNotKnown) {
    EXPECT_EQ(shareCount(assessLast(flatLoop(2).project())).onShare, std::nullopt);
}

}  // namespace
}  // namespace ww::balancing
