// A sheet of a spreadsheet as values: read, and to be written. Not for files (read_spreadsheet.h,
// write_spreadsheet.h).
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/base/decimal.h"
#include "core/base/fault.h"
#include "core/base/instant.h"

namespace ww::spreadsheet {

/// What few cells have besides their text.
struct CellRemark {
    std::optional<base::Fault> fault;  ///< why the cell holds no value
    std::string suffix;                ///< of a number: the text that its format shows behind it
};

/// One cell that holds something. A number is written in plain digits, a moment in ISO 8601, a truth value as
/// TRUE or FALSE.
struct ReadCell {
    std::size_t column = 0;  ///< from 0
    std::string text;
    bool isText = false;  ///< typed as text, not as a number or moment
    std::shared_ptr<const CellRemark> remark;
};

struct ReadRow {
    int number = 0;  ///< from 1
    std::vector<ReadCell> cells;
};

struct ReadSheet {
    std::string name;
    std::vector<ReadRow> rows;  ///< those that hold something, downward
};

/// A day alone.
struct Day {
    base::Instant moment;
};
/// A cell to be written; monostate: empty. A number keeps its digits, a moment its zone.
using WrittenCell = std::variant<std::monostate, std::string, base::Decimal, base::Instant, Day>;

/// The cell as plain text: digits as typed, moments in ISO 8601.
std::string plainText(const WrittenCell& cell);

/// Lines over the columns of a sheet, one for each of some rows.
struct LineChart {
    std::string title;
    std::string acrossTitle;
    std::string upTitle;
    std::vector<std::size_t> lineRows;  ///< into WrittenSheet::rows
    std::size_t nameColumn = 0;
    std::size_t headRow = 0;  ///< whose cells stand below the lines
    std::size_t firstColumn = 0;
    std::size_t columnCount = 0;
    std::size_t anchorRow = 0;  ///< where its upper left corner lies
    std::size_t anchorColumn = 0;
};

struct WrittenSheet {
    std::string name;  ///< at most 31 signs
    std::vector<std::vector<WrittenCell>> rows;
    /// Row that holds the headings of a table that ends with the last row: set off, frozen and with a filter.
    std::optional<std::size_t> headRow = 0;
    std::vector<std::size_t> boldRows;
    std::vector<LineChart> charts;
};

}  // namespace ww::spreadsheet
