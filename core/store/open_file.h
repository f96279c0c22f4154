// A workbook file from disk to a checked database: never half. Not for its records.
#pragma once

#include "core/store/database.h"

namespace ww::store {

/// A database whose marks, pages and tables are sound.
struct OpenedFile {
    Database database;
    /// The file is of a later schema than this program writes: it can only be read.
    bool isNewer = false;
};

/// Opens and checks. An older schema is brought up to date: in the file, after a copy was kept, for writing;
/// in memory for reading. Refuses a missing, empty, foreign or damaged file with what was found.
base::Result<OpenedFile> openWorkbookFile(const std::filesystem::path& file, Access access);

/// Opens for reading and checks no more than that it is a workbook: for telling what is wrong with it.
base::Result<Database> openUnchecked(const std::filesystem::path& file);

/// What SQLite finds wrong with the pages, the rows' form and every index against its table, one finding
/// each; empty where nothing is.
base::Result<std::vector<std::string>> pageFindings(const Database& database);

}  // namespace ww::store
