#include "core/store/journal.h"

#include <algorithm>

#include "core/store/schema.h"
#include "core/store/store_messages.h"

namespace ww::store {

namespace {

/// can_undo of a record that is part of a merge; else 0 or 1.
constexpr std::int64_t kPartOfMerge = 2;

std::int64_t undoMarkOf(const JournalRecord& record) {
    return record.isPartOfMerge ? kPartOfMerge : record.canUndo ? 1 : 0;
}

std::optional<std::int64_t> optionalInteger(const Statement& row, int column) {
    return row.isNull(column) ? std::nullopt : std::optional(row.integer(column));
}

/// The record in the columns of the statement of walkJournal(), whose changes are column 9.
JournalRecord recordFrom(const Statement& row) {
    JournalRecord record;
    record.sequence = row.integer(0);
    record.time = base::Instant{row.integer(1), std::int16_t{0}};
    record.person = row.text(2);
    record.machine = row.text(3);
    record.label = row.text(4);
    record.undoes = optionalInteger(row, 5);
    record.redoes = optionalInteger(row, 6);
    record.canUndo = row.integer(7) != 0;
    record.isPartOfMerge = row.integer(7) == kPartOfMerge;
    record.schemaVersion = row.integer(8);
    const ByteSpan digest = row.blob(10);
    if (digest.size() == record.digest.bytes.size()) {
        std::copy(digest.begin(), digest.end(), record.digest.bytes.begin());
    }
    return record;
}

void bindOptional(Statement& statement, int parameter, const std::optional<std::int64_t>& number) {
    number ? statement.bind(parameter, *number) : statement.bindNull(parameter);
}

}  // namespace

base::Digest digestOf(const JournalRecord& record, ByteSpan changeset, const base::Digest& previous) {
    base::Digester digester;
    digester.add(previous.bytes);
    digester.addNumber(record.sequence);
    digester.addNumber(record.time.seconds);
    digester.addText(record.person);
    digester.addText(record.machine);
    digester.addText(record.label);
    // Sequences begin at 1, so 0 stands for none.
    digester.addNumber(record.undoes.value_or(0));
    digester.addNumber(record.redoes.value_or(0));
    digester.addNumber(undoMarkOf(record));
    digester.addNumber(record.schemaVersion);
    digester.add(changeset);
    return digester.finish();
}

base::Outcome appendToJournal(Database& database, const JournalRecord& record, ByteSpan changeset) {
    auto statement = database.prepare(
        "INSERT INTO "
        "journal(sequence,utc,person,machine,label,undoes,redoes,can_undo,schema_version,changeset,"
        "digest) VALUES(?,?,?,?,?,?,?,?,?,?,?)");
    if (!statement) {
        return statement.fault();
    }
    statement->bind(1, record.sequence);
    statement->bind(2, record.time.seconds);
    statement->bind(3, std::string_view(record.person));
    statement->bind(4, std::string_view(record.machine));
    statement->bind(5, std::string_view(record.label));
    bindOptional(*statement, 6, record.undoes);
    bindOptional(*statement, 7, record.redoes);
    statement->bind(8, undoMarkOf(record));
    statement->bind(9, record.schemaVersion);
    statement->bind(10, changeset);
    statement->bind(11, ByteSpan(record.digest.bytes));
    if (statement->step() != Step::Done) {
        return database.fault();
    }
    return base::Done{};
}

base::Result<JournalWalk> walkJournal(
    const Database& database, const std::function<bool(const JournalRecord&, ByteSpan changeset)>& visit) {
    auto statement = database.prepare(
        "SELECT sequence,utc,person,machine,label,undoes,redoes,can_undo,schema_version,changeset,digest "
        "FROM journal ORDER BY sequence");
    if (!statement) {
        return statement.fault();
    }
    JournalWalk walk;
    Step step = statement->step();
    for (; step == Step::Row; step = statement->step()) {
        const JournalRecord record = recordFrom(*statement);
        const ByteSpan changeset = statement->blob(9);
        const bool isKnown = record.schemaVersion <= kSchemaVersion;
        if (record.sequence != walk.records + 1 ||
            (isKnown && record.digest != digestOf(record, changeset, walk.newest))) {
            walk.firstBroken = walk.records + 1;
            return walk;
        }
        walk.records = record.sequence;
        walk.newest = record.digest;
        if (!visit(record, changeset)) {
            return walk;
        }
    }
    if (step == Step::Failed) {
        return database.fault();
    }
    return walk;
}

base::Result<Bytes> changesetOf(const Database& database, std::int64_t sequence) {
    auto statement = database.prepare("SELECT changeset FROM journal WHERE sequence=?");
    if (!statement) {
        return statement.fault();
    }
    statement->bind(1, sequence);
    if (statement->step() != Step::Row) {
        return base::Fault{&kChainBroken, database.file().string(), {std::to_string(sequence)}};
    }
    const ByteSpan bytes = statement->blob(0);
    return Bytes(bytes.begin(), bytes.end());
}

}  // namespace ww::store
