// How an age is written. Own cases; a month is a twelfth of the mean Gregorian year (365.2425 days).
#include "core/base/age.h"

#include <gtest/gtest.h>

namespace ww::base {
namespace {

constexpr std::int64_t kMinute = 60;
constexpr std::int64_t kHour = 60 * kMinute;
constexpr std::int64_t kDay = 24 * kHour;

TEST(Age, isWrittenInTheLargestUnitThatSaysEnough) {
    EXPECT_EQ(ageText(0), "0 s");
    EXPECT_EQ(ageText(59), "59 s");
    EXPECT_EQ(ageText(60), "1 min");
    EXPECT_EQ(ageText(12 * kMinute + 59), "12 min");
    EXPECT_EQ(ageText(kHour), "1 h");
    EXPECT_EQ(ageText(3 * kHour + 20 * kMinute), "3 h 20 min");
    EXPECT_EQ(ageText(2 * kDay - 1), "47 h 59 min");
    EXPECT_EQ(ageText(2 * kDay), "2 days");
    EXPECT_EQ(ageText(4 * kDay + 23 * kHour), "4 days");
    EXPECT_EQ(ageText(60 * kDay - 1), "59 days");
    EXPECT_EQ(ageText(60 * kDay), "2 months");
    EXPECT_EQ(ageText(129600 * kMinute), "3 months");
    EXPECT_EQ(ageText(365 * kDay), "12 months");
    EXPECT_EQ(ageText(800 * kDay), "2 years");
}

TEST(Age, saysAgo) {
    EXPECT_EQ(agoText(31 * kMinute), "31 min ago");
    EXPECT_EQ(agoText(3 * kHour + 20 * kMinute), "3 h 20 min ago");
    EXPECT_EQ(agoText(5 * kHour), "5 h ago");
    EXPECT_EQ(agoText(90 * kDay), "3 months ago");
    EXPECT_EQ(agoText(5), "5 s ago");
}

TEST(Age, ofWhatIsStillToComeIsNothing) {
    EXPECT_EQ(ageText(-90), "0 s");
    EXPECT_EQ(agoText(-90), "0 s ago");
}

}  // namespace
}  // namespace ww::base
