// Reasons that merging writes are told by their stored English. What stands in them is this project's own; no
// outside source.
#include "core/project/merge_reason.h"

#include <gtest/gtest.h>

namespace ww::project {
namespace {

TEST(MergeReason, isReadBackFromWhatEarlierMergesStored) {
    const auto chosen = readMergeReason("not chosen when merging; 47.1 kPa, setting 4 was");
    ASSERT_TRUE(chosen.has_value());
    EXPECT_TRUE(chosen->is(merge_reasons::kNotChosen));
    EXPECT_EQ(chosen->arguments, std::vector<std::string>{"47.1 kPa, setting 4"});
    const auto late = readMergeReason("not seen when round 3 was sent back on LT-2");
    ASSERT_TRUE(late.has_value());
    EXPECT_TRUE(late->is(merge_reasons::kNotSeen));
    EXPECT_EQ(late->arguments, (std::vector<std::string>{"3", "sent back", "LT-2"}));
    const auto taken = readMergeReason("readings of the other laptop were taken in");
    ASSERT_TRUE(taken.has_value());
    EXPECT_TRUE(taken->is(merge_reasons::kLateReadings));
    const auto revision =
        readMergeReason("the same revision was signed on two laptops; the other one was chosen");
    ASSERT_TRUE(revision.has_value());
    EXPECT_TRUE(revision->is(merge_reasons::kSameRevision));
}

TEST(MergeReason, theReasonOfWhatNobodyTurnedIsReadBackToo) {
    const auto said = readMergeReason("not turned in this round");
    ASSERT_TRUE(said.has_value());
    EXPECT_TRUE(said->is(merge_reasons::kNotTurned));
}

TEST(MergeReason, whatAPersonWroteIsNone) {
    for (const char* text : {"", "strainer blocked", "not chosen when merging", "not seen"}) {
        EXPECT_FALSE(readMergeReason(text).has_value()) << text;
    }
}

}  // namespace
}  // namespace ww::project
