// What number formats say, and the days of both calendars. Formats and counting of days: ISO/IEC 29500-1,
// 18.8.30, 18.8.31 and 18.17.4; that 29 February 1900 is counted is the same standard's 1900 base system.
#include "core/spreadsheet/number_format.h"

#include <gtest/gtest.h>

#include "core/spreadsheet/cell_name.h"

namespace ww::spreadsheet {
namespace {

TEST(NumberFormat, TellsDatesFromNumbers) {
    for (const char* code : {"yyyy-mm-dd", "d/m/yy", "[$-409]mmm\\ d, yyyy;@", "dd\\.mm\\.yyyy"}) {
        EXPECT_TRUE(numberFormat(code).isDate) << code;
        EXPECT_FALSE(numberFormat(code).hasTime) << code;
    }
    for (const char* code : {"yyyy-mm-dd hh:mm", "m/d/yy h:mm AM/PM", "hh:mm:ss"}) {
        EXPECT_TRUE(numberFormat(code).isDate) << code;
        EXPECT_TRUE(numberFormat(code).hasTime) << code;
    }
    for (const char* code : {"General", "0.00", "#,##0.00", "0.0%", "[Red]0.0;-0.0", "0.00E+00", "# ?/?",
                             "0\" days\"", "[h]:mm", "@"}) {
        EXPECT_FALSE(numberFormat(code).isDate) << code;
    }
}

TEST(NumberFormat, KeepsTheDigitsThatAreShown) {
    EXPECT_EQ(plainDigits(12.5, numberFormat("0.00")), "12.50");
    EXPECT_EQ(plainDigits(12.345, numberFormat("0.00")), "12.345");
    EXPECT_EQ(plainDigits(1234, numberFormat("#,##0.0")), "1234.0");
    EXPECT_EQ(plainDigits(0.07, numberFormat("0%")), "7");
    EXPECT_EQ(plainDigits(0.105, numberFormat("0.00%")), "10.50");
    EXPECT_EQ(plainDigits(3, numberFormat("General")), "3");
    EXPECT_EQ(plainDigits(-2.5, numberFormat("0.000_);(0.000)")), "-2.500");
}

TEST(NumberFormat, DropsWhatBinaryArithmeticLeaves) {
    EXPECT_EQ(plainDigits(0.1 + 0.2, {}), "0.3");
    EXPECT_EQ(plainDigits(1.1 * 3, {}), "3.3");
    EXPECT_EQ(plainDigits(123456789012345.0, {}), "123456789012345");
    EXPECT_EQ(plainDigits(1.2e-5, {}), "0.000012");
    EXPECT_EQ(plainDigits(-4.5e-7, {}), "-0.00000045");
    EXPECT_EQ(plainDigits(2e20, {}), "200000000000000000000");
    EXPECT_EQ(plainDigits(-0.0, {}), "0");
}

TEST(NumberFormat, NamesTheTextBehindANumber) {
    EXPECT_EQ(numberFormat("0.0\" psi\"").suffix, "psi");
    EXPECT_EQ(numberFormat("0\\ \\k\\P\\a").suffix, "kPa");
    EXPECT_EQ(numberFormat("\"about \"0.0").suffix, "");
    EXPECT_EQ(numberFormat("yyyy-mm-dd\"T\"hh:mm:ss\"+05:30\"").suffix, "+05:30");
}

TEST(NumberFormat, CountsDaysOfBothCalendars) {
    const NumberFormat day = numberFormat("yyyy-mm-dd");
    EXPECT_EQ(momentText(1, day, false), "1900-01-01");
    EXPECT_EQ(momentText(59, day, false), "1900-02-28");
    EXPECT_EQ(momentText(61, day, false), "1900-03-01");
    EXPECT_EQ(momentText(25569, day, false), "1970-01-01");
    EXPECT_EQ(momentText(46085, day, false), "2026-03-04");
    EXPECT_EQ(momentText(0, day, true), "1904-01-01");
    EXPECT_EQ(momentText(46085 - 1462, day, true), "2026-03-04");
    EXPECT_EQ(momentText(46085.5, day, false), "2026-03-04T12:00:00");
    EXPECT_EQ(momentText(46085, numberFormat("yyyy-mm-dd hh:mm"), false), "2026-03-04T00:00:00");
    EXPECT_EQ(momentText(0.75, numberFormat("hh:mm"), false), "18:00:00");
    EXPECT_EQ(momentText(-1, day, false), std::nullopt);
    EXPECT_EQ(momentText(3e6, day, false), std::nullopt);
}

TEST(CellName, GoesBothWays) {
    for (const auto& [column, name] : {std::pair<std::size_t, const char*>{0, "A"},
                                       {25, "Z"},
                                       {26, "AA"},
                                       {701, "ZZ"},
                                       {702, "AAA"},
                                       {16383, "XFD"}}) {
        EXPECT_EQ(columnName(column), name);
        EXPECT_EQ(cellPlace(std::string(name) + "12")->column, column);
    }
    for (const char* bad :
         {"", "A", "12", "A0", "XFE1", "A1048577", "a1", "A1B", "A-1", "AAAAAAAAAAAAAAAAA1"}) {
        EXPECT_FALSE(cellPlace(bad)) << bad;
    }
}

}  // namespace
}  // namespace ww::spreadsheet
