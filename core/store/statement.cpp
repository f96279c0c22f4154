#include "core/store/statement.h"

#include <sqlite3.h>

#include "core/base/expects.h"

namespace ww::store {

void Statement::Finalizer::operator()(sqlite3_stmt* statement) const {
    sqlite3_finalize(statement);
}

void Statement::bindNull(int parameter) {
    EXPECTS(sqlite3_bind_null(m_statement.get(), parameter) == SQLITE_OK);
}

void Statement::bind(int parameter, std::int64_t number) {
    EXPECTS(sqlite3_bind_int64(m_statement.get(), parameter, number) == SQLITE_OK);
}

void Statement::bind(int parameter, std::string_view text) {
    // An empty view may hold a null pointer, which SQLite would take for NULL.
    const char* data = text.data() == nullptr ? "" : text.data();
    EXPECTS(sqlite3_bind_text64(m_statement.get(), parameter, data, text.size(), SQLITE_STATIC,
                                SQLITE_UTF8) == SQLITE_OK);
}

void Statement::bind(int parameter, ByteSpan bytes) {
    const void* data = bytes.empty() ? static_cast<const void*>("") : bytes.data();
    EXPECTS(sqlite3_bind_blob64(m_statement.get(), parameter, data, bytes.size(), SQLITE_STATIC) ==
            SQLITE_OK);
}

Step Statement::step() {
    switch (sqlite3_step(m_statement.get())) {
        case SQLITE_ROW:
            return Step::Row;
        case SQLITE_DONE:
            return Step::Done;
        default:
            return Step::Failed;
    }
}

void Statement::reset() {
    sqlite3_reset(m_statement.get());
}

bool Statement::run() {
    const Step result = step();
    reset();
    return result == Step::Done;
}

int Statement::columnCount() const {
    return sqlite3_column_count(m_statement.get());
}

std::string_view Statement::columnName(int column) const {
    return sqlite3_column_name(m_statement.get(), column);
}

CellType Statement::type(int column) const {
    switch (sqlite3_column_type(m_statement.get(), column)) {
        case SQLITE_INTEGER:
            return CellType::Integer;
        case SQLITE_FLOAT:
            return CellType::Real;
        case SQLITE_TEXT:
            return CellType::Text;
        case SQLITE_BLOB:
            return CellType::Blob;
        default:
            return CellType::Null;
    }
}

std::int64_t Statement::integer(int column) const {
    return sqlite3_column_int64(m_statement.get(), column);
}

std::string_view Statement::text(int column) const {
    const auto* data = reinterpret_cast<const char*>(sqlite3_column_text(m_statement.get(), column));
    const auto size = static_cast<std::size_t>(sqlite3_column_bytes(m_statement.get(), column));
    return data == nullptr ? std::string_view() : std::string_view(data, size);
}

ByteSpan Statement::blob(int column) const {
    const auto* data = static_cast<const std::uint8_t*>(sqlite3_column_blob(m_statement.get(), column));
    const auto size = static_cast<std::size_t>(sqlite3_column_bytes(m_statement.get(), column));
    return data == nullptr ? ByteSpan() : ByteSpan(data, size);
}

}  // namespace ww::store
