#include "core/store/replay.h"

#include <limits>
#include <string>
#include <unordered_set>

#include "core/store/changeset.h"
#include "core/store/journal.h"
#include "core/store/migration.h"
#include "core/store/row_name.h"
#include "core/store/schema.h"
#include "core/store/store_messages.h"

namespace ww::store {

namespace {

using base::Fault;

bool isSame(const Statement& a, const Statement& b, int column) {
    if (a.type(column) != b.type(column)) {
        return false;
    }
    if (a.type(column) == CellType::Integer) {
        return a.integer(column) == b.integer(column);
    }
    const ByteSpan left = a.blob(column);
    const ByteSpan right = b.blob(column);
    return std::equal(left.begin(), left.end(), right.begin(), right.end());
}

std::string shown(const Statement& row, int column) {
    if (row.isNull(column)) {
        return "nothing";
    }
    if (row.type(column) == CellType::Blob) {
        const ByteSpan bytes = row.blob(column);
        return *text(Cell(Bytes(bytes.begin(), bytes.end())));
    }
    return "\"" + std::string(row.text(column)) + "\"";
}

/// -1, 0, 1 as the key of `a` stands before, at, behind that of `b`. Keys are ids or texts, then positions.
int compareKeys(const Statement& a, const Statement& b, int keyColumns) {
    for (int column = 0; column < keyColumns; ++column) {
        if (a.type(column) == CellType::Integer) {
            if (a.integer(column) != b.integer(column)) {
                return a.integer(column) < b.integer(column) ? -1 : 1;
            }
            continue;
        }
        const ByteSpan left = a.blob(column);
        const ByteSpan right = b.blob(column);
        if (!std::equal(left.begin(), left.end(), right.begin(), right.end())) {
            return std::lexicographical_compare(left.begin(), left.end(), right.begin(), right.end()) ? -1
                                                                                                      : 1;
        }
    }
    return 0;
}

/// Walks one table of both databases in order of the key.
class TableComparison {
  public:
    TableComparison(const Database& found, const Database& expected, const RecordedTable& table,
                    std::vector<Fault>& findings, std::size_t limit)
        : m_found(found), m_expected(expected), m_table(table), m_findings(findings), m_limit(limit) {}

    base::Outcome run() {
        const std::string order = m_table.keyColumns == 2 ? "1,2" : "1";
        const std::string sql = "SELECT * FROM " + std::string(m_table.name) + " ORDER BY " + order;
        auto found = m_found.prepare(sql);
        auto expected = m_expected.prepare(sql);
        if (!found || !expected) {
            return found ? expected.fault() : found.fault();
        }
        Step left = found->step();
        Step right = expected->step();
        while ((left == Step::Row || right == Step::Row) && m_findings.size() < m_limit) {
            const int order3 = left != Step::Row    ? 1
                               : right != Step::Row ? -1
                                                    : compareKeys(*found, *expected, m_table.keyColumns);
            if (order3 < 0) {
                report(kRowForeign, nameOfRow(m_found, m_table, *found));
            } else if (order3 > 0) {
                report(kRowMissing, nameOfRow(m_expected, m_table, *expected));
            } else {
                compareRow(*found, *expected);
            }
            left = order3 <= 0 ? found->step() : left;
            right = order3 >= 0 ? expected->step() : right;
            if (left == Step::Failed || right == Step::Failed) {
                return left == Step::Failed ? m_found.fault() : m_expected.fault();
            }
        }
        return base::Done{};
    }

  private:
    void report(const base::MessageForm& form, std::string row) {
        m_findings.push_back({&form, m_found.file().string(), {std::move(row), std::string(m_table.name)}});
    }
    void compareRow(const Statement& found, const Statement& expected) {
        for (int column = 0; column < found.columnCount(); ++column) {
            if (!isSame(found, expected, column)) {
                m_findings.push_back(
                    {&kRowChanged,
                     m_found.file().string(),
                     {nameOfRow(m_expected, m_table, expected), std::string(m_table.name),
                      std::string(found.columnName(column)), shown(found, column), shown(expected, column)}});
            }
        }
    }

    const Database& m_found;
    const Database& m_expected;
    const RecordedTable& m_table;
    std::vector<Fault>& m_findings;
    std::size_t m_limit;
};

/// The cells of a row as one text: rows that differ in anything have different texts.
class RowText {
  public:
    explicit RowText(std::string_view table) { add('#', table); }

    void addNothing() { add('-', {}); }
    void add(std::int64_t number) { add('i', std::to_string(number)); }
    void add(char type, std::string_view bytes) {
        m_text += type;
        m_text += std::to_string(bytes.size());
        m_text += ':';
        m_text += bytes;
    }
    std::string taken() { return std::move(m_text); }

  private:
    std::string m_text;
};

std::string_view charactersOf(ByteSpan bytes) {
    return {reinterpret_cast<const char*>(bytes.data()), bytes.size()};
}

std::string textOfRow(const RecordedTable& table, const Statement& row) {
    RowText text(table.name);
    for (int column = 0; column < row.columnCount(); ++column) {
        switch (row.type(column)) {
            case CellType::Null:
                text.addNothing();
                break;
            case CellType::Integer:
                text.add(row.integer(column));
                break;
            case CellType::Blob:
                text.add('b', charactersOf(row.blob(column)));
                break;
            default:
                text.add('t', row.text(column));
        }
    }
    return text.taken();
}

std::string textOfRow(const ChangesetReader& inserted) {
    RowText text(inserted.table());
    for (int column = 0; column < inserted.columnCount(); ++column) {
        const Cell cell = inserted.after(column).value_or(Cell());
        if (const auto* number = std::get_if<std::int64_t>(&cell)) {
            text.add(*number);
        } else if (const auto* words = std::get_if<std::string>(&cell)) {
            text.add('t', *words);
        } else if (const auto* bytes = std::get_if<Bytes>(&cell)) {
            text.add('b', charactersOf(*bytes));
        } else {
            text.addNothing();
        }
    }
    return text.taken();
}

/// What all records put together, as a changeset; nothing where they are not all sound and of today's schema.
std::optional<Bytes> jointChanges(const Database& database) {
    ChangesetGroup group;
    bool fits = true;
    const auto walk = walkJournal(database, [&](const JournalRecord& record, ByteSpan changeset) {
        fits = record.schemaVersion == kSchemaVersion && group.add(changeset).ok();
        return fits;
    });
    if (!walk || walk->firstBroken || !fits) {
        return std::nullopt;
    }
    auto joined = group.joined();
    return joined ? std::optional(std::move(*joined)) : std::nullopt;
}

}  // namespace

base::Result<Database> replayedAtOnce(const Database& database) {
    std::optional<Database> copy;
    std::optional<ChangesetGroup> group;
    int version = 1;
    const auto finish = [&](int target) {
        if (group) {
            const auto joined = group->joined();
            group.reset();
            if (!joined || (!joined->empty() && !applyChangeset(*copy, *joined))) {
                return false;
            }
        }
        version = target;
        if (!copy) {
            copy.emplace(Database::inMemory());
            if (!createSchemaOne(*copy)) {
                return false;
            }
        }
        return migrate(*copy, target, migrationSteps()).ok();
    };
    bool fits = true;
    auto walk = walkJournal(database, [&](const JournalRecord& record, ByteSpan changeset) {
        const int target = static_cast<int>(std::min<std::int64_t>(record.schemaVersion, kSchemaVersion));
        fits = (copy && target <= version) || finish(target);
        if (!group) {
            group.emplace();
        }
        fits = fits && group->add(changeset).ok();
        return fits;
    });
    if (!walk) {
        return walk.fault();
    }
    if (walk->firstBroken || !fits || !finish(kSchemaVersion)) {
        // Record by record it can be named.
        return replayed(database, std::numeric_limits<std::int64_t>::max());
    }
    return std::move(*copy);
}

bool isAsRecorded(const Database& database) {
    const auto changes = jointChanges(database);
    if (!changes) {
        return false;
    }
    std::unordered_set<std::string> expected;
    ChangesetReader reader(*changes);
    while (reader.next()) {
        // From nothing to the rows of today: what were no insertion would change a row that is not there.
        if (reader.operation() != RowOperation::Inserted) {
            return false;
        }
        expected.insert(textOfRow(reader));
    }
    for (const RecordedTable& table : recordedTables()) {
        auto found = database.prepare("SELECT * FROM " + std::string(table.name));
        if (!found) {
            return false;
        }
        Step step = found->step();
        for (; step == Step::Row; step = found->step()) {
            if (expected.erase(textOfRow(table, *found)) == 0) {
                return false;
            }
        }
        if (step == Step::Failed) {
            return false;
        }
    }
    return expected.empty() && !reader.isDamaged();
}

base::Result<Database> replayed(const Database& database, std::int64_t last) {
    Database copy = Database::inMemory();
    if (auto made = createSchemaOne(copy); !made) {
        return made.fault();
    }
    std::optional<Fault> fault;
    const auto refuse = [&](const base::MessageForm& form, std::int64_t sequence) {
        fault = Fault{&form, database.file().string(), {std::to_string(sequence)}};
        return false;
    };
    auto walk = walkJournal(database, [&](const JournalRecord& record, ByteSpan changeset) {
        if (record.sequence > last) {
            return false;
        }
        const int target = static_cast<int>(std::min<std::int64_t>(record.schemaVersion, kSchemaVersion));
        if (!migrate(copy, target, migrationSteps()) || !applyChangeset(copy, changeset)) {
            return refuse(kChangesetUnfit, record.sequence);
        }
        return true;
    });
    if (!walk) {
        return walk.fault();
    }
    if (fault) {
        return *fault;
    }
    if (walk->firstBroken && *walk->firstBroken <= last) {
        return Fault{&kChainBroken, database.file().string(), {std::to_string(*walk->firstBroken)}};
    }
    if (auto done = migrate(copy, kSchemaVersion, migrationSteps()); !done) {
        return done.fault();
    }
    return copy;
}

base::Result<std::vector<Fault>> differences(const Database& found, const Database& expected,
                                             std::size_t limit) {
    std::vector<Fault> findings;
    for (const RecordedTable& table : recordedTables()) {
        if (auto compared = TableComparison(found, expected, table, findings, limit).run(); !compared) {
            return compared.fault();
        }
    }
    return findings;
}

}  // namespace ww::store
