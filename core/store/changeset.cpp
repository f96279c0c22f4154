#include "core/store/changeset.h"

#include <sqlite3.h>

#include <algorithm>
#include <unordered_map>

#include "core/base/hex.h"
#include "core/base/term.h"
#include "core/store/changeset_form.h"
#include "core/store/schema.h"
#include "core/store/store_messages.h"

namespace ww::store {

namespace {

/// SQLite's session functions take a changeset without const but do not write to it.
void* unconst(ByteSpan bytes) {
    return const_cast<std::uint8_t*>(bytes.data());
}

struct SqliteBytes {
    int size = 0;
    void* data = nullptr;

    SqliteBytes() = default;
    SqliteBytes(const SqliteBytes&) = delete;
    SqliteBytes& operator=(const SqliteBytes&) = delete;
    ~SqliteBytes() { sqlite3_free(data); }

    Bytes copy() const {
        const auto* begin = static_cast<const std::uint8_t*>(data);
        return data == nullptr ? Bytes() : Bytes(begin, begin + size);
    }
};

std::optional<Cell> cellOf(sqlite3_value* value) {
    if (value == nullptr) {
        return std::nullopt;
    }
    switch (sqlite3_value_type(value)) {
        case SQLITE_INTEGER:
            return Cell(std::int64_t{sqlite3_value_int64(value)});
        case SQLITE_BLOB: {
            const auto* data = static_cast<const std::uint8_t*>(sqlite3_value_blob(value));
            return Cell(data == nullptr ? Bytes() : Bytes(data, data + sqlite3_value_bytes(value)));
        }
        case SQLITE_NULL:
            return Cell();
        default: {
            const auto* data = reinterpret_cast<const char*>(sqlite3_value_text(value));
            return Cell(data == nullptr
                            ? std::string()
                            : std::string(data, static_cast<std::size_t>(sqlite3_value_bytes(value))));
        }
    }
}

int refuseConflict(void*, int, sqlite3_changeset_iter*) {
    return SQLITE_CHANGESET_ABORT;
}

int leaveOut(void*, int, sqlite3_changeset_iter*) {
    return SQLITE_CHANGESET_OMIT;
}

base::Fault unfit(const std::string& file) {
    return {&kFileDamaged, file, {base::term("a recorded change does not fit its tables")}};
}

base::Outcome applied(Database& database, ByteSpan changeset,
                      int (*onConflict)(void*, int, sqlite3_changeset_iter*)) {
    if (!isChangeset(changeset)) {
        return unfit(database.file().string());
    }
    const int code = sqlite3changeset_apply(database.handle(), static_cast<int>(changeset.size()),
                                            unconst(changeset), nullptr, onConflict, nullptr);
    if (code == SQLITE_OK) {
        return base::Done{};
    }
    if (code == SQLITE_ABORT || code == SQLITE_CORRUPT || code == SQLITE_SCHEMA ||
        code == SQLITE_CONSTRAINT) {
        return unfit(database.file().string());
    }
    return database.fault();
}

}  // namespace

struct ChangeRecorder::State {
    sqlite3_session* session = nullptr;
    ~State() { sqlite3session_delete(session); }
};

ChangeRecorder::ChangeRecorder(std::unique_ptr<State> state) : m_state(std::move(state)) {}
ChangeRecorder::~ChangeRecorder() = default;
ChangeRecorder::ChangeRecorder(ChangeRecorder&&) noexcept = default;

base::Result<ChangeRecorder> ChangeRecorder::start(Database& database) {
    auto state = std::make_unique<State>();
    if (sqlite3session_create(database.handle(), "main", &state->session) != SQLITE_OK) {
        return database.fault();
    }
    for (const RecordedTable& table : recordedTables()) {
        if (sqlite3session_attach(state->session, std::string(table.name).c_str()) != SQLITE_OK) {
            return database.fault();
        }
    }
    return ChangeRecorder(std::move(state));
}

base::Result<Bytes> ChangeRecorder::changes() {
    SqliteBytes bytes;
    if (const int code = sqlite3session_changeset(m_state->session, &bytes.size, &bytes.data);
        code != SQLITE_OK) {
        return base::Fault{&kFileUnwritable, "", {sqlite3_errstr(code)}};
    }
    return bytes.copy();
}

struct ChangesetGroup::State {
    sqlite3_changegroup* group = nullptr;
    ~State() { sqlite3changegroup_delete(group); }
};

ChangesetGroup::ChangesetGroup() : m_state(std::make_unique<State>()) {}
ChangesetGroup::~ChangesetGroup() = default;
ChangesetGroup::ChangesetGroup(ChangesetGroup&&) noexcept = default;

base::Outcome ChangesetGroup::add(ByteSpan changeset) {
    if (m_state->group == nullptr && sqlite3changegroup_new(&m_state->group) != SQLITE_OK) {
        return unfit("");
    }
    if (!isChangeset(changeset) || sqlite3changegroup_add(m_state->group, static_cast<int>(changeset.size()),
                                                          unconst(changeset)) != SQLITE_OK) {
        return unfit("");
    }
    return base::Done{};
}

base::Result<Bytes> ChangesetGroup::joined() const {
    SqliteBytes bytes;
    if (m_state->group != nullptr &&
        sqlite3changegroup_output(m_state->group, &bytes.size, &bytes.data) != SQLITE_OK) {
        return unfit("");
    }
    return bytes.copy();
}

struct ChangesetReader::State {
    sqlite3_changeset_iter* iterator = nullptr;
    int code = SQLITE_OK;
    const char* table = "";
    int columns = 0;
    int operation = 0;

    ~State() { sqlite3changeset_finalize(iterator); }
};

ChangesetReader::ChangesetReader(ByteSpan changeset) : m_state(std::make_unique<State>()) {
    m_state->code = isChangeset(changeset)
                        ? sqlite3changeset_start(&m_state->iterator, static_cast<int>(changeset.size()),
                                                 unconst(changeset))
                        : SQLITE_CORRUPT;
}

ChangesetReader::~ChangesetReader() = default;

bool ChangesetReader::next() {
    if (m_state->code != SQLITE_OK && m_state->code != SQLITE_ROW) {
        return false;
    }
    m_state->code = sqlite3changeset_next(m_state->iterator);
    if (m_state->code != SQLITE_ROW) {
        return false;
    }
    int indirect = 0;
    m_state->code = sqlite3changeset_op(m_state->iterator, &m_state->table, &m_state->columns,
                                        &m_state->operation, &indirect);
    return m_state->code == SQLITE_OK;
}

bool ChangesetReader::isDamaged() const {
    return m_state->code != SQLITE_OK && m_state->code != SQLITE_ROW && m_state->code != SQLITE_DONE;
}

std::string_view ChangesetReader::table() const {
    return m_state->table;
}

RowOperation ChangesetReader::operation() const {
    switch (m_state->operation) {
        case SQLITE_INSERT:
            return RowOperation::Inserted;
        case SQLITE_UPDATE:
            return RowOperation::Updated;
        default:
            return RowOperation::Deleted;
    }
}

int ChangesetReader::columnCount() const {
    return m_state->columns;
}

std::optional<Cell> ChangesetReader::before(int column) const {
    sqlite3_value* value = nullptr;
    if (m_state->operation == SQLITE_INSERT ||
        sqlite3changeset_old(m_state->iterator, column, &value) != SQLITE_OK) {
        return std::nullopt;
    }
    return cellOf(value);
}

std::optional<Cell> ChangesetReader::after(int column) const {
    sqlite3_value* value = nullptr;
    if (m_state->operation == SQLITE_DELETE ||
        sqlite3changeset_new(m_state->iterator, column, &value) != SQLITE_OK) {
        return std::nullopt;
    }
    return cellOf(value);
}

std::optional<project::Id> ChangesetReader::recordId() const {
    const auto cell = operation() == RowOperation::Inserted ? after(0) : before(0);
    const Bytes* bytes = cell ? std::get_if<Bytes>(&*cell) : nullptr;
    project::Id id;
    if (bytes == nullptr || bytes->size() != id.bytes.size()) {
        return std::nullopt;
    }
    std::copy(bytes->begin(), bytes->end(), id.bytes.begin());
    return id;
}

base::Result<Bytes> inverted(ByteSpan changeset) {
    if (!isChangeset(changeset)) {
        return unfit("");
    }
    SqliteBytes bytes;
    if (const int code = sqlite3changeset_invert(static_cast<int>(changeset.size()), changeset.data(),
                                                 &bytes.size, &bytes.data);
        code != SQLITE_OK) {
        return base::Fault{&kFileDamaged, "", {sqlite3_errstr(code)}};
    }
    return bytes.copy();
}

base::Outcome applyChangeset(Database& database, ByteSpan changeset) {
    return applied(database, changeset, refuseConflict);
}

base::Outcome applyWhatFits(Database& database, ByteSpan changeset) {
    return applied(database, changeset, leaveOut);
}

project::ChangeSet changeSetOf(ByteSpan changeset) {
    // What happened to a record, and whether its own row was part of it.
    struct Touched {
        project::RecordKind kind;
        bool isErased;
    };
    std::vector<project::Id> order;
    std::unordered_map<project::Id, Touched> touched;
    ChangesetReader reader(changeset);
    while (reader.next()) {
        const RecordedTable* table = recordedTable(reader.table());
        const auto id = reader.recordId();
        if (table == nullptr || !table->kind || !id) {
            continue;
        }
        const bool isErased = !table->holdsRowsOfOwner && reader.operation() == RowOperation::Deleted;
        const auto [found, isNew] = touched.try_emplace(*id, Touched{*table->kind, isErased});
        if (isNew) {
            order.push_back(*id);
        }
        found->second.isErased = found->second.isErased || isErased;
    }
    project::ChangeSet changes;
    for (const project::Id& id : order) {
        const Touched& what = touched.at(id);
        (what.isErased ? changes.erased : changes.put).push_back({what.kind, id});
    }
    return changes;
}

std::optional<std::string> text(const Cell& cell) {
    if (const auto* number = std::get_if<std::int64_t>(&cell)) {
        return std::to_string(*number);
    }
    if (const auto* words = std::get_if<std::string>(&cell)) {
        return *words;
    }
    if (const auto* bytes = std::get_if<Bytes>(&cell)) {
        return base::hex(*bytes);
    }
    return std::nullopt;
}

}  // namespace ww::store
