// Puts records into the tables of a workbook and takes them out. Not for transactions and the journal.
#pragma once

#include <memory>

#include "core/project/edit.h"
#include "core/store/database.h"

namespace ww::store {

/// Keeps its prepared statements; the database must outlive it. Used inside a transaction.
class RecordWriter {
  public:
    explicit RecordWriter(Database& database);
    ~RecordWriter();

    /// Adds a record or replaces the one with the same id, with all rows of its table.
    base::Outcome put(const project::AnyRecord& record);
    /// Takes a record out with all rows of its table; nothing happens where there is none.
    base::Outcome erase(const project::RecordRef& record);
    /// Keeps a fact about the file itself.
    base::Outcome putMeta(std::string_view key, std::string_view value);

  private:
    struct Statements;
    Database& m_database;
    std::unique_ptr<Statements> m_statements;
};

}  // namespace ww::store
