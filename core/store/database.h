// One connection to a workbook's SQLite database, opened defensively. Not for what the tables mean.
#pragma once

#include <filesystem>
#include <memory>
#include <string>

#include "core/base/result.h"
#include "core/store/statement.h"

struct sqlite3;

namespace ww::store {

enum class Access {
    Create,  ///< a new file; must not exist
    Write,
    Read,  ///< nothing is changed, but an interrupted change of a program that died is taken back
};

/// Owns the connection. Foreign keys are held; a schema from outside is not trusted; a commit is on the disk
/// when it returns (rollback journal, synchronous=EXTRA). One thread at a time.
class Database {
  public:
    /// Fails where the file is missing (or there, for Create), or cannot be read (or written).
    static base::Result<Database> open(const std::filesystem::path& file, Access access);
    static Database inMemory();
    /// A copy of everything in memory, for looking at an older file without changing it.
    base::Result<Database> copyInMemory() const;

    /// Runs SQL that gives no rows.
    base::Outcome execute(const std::string& sql);
    /// Fails where a table or column is not there or the file cannot be read.
    base::Result<Statement> prepare(const std::string& sql) const;
    /// The first column of the first row as a number.
    base::Result<std::int64_t> number(const std::string& sql) const;

    /// What went wrong last, as a message about this file.
    base::Fault fault() const;

    /// Writes a whole copy, without gaps, into a file that does not exist yet, and waits for the disk.
    base::Outcome copyInto(const std::filesystem::path& file);

    const std::filesystem::path& file() const { return m_file; }
    /// For the other files of this folder.
    sqlite3* handle() const { return m_handle.get(); }

  private:
    struct Closer {
        void operator()(sqlite3* handle) const;
    };
    Database(sqlite3* handle, std::filesystem::path file);
    void harden();

    std::unique_ptr<sqlite3, Closer> m_handle;
    std::filesystem::path m_file;
};

/// BEGIN IMMEDIATE now, ROLLBACK at the end of the scope unless commit() was carried out.
class Transaction {
  public:
    explicit Transaction(Database& database);
    ~Transaction();
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;

    /// Whether the transaction could begin: another program may hold the file, or the disk refuse.
    const base::Outcome& begun() const { return m_begun; }
    base::Outcome commit();

  private:
    Database& m_database;
    base::Outcome m_begun;
    bool m_isOpen = false;
};

}  // namespace ww::store
