// One prepared SQL statement: bind, step, read columns. Not for building SQL.
#pragma once

#include <cstdint>
#include <memory>
#include <span>
#include <string_view>

struct sqlite3_stmt;

namespace ww::store {

using ByteSpan = std::span<const std::uint8_t>;

/// What a step of a statement gave.
enum class Step {
    Row,
    Done,
    Failed,  ///< the database knows why
};

/// How SQLite holds a value.
enum class CellType { Null, Integer, Real, Text, Blob };

/// Owns the statement. Parameters count from 1, columns from 0. What is bound must live until the next reset;
/// what a column gives, until the next step.
class Statement {
  public:
    explicit Statement(sqlite3_stmt* statement) : m_statement(statement) {}

    /// Sets a parameter.
    void bindNull(int parameter);
    void bind(int parameter, std::int64_t number);
    void bind(int parameter, std::string_view text);
    void bind(int parameter, ByteSpan bytes);

    /// The next row, the end, or a failure, which the database words (Database::fault()).
    Step step();
    /// Ready to be bound and stepped again.
    void reset();
    /// Steps a statement that gives no rows, and resets it; whether it was carried out.
    bool run();

    /// Of the row in hand.
    int columnCount() const;
    std::string_view columnName(int column) const;
    CellType type(int column) const;
    bool isNull(int column) const { return type(column) == CellType::Null; }
    std::int64_t integer(int column) const;
    std::string_view text(int column) const;
    ByteSpan blob(int column) const;

  private:
    struct Finalizer {
        void operator()(sqlite3_stmt* statement) const;
    };
    std::unique_ptr<sqlite3_stmt, Finalizer> m_statement;
};

}  // namespace ww::store
