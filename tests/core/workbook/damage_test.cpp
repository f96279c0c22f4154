// What is found when a file was damaged, or changed behind the program's back.

#include <gtest/gtest.h>
#include <unistd.h>

#include "core/store/database.h"
#include "core/store/replay.h"
#include "core/store/schema.h"
#include "core/store/store_messages.h"
#include "core/workbook/workbook.h"
#include "tests/support/fixed_clock.h"
#include "tests/support/temporary_folder.h"
#include "tests/support/whole_job.h"

namespace ww::workbook {
namespace {

using support::WholeJobIds;

class Damage : public testing::Test {
  protected:
    Damage() {
        auto made = Workbook::create(path(), support::wholeJob(), session());
        EXPECT_TRUE(made.ok());
        for (int i = 0; i < 5; ++i) {
            const auto reading = support::wholeJobReading(m_ids.next(), 10 + i, WholeJobIds{}.near,
                                                          "4" + std::to_string(i) + ".5");
            EXPECT_TRUE((*made)->apply({"DP", {reading}, {}, true}).ok());
        }
    }
    Session session() { return {m_clock, m_ids, "A. Fields", "LT-1"}; }
    std::string path() const { return m_folder.file("job.wwj"); }
    /// What another program does to the file.
    void change(const std::string& sql) {
        auto database = store::Database::open(path(), store::Access::Write);
        ASSERT_TRUE(database.ok());
        const auto done = database->execute("PRAGMA foreign_keys=OFF; " + sql);
        ASSERT_TRUE(done.ok()) << base::english(done.fault());
    }
    std::string codeOfOpening() {
        auto opened = Workbook::open(path(), OpenMode::ReadWrite, session());
        return opened ? "opened" : std::string(opened.fault().code());
    }
    Verification verified() {
        auto verification = verify(path());
        EXPECT_TRUE(verification.ok()) << base::english(verification.fault());
        return verification ? *verification : Verification{};
    }

    support::TemporaryFolder m_folder;
    support::FixedClock m_clock;
    support::CountingIds m_ids{support::kFirstFreeId};
};

TEST_F(Damage, aSoundFileIsIntact) {
    EXPECT_TRUE(verified().isIntact);
    EXPECT_EQ(verified().journalRecords, 6);
}

TEST_F(Damage, onlyAFileWhoseRowsAreAllToldByItsJournalIsTakenAsRecorded) {
    const auto isAsRecorded = [this] {
        auto database = store::Database::open(path(), store::Access::Read);
        return database.ok() && store::isAsRecorded(*database);
    };
    EXPECT_TRUE(isAsRecorded());
    {
        auto opened = Workbook::open(path(), OpenMode::ReadWrite, session());
        ASSERT_TRUE(opened.ok());
        ASSERT_TRUE((*opened)->undo().ok());
    }
    EXPECT_TRUE(isAsRecorded()) << "a row that was put and taken back is no row";
    const std::string sound = m_folder.read("job.wwj");
    const std::vector<std::string> changes{
        "UPDATE readings SET dp='99.9' WHERE sequence=12",
        "UPDATE readings SET dp=NULL WHERE sequence=12",
        "UPDATE readings SET note=dp, dp=note WHERE sequence=12",
        "UPDATE branches SET position=position+1",
        "DELETE FROM people",
        "INSERT INTO rounds(id,number,kind,state) VALUES(randomblob(16),9,'survey','open')",
        "UPDATE meta SET value=value || ' '",
        "DELETE FROM journal WHERE sequence=7"};
    for (const std::string& sql : changes) {
        m_folder.write("job.wwj", sound);
        change(sql);
        EXPECT_FALSE(isAsRecorded()) << sql;
        EXPECT_NE(codeOfOpening(), "opened") << sql;
    }
}

TEST_F(Damage, aChangedValueIsNamed) {
    change("UPDATE readings SET dp='99.9' WHERE sequence=12");
    const Verification found = verified();
    EXPECT_FALSE(found.isIntact);
    ASSERT_EQ(found.findings.size(), 1u);
    EXPECT_EQ(found.findings[0].code(), store::kRowChanged.code);
    EXPECT_EQ(found.findings[0].arguments,
              (std::vector<std::string>{"reading 12 of branch B-05 in round 1", "readings", "dp", "\"99.9\"",
                                        "\"42.5\""}));
    EXPECT_FALSE(found.firstBadRecord.has_value());
}

TEST_F(Damage, removedAndForeignRowsAreNamed) {
    change(
        "DELETE FROM people; INSERT INTO rounds(id,number,kind,state) "
        "VALUES(randomblob(16),9,'survey','open')");
    const Verification found = verified();
    ASSERT_EQ(found.findings.size(), 2u);
    EXPECT_EQ(found.findings[0].code(), store::kRowMissing.code);
    EXPECT_EQ(found.findings[0].arguments[0], "person A. Fields");
    EXPECT_EQ(found.findings[1].code(), store::kRowForeign.code);
    EXPECT_EQ(found.findings[1].arguments[0], "round 9");
}

TEST_F(Damage, rowsOfTablesAreNamedWithTheirOwner) {
    change(
        "UPDATE valve_rows SET coefficient='4.11' WHERE coefficient='4.10' AND valve=(SELECT id FROM valves "
        "WHERE model='V')");
    const Verification found = verified();
    ASSERT_EQ(found.findings.size(), 1u);
    EXPECT_EQ(found.findings[0].arguments[0], "row 3 of valve V 25");
}

TEST_F(Damage, everyFieldOfTheJournalIsUnderTheChain) {
    const std::vector<std::string> changes{
        "utc=utc+1",
        "person='B. Other'",
        "machine='LT-2'",
        "label=label || ' '",
        "undoes=1",
        "redoes=1",
        "can_undo=0",
        "schema_version=0",
        "digest=zeroblob(32)",
        "changeset=CAST(substr(changeset,1,length(changeset)-1) || x'37' AS BLOB)"};
    const std::string before = m_folder.read("job.wwj");
    for (const std::string& set : changes) {
        m_folder.write("job.wwj", before);
        change("UPDATE journal SET " + set + " WHERE sequence=3");
        EXPECT_EQ(codeOfOpening(), "journal_chain_broken") << set;
        EXPECT_EQ(verified().firstBadRecord, 3) << set;
    }
}

TEST_F(Damage, aMissingJournalRecordIsFound) {
    change("DELETE FROM journal WHERE sequence=4");
    EXPECT_EQ(codeOfOpening(), "journal_chain_broken");
    EXPECT_EQ(verified().firstBadRecord, 4);
    change("DELETE FROM journal");
    EXPECT_EQ(codeOfOpening(), "journal_chain_broken");
}

TEST_F(Damage, aCutTailOfTheJournalLeavesForeignRows) {
    change("DELETE FROM journal WHERE sequence=6");
    const Verification found = verified();
    ASSERT_EQ(found.findings.size(), 1u);
    EXPECT_EQ(found.findings[0].arguments[0], "reading 14 of branch B-05 in round 1");
}

TEST_F(Damage, aFileCutShortIsRefusedAtAnyLength) {
    const std::string whole = m_folder.read("job.wwj");
    for (const std::size_t parts : {1u, 10u, 30u, 60u, 90u, 99u}) {
        m_folder.write("job.wwj", whole.substr(0, whole.size() * parts / 100));
        EXPECT_NE(codeOfOpening(), "opened") << parts << " %";
    }
    EXPECT_FALSE(m_folder.has("job.wwj-lock")) << "a refused file is not held";
}

TEST_F(Damage, flippedBytesAreNeverTakenForSound) {
    const std::string whole = m_folder.read("job.wwj");
    std::size_t refused = 0;
    std::size_t tried = 0;
    for (std::size_t at = 0; at < whole.size(); at += 331) {
        std::string flipped = whole;
        flipped[at] = static_cast<char>(flipped[at] ^ 0x5A);
        m_folder.write("job.wwj", flipped);
        const auto found = verify(path());
        const bool isSound = found.ok() && found->isIntact;
        ++tried;
        refused += isSound ? 0 : 1;
        if (isSound) {
            // A byte that means nothing was hit: free space, or a counter of SQLite. The job must be the
            // same.
            auto opened = Workbook::open(path(), OpenMode::ReadOnly, session());
            ASSERT_TRUE(opened.ok()) << "byte " << at;
            EXPECT_EQ((*opened)->project().readings().size(), 7u) << "byte " << at;
        }
    }
    EXPECT_GT(refused, tried / 20) << "at least the bytes of rows must be noticed";
}

TEST_F(Damage, filesThatAreNoWorkbooksAreToldApart) {
    m_folder.write("job.wwj", "");
    EXPECT_EQ(codeOfOpening(), "workbook_empty");
    EXPECT_EQ(verify(path()).fault().code(), "workbook_empty");
    m_folder.write("job.wwj", "tag,parent\r\nB-01,\r\n");
    EXPECT_EQ(codeOfOpening(), "not_a_workbook");
    EXPECT_EQ(verify(path()).fault().code(), "not_a_workbook");
    std::filesystem::remove(path());
    EXPECT_EQ(codeOfOpening(), "workbook_missing");
    EXPECT_EQ(verify(path()).fault().code(), "workbook_missing");
    auto other = store::Database::open(path(), store::Access::Create);
    ASSERT_TRUE(other->execute("CREATE TABLE a(b)").ok());
    EXPECT_EQ(codeOfOpening(), "not_a_workbook") << "a database of another program";
    std::filesystem::remove(path());
    std::filesystem::create_directory(path());
    EXPECT_EQ(codeOfOpening(), "not_a_workbook");
}

TEST_F(Damage, tablesThatDoNotBelongAreRefused) {
    const std::string before = m_folder.read("job.wwj");
    for (const char* sql : {"CREATE TRIGGER t AFTER INSERT ON readings BEGIN DELETE FROM people; END",
                            "CREATE VIEW v AS SELECT * FROM readings", "CREATE TABLE extra(a)",
                            "DROP TABLE people", "ALTER TABLE people ADD COLUMN age TEXT"}) {
        m_folder.write("job.wwj", before);
        change(sql);
        EXPECT_EQ(codeOfOpening(), "workbook_schema_unexpected") << sql;
        EXPECT_FALSE(verified().isIntact) << sql;
    }
}

TEST_F(Damage, valuesThatCannotBeReadAreNamed) {
    const std::string before = m_folder.read("job.wwj");
    for (const auto& [sql, column] :
         {std::pair{"UPDATE readings SET dp='x' WHERE sequence=12", "dp"},
          std::pair{"UPDATE readings SET dp_unit='gpm' WHERE sequence=12", "dp"},
          std::pair{"UPDATE readings SET dp_unit='furlong' WHERE sequence=12", "dp"},
          std::pair{"UPDATE readings SET status='lost' WHERE sequence=12", "status"},
          std::pair{"UPDATE readings SET instrument=x'01' WHERE sequence=12", "instrument"}}) {
        m_folder.write("job.wwj", before);
        change(sql);
        auto opened = Workbook::open(path(), OpenMode::ReadOnly, session());
        ASSERT_FALSE(opened.ok()) << sql;
        EXPECT_EQ(opened.fault().code(), store::kRowUnreadable.code);
        EXPECT_EQ(opened.fault().arguments, (std::vector<std::string>{"readings", column}));
    }
}

TEST_F(Damage, aNewerFileCanBeReadAndNamesTheVersionNeeded) {
    change("ALTER TABLE readings ADD COLUMN weather TEXT; PRAGMA user_version=" +
           std::to_string(store::kSchemaVersion + 1) +
           "; "
           "UPDATE meta SET value='7.1.0' WHERE key='needs_version'");
    auto opened = Workbook::open(path(), OpenMode::ReadWrite, session());
    ASSERT_TRUE(opened.ok()) << base::english(opened.fault());
    EXPECT_TRUE((*opened)->isReadOnly());
    EXPECT_EQ((*opened)->readOnlyReason()->fault.code(), store::kNewerSchema.code);
    EXPECT_EQ((*opened)->readOnlyReason()->fault.arguments[0], "7.1.0");
    EXPECT_EQ((*opened)->project().readings().size(), 7u);
    EXPECT_FALSE(m_folder.has("job.wwj-lock"));
    EXPECT_EQ(verify(path()).fault().code(), store::kNewerSchema.code);
}

/// Goes on as a user whose rights bind, until the end of the scope: the superuser may write anywhere.
class OrdinaryUser {
  public:
    OrdinaryUser() : m_before(::geteuid()) {
        if (m_before == 0) {
            EXPECT_EQ(::seteuid(kNobody), 0);
        }
    }
    ~OrdinaryUser() { EXPECT_EQ(::seteuid(m_before), 0); }

  private:
    static constexpr uid_t kNobody = 65534;
    uid_t m_before;
};

TEST_F(Damage, aFolderThatCannotBeWrittenGivesAJobToRead) {
    using std::filesystem::perms;
    const perms forReading = perms::owner_read | perms::group_read | perms::others_read;
    std::filesystem::permissions(path(), forReading);
    std::filesystem::permissions(m_folder.path(),
                                 forReading | perms::owner_exec | perms::group_exec | perms::others_exec);
    const OrdinaryUser user;
    auto opened = Workbook::open(path(), OpenMode::ReadWrite, session());
    ASSERT_TRUE(opened.ok()) << base::english(opened.fault());
    EXPECT_TRUE((*opened)->isReadOnly());
    EXPECT_EQ((*opened)->readOnlyReason()->fault.code(), store::kFolderUnwritable.code);
    EXPECT_EQ((*opened)->project().readings().size(), 7u);
    EXPECT_TRUE(verify(path())->isIntact);
    EXPECT_FALSE((*opened)->saveCopy(m_folder.file("copy.wwj")).ok());
    EXPECT_FALSE(Workbook::create(m_folder.file("new.wwj"), support::wholeJob(), session()).ok());
}

TEST_F(Damage, aFileWithoutTheRightToReadIsToldApart) {
    std::filesystem::permissions(m_folder.path(), std::filesystem::perms::all);
    std::filesystem::permissions(path(), std::filesystem::perms::none);
    const OrdinaryUser user;
    EXPECT_EQ(codeOfOpening(), "workbook_unreadable");
    EXPECT_EQ(verify(path()).fault().code(), "workbook_unreadable");
}

}  // namespace
}  // namespace ww::workbook
