// Comma-separated tables as text (RFC 4180), in and out. Not for what the cells mean (table_reader.h).
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"

namespace ww::exchange {

inline constexpr base::MessageForm kCsvMissing{"csv_missing", "the file is missing; put it into the folder"};
inline constexpr base::MessageForm kCsvUnreadable{"csv_unreadable",
                                                  "the file cannot be read ({1w}); check its permissions"};
inline constexpr base::MessageForm kCsvEmpty{"csv_empty", "the file is empty; give it a header row and data"};
inline constexpr base::MessageForm kCsvTooLarge{
    "csv_too_large",
    "the file has {1} MB, more than the {2} MB that a table may have; split it or correct it"};
inline constexpr base::MessageForm kCsvUtf16{
    "csv_utf16", "the file is not UTF-8 (it looks like UTF-16); save it as \"CSV UTF-8\""};
inline constexpr base::MessageForm kCsvNotUtf8{"csv_not_utf8",
                                               "the text is not UTF-8; save the file as \"CSV UTF-8\""};
inline constexpr base::MessageForm kCsvQuoteOpen{
    "csv_quote_open", "a quotation mark is opened and never closed; add the closing one"};
inline constexpr base::MessageForm kCsvQuoteMisplaced{
    "csv_quote_misplaced",
    "text stands beside a quoted cell; quote the whole cell and write a quotation mark within it twice"};
inline constexpr base::MessageForm kCsvLineTooLong{
    "csv_line_too_long", "the line is longer than {1} characters; it is no row of a table, correct it"};

/// One record and the line on which it begins, counted from 1.
struct CsvRow {
    int line = 0;
    std::vector<std::string> cells;
};

struct CsvText {
    char separator = ',';
    std::vector<CsvRow> rows;  ///< the header first; blank lines are left out
};

/// Where reading stopped and why.
struct CsvFailure {
    int line = 0;
    base::Fault fault;
};

/// Either the whole table or the first thing that makes it unreadable.
struct CsvResult {
    CsvText text;
    std::vector<CsvFailure> failures;  ///< empty, or one
};

inline constexpr std::size_t kLargestFile_MB = 64;
inline constexpr std::size_t kLongestLine = 1'000'000;

/// Reads UTF-8 text with or without a byte order mark; lines end in LF, CRLF or CR; the separator is the
/// semicolon where the header row has one outside quotes, else the comma, unless `separator` names one.
CsvResult parseCsv(std::string_view text, std::optional<char> separator = std::nullopt);
/// Reads a file likewise. A missing file is kCsvMissing at line 0.
CsvResult readCsv(const std::filesystem::path& file);

/// One record with its line end (CRLF), quoted where needed. Text that a spreadsheet would take for a formula
/// (beginning with = + - @, and no plain number) gets an apostrophe in front; parseCsv's callers take it off.
std::string csvRecord(const std::vector<std::string>& cells);

/// A text with the apostrophe that csvRecord() puts in front, where it needs one.
std::string guarded(const std::string& cell);

/// A text cell as a person meant it: without the apostrophe that csvRecord() put in front.
std::string_view withoutGuard(std::string_view cell);

}  // namespace ww::exchange
