// The rules of RFC 4180 ("Common Format and MIME Type for CSV Files", 2005, section 2), and what goes beyond
// them: other line ends, semicolons, UTF-8 alone (common practice, no source).
#include "core/exchange/csv_text.h"

#include <gtest/gtest.h>

#include <string>

namespace ww::exchange {
namespace {

using Cells = std::vector<std::string>;
using namespace std::string_literals;

/// The cells of all rows; fails where the text cannot be read.
std::vector<Cells> cellsOf(std::string_view text) {
    const CsvResult result = parseCsv(text);
    EXPECT_TRUE(result.failures.empty());
    std::vector<Cells> out;
    for (const CsvRow& row : result.text.rows) {
        out.push_back(row.cells);
    }
    return out;
}

void expectFailure(std::string_view text, const base::MessageForm& form, int line) {
    const CsvResult result = parseCsv(text);
    ASSERT_EQ(result.failures.size(), 1U);
    EXPECT_EQ(result.failures.front().fault.code(), form.code);
    EXPECT_EQ(result.failures.front().line, line);
}

TEST(CsvText, TakesEveryLineEndAndALastLineWithout) {
    const std::vector<Cells> expected{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}};
    EXPECT_EQ(cellsOf("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"), expected);  // RFC 4180, 2.1
    EXPECT_EQ(cellsOf("aaa,bbb,ccc\r\nzzz,yyy,xxx"), expected);      // RFC 4180, 2.2
    EXPECT_EQ(cellsOf("aaa,bbb,ccc\nzzz,yyy,xxx\n"), expected);
    EXPECT_EQ(cellsOf("aaa,bbb,ccc\rzzz,yyy,xxx\r"), expected);
}

TEST(CsvText, TakesQuotedCells) {
    EXPECT_EQ(cellsOf("\"aaa\",\"bbb\",\"ccc\"\nzzz,yyy,xxx"),
              (std::vector<Cells>{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}));  // 2.5
    EXPECT_EQ(cellsOf("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"),
              (std::vector<Cells>{{"aaa", "b\r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}}));                 // 2.6
    EXPECT_EQ(cellsOf("\"aaa\",\"b\"\"bb\",\"c,c\""), (std::vector<Cells>{{"aaa", "b\"bb", "c,c"}}));  // 2.7
    EXPECT_EQ(cellsOf("a,,\n\"\",b,"), (std::vector<Cells>{{"a", "", ""}, {"", "b", ""}}));
}

TEST(CsvText, KeepsBlanksOfCells) {
    EXPECT_EQ(cellsOf(" a , b"), (std::vector<Cells>{{" a ", " b"}}));  // 2.4: spaces are part of a field
}

TEST(CsvText, LeavesBlankLinesOutAndCountsPhysicalLines) {
    const CsvResult result = parseCsv("a\n\n\"b\nb\"\nc\r\rd\r\n");
    ASSERT_EQ(result.text.rows.size(), 4U);
    EXPECT_EQ(result.text.rows[0].line, 1);
    EXPECT_EQ(result.text.rows[1].line, 3);
    EXPECT_EQ(result.text.rows[2].line, 5);
    EXPECT_EQ(result.text.rows[3].line, 7);
}

TEST(CsvText, TakesSemicolonsWhereTheHeaderHasThem) {
    EXPECT_EQ(parseCsv("a;b\n1,5;2").text.separator, ';');
    EXPECT_EQ(cellsOf("a;b\n1,5;2"), (std::vector<Cells>{{"a", "b"}, {"1,5", "2"}}));
    EXPECT_EQ(parseCsv("\"a;b\",c\n1;2,3").text.separator, ',');
}

TEST(CsvText, TakesAByteOrderMarkOff) {
    EXPECT_EQ(cellsOf("\xEF\xBB\xBF"
                      "a,b"),
              (std::vector<Cells>{{"a", "b"}}));
}

TEST(CsvText, RefusesWhatIsNotUtf8) {
    expectFailure("a\n\xC3\x28\n", kCsvNotUtf8, 2);
    expectFailure("a\rb\r\xFC\r", kCsvNotUtf8, 3);
    expectFailure("a\n\xC0\xAF\n", kCsvNotUtf8, 2);      // overlong
    expectFailure("a\n\xED\xA0\x80\n", kCsvNotUtf8, 2);  // half of a surrogate pair
    expectFailure("a\n\xE2\x82", kCsvNotUtf8, 2);        // cut off
    expectFailure(
        "\xFF\xFE"
        "a\0"s,
        kCsvUtf16, 1);
    expectFailure("a\0b\0"s, kCsvUtf16, 1);
    EXPECT_EQ(cellsOf("M\xC3\xBCller,\xF0\x9F\x94\xA7"),
              (std::vector<Cells>{{"M\xC3\xBCller", "\xF0\x9F\x94\xA7"}}));
}

TEST(CsvText, RefusesQuotesThatDoNotMatch) {
    expectFailure("a,b\n\"c,d\ne,f\n", kCsvQuoteOpen, 2);
    expectFailure("a,b\n\"c\" d,e\n", kCsvQuoteMisplaced, 2);
    expectFailure("a,b\nc\"d,e\n", kCsvQuoteMisplaced, 2);
}

TEST(CsvText, RefusesNothingAndTooMuch) {
    expectFailure("", kCsvEmpty, 0);
    expectFailure("\xEF\xBB\xBF", kCsvEmpty, 0);
    expectFailure("\n\r\n\n", kCsvEmpty, 0);
    expectFailure("a\n" + std::string(kLongestLine + 1, 'x'), kCsvLineTooLong, 2);
    EXPECT_TRUE(parseCsv("a\n" + std::string(kLongestLine - 1, 'x') + "\n").failures.empty());
}

TEST(CsvText, KeepsACellThatBeginsWithAByteOrderMark) {
    const std::string cell = "\xEF\xBB\xBF";
    const CsvResult result = parseCsv(csvRecord({cell}));
    ASSERT_TRUE(result.failures.empty());
    ASSERT_EQ(result.text.rows.size(), 1U);
    EXPECT_EQ(result.text.rows[0].cells[0], cell);
}

TEST(CsvText, ReadsBackWhatItWrites) {
    const Cells cells{"plain",    "a,b", "a;b", "say \"so\"", "two\nlines", "two\r\nlines", "",
                      "=SUM(A1)", "+x",  "-x",  "@x",         "'",          "'=x",          "''",
                      "-5.0",     "+5",  "\"",  "'quoted'",   "\xC3\xBC",   "5\" pipe"};
    const std::string record = csvRecord(cells);
    EXPECT_TRUE(record.ends_with("\r\n"));
    // The header decides on the separator; a record of one cell that is empty must not vanish.
    const CsvResult result = parseCsv("h,h\r\n" + record + csvRecord({""}));
    ASSERT_TRUE(result.failures.empty());
    ASSERT_EQ(result.text.rows.size(), 3U);
    Cells read;
    for (const std::string& cell : result.text.rows[1].cells) {
        read.emplace_back(withoutGuard(cell));
    }
    EXPECT_EQ(read, cells);
}

TEST(CsvText, LetsNoTextBecomeAFormula) {
    for (const char* text : {"=1+1", "+cmd", "-cmd", "@cmd"}) {
        EXPECT_EQ(csvRecord({text, "x"}), "'" + std::string(text) + ",x\r\n");
    }
    EXPECT_EQ(csvRecord({"-5.0", "x"}), "-5.0,x\r\n");
}

}  // namespace
}  // namespace ww::exchange
