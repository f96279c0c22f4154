#include "core/store/record_reader.h"

#include <string>
#include <unordered_map>

#include "core/store/record_fields.h"
#include "core/store/row_decoder.h"
#include "core/store/store_messages.h"

namespace ww::store {

namespace {

using base::Done;
using base::Fault;
using base::Outcome;
using project::Id;

template <class Record>
const std::string& selectSql() {
    static const std::string sql =
        "SELECT " + joined(ColumnNames::of<Record>()) + " FROM " + std::string(kTableOf<Record>);
    return sql;
}

/// Calls `take(Record&&)` for every row that a statement gives.
template <class Record, class Take>
Outcome eachRow(const Database& database, Statement& statement, quantity::Density density, Take take) {
    Step step = statement.step();
    for (; step == Step::Row; step = statement.step()) {
        Record record{};
        RowDecoder decoder(statement, density);
        fields(decoder, record);
        if (decoder.failedColumn() != nullptr) {
            return Fault{
                &kRowUnreadable, database.file().string(), {kTableOf<Record>, decoder.failedColumn()}};
        }
        take(std::move(record));
    }
    if (step == Step::Failed) {
        return database.fault();
    }
    return Done{};
}

template <class Record, class Take>
Outcome eachRecord(const Database& database, const std::string& order, quantity::Density density, Take take) {
    auto statement = database.prepare(selectSql<Record>() + " ORDER BY " + order);
    if (!statement) {
        return statement.fault();
    }
    return eachRow<Record>(database, *statement, density, take);
}

/// Records in order of first entry.
template <class Record>
Outcome readAll(const Database& database, project::Project& project) {
    return eachRecord<Record>(database, "rowid", project.fluid().density(),
                              [&](Record&& record) { project.put(std::move(record)); });
}

/// Records that have rows of their own.
template <class Record, class Row>
Outcome readAllWithRows(const Database& database, const char* ownerColumn, project::Project& project) {
    std::unordered_map<Id, std::vector<Row>> rows;
    const quantity::Density density = project.fluid().density();
    if (auto read = eachRecord<OwnedRow<Row>>(
            database, std::string(ownerColumn) + ",position", density,
            [&](OwnedRow<Row>&& row) { rows[row.owner].push_back(std::move(row.row)); });
        !read) {
        return read;
    }
    return eachRecord<Record>(database, "rowid", density, [&](Record&& record) {
        if (const auto found = rows.find(record.id); found != rows.end()) {
            record.rows = std::move(found->second);
        }
        project.put(std::move(record));
    });
}

Outcome readJob(const Database& database, project::Project& project) {
    int count = 0;
    // The job holds no head, so the density does not matter yet.
    auto read =
        eachRecord<project::Job>(database, "rowid", project.fluid().density(), [&](project::Job&& job) {
            project.put(std::move(job));
            ++count;
        });
    if (read && count != 1) {
        return Fault{&kFileDamaged,
                     database.file().string(),
                     {"it holds " + std::to_string(count) + " jobs instead of one"}};
    }
    return read;
}

template <class Record>
base::Result<std::optional<project::AnyRecord>> readOne(const Database& database, const Id& id,
                                                        quantity::Density density) {
    auto statement = database.prepare(selectSql<Record>() + " WHERE id=?");
    if (!statement) {
        return statement.fault();
    }
    statement->bind(1, ByteSpan(id.bytes));
    std::optional<project::AnyRecord> found;
    auto read =
        eachRow<Record>(database, *statement, density, [&](Record&& record) { found = std::move(record); });
    if (!read) {
        return read.fault();
    }
    return found;
}

/// Adds the rows of one record.
template <class Record, class Row>
base::Result<std::optional<project::AnyRecord>> readOneWithRows(const Database& database,
                                                                const char* ownerColumn, const Id& id,
                                                                quantity::Density density) {
    auto record = readOne<Record>(database, id, density);
    if (!record || !*record) {
        return record;
    }
    auto statement =
        database.prepare(selectSql<OwnedRow<Row>>() + " WHERE " + ownerColumn + "=? ORDER BY position");
    if (!statement) {
        return statement.fault();
    }
    statement->bind(1, ByteSpan(id.bytes));
    auto& rows = std::get<Record>(**record).rows;
    auto read = eachRow<OwnedRow<Row>>(database, *statement, density,
                                       [&](OwnedRow<Row>&& row) { rows.push_back(std::move(row.row)); });
    if (!read) {
        return read.fault();
    }
    return record;
}

}  // namespace

base::Result<project::Project> readProject(const Database& database) {
    project::Project project;
    const auto steps = {
        +[](const Database& db, project::Project& p) { return readJob(db, p); },
        +[](const Database& db, project::Project& p) {
            return readAllWithRows<project::ValveModel, project::ValveTableRow>(db, "valve", p);
        },
        +[](const Database& db, project::Project& p) {
            return readAllWithRows<project::Pump, project::PumpTableRow>(db, "pump", p);
        },
        +[](const Database& db, project::Project& p) { return readAll<project::Instrument>(db, p); },
        +[](const Database& db, project::Project& p) { return readAll<project::Person>(db, p); },
        +[](const Database& db, project::Project& p) { return readAll<project::Branch>(db, p); },
        +[](const Database& db, project::Project& p) { return readAll<project::Round>(db, p); },
        +[](const Database& db, project::Project& p) { return readAll<project::Reading>(db, p); },
        +[](const Database& db, project::Project& p) { return readAll<project::PumpReading>(db, p); },
    };
    for (const auto step : steps) {
        if (auto read = step(database, project); !read) {
            return read.fault();
        }
    }
    return project;
}

base::Result<std::optional<project::AnyRecord>> readRecord(const Database& database,
                                                           const project::RecordRef& record,
                                                           quantity::Density density) {
    using project::RecordKind;
    switch (record.kind) {
        case RecordKind::Job:
            return readOne<project::Job>(database, record.id, density);
        case RecordKind::ValveModel:
            return readOneWithRows<project::ValveModel, project::ValveTableRow>(database, "valve", record.id,
                                                                                density);
        case RecordKind::Branch:
            return readOne<project::Branch>(database, record.id, density);
        case RecordKind::Pump:
            return readOneWithRows<project::Pump, project::PumpTableRow>(database, "pump", record.id,
                                                                         density);
        case RecordKind::Instrument:
            return readOne<project::Instrument>(database, record.id, density);
        case RecordKind::Person:
            return readOne<project::Person>(database, record.id, density);
        case RecordKind::Round:
            return readOne<project::Round>(database, record.id, density);
        case RecordKind::Reading:
            return readOne<project::Reading>(database, record.id, density);
        case RecordKind::PumpReading:
            return readOne<project::PumpReading>(database, record.id, density);
    }
    base::breach("a kind of record without a table", __FILE__, __LINE__);
}

base::Result<std::optional<std::string>> readMeta(const Database& database, std::string_view key) {
    auto statement = database.prepare("SELECT value FROM meta WHERE key=?");
    if (!statement) {
        return statement.fault();
    }
    statement->bind(1, key);
    switch (statement->step()) {
        case Step::Row:
            return std::optional<std::string>(statement->text(0));
        case Step::Done:
            return std::optional<std::string>();
        case Step::Failed:
            break;
    }
    return database.fault();
}

}  // namespace ww::store
