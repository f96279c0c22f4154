// A table being built, digits as typed, for a CSV file or a sheet. Not for reading (table_reader.h).
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/exchange/table_reader.h"
#include "core/spreadsheet/sheet.h"

namespace ww::exchange {

inline constexpr base::MessageForm kTableNotWritten{
    "table_not_written", "the table cannot be written; check room and permissions there"};

/// A column with a dimension takes the unit that most of its cells were entered in; a cell in another unit
/// carries that unit behind a blank.
class CsvTable {
  public:
    explicit CsvTable(std::vector<std::string> columns) : m_columns(std::move(columns)) {}
    /// Columns with a dimension have its usual SI unit where no cell has one.
    explicit CsvTable(const std::vector<ColumnSpec>& columns);

    /// Adds columns behind those there are.
    void addColumns(const std::vector<ColumnSpec>& columns);
    void begin() { m_rows.emplace_back(); }
    void add(std::string text) { put(std::move(text)); }
    void add(int number) { put(base::Decimal::fromNumber(number, 0)); }
    void add(const base::Decimal& number) { put(number); }
    void add(const std::optional<base::Decimal>& number) { number ? put(*number) : put(std::monostate()); }
    void add(const std::optional<base::Instant>& moment) { moment ? put(*moment) : put(std::monostate()); }
    void addDay(const std::optional<base::Instant>& moment) {
        moment ? put(spreadsheet::Day{*moment}) : put(std::monostate());
    }
    template <class Q>
    void add(const Measured<Q>& value) {
        m_rows.back().push_back({value.digits, value.unit});
    }
    template <class Q>
    void add(const std::optional<Measured<Q>>& value) {
        if (value) {
            add(*value);
        } else {
            add(std::string());
        }
    }

    /// Unit of a column where no cell has one: still needed in the header.
    void setUsualUnit(const std::string& column, Unit unit) { m_usual.insert_or_assign(column, unit); }

    /// The table as it would be written.
    std::string written() const;
    base::Outcome write(const std::filesystem::path& file) const;
    /// The table as a sheet of this name: numbers and moments as such, the same headings.
    spreadsheet::WrittenSheet sheet(std::string name) const;

  private:
    struct Cell {
        spreadsheet::WrittenCell value;
        std::optional<Unit> unit;
    };

    void put(spreadsheet::WrittenCell value) { m_rows.back().push_back({std::move(value), std::nullopt}); }
    std::vector<std::optional<Unit>> units() const;
    std::vector<std::string> header(const std::vector<std::optional<Unit>>& units) const;

    std::optional<Unit> unitOf(std::size_t column) const;

    std::vector<std::string> m_columns;
    std::vector<std::vector<Cell>> m_rows;
    std::map<std::string, Unit> m_usual;
};

}  // namespace ww::exchange
