#include "core/store/database.h"

#include <sqlite3.h>

#include "core/store/file_steps.h"
#include "core/store/store_messages.h"

namespace ww::store {

namespace {

/// Longest wait for another program that is in the middle of a commit or of reading.
constexpr int kPatience_ms = 5000;
/// Far above what a job of 10,000 terminals needs in one record; far below what would exhaust a laptop.
constexpr int kLongestCell_bytes = 512 * 1024 * 1024;

int openFlags(Access access) {
    // A connection is used by one thread at a time, so SQLite need not guard every call.
    constexpr int kAlways = SQLITE_OPEN_EXRESCODE | SQLITE_OPEN_PRIVATECACHE | SQLITE_OPEN_NOMUTEX;
    return kAlways | SQLITE_OPEN_READWRITE | (access == Access::Create ? SQLITE_OPEN_CREATE : 0);
}

}  // namespace

void Database::Closer::operator()(sqlite3* handle) const {
    sqlite3_close_v2(handle);
}

Database::Database(sqlite3* handle, std::filesystem::path file) : m_handle(handle), m_file(std::move(file)) {}

void Database::harden() {
    sqlite3* db = m_handle.get();
    sqlite3_busy_timeout(db, kPatience_ms);
    sqlite3_db_config(db, SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr);
    sqlite3_db_config(db, SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0, nullptr);
    sqlite3_db_config(db, SQLITE_DBCONFIG_DQS_DDL, 0, nullptr);
    sqlite3_db_config(db, SQLITE_DBCONFIG_DQS_DML, 0, nullptr);
    // A workbook has neither; a file that brings its own must not run them.
    sqlite3_db_config(db, SQLITE_DBCONFIG_ENABLE_TRIGGER, 0, nullptr);
    sqlite3_db_config(db, SQLITE_DBCONFIG_ENABLE_VIEW, 0, nullptr);
    sqlite3_db_config(db, SQLITE_DBCONFIG_ENABLE_FKEY, 1, nullptr);
    sqlite3_limit(db, SQLITE_LIMIT_LENGTH, kLongestCell_bytes);
    sqlite3_limit(db, SQLITE_LIMIT_SQL_LENGTH, 100'000);
    sqlite3_limit(db, SQLITE_LIMIT_COLUMN, 100);
    sqlite3_limit(db, SQLITE_LIMIT_EXPR_DEPTH, 100);
    sqlite3_limit(db, SQLITE_LIMIT_COMPOUND_SELECT, 10);
    sqlite3_limit(db, SQLITE_LIMIT_VDBE_OP, 100'000);
    sqlite3_limit(db, SQLITE_LIMIT_FUNCTION_ARG, 10);
    sqlite3_limit(db, SQLITE_LIMIT_TRIGGER_DEPTH, 1);
    // VACUUM INTO attaches the copy.
    sqlite3_limit(db, SQLITE_LIMIT_ATTACHED, 1);
    sqlite3_limit(db, SQLITE_LIMIT_LIKE_PATTERN_LENGTH, 100);
    sqlite3_limit(db, SQLITE_LIMIT_VARIABLE_NUMBER, 100);
    sqlite3_limit(db, SQLITE_LIMIT_WORKER_THREADS, 0);
}

base::Result<Database> Database::open(const std::filesystem::path& file, Access access) {
    std::error_code ignored;
    const bool isThere = std::filesystem::exists(file, ignored);
    if (isThere == (access == Access::Create)) {
        return base::Fault{isThere ? &kFileExists : &kFileMissing, file.string(), {}};
    }
    sqlite3* handle = nullptr;
    const int code = sqlite3_open_v2(file.c_str(), &handle, openFlags(access), nullptr);
    Database database(handle, file);
    if (code != SQLITE_OK) {
        return database.fault();
    }
    database.harden();
    if (auto set = database.execute("PRAGMA cell_size_check=ON; PRAGMA mmap_size=0; PRAGMA synchronous=EXTRA;"
                                    "PRAGMA temp_store=MEMORY;");
        !set) {
        return set.fault();
    }
    if (access == Access::Read) {
        if (auto set = database.execute("PRAGMA query_only=ON;"); !set) {
            return set.fault();
        }
    } else if (auto set = database.execute("PRAGMA journal_mode=DELETE;"); !set) {
        return set.fault();
    }
    return database;
}

Database Database::inMemory() {
    sqlite3* handle = nullptr;
    const int code = sqlite3_open_v2(":memory:", &handle, openFlags(Access::Create), nullptr);
    Database database(handle, {});
    EXPECTS(code == SQLITE_OK);
    database.harden();
    return database;
}

base::Result<Database> Database::copyInMemory() const {
    Database copy = inMemory();
    copy.m_file = m_file;
    sqlite3_backup* backup = sqlite3_backup_init(copy.handle(), "main", handle(), "main");
    if (backup == nullptr) {
        return copy.fault();
    }
    sqlite3_backup_step(backup, -1);
    if (sqlite3_backup_finish(backup) != SQLITE_OK) {
        return copy.fault();
    }
    return copy;
}

base::Outcome Database::execute(const std::string& sql) {
    if (sqlite3_exec(m_handle.get(), sql.c_str(), nullptr, nullptr, nullptr) != SQLITE_OK) {
        return fault();
    }
    return base::Done{};
}

base::Result<Statement> Database::prepare(const std::string& sql) const {
    sqlite3_stmt* statement = nullptr;
    if (sqlite3_prepare_v3(m_handle.get(), sql.c_str(), static_cast<int>(sql.size()),
                           SQLITE_PREPARE_PERSISTENT, &statement, nullptr) != SQLITE_OK) {
        return fault();
    }
    return Statement(statement);
}

base::Result<std::int64_t> Database::number(const std::string& sql) const {
    auto statement = prepare(sql);
    if (!statement) {
        return statement.fault();
    }
    if (statement->step() != Step::Row) {
        return fault();
    }
    return statement->integer(0);
}

base::Fault Database::fault() const {
    const int extended = sqlite3_extended_errcode(m_handle.get());
    const std::string reason = sqlite3_errmsg(m_handle.get());
    const std::string subject = m_file.string();
    if (extended == SQLITE_READONLY_ROLLBACK || extended == SQLITE_READONLY_RECOVERY ||
        extended == SQLITE_READONLY_CANTLOCK) {
        return {&kRecoveryNeedsWriting, subject, {}};
    }
    switch (extended & 0xFF) {
        case SQLITE_NOTADB:
            return {&kNotAWorkbook, subject, {}};
        case SQLITE_CORRUPT:
            return {&kFileDamaged, subject, {reason}};
        case SQLITE_ERROR:
        case SQLITE_SCHEMA:
            return {&kSchemaUnexpected, subject, {reason}};
        case SQLITE_BUSY:
        case SQLITE_LOCKED:
            return {&kFileBusy, subject, {}};
        case SQLITE_CANTOPEN:
        case SQLITE_PERM:
        case SQLITE_AUTH:
            return {&kFileUnreadable, subject, {reason}};
        default:
            return {&kFileUnwritable, subject, {reason}};
    }
}

base::Outcome Database::copyInto(const std::filesystem::path& file) {
    auto wasReading = number("PRAGMA query_only");
    if (!wasReading) {
        return wasReading.fault();
    }
    // The copy is written through this connection, the file of the connection is not.
    if (auto off = execute("PRAGMA query_only=OFF"); !off) {
        return off.fault();
    }
    base::Outcome outcome = base::Done{};
    if (auto statement = prepare("VACUUM INTO ?1"); statement) {
        const std::string name = file.string();
        statement->bind(1, name);
        if (!statement->run()) {
            outcome = base::Fault{&kFileUnwritable, file.string(), {sqlite3_errmsg(m_handle.get())}};
        }
    } else {
        outcome = statement.fault();
    }
    if (*wasReading != 0) {
        if (auto on = execute("PRAGMA query_only=ON"); !on) {
            return on.fault();
        }
    }
    return outcome ? syncFile(file) : outcome;
}

Transaction::Transaction(Database& database)
    : m_database(database), m_begun(database.execute("BEGIN IMMEDIATE")), m_isOpen(m_begun.ok()) {}

Transaction::~Transaction() {
    if (m_isOpen) {
        // SQLite has rolled back by itself after some faults; then there is nothing left to do.
        (void)m_database.execute("ROLLBACK");
    }
}

base::Outcome Transaction::commit() {
    EXPECTS(m_isOpen);
    if (auto done = m_database.execute("COMMIT"); !done) {
        return done.fault();
    }
    m_isOpen = false;
    return base::Done{};
}

}  // namespace ww::store
