// Rows of the recorded tables as plain values, read and written by key: what merging works on.
// Not for records (record_reader.h, record_writer.h).
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/store/changeset.h"
#include "core/store/schema.h"

namespace ww::store {

using Row = std::vector<Cell>;

/// Columns that are one value together: digits and their unit, a moment and its zone.
struct RowField {
    std::string name;  ///< of the first column
    std::size_t first = 0;
    std::size_t count = 1;
};

/// A column that holds the id of a row of another table.
struct RowReference {
    std::size_t column = 0;
    std::string table;
};

/// What a recorded table is made of.
struct TableForm {
    const RecordedTable* table = nullptr;
    std::vector<std::string> columns;
    std::vector<RowField> fields;  ///< all columns but the key, in order
    std::vector<RowReference> references;

    std::size_t keyColumns() const { return static_cast<std::size_t>(table->keyColumns); }
    /// The cells of a row that make its primary key.
    Row keyOf(const Row& row) const {
        return Row(row.begin(), row.begin() + static_cast<std::ptrdiff_t>(keyColumns()));
    }
    /// Null where the table has no such field.
    const RowField* field(std::string_view name) const;
};

/// The cells of one field of a row.
Row cellsOf(const Row& row, const RowField& field);

/// The forms of all recorded tables, in their order.
base::Result<std::vector<TableForm>> tableForms(const Database& database);

/// Reads and writes rows; keeps its prepared statements. The database must outlive it.
class RawRows {
  public:
    explicit RawRows(Database& database) : m_database(database) {}

    /// The row with this key; nothing where there is none.
    base::Result<std::optional<Row>> find(const TableForm& form, const Row& key);
    /// The rows whose column holds this value, in order of the key.
    base::Result<std::vector<Row>> where(const TableForm& form, std::size_t column, const Cell& value);
    base::Outcome insert(const TableForm& form, const Row& row);
    /// Puts these cells into one field of the row with this key.
    base::Outcome setField(const TableForm& form, const Row& key, const RowField& field, const Row& cells);
    base::Outcome erase(const TableForm& form, const Row& key);

    Database& database() { return m_database; }

  private:
    base::Result<Statement*> prepared(const std::string& sql);
    base::Outcome run(const std::string& sql, const Row& first, const Row& second = {});
    base::Result<std::vector<Row>> rows(const std::string& sql, const Row& parameters);

    Database& m_database;
    std::map<std::string, Statement> m_prepared;
};

/// A row together with the table it stands in.
struct PlacedRow {
    std::string table;
    Row row;

    bool operator==(const PlacedRow&) const = default;
};

/// The rows as a changeset that inserts them, and back. Rows of tables that are not recorded are left out.
base::Result<Bytes> packed(const std::vector<PlacedRow>& rows);
std::vector<PlacedRow> unpacked(ByteSpan changeset);

/// The cell of an id, and the id in a cell; nothing where it holds none.
Cell cellOf(const project::Id& id);
std::optional<project::Id> idIn(const Cell& cell);

}  // namespace ww::store
