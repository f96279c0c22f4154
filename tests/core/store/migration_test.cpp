#include "core/store/migration.h"

#include <gtest/gtest.h>

#include "core/store/open_file.h"
#include "core/store/record_reader.h"
#include "core/store/schema.h"
#include "core/store/schema_two.h"
#include "core/store/store_messages.h"
#include "core/workbook/workbook.h"
#include "tests/support/fixed_clock.h"
#include "tests/support/temporary_folder.h"
#include "tests/support/whole_job.h"

namespace ww::store {
namespace {

/// A file that the first program with schema 1 wrote: support::wholeJob(), a reading stored, undone and done
/// again.
constexpr const char* kFrozenFile = WW_SOURCE_DIR "/tests/data/schema_1.wwj";

/// Steps as a later program might have them.
constexpr std::array kLaterSteps{
    MigrationStep{2, kSchemaTwo},
    MigrationStep{3, "ALTER TABLE readings ADD COLUMN weather TEXT"},
    MigrationStep{4,
                  "CREATE TABLE notes(id BLOB PRIMARY KEY NOT NULL, text TEXT NOT NULL) STRICT; "
                  "INSERT INTO notes SELECT id, note FROM readings WHERE note<>''"},
};
constexpr std::array kFailingSteps{
    MigrationStep{2, kSchemaTwo},
    MigrationStep{3, "ALTER TABLE readings ADD COLUMN weather TEXT"},
    MigrationStep{4, "CREATE TABLE notes(id BLOB) STRICT; INSERT INTO no_such_table VALUES(1)"},
};

class Migration : public testing::Test {
  protected:
    Migration() { std::filesystem::copy_file(kFrozenFile, m_folder.file("job.wwj")); }
    Database openForWriting() {
        auto database = Database::open(m_folder.file("job.wwj"), Access::Write);
        EXPECT_TRUE(database.ok());
        return std::move(*database);
    }
    support::TemporaryFolder m_folder;
};

TEST_F(Migration, theFirstSchemaIsStillReadToTheLastField) {
    support::FixedClock clock;
    support::CountingIds ids;
    auto workbook = workbook::Workbook::open(m_folder.file("job.wwj"), workbook::OpenMode::ReadWrite,
                                             {clock, ids, "B", "LT-2"});
    ASSERT_TRUE(workbook.ok()) << base::english(workbook.fault());
    EXPECT_FALSE((*workbook)->isReadOnly());
    project::Project expected;
    for (project::AnyRecord& record : support::wholeJob().put) {
        std::visit([&](auto& r) { expected.put(r); }, record);
    }
    // The first id went to the workbook itself.
    expected.put(support::wholeJobReading(support::CountingIds::numbered(support::kFirstFreeId + 1), 3,
                                          support::WholeJobIds{}.near, "52.7"));
    EXPECT_EQ(support::recordsOf((*workbook)->project()), support::recordsOf(expected));
    EXPECT_EQ((*workbook)->workbookId(), support::CountingIds::numbered(support::kFirstFreeId));
    const auto journal = (*workbook)->journal();
    ASSERT_EQ(journal.size(), 4u);
    EXPECT_EQ(journal[1].time.text(), "2026-03-02T10:00:00Z");
    EXPECT_EQ(journal[3].redoes, 2);
    EXPECT_EQ((*workbook)->undoLabel(), "DP 52.7 kPa, B-05");
    const auto verification = workbook::verify(m_folder.file("job.wwj"));
    EXPECT_TRUE(verification->isIntact);
}

TEST_F(Migration, theMarksOfTheFileAreWhereOtherProgramsLook) {
    const std::string bytes = m_folder.read("job.wwj");
    // The application id, most significant byte first, at byte 68: the SQLite database file format,
    // section 1.3.
    EXPECT_EQ(bytes.substr(68, 4), "WWJ1");
    EXPECT_EQ(bytes.substr(60, 4), std::string("\0\0\0\1", 4)) << "the user version, at byte 60";
}

TEST_F(Migration, schemaOneIsWhatThisProgramMakes) {
    const auto opened = openUnchecked(m_folder.file("job.wwj"));
    ASSERT_TRUE(opened.ok());
    Database fresh = Database::inMemory();
    ASSERT_TRUE(createSchemaOne(fresh).ok());
    const std::string sql = "SELECT count(*) FROM sqlite_schema";
    EXPECT_EQ(*opened->number(sql), *fresh.number(sql));
    auto copy = opened->copyInMemory();
    ASSERT_TRUE(copy.ok());
    ASSERT_TRUE(migrate(*copy, kSchemaVersion, migrationSteps()).ok());
    EXPECT_TRUE(checkSchema(*copy).ok()) << "and its steps lead to the present schema";
}

TEST_F(Migration, theStepsLeadToTheSchemaWhoseDigestIsKept) {
    // Where a step was added, the digest that is told here goes into kCurrentSchemaDigest.
    EXPECT_EQ(*schemaDigest(*emptyInCurrentSchema()), kCurrentSchemaDigest);
}

// Common practice, no source: what thousands of rows refer to is found by an index, not by walking them.
TEST_F(Migration, rowsThatReferToOneAreFoundWithoutWalkingTheTable) {
    const auto database = emptyInCurrentSchema();
    ASSERT_TRUE(database.ok());
    for (const char* sql :
         {"SELECT 1 FROM readings WHERE supersedes=?", "SELECT 1 FROM branches WHERE parent=?"}) {
        auto plan = database->prepare(std::string("EXPLAIN QUERY PLAN ") + sql);
        ASSERT_TRUE(plan.ok());
        ASSERT_EQ(plan->step(), Step::Row);
        EXPECT_TRUE(plan->text(3).starts_with("SEARCH")) << sql << ": " << plan->text(3);
    }
}

TEST_F(Migration, stepsRunInOrderAfterACopyWasKept) {
    Database database = openForWriting();
    ASSERT_TRUE(migrateFile(database, 4, kLaterSteps).ok());
    EXPECT_EQ(*schemaVersionOf(database), 4);
    EXPECT_EQ(*database.number("SELECT count(*) FROM notes"), 1);
    EXPECT_EQ(*database.number("SELECT count(weather) FROM readings"), 0);
    const auto kept = m_folder.file("job.schema-1.wwj");
    ASSERT_TRUE(std::filesystem::exists(kept));
    EXPECT_TRUE(workbook::verify(kept)->isIntact) << "the copy is the workbook as it was";
}

TEST_F(Migration, aTargetInBetweenStopsThere) {
    Database database = openForWriting();
    ASSERT_TRUE(migrate(database, 3, kLaterSteps).ok());
    EXPECT_EQ(*schemaVersionOf(database), 3);
    EXPECT_FALSE(database.number("SELECT count(*) FROM notes").ok());
    ASSERT_TRUE(migrate(database, 4, kLaterSteps).ok());
    EXPECT_EQ(*schemaVersionOf(database), 4);
    ASSERT_TRUE(migrate(database, 4, kLaterSteps).ok()) << "nothing is left to do";
}

TEST_F(Migration, aStepThatFailsLeavesTheSchemaBeforeIt) {
    Database database = openForWriting();
    EXPECT_FALSE(migrateFile(database, 4, kFailingSteps).ok());
    EXPECT_EQ(*schemaVersionOf(database), 3);
    EXPECT_FALSE(database.number("SELECT count(*) FROM notes").ok()) << "nothing of the failed step is left";
    EXPECT_EQ(*database.number("SELECT count(weather) FROM readings"), 0);
    EXPECT_TRUE(m_folder.has("job.schema-1.wwj"));
}

TEST_F(Migration, aFileOfThePresentSchemaIsLeftAlone) {
    Database database = openForWriting();
    ASSERT_TRUE(migrateFile(database, 1, kLaterSteps).ok());
    EXPECT_FALSE(m_folder.has("job.schema-1.wwj"));
}

/// Steps from schema 12 on as a program of years from now might have them.
constexpr std::array kMuchLaterSteps{
    MigrationStep{2, kSchemaTwo},
    MigrationStep{12, "SELECT 1"},
    MigrationStep{13, "CREATE TABLE notes(id BLOB) STRICT"},
};
constexpr std::array kMuchLaterFailingSteps{
    MigrationStep{13, "INSERT INTO no_such_table VALUES(1)"},
};

TEST_F(Migration, theNewestTenKeptCopiesStayAndWhatAPersonNamedStaysToo) {
    const auto put = [&](const char* name) { std::filesystem::copy_file(kFrozenFile, m_folder.file(name)); };
    for (int version = 1; version <= 11; ++version) {
        put(("job.schema-" + std::to_string(version) + ".wwj").c_str());
    }
    for (const char* name :
         {"job copy.wwj", "job.schema-1 old.wwj", "job.schema-01.wwj", "jobs.schema-1.wwj"}) {
        put(name);
    }
    support::FixedClock clock;
    support::CountingIds ids;
    ASSERT_TRUE(workbook::Workbook::create(m_folder.file("job.schema-0.wwj"), support::wholeJob(),
                                           {clock, ids, "B", "LT-2"})
                    .ok())
        << "another workbook of such a name";
    Database database = openForWriting();
    ASSERT_TRUE(migrate(database, 12, kMuchLaterSteps).ok());
    EXPECT_FALSE(migrateFile(database, 13, kMuchLaterFailingSteps).ok());
    EXPECT_TRUE(m_folder.has("job.schema-12.wwj"));
    EXPECT_TRUE(m_folder.has("job.schema-1.wwj")) << "nothing goes before a migration has succeeded";
    ASSERT_TRUE(migrateFile(database, 13, kMuchLaterSteps).ok());
    EXPECT_FALSE(m_folder.has("job.schema-1.wwj"));
    EXPECT_FALSE(m_folder.has("job.schema-2.wwj"));
    for (int version = 3; version <= 12; ++version) {
        EXPECT_TRUE(m_folder.has("job.schema-" + std::to_string(version) + ".wwj")) << version;
    }
    for (const char* name : {"job copy.wwj", "job.schema-1 old.wwj", "job.schema-01.wwj", "jobs.schema-1.wwj",
                             "job.schema-0.wwj"}) {
        EXPECT_TRUE(m_folder.has(name)) << name;
    }
}

TEST_F(Migration, anOlderFileCanBeBroughtUpToDateInMemoryAlone) {
    const std::string before = m_folder.read("job.wwj");
    auto file = openUnchecked(m_folder.file("job.wwj"));
    ASSERT_TRUE(file.ok());
    auto copy = file->copyInMemory();
    ASSERT_TRUE(copy.ok());
    ASSERT_TRUE(migrate(*copy, 4, kLaterSteps).ok());
    for (const MigrationStep& step : migrationSteps()) {
        if (step.to >= 4) {
            ASSERT_TRUE(copy->execute(std::string(step.sql)).ok()) << "what else this program reads";
        }
    }
    EXPECT_EQ(readProject(*copy)->readings().size(), 3u);
    EXPECT_EQ(m_folder.read("job.wwj"), before);
}

}  // namespace
}  // namespace ww::store
