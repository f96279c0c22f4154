// The tables of a workbook file, their version, and the check that a file has exactly these.
// Not for turning rows into records (record_reader.h).
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "core/project/edit.h"
#include "core/store/database.h"

namespace ww::store {

/// "WWJ1": marks the file as a workbook (byte 68 of the file).
inline constexpr std::int64_t kApplicationId = 0x57574A31;
/// The schema that this program writes.
inline constexpr int kSchemaVersion = 7;
/// The first version of the program that writes this schema; kept in the file for older programs to name.
inline constexpr std::string_view kSchemaNeeds = "0.6.0";

/// The key in the table meta of the workbook's identity, the same in all its copies.
inline constexpr std::string_view kWorkbookIdKey = "workbook_id";

/// A table whose changes the journal records, and the kind of record its rows belong to.
struct RecordedTable {
    std::string_view name;
    std::optional<project::RecordKind> kind;  ///< nothing: about the file itself
    bool holdsRowsOfOwner = false;            ///< first column is the id of the owner, second the position
    int keyColumns = 1;                       ///< the first so many columns are the primary key
};

/// All tables but the journal, referred-to before referring.
std::span<const RecordedTable> recordedTables();
/// The table of that name; null for any other name.
const RecordedTable* recordedTable(std::string_view name);

/// Makes the tables of schema 1 in an empty database and marks it as a workbook.
base::Outcome createSchemaOne(Database& database);

/// The digest of the tables of kSchemaVersion as the steps of migration.h make them. A file with this digest
/// needs nothing to be compared with; one without it (another SQLite may write a step's words another way)
/// is.
inline constexpr std::string_view kCurrentSchemaDigest =
    "77db98c0e77044cb86682e65c83de27bb33479b1902d2fdf22f75ccf7223c56a";
/// SHA-256 over the names and the SQL of all tables, indices, views and triggers, in the order of their
/// names.
base::Result<std::string> schemaDigest(const Database& database);

/// Whether the tables are exactly those of kSchemaVersion, word for word; else what differs.
base::Outcome checkSchema(const Database& database);

}  // namespace ww::store
