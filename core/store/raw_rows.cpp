#include "core/store/raw_rows.h"

#include <algorithm>

#include "core/store/migration.h"

namespace ww::store {

namespace {

using base::Done;
using base::Outcome;
using base::Result;

void bindCell(Statement& statement, int parameter, const Cell& cell) {
    if (const auto* number = std::get_if<std::int64_t>(&cell)) {
        statement.bind(parameter, *number);
    } else if (const auto* words = std::get_if<std::string>(&cell)) {
        statement.bind(parameter, std::string_view(*words));
    } else if (const auto* bytes = std::get_if<Bytes>(&cell)) {
        statement.bind(parameter, ByteSpan(*bytes));
    } else {
        statement.bindNull(parameter);
    }
}

Row rowOf(const Statement& statement) {
    Row row;
    row.reserve(static_cast<std::size_t>(statement.columnCount()));
    for (int column = 0; column < statement.columnCount(); ++column) {
        switch (statement.type(column)) {
            case CellType::Null:
                row.emplace_back();
                break;
            case CellType::Integer:
                row.emplace_back(statement.integer(column));
                break;
            case CellType::Blob: {
                const ByteSpan bytes = statement.blob(column);
                row.emplace_back(Bytes(bytes.begin(), bytes.end()));
                break;
            }
            default:
                row.emplace_back(std::string(statement.text(column)));
        }
    }
    return row;
}

std::string nameOf(const TableForm& form) {
    return std::string(form.table->name);
}

std::string keyCondition(const TableForm& form) {
    std::string sql = " WHERE " + form.columns[0] + "=?";
    for (std::size_t i = 1; i < form.keyColumns(); ++i) {
        sql += " AND " + form.columns[i] + "=?";
    }
    return sql;
}

bool isPartOf(const std::string& column, const std::string& before) {
    return column == before + "_unit" || column == before + "_zone";
}

}  // namespace

const RowField* TableForm::field(std::string_view name) const {
    const auto found =
        std::find_if(fields.begin(), fields.end(), [&](const RowField& f) { return f.name == name; });
    return found == fields.end() ? nullptr : &*found;
}

Row cellsOf(const Row& row, const RowField& field) {
    const auto first = row.begin() + static_cast<std::ptrdiff_t>(field.first);
    return Row(first, first + static_cast<std::ptrdiff_t>(field.count));
}

Result<std::vector<TableForm>> tableForms(const Database& database) {
    std::vector<TableForm> forms;
    for (const RecordedTable& table : recordedTables()) {
        TableForm form;
        form.table = &table;
        auto columns = database.prepare("SELECT name FROM pragma_table_info(?) ORDER BY cid");
        auto references =
            database.prepare("SELECT \"from\", \"table\" FROM pragma_foreign_key_list(?) ORDER BY id");
        if (!columns || !references) {
            return columns ? references.fault() : columns.fault();
        }
        columns->bind(1, table.name);
        while (columns->step() == Step::Row) {
            form.columns.emplace_back(columns->text(0));
        }
        references->bind(1, table.name);
        while (references->step() == Step::Row) {
            const auto at =
                std::find(form.columns.begin(), form.columns.end(), std::string(references->text(0)));
            form.references.push_back(
                {static_cast<std::size_t>(at - form.columns.begin()), std::string(references->text(1))});
        }
        for (std::size_t i = form.keyColumns(); i < form.columns.size(); ++i) {
            const bool isSecond = !form.fields.empty() && isPartOf(form.columns[i], form.fields.back().name);
            if (isSecond) {
                ++form.fields.back().count;
            } else {
                form.fields.push_back({form.columns[i], i, 1});
            }
        }
        forms.push_back(std::move(form));
    }
    return forms;
}

Result<Statement*> RawRows::prepared(const std::string& sql) {
    const auto found = m_prepared.find(sql);
    if (found != m_prepared.end()) {
        return &found->second;
    }
    auto statement = m_database.prepare(sql);
    if (!statement) {
        return statement.fault();
    }
    return &m_prepared.emplace(sql, std::move(*statement)).first->second;
}

Outcome RawRows::run(const std::string& sql, const Row& first, const Row& second) {
    auto statement = prepared(sql);
    if (!statement) {
        return statement.fault();
    }
    int parameter = 1;
    for (const Row* part : {&first, &second}) {
        for (const Cell& cell : *part) {
            bindCell(**statement, parameter++, cell);
        }
    }
    const bool isDone = (*statement)->step() == Step::Done;
    const base::Fault fault = isDone ? base::Fault{} : m_database.fault();
    (*statement)->reset();
    return isDone ? Outcome(Done{}) : Outcome(fault);
}

Result<std::vector<Row>> RawRows::rows(const std::string& sql, const Row& parameters) {
    auto statement = prepared(sql);
    if (!statement) {
        return statement.fault();
    }
    int parameter = 1;
    for (const Cell& cell : parameters) {
        bindCell(**statement, parameter++, cell);
    }
    std::vector<Row> found;
    Step step = (*statement)->step();
    for (; step == Step::Row; step = (*statement)->step()) {
        found.push_back(rowOf(**statement));
    }
    const base::Fault fault = step == Step::Failed ? m_database.fault() : base::Fault{};
    (*statement)->reset();
    if (step == Step::Failed) {
        return fault;
    }
    return found;
}

Result<std::optional<Row>> RawRows::find(const TableForm& form, const Row& key) {
    auto found = rows("SELECT * FROM " + nameOf(form) + keyCondition(form), key);
    if (!found) {
        return found.fault();
    }
    return found->empty() ? std::optional<Row>() : std::optional(std::move(found->front()));
}

Result<std::vector<Row>> RawRows::where(const TableForm& form, std::size_t column, const Cell& value) {
    const std::string order = form.keyColumns() == 2 ? "1,2" : "1";
    return rows("SELECT * FROM " + nameOf(form) + " WHERE " + form.columns[column] + "=? ORDER BY " + order,
                {value});
}

Outcome RawRows::insert(const TableForm& form, const Row& row) {
    std::string marks;
    for (std::size_t i = 0; i < row.size(); ++i) {
        marks += marks.empty() ? "?" : ",?";
    }
    return run("INSERT INTO " + nameOf(form) + " VALUES(" + marks + ")", row);
}

Outcome RawRows::setField(const TableForm& form, const Row& key, const RowField& field, const Row& cells) {
    std::string sets;
    for (std::size_t i = 0; i < field.count; ++i) {
        sets += (sets.empty() ? "" : ",") + form.columns[field.first + i] + "=?";
    }
    return run("UPDATE " + nameOf(form) + " SET " + sets + keyCondition(form), cells, key);
}

Outcome RawRows::erase(const TableForm& form, const Row& key) {
    return run("DELETE FROM " + nameOf(form) + keyCondition(form), key);
}

Result<Bytes> packed(const std::vector<PlacedRow>& rows) {
    auto made = emptyInCurrentSchema();
    if (!made) {
        return made.fault();
    }
    Database database = std::move(*made);
    // The rows come without those that they refer to.
    if (auto off = database.execute("PRAGMA foreign_keys=OFF"); !off) {
        return off.fault();
    }
    auto forms = tableForms(database);
    auto recorder = ChangeRecorder::start(database);
    if (!forms || !recorder) {
        return forms ? recorder.fault() : forms.fault();
    }
    RawRows raw(database);
    for (const PlacedRow& placed : rows) {
        for (const TableForm& form : *forms) {
            if (form.table->name != placed.table) {
                continue;
            }
            if (auto put = raw.insert(form, placed.row); !put) {
                return put.fault();
            }
        }
    }
    return recorder->changes();
}

std::vector<PlacedRow> unpacked(ByteSpan changeset) {
    std::vector<PlacedRow> rows;
    ChangesetReader reader(changeset);
    while (reader.next()) {
        if (reader.operation() != RowOperation::Inserted) {
            continue;
        }
        PlacedRow placed{std::string(reader.table()), {}};
        for (int column = 0; column < reader.columnCount(); ++column) {
            placed.row.push_back(reader.after(column).value_or(Cell()));
        }
        rows.push_back(std::move(placed));
    }
    return rows;
}

Cell cellOf(const project::Id& id) {
    return Bytes(id.bytes.begin(), id.bytes.end());
}

std::optional<project::Id> idIn(const Cell& cell) {
    const auto* bytes = std::get_if<Bytes>(&cell);
    project::Id id;
    if (bytes == nullptr || bytes->size() != id.bytes.size()) {
        return std::nullopt;
    }
    std::copy(bytes->begin(), bytes->end(), id.bytes.begin());
    return id;
}

}  // namespace ww::store
