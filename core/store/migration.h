// From an older schema of the workbook file to the present one, step by step.
// Not for what the tables are (schema.h).
#pragma once

#include <span>
#include <string_view>

#include "core/store/database.h"

namespace ww::store {

/// Brings a file to schema `to` from the one before. The SQL must give the same result for the same rows: a
/// replay of the journal runs it again at the same place.
struct MigrationStep {
    int to = 0;
    std::string_view sql;
};

/// The steps of this program, 2 first.
std::span<const MigrationStep> migrationSteps();

/// The schema of a database; its user_version.
base::Result<std::int64_t> schemaVersionOf(const Database& database);

/// Runs the steps above the database's version up to `target`, each in its own transaction.
base::Outcome migrate(Database& database, int target, std::span<const MigrationStep> steps);

/// migrate(), after a whole copy of the file was kept beside it under the name keptCopyOf() gives. Where it
/// succeeds, the oldest of such copies go (kept_copies.h).
base::Outcome migrateFile(Database& database, int target, std::span<const MigrationStep> steps);

/// The tables of kSchemaVersion in an empty database.
base::Outcome createCurrentSchema(Database& database);

/// Such a database in memory; the steps are run once in the life of the program.
base::Result<Database> emptyInCurrentSchema();

}  // namespace ww::store
