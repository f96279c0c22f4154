#include "core/base/decimal.h"

#include <gtest/gtest.h>

namespace ww::base {
namespace {

// Decision of shared design: one point or comma, digits kept as written; no outside source.
TEST(Decimal, keepsDigitsAsWritten) {
    EXPECT_EQ(Decimal::parse("12.50")->text(), "12.50");
    EXPECT_EQ(Decimal::parse("12,50")->text(), "12.50");
    EXPECT_EQ(Decimal::parse(" +7 ")->text(), "7");
    EXPECT_EQ(Decimal::parse("-.5")->text(), "-0.5");
    EXPECT_EQ(Decimal::parse("\u0661\u0662.\u06F5")->text(), "12.5");
    EXPECT_DOUBLE_EQ(Decimal::parse("1,250")->value(), 1.25);
    EXPECT_DOUBLE_EQ(Decimal::parse("12.5")->lastPlace(), 0.1);
}

TEST(Decimal, refusesWhatIsNotOneNumber) {
    for (const char* text : {"-", ".", "12..4", "1.2.3", "1e5", "nan", "inf", "0x10", "1-", "--1", "12a"}) {
        const auto result = Decimal::parse(text);
        ASSERT_FALSE(result.ok()) << text;
        EXPECT_TRUE(result.fault().is(kNotANumber)) << text;
    }
    EXPECT_TRUE(Decimal::parse("1234567890123456").fault().is(kTooManyDigits));
}

TEST(Decimal, saysOfAnEmptyTextThatTheNumberIsMissing) {
    for (const char* text : {"", " ", "\u00A0"}) {
        const auto result = Decimal::parse(text);
        ASSERT_FALSE(result.ok());
        EXPECT_EQ(english(result.fault()), "the number is missing; write it in digits");
    }
}

TEST(Decimal, aCommaInAFileIsNeverGuessed) {
    EXPECT_TRUE(Decimal::parse("1,250", CommaMeaning::Refused).fault().is(kAmbiguousComma));
    EXPECT_TRUE(Decimal::parse("1,250", CommaMeaning::Careful).fault().is(kAmbiguousComma));
    EXPECT_EQ(Decimal::parse("1,25", CommaMeaning::Careful)->text(), "1.25");
}

}  // namespace
}  // namespace ww::base
