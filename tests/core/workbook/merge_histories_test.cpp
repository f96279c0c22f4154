// Pairs of copies with seeded random histories: the union of both is complete, every field that both changed
// is listed, and the two ways round give the same job but for what is left to choose. What is expected is
// worked out here from the four files by comparing rows, without the journal. WW_MERGES sets how many pairs
// (30 unless said otherwise).

#include <gtest/gtest.h>

#include <cstdlib>
#include <map>
#include <random>
#include <set>

#include "core/store/open_file.h"
#include "core/store/raw_rows.h"
#include "core/workbook/merge_settlement.h"
#include "tests/support/two_laptops.h"

namespace ww::workbook {
namespace {

using project::RecordKind;
using store::Cell;
using store::Row;
using support::Laptop;

constexpr int kTerminals = 9;

int pairs() {
    const char* wanted = std::getenv("WW_MERGES");
    return wanted == nullptr ? 30 : std::atoi(wanted);
}

/// Something that a person does, by chance.
class Hand {
  public:
    Hand(Laptop& laptop, std::uint32_t seed) : m_laptop(laptop), m_random(seed) {}

    void act() {
        m_laptop.clock.advance(std::chrono::seconds(number(120)));
        switch (number(14)) {
            case 0:
                changeBranch([&](project::Branch& b) { b.serves = "Level " + std::to_string(number(4)); });
                break;
            case 1:
                changeBranch([&](project::Branch& b) { b.setting = *base::Decimal::parse(digits()); });
                break;
            case 2:
                changeBranch([&](project::Branch& b) {
                    if (b.designFlow) {
                        b.designFlow->digits = *base::Decimal::parse(digits());
                    }
                });
                break;
            case 3:
                changeReading([&](project::Reading& r) { r.note = "note " + std::to_string(number(3)); });
                break;
            case 4:
                changeReading([&](project::Reading& r) { r.isDoubtful = !r.isDoubtful; });
                break;
            case 5:
                eraseReading();
                break;
            case 6:
                (void)m_laptop.job->undo();
                break;
            case 7:
                (void)m_laptop.job->redo();
                break;
            case 8:
                addBranch();
                break;
            case 9:
                m_laptop.change(m_laptop.project().job(), [&](project::Job& job) {
                    (number(2) == 0 ? job.site : job.client) = "site " + std::to_string(number(3));
                });
                break;
            case 10:
                m_laptop.change(m_laptop.project().valves()[0], [&](project::ValveModel& valve) {
                    valve.rows[static_cast<std::size_t>(number(4))].coefficient =
                        *base::Decimal::parse("3." + std::to_string(number(9)));
                });
                break;
            default:
                m_laptop.read(support::walkTag(1 + number(kTerminals)), digits());
        }
    }

    int number(int below) { return static_cast<int>(m_random() % static_cast<std::uint32_t>(below)); }

  private:
    std::string digits() { return std::to_string(10 + number(40)) + "." + std::to_string(number(10)); }

    template <class Change>
    void changeBranch(Change change) {
        m_laptop.change(m_laptop.branch(support::walkTag(1 + number(kTerminals))), change);
    }
    const project::Reading* someReading() {
        const auto& indices = m_laptop.project().readingsOf(m_laptop.project().lastRound()->id);
        return indices.empty() ? nullptr
                               : &m_laptop.project().readings()[indices[static_cast<std::size_t>(
                                     number(static_cast<int>(indices.size())))]];
    }
    template <class Change>
    void changeReading(Change change) {
        if (const project::Reading* reading = someReading()) {
            m_laptop.change(*reading, change);
        }
    }
    void eraseReading() {
        if (const project::Reading* reading = someReading()) {
            m_laptop.apply("erase", {}, {{RecordKind::Reading, reading->id}});
        }
    }
    void addBranch() {
        project::Branch branch = m_laptop.branch("B-01");
        branch.id = m_laptop.nextId();
        branch.tag = "N-" + std::to_string(m_laptop.project().branches().size());
        m_laptop.apply("add", {branch});
    }

    Laptop& m_laptop;
    std::mt19937 m_random;
};

/// All rows of the records in a file, by table and key.
class Rows {
  public:
    explicit Rows(const std::string& file) {
        auto opened = store::openWorkbookFile(file, store::Access::Read);
        EXPECT_TRUE(opened.ok());
        forms = *store::tableForms(opened->database);
        for (const store::TableForm& form : forms) {
            auto statement = opened->database.prepare("SELECT * FROM " + std::string(form.table->name));
            while (statement->step() == store::Step::Row) {
                Row row;
                for (int i = 0; i < statement->columnCount(); ++i) {
                    row.push_back(cell(*statement, i));
                }
                rows[{std::string(form.table->name), form.keyOf(row)}] = row;
            }
        }
    }
    const Row* find(const std::string& table, const Row& key) const {
        const auto found = rows.find({table, key});
        return found == rows.end() ? nullptr : &found->second;
    }
    /// The rows of a table that belong to one record.
    std::vector<Row> of(const std::string& table, const Cell& owner) const {
        std::vector<Row> found;
        for (const auto& [where, row] : rows) {
            if (where.first == table && row[0] == owner) {
                found.push_back(row);
            }
        }
        return found;
    }

    std::vector<store::TableForm> forms;
    std::map<std::pair<std::string, Row>, Row> rows;

  private:
    static Cell cell(const store::Statement& statement, int column) {
        if (statement.isNull(column)) {
            return {};
        }
        if (statement.type(column) == store::CellType::Integer) {
            return statement.integer(column);
        }
        if (statement.type(column) == store::CellType::Blob) {
            const auto bytes = statement.blob(column);
            return store::Bytes(bytes.begin(), bytes.end());
        }
        return std::string(statement.text(column));
    }
};

/// A record and a field.
using Place = std::pair<base::Id, std::string>;

class MergeHistories : public testing::Test {
  protected:
    /// Both sides of a pair, merged both ways.
    struct Pair {
        Rows base;
        Rows a;
        Rows b;
        Rows ab;
        Rows ba;
        project::Project abJob;
        project::Project baJob;
    };

    static std::set<Place> conflictsIn(const project::Project& job) {
        std::set<Place> places;
        for (const project::MergeConflict& conflict : job.mergeConflicts()) {
            places.insert({conflict.record, conflict.field});
        }
        return places;
    }
    static std::set<base::Id> idsOf(const project::Project& job) {
        std::set<base::Id> ids;
        for (const project::MergeConflict& conflict : job.mergeConflicts()) {
            ids.insert(conflict.id);
        }
        return ids;
    }

    /// The merge of three rows, field by field; where both changed, the conflict must be listed and ours
    /// stands.
    static void expectFields(const store::TableForm& form, const Pair& pair, const Row& key,
                             const std::set<Place>& listed) {
        const std::string table(form.table->name);
        const Row* base = pair.base.find(table, key);
        const Row* a = pair.a.find(table, key);
        const Row* b = pair.b.find(table, key);
        const Row* merged = pair.ab.find(table, key);
        const auto id = store::idIn(key[0]);
        ASSERT_TRUE(id.has_value());
        if (a == nullptr || b == nullptr) {
            expectPresence(base, a, b, merged, listed.contains({*id, ""}));
            return;
        }
        ASSERT_NE(merged, nullptr) << table;
        for (const store::RowField& field : form.fields) {
            const auto cells = [&](const Row* row) { return store::cellsOf(*row, field); };
            if (field.name == "sequence" || (field.name == "tag" && base == nullptr)) {
                continue;
            }
            const bool isListed = listed.contains({*id, field.name});
            if (cells(a) == cells(b) || (base != nullptr && cells(b) == cells(base))) {
                EXPECT_EQ(cells(merged), cells(a)) << table << " " << field.name;
                EXPECT_FALSE(isListed) << table << " " << field.name;
            } else if (base != nullptr && cells(a) == cells(base)) {
                EXPECT_EQ(cells(merged), cells(b)) << table << " " << field.name;
                EXPECT_FALSE(isListed) << table << " " << field.name;
            } else {
                EXPECT_EQ(cells(merged), cells(a)) << table << " " << field.name;
                EXPECT_TRUE(isListed) << table << " " << field.name << " was changed by both";
            }
        }
    }
    static void expectPresence(const Row* base, const Row* a, const Row* b, const Row* merged,
                               bool isListed) {
        const Row* other = a == nullptr ? b : a;
        const bool isNew = base == nullptr;
        const bool isUntouched = !isNew && other != nullptr && *other == *base;
        if (other == nullptr || isUntouched) {
            EXPECT_EQ(merged, nullptr) << "removed on one side and left alone on the other";
            EXPECT_FALSE(isListed);
        } else {
            EXPECT_NE(merged, nullptr) << "what one side has is in the union";
            EXPECT_EQ(isListed, !isNew) << "removed here, changed there";
        }
    }

    static void expectUnion(const Pair& pair) {
        const std::set<Place> listed = conflictsIn(pair.abJob);
        std::set<std::pair<std::string, Row>> keys;
        for (const Rows* rows : {&pair.base, &pair.a, &pair.b}) {
            for (const auto& [where, row] : rows->rows) {
                keys.insert(where);
            }
        }
        for (const store::TableForm& form : pair.base.forms) {
            if (!form.table->kind || form.table->kind == RecordKind::MergeConflict) {
                continue;
            }
            for (const auto& [table, key] : keys) {
                if (table == form.table->name && form.table->holdsRowsOfOwner) {
                    expectOwned(pair, table, key[0], listed);
                } else if (table == form.table->name) {
                    expectFields(form, pair, key, listed);
                }
            }
        }
    }
    static void expectOwned(const Pair& pair, const std::string& table, const Cell& owner,
                            const std::set<Place>& listed) {
        const auto base = pair.base.of(table, owner);
        const auto a = pair.a.of(table, owner);
        const auto b = pair.b.of(table, owner);
        const bool isBoth = a != base && b != base && a != b;
        EXPECT_EQ(pair.ab.of(table, owner), a == base ? b : a) << table;
        EXPECT_EQ(listed.contains({*store::idIn(owner), table}), isBoth) << table;
    }

    /// Row by row the same, but for fields that are left to choose.
    static void expectSameBothWays(const Pair& pair) {
        EXPECT_EQ(idsOf(pair.abJob), idsOf(pair.baJob)) << "the same conflicts, whichever way round";
        std::set<Place> fields;
        for (const project::Project* job : {&pair.abJob, &pair.baJob}) {
            fields.merge(conflictsIn(*job));
        }
        for (const store::TableForm& form : pair.base.forms) {
            if (!form.table->kind || form.table->kind == RecordKind::MergeConflict) {
                continue;
            }
            const std::string table(form.table->name);
            for (const auto& [where, row] : pair.ab.rows) {
                if (where.first != table) {
                    continue;
                }
                const Row* other = pair.ba.find(table, where.second);
                const base::Id id = *store::idIn(row[0]);
                if (form.table->holdsRowsOfOwner) {
                    EXPECT_TRUE(fields.contains({id, table}) || (other != nullptr && *other == row)) << table;
                    continue;
                }
                ASSERT_NE(other, nullptr) << table;
                for (const store::RowField& field : form.fields) {
                    const bool isNamed = field.name == "tag" || field.name == "number";
                    const bool isOpen = fields.contains({id, field.name}) ||
                                        (isNamed && !pair.base.find(table, where.second));
                    EXPECT_TRUE(isOpen || store::cellsOf(row, field) == store::cellsOf(*other, field))
                        << table << " " << field.name;
                }
            }
        }
        for (const auto& [where, row] : pair.ba.rows) {
            const bool isRecord = where.first == "readings" || where.first == "branches";
            EXPECT_TRUE(!isRecord || pair.ab.find(where.first, where.second) != nullptr) << where.first;
        }
    }

    static void merge(const support::TwoLaptops& two, const char* first, const char* second,
                      const std::string& out, project::Project& job) {
        Laptop office("Office", "PC", 9'000'000);
        const auto merged =
            mergeFiles(two.fileOf(first), two.fileOf(second), two.fileOf(out), office.session());
        ASSERT_TRUE(merged.ok()) << base::englishWithSubject(merged.fault());
        office.open(two.fileOf(out));
        job = office.project();
        const auto verification = verify(two.fileOf(out));
        ASSERT_TRUE(verification.ok());
        for (const base::Fault& finding : verification->findings) {
            ADD_FAILURE() << base::english(finding);
        }
    }
};

TEST_F(MergeHistories, giveACompleteUnionWithEveryConflictWhicheverWayRound) {
    std::size_t conflicts = 0;
    std::size_t readings = 0;
    const int wanted = pairs();
    for (int seed = 1; seed <= wanted; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        support::TwoLaptops two(kTerminals);
        Hand first(two.a, static_cast<std::uint32_t>(2 * seed));
        Hand second(two.b, static_cast<std::uint32_t>(2 * seed + 1));
        for (int i = first.number(25); i >= 0; --i) {
            first.act();
        }
        for (int i = second.number(25); i >= 0; --i) {
            second.act();
        }
        two.a.job.reset();
        two.b.job.reset();
        project::Project ab;
        project::Project ba;
        merge(two, "a", "b", "ab", ab);
        merge(two, "b", "a", "ba", ba);
        if (HasFatalFailure()) {
            return;
        }
        const Pair pair{Rows(two.fileOf("base")),
                        Rows(two.fileOf("a")),
                        Rows(two.fileOf("b")),
                        Rows(two.fileOf("ab")),
                        Rows(two.fileOf("ba")),
                        ab,
                        ba};
        expectUnion(pair);
        expectSameBothWays(pair);
        conflicts += ab.mergeConflicts().size();
        readings += ab.readings().size();
        if (HasFailure()) {
            return;
        }
    }
    EXPECT_GT(conflicts, static_cast<std::size_t>(wanted)) << "the histories must meet";
    std::cout << wanted << " pairs, " << readings << " readings, " << conflicts << " conflicts\n";
}

}  // namespace
}  // namespace ww::workbook
