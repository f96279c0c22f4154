#include "core/base/account.h"

#include <gtest/gtest.h>

namespace ww::base {
namespace {

// The comment field holds the full name before its first comma: passwd(5), chfn(1).
TEST(Account, isNamedByItsFullName) {
    EXPECT_EQ(personOf({"Ines Kallweit,room 12,,", "ines"}, "unknown person"), "Ines Kallweit");
    EXPECT_EQ(personOf({"& Kallweit", "ines"}, "unknown person"), "Ines Kallweit");
}

TEST(Account, isNamedByItsLoginWhereItHasNoFullName) {
    EXPECT_EQ(personOf({"", "ines"}, "unknown person"), "ines");
    EXPECT_EQ(personOf({" ,room 12", "ines"}, "unknown person"), "ines");
}

TEST(Account, ofWhichNothingIsKnownIsAnUnknownPerson) {
    EXPECT_EQ(personOf({}, "unknown person"), "unknown person");
    EXPECT_FALSE(personAtTheDesk("unknown person").empty());
}

}  // namespace
}  // namespace ww::base
