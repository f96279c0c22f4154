// A person's own table brought into the columns of ours: which of their columns is which of ours, in which
// unit, and which rows are left out. Not for what the cells mean (table_reader.h).
#pragma once

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/exchange/table_columns.h"

namespace ww::exchange {

/// Where one of our columns comes from.
struct ColumnMatch {
    std::optional<std::size_t> source;  ///< index of their column; nothing: the column stays away
    std::optional<Unit> unit;           ///< of a column with a dimension
    std::string constant = {};          ///< without a source: this text in every row; empty: no such column

    bool operator==(const ColumnMatch&) const = default;
};

struct TableMapping {
    std::string file;                  ///< our table: "branches.csv"
    std::size_t headRow = 0;           ///< index into the rows of theirs; rows above it are left alone
    std::vector<ColumnMatch> columns;  ///< in the order of columnsOfTable(file)

    bool operator==(const TableMapping&) const = default;
};

/// The row that looks most like headings of this table, and its columns matched by name and by the words that
/// others use for them; units as the headings say them in brackets.
TableMapping guessMapping(const std::string& file, const SourceTable& table);
/// The same with the headings in a given row.
TableMapping guessMapping(const std::string& file, const SourceTable& table, std::size_t headRow);

/// Which of the tables that can be added the headings fit best.
std::string guessTable(const SourceTable& table);

/// The unit in the brackets of a heading, "dp (kPa)" or "dp [kPa]", for a column of ours.
std::optional<Unit> unitInHeading(std::string_view heading, const ColumnSpec& column);

/// What keeps a mapping from being used: our columns that must be there and are not matched, and those whose
/// unit is not chosen.
std::vector<std::string> unmatched(const TableMapping& mapping);

/// Their rows below the headings under our headings, with their own row numbers; without the rows whose
/// numbers are in `leftOut` and those in which no matched column holds anything.
SourceTable mapped(const SourceTable& table, const TableMapping& mapping, const std::set<int>& leftOut);

}  // namespace ww::exchange
