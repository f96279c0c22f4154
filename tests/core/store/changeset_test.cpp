#include "core/store/changeset.h"

#include <gtest/gtest.h>

#include "core/store/changeset_form.h"
#include "core/store/migration.h"
#include "core/store/record_reader.h"
#include "core/store/record_writer.h"
#include "core/store/schema.h"
#include "tests/support/whole_job.h"

namespace ww::store {
namespace {

using project::RecordKind;
using support::WholeJobIds;

/// An in-memory workbook with the whole job in it.
class Changeset : public testing::Test {
  protected:
    Changeset() {
        EXPECT_TRUE(createCurrentSchema(m_database).ok());
        RecordWriter writer(m_database);
        Transaction transaction(m_database);
        for (const auto& record : support::wholeJob().put) {
            EXPECT_TRUE(writer.put(record).ok());
        }
        EXPECT_TRUE(transaction.commit().ok());
    }
    /// What `change` does to the tables.
    template <class Change>
    Bytes changesOf(Change change) {
        Transaction transaction(m_database);
        auto recorder = ChangeRecorder::start(m_database);
        EXPECT_TRUE(recorder.ok());
        RecordWriter writer(m_database);
        change(writer);
        Bytes bytes = *recorder->changes();
        EXPECT_TRUE(transaction.commit().ok());
        return bytes;
    }
    std::vector<project::AnyRecord> records() const { return support::recordsOf(*readProject(m_database)); }

    Database m_database = Database::inMemory();
    WholeJobIds m_ids;
};

TEST_F(Changeset, isEmptyWhereTheSameIsWrittenAgain) {
    const Bytes bytes = changesOf([&](RecordWriter& writer) {
        for (const auto& record : support::wholeJob().put) {
            EXPECT_TRUE(writer.put(record).ok());
        }
    });
    EXPECT_TRUE(bytes.empty()) << "rows of tables are written anew, yet nothing is different";
}

TEST_F(Changeset, tellsEveryColumnThatChanged) {
    auto reading = support::wholeJobReading(m_ids.first, 1, m_ids.near, "33.3");
    const Bytes bytes = changesOf([&](RecordWriter& writer) { EXPECT_TRUE(writer.put(reading).ok()); });
    ChangesetReader reader(bytes);
    ASSERT_TRUE(reader.next());
    EXPECT_EQ(reader.table(), "readings");
    EXPECT_EQ(reader.operation(), RowOperation::Updated);
    EXPECT_EQ(reader.recordId(), m_ids.first);
    std::vector<std::string> changed;
    for (int column = 0; column < reader.columnCount(); ++column) {
        if (const auto after = reader.after(column)) {
            changed.push_back(*text(*reader.before(column)) + " -> " + *text(*after));
        }
    }
    EXPECT_EQ(changed, (std::vector<std::string>{"31.30 -> 33.3"}));
    EXPECT_FALSE(reader.next());
    EXPECT_FALSE(reader.isDamaged());
}

TEST_F(Changeset, invertedTakesEverythingBack) {
    const auto before = records();
    const Bytes bytes = changesOf([&](RecordWriter& writer) {
        EXPECT_TRUE(writer.erase({RecordKind::PumpReading, m_ids.pumpReading}).ok());
        EXPECT_TRUE(writer.erase({RecordKind::Pump, m_ids.pump}).ok());
        EXPECT_TRUE(writer.put(project::Person{m_ids.person, "C. Else"}).ok());
        EXPECT_TRUE(writer.put(project::Person{support::CountingIds::numbered(77), "D. New"}).ok());
    });
    const auto changes = changeSetOf(bytes);
    EXPECT_EQ(changes.put.size(), 2u);
    EXPECT_EQ(changes.erased.size(), 2u) << "the pump's rows are no records of their own";
    EXPECT_NE(records(), before);
    ASSERT_TRUE(applyChangeset(m_database, *inverted(bytes)).ok());
    EXPECT_EQ(records(), before);
    ASSERT_TRUE(applyChangeset(m_database, bytes).ok());
    EXPECT_NE(records(), before);
}

TEST_F(Changeset, thatDoesNotFitIsRefusedWhole) {
    const Bytes bytes = changesOf([&](RecordWriter& writer) {
        EXPECT_TRUE(writer.put(project::Person{support::CountingIds::numbered(77), "D. New"}).ok());
        EXPECT_TRUE(writer.put(project::Person{m_ids.person, "C. Else"}).ok());
    });
    const auto after = records();
    EXPECT_FALSE(applyChangeset(m_database, bytes).ok()) << "its person is there already";
    EXPECT_EQ(records(), after);
}

TEST_F(Changeset, bytesThatAreNoneAreNoticed) {
    for (const Bytes& nonsense : {Bytes{'T', 200, 1, 2, 3}, Bytes{'T', 2, 1, 0, 'a'}, Bytes{'x'},
                                  Bytes{18, 0, 1}, Bytes{'T', 0, 'a', 0}, Bytes{'T', 1, 1, 0}}) {
        ChangesetReader reader(nonsense);
        EXPECT_FALSE(reader.next());
        EXPECT_TRUE(reader.isDamaged());
        EXPECT_FALSE(inverted(nonsense).ok());
        EXPECT_FALSE(applyChangeset(m_database, nonsense).ok());
        EXPECT_TRUE(changeSetOf(nonsense).isEmpty());
    }
}

TEST_F(Changeset, cutShortAnywhereIsNone) {
    const Bytes bytes = changesOf([&](RecordWriter& writer) {
        EXPECT_TRUE(writer.put(support::wholeJobReading(m_ids.first, 1, m_ids.near, "33.3")).ok());
        EXPECT_TRUE(writer.put(project::Person{support::CountingIds::numbered(77), "D. New"}).ok());
        EXPECT_TRUE(writer.erase({RecordKind::PumpReading, m_ids.pumpReading}).ok());
    });
    EXPECT_TRUE(isChangeset(bytes));
    EXPECT_TRUE(isChangeset({}));
    std::size_t whole = 0;
    for (std::size_t size = 1; size < bytes.size(); ++size) {
        whole += isChangeset(ByteSpan(bytes).first(size)) ? 1 : 0;
    }
    // Between two rows, and between a row and the next table's head, a cut leaves a shorter changeset: three
    // tables with one row each have five such places.
    EXPECT_EQ(whole, 5u);
}

TEST_F(Changeset, changesOfSomeTablesAloneAreAChangeset) {
    const Bytes bytes = changesOf([&](RecordWriter& writer) {
        EXPECT_TRUE(writer.put(support::wholeJobReading(m_ids.first, 1, m_ids.near, "33.3")).ok());
        EXPECT_TRUE(writer.put(project::Person{support::CountingIds::numbered(77), "D. New"}).ok());
        EXPECT_TRUE(writer.put(project::Person{support::CountingIds::numbered(78), "E. New"}).ok());
        EXPECT_TRUE(writer.erase({RecordKind::PumpReading, m_ids.pumpReading}).ok());
    });
    const auto of = [&](auto isWanted) { return changesOfTables(bytes, isWanted); };
    EXPECT_EQ(of([](std::string_view) { return true; }), bytes);
    EXPECT_EQ(of([](std::string_view) { return false; }), Bytes());
    const Bytes people = of([](std::string_view table) { return table == "people"; });
    ChangesetReader reader(people);
    for (const int person : {77, 78}) {
        ASSERT_TRUE(reader.next());
        EXPECT_EQ(reader.table(), "people");
        EXPECT_EQ(reader.recordId(), support::CountingIds::numbered(person));
    }
    EXPECT_FALSE(reader.next());
    EXPECT_FALSE(reader.isDamaged());
    const Bytes cut(bytes.begin(), bytes.end() - 3);
    EXPECT_EQ(changesOfTables(cut, [](std::string_view) { return true; }), Bytes());
}

TEST_F(Changeset, withAnyByteFlippedIsRefusedOrAppliedButNeverHangs) {
    const Bytes bytes = changesOf([&](RecordWriter& writer) {
        EXPECT_TRUE(writer.put(support::wholeJobReading(m_ids.first, 1, m_ids.near, "33.3")).ok());
        EXPECT_TRUE(writer.erase({RecordKind::PumpReading, m_ids.pumpReading}).ok());
    });
    for (std::size_t at = 0; at < bytes.size(); ++at) {
        for (const int bit : {1, 8, 128}) {
            Bytes flipped = bytes;
            flipped[at] = static_cast<std::uint8_t>(flipped[at] ^ bit);
            Transaction transaction(m_database);
            (void)applyChangeset(m_database, flipped);
            (void)inverted(flipped);
            (void)changeSetOf(flipped);
        }
    }
}

TEST_F(Changeset, referencesAreHeldByTheDatabaseToo) {
    Transaction transaction(m_database);
    RecordWriter writer(m_database);
    EXPECT_TRUE(writer.erase({RecordKind::Branch, m_ids.near}).ok()) << "held at the end of the transaction";
    EXPECT_FALSE(transaction.commit().ok());
}

}  // namespace
}  // namespace ww::store
