// What one action changed, row by row, as SQLite's session extension writes it: recorded, read, inverted,
// applied. Not for the journal that keeps it.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/project/edit.h"
#include "core/store/database.h"

namespace ww::store {

using Bytes = std::vector<std::uint8_t>;

/// A value in one column; monostate is NULL.
using Cell = std::variant<std::monostate, std::int64_t, std::string, Bytes>;

/// Records every change to the recorded tables from its making on.
class ChangeRecorder {
  public:
    /// Fails where memory or the tables are missing.
    static base::Result<ChangeRecorder> start(Database& database);
    ~ChangeRecorder();
    ChangeRecorder(ChangeRecorder&&) noexcept;
    ChangeRecorder& operator=(ChangeRecorder&&) = delete;

    /// What has changed so far; empty where nothing has.
    base::Result<Bytes> changes();

  private:
    struct State;
    explicit ChangeRecorder(std::unique_ptr<State> state);
    std::unique_ptr<State> m_state;
};

enum class RowOperation { Inserted, Updated, Deleted };

/// Walks the rows of a changeset. The bytes must outlive it.
class ChangesetReader {
  public:
    explicit ChangesetReader(ByteSpan changeset);
    ~ChangesetReader();
    ChangesetReader(const ChangesetReader&) = delete;
    ChangesetReader& operator=(const ChangesetReader&) = delete;

    /// Goes to the next row; false at the end or where the bytes are not a changeset.
    bool next();
    /// Whether the walk ended at bytes that are none.
    bool isDamaged() const;

    /// Of the row in hand.
    std::string_view table() const;
    RowOperation operation() const;
    int columnCount() const;
    /// Value before (of an updated or deleted row) or after (updated or inserted); nothing where an update
    /// leaves the column alone. Key columns of an update are in `before`.
    std::optional<Cell> before(int column) const;
    std::optional<Cell> after(int column) const;
    /// The id that the first column holds, of the record itself or of the owner of a row.
    std::optional<project::Id> recordId() const;

  private:
    struct State;
    std::unique_ptr<State> m_state;
};

/// The changeset that takes these changes back.
base::Result<Bytes> inverted(ByteSpan changeset);

/// Applies all changes or none; a row that is not as the changeset expects it is a fault (kFileDamaged).
base::Outcome applyChangeset(Database& database, ByteSpan changeset);

/// Many changesets as one that has their joint effect: a row that was changed often is written once.
class ChangesetGroup {
  public:
    ChangesetGroup();
    ~ChangesetGroup();
    ChangesetGroup(ChangesetGroup&&) noexcept;

    /// Joins one that follows on those before; all must be of one schema. Fails where it is no changeset or
    /// there is no memory.
    base::Outcome add(ByteSpan changeset);
    base::Result<Bytes> joined() const;

  private:
    struct State;
    std::unique_ptr<State> m_state;
};

/// Applies what fits and leaves out the rest: for following single records through a part of the journal.
base::Outcome applyWhatFits(Database& database, ByteSpan changeset);

/// Which records a changeset puts and erases; rows of a table belonging to a record count as a change of it.
project::ChangeSet changeSetOf(ByteSpan changeset);

/// A value for people: text as it is, ids in hexadecimal digits, nothing for NULL.
std::optional<std::string> text(const Cell& cell);

}  // namespace ww::store
