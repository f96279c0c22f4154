#include "core/store/record_writer.h"

#include <map>
#include <string>

#include "core/project/names.h"
#include "core/store/review_fields.h"
#include "core/store/schema.h"

namespace ww::store {

namespace {

using base::Done;
using base::Outcome;

/// Binds the fields of a record to the parameters of its statement, in order.
class Binder {
  public:
    explicit Binder(Statement& statement) : m_statement(statement) {}

    void field(const char*, const project::Id& id) { m_statement.bind(m_next++, ByteSpan(id.bytes)); }
    void field(const char*, int number) { m_statement.bind(m_next++, std::int64_t{number}); }
    void field(const char*, bool isSet) { m_statement.bind(m_next++, std::int64_t{isSet ? 1 : 0}); }
    void field(const char*, const std::string& text) { m_statement.bind(m_next++, std::string_view(text)); }
    void field(const char*, const base::SharedBytes& content) {
        m_statement.bind(m_next++, ByteSpan(content.bytes()));
    }
    void field(const char*, const project::Decimal& digits) {
        m_statement.bind(m_next++, std::string_view(digits.text()));
    }
    void field(const char*, quantity::Unit unit) { m_statement.bind(m_next++, quantity::symbol(unit)); }
    template <class E>
    requires std::is_enum_v<E>
    void field(const char*, E word) { m_statement.bind(m_next++, project::name(word)); }
    template <class Q>
    void field(const char*, const quantity::Measured<Q>& value) {
        m_statement.bind(m_next++, std::string_view(value.digits.text()));
        m_statement.bind(m_next++, quantity::symbol(value.unit));
    }
    template <class Q>
    void field(const char* column, const std::optional<quantity::Measured<Q>>& value) {
        value ? field(column, *value) : nothing(2);
    }
    void field(const char*, const std::optional<base::Instant>& moment) {
        if (!moment) {
            nothing(2);
            return;
        }
        m_statement.bind(m_next++, moment->seconds);
        moment->zoneMinutes ? m_statement.bind(m_next++, std::int64_t{*moment->zoneMinutes}) : nothing(1);
    }
    template <class T>
    void field(const char* column, const std::optional<T>& value) {
        value ? field(column, *value) : nothing(1);
    }

  private:
    void nothing(int columns) {
        for (int i = 0; i < columns; ++i) {
            m_statement.bindNull(m_next++);
        }
    }
    Statement& m_statement;
    int m_next = 1;
};

template <class Record>
std::string putSql() {
    const auto names = ColumnNames::of<Record>();
    std::string marks;
    std::string updates;
    for (const std::string& name : names) {
        marks += marks.empty() ? "?" : ",?";
        if (name != "id") {
            updates += (updates.empty() ? "" : ",") + name + "=excluded." + name;
        }
    }
    return "INSERT INTO " + std::string(kTableOf<Record>) + "(" + joined(names) + ") VALUES(" + marks +
           ") ON CONFLICT(id) DO UPDATE SET " + updates;
}

template <class Row>
std::string addRowSql() {
    const auto names = ColumnNames::of<Row>();
    std::string marks;
    for (std::size_t i = 0; i < names.size(); ++i) {
        marks += marks.empty() ? "?" : ",?";
    }
    return "INSERT INTO " + std::string(kTableOf<Row>) + "(" + joined(names) + ") VALUES(" + marks + ")";
}

std::string_view tableOf(project::RecordKind kind, bool holdsRowsOfOwner) {
    for (const RecordedTable& table : recordedTables()) {
        if (table.kind == kind && table.holdsRowsOfOwner == holdsRowsOfOwner) {
            return table.name;
        }
    }
    return {};
}

std::string_view ownerColumnOf(project::RecordKind kind) {
    switch (kind) {
        case project::RecordKind::ValveModel:
            return kOwnerColumnOf<project::ValveTableRow>;
        case project::RecordKind::Pump:
            return kOwnerColumnOf<project::PumpTableRow>;
        case project::RecordKind::Job:
            return kOwnerColumnOf<project::LoadRow>;
        case project::RecordKind::Branch:
            return kOwnerColumnOf<project::EarlierDesign>;
        case project::RecordKind::Round:
            return kOwnerColumnOf<project::SampleRow>;
        default:
            base::breach("a kind of record without rows of its own", __FILE__, __LINE__);
    }
}

}  // namespace

struct RecordWriter::Statements {
    explicit Statements(Database& owner) : database(owner) {}

    Database& database;
    std::map<std::string, Statement> prepared;

    base::Result<Statement*> of(const std::string& sql) {
        const auto found = prepared.find(sql);
        if (found != prepared.end()) {
            return &found->second;
        }
        auto statement = database.prepare(sql);
        if (!statement) {
            return statement.fault();
        }
        return &prepared.emplace(sql, std::move(*statement)).first->second;
    }

    template <class Record>
    Outcome run(const std::string& sql, const Record& record) {
        auto statement = of(sql);
        if (!statement) {
            return statement.fault();
        }
        Binder binder(**statement);
        fields(binder, record);
        return finish(**statement);
    }

    Outcome finish(Statement& statement) {
        if (statement.step() != Step::Done) {
            // The fault is read before the reset, which forgets nothing but may report it again.
            const base::Fault fault = database.fault();
            statement.reset();
            return fault;
        }
        statement.reset();
        return Done{};
    }

    Outcome eraseWhere(std::string_view table, std::string_view column, const project::Id& id) {
        auto statement = of("DELETE FROM " + std::string(table) + " WHERE " + std::string(column) + "=?");
        if (!statement) {
            return statement.fault();
        }
        (*statement)->bind(1, ByteSpan(id.bytes));
        return finish(**statement);
    }

    /// Replaces the rows of a record's table.
    template <class Row>
    Outcome putRows(const project::Id& owner, const std::vector<Row>& rows) {
        static const std::string sql = addRowSql<OwnedRow<Row>>();
        if (auto erased = eraseWhere(kTableOf<OwnedRow<Row>>, kOwnerColumnOf<Row>, owner); !erased) {
            return erased;
        }
        for (std::size_t i = 0; i < rows.size(); ++i) {
            const OwnedRow<Row> row{owner, static_cast<int>(i), rows[i]};
            if (auto added = run(sql, row); !added) {
                return added;
            }
        }
        return Done{};
    }
};

RecordWriter::RecordWriter(Database& database)
    : m_database(database), m_statements(std::make_unique<Statements>(database)) {}

RecordWriter::~RecordWriter() = default;

Outcome RecordWriter::put(const project::AnyRecord& any) {
    return std::visit(
        [&]<class Record>(const Record& record) -> Outcome {
            static const std::string sql = putSql<Record>();
            if (auto done = m_statements->run(sql, record); !done) {
                return done;
            }
            if constexpr (HasRows<const Record>) {
                return m_statements->putRows(record.id, rowsOf(record));
            }
            return Done{};
        },
        any);
}

Outcome RecordWriter::erase(const project::RecordRef& record) {
    if (const std::string_view rows = tableOf(record.kind, true); !rows.empty()) {
        if (auto erased = m_statements->eraseWhere(rows, ownerColumnOf(record.kind), record.id); !erased) {
            return erased;
        }
    }
    return m_statements->eraseWhere(tableOf(record.kind, false), "id", record.id);
}

Outcome RecordWriter::putMeta(std::string_view key, std::string_view value) {
    auto statement = m_statements->of(
        "INSERT INTO meta(key,value) VALUES(?,?) ON CONFLICT(key) DO UPDATE SET value=excluded.value");
    if (!statement) {
        return statement.fault();
    }
    (*statement)->bind(1, key);
    (*statement)->bind(2, value);
    return m_statements->finish(**statement);
}

}  // namespace ww::store
