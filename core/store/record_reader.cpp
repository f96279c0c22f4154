#include "core/store/record_reader.h"

#include <array>
#include <string>
#include <unordered_map>
#include <utility>

#include "core/store/review_fields.h"
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

/// Records that have rows of their own; gives each to `take`.
template <HasRows Record, class Take>
Outcome eachWithRows(const Database& database, quantity::Density density, Take take) {
    using Row = RowOf<Record>;
    std::unordered_map<Id, std::vector<Row>> rows;
    if (auto read = eachRecord<OwnedRow<Row>>(
            database, std::string(kOwnerColumnOf<Row>) + ",position", density,
            [&](OwnedRow<Row>&& row) { rows[row.owner].push_back(std::move(row.row)); });
        !read) {
        return read;
    }
    return eachRecord<Record>(database, "rowid", density, [&](Record&& record) {
        if (const auto found = rows.find(record.id); found != rows.end()) {
            rowsOf(record) = std::move(found->second);
        }
        take(std::move(record));
    });
}

template <HasRows Record>
Outcome readAllWithRows(const Database& database, project::Project& project) {
    return eachWithRows<Record>(database, project.fluid().density(),
                                [&](Record&& record) { project.put(std::move(record)); });
}

Outcome readJob(const Database& database, project::Project& project) {
    int count = 0;
    // The density does not matter yet: putting the job resolves its heads with its own fluid.
    auto read = eachWithRows<project::Job>(database, project.fluid().density(), [&](project::Job&& job) {
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

/// One record, with its rows where it has some of its own.
template <class Record>
base::Result<std::optional<project::AnyRecord>> readWhole(const Database& database, const Id& id,
                                                          quantity::Density density) {
    auto record = readOne<Record>(database, id, density);
    if constexpr (HasRows<Record>) {
        using Row = RowOf<Record>;
        if (!record || !*record) {
            return record;
        }
        auto statement = database.prepare(selectSql<OwnedRow<Row>>() + " WHERE " + kOwnerColumnOf<Row> +
                                          "=? ORDER BY position");
        if (!statement) {
            return statement.fault();
        }
        statement->bind(1, ByteSpan(id.bytes));
        auto& rows = rowsOf(std::get<Record>(**record));
        auto read = eachRow<OwnedRow<Row>>(database, *statement, density,
                                           [&](OwnedRow<Row>&& row) { rows.push_back(std::move(row.row)); });
        if (!read) {
            return read.fault();
        }
    }
    return record;
}

/// Calls readWhole() for the type of a kind.
template <std::size_t... kinds>
base::Result<std::optional<project::AnyRecord>> readOfKind(const Database& database,
                                                           const project::RecordRef& record,
                                                           quantity::Density density,
                                                           std::index_sequence<kinds...>) {
    using Read =
        base::Result<std::optional<project::AnyRecord>> (*)(const Database&, const Id&, quantity::Density);
    static constexpr std::array<Read, sizeof...(kinds)> kReaders{
        &readWhole<std::variant_alternative_t<kinds, project::AnyRecord>>...};
    return kReaders.at(static_cast<std::size_t>(record.kind))(database, record.id, density);
}

}  // namespace

base::Result<project::Project> readProject(const Database& database) {
    project::Project project;
    const auto steps = {
        &readJob,
        &readAllWithRows<project::ValveModel>,
        &readAllWithRows<project::Pump>,
        &readAll<project::Instrument>,
        &readAll<project::Person>,
        &readAllWithRows<project::Branch>,
        &readAllWithRows<project::Round>,
        &readAll<project::Reading>,
        &readAll<project::PumpReading>,
        &readAll<project::SetPoint>,
        &readAll<project::ReadinessLine>,
        &readAll<project::Deficiency>,
        &readAll<project::Comment>,
        &readAll<project::Attachment>,
        &readAll<project::FindingReason>,
        &readAll<project::SignedReport>,
        &readAll<project::MergeConflict>,
        &readAll<project::ClockOffset>,
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
    return readOfKind(database, record, density,
                      std::make_index_sequence<std::variant_size_v<project::AnyRecord>>());
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
