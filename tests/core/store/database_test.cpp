#include "core/store/database.h"

#include <gtest/gtest.h>

#include "core/store/store_messages.h"
#include "tests/support/temporary_folder.h"

namespace ww::store {
namespace {

TEST(Database, isMadeOnlyWhereNothingIs) {
    const support::TemporaryFolder folder;
    const auto file = folder.file("a.db");
    EXPECT_EQ(Database::open(file, Access::Write).fault().code(), kFileMissing.code);
    EXPECT_EQ(Database::open(file, Access::Read).fault().code(), kFileMissing.code);
    ASSERT_TRUE(Database::open(file, Access::Create).ok());
    EXPECT_FALSE(Database::open(folder.file("b/a.db"), Access::Create).ok());
}

TEST(Database, holdsWhatItPromisesAboutSafety) {
    const support::TemporaryFolder folder;
    auto database = Database::open(folder.file("a.db"), Access::Create);
    ASSERT_TRUE(database->execute("CREATE TABLE a(b INTEGER PRIMARY KEY) STRICT").ok());
    // Values as the SQLite documentation of these pragmas numbers them.
    EXPECT_EQ(*database->number("PRAGMA synchronous"), 3) << "EXTRA";
    EXPECT_EQ(*database->number("PRAGMA foreign_keys"), 1);
    EXPECT_EQ(*database->number("PRAGMA trusted_schema"), 0);
    EXPECT_EQ(*database->number("PRAGMA cell_size_check"), 1);
    auto mode = database->prepare("PRAGMA journal_mode");
    ASSERT_EQ(mode->step(), Step::Row);
    EXPECT_EQ(mode->text(0), "delete");
    EXPECT_FALSE(database->execute("PRAGMA writable_schema=ON; DELETE FROM sqlite_schema").ok())
        << "defensive";
    EXPECT_FALSE(database->execute("INSERT INTO a VALUES(\"1\")").ok()) << "a name in quotes is no text";
}

TEST(Database, forReadingChangesNothing) {
    const support::TemporaryFolder folder;
    const auto file = folder.file("a.db");
    ASSERT_TRUE(Database::open(file, Access::Create)->execute("CREATE TABLE a(b)").ok());
    auto reader = Database::open(file, Access::Read);
    EXPECT_FALSE(reader->execute("INSERT INTO a VALUES(1)").ok());
    ASSERT_TRUE(reader->copyInto(folder.file("copy.db")).ok());
    EXPECT_FALSE(reader->execute("INSERT INTO a VALUES(1)").ok()) << "copying does not open the door";
    EXPECT_FALSE(reader->copyInto(folder.file("none/copy.db")).ok());
}

TEST(Database, aTransactionThatIsNotCommittedIsGone) {
    Database database = Database::inMemory();
    ASSERT_TRUE(database.execute("CREATE TABLE a(b)").ok());
    {
        Transaction transaction(database);
        ASSERT_TRUE(database.execute("INSERT INTO a VALUES(1)").ok());
    }
    EXPECT_EQ(*database.number("SELECT count(*) FROM a"), 0);
    {
        Transaction transaction(database);
        ASSERT_TRUE(database.execute("INSERT INTO a VALUES(1)").ok());
        ASSERT_TRUE(transaction.commit().ok());
    }
    EXPECT_EQ(*database.number("SELECT count(*) FROM a"), 1);
}

TEST(Database, textsAndBytesComeBackWhole) {
    Database database = Database::inMemory();
    ASSERT_TRUE(database.execute("CREATE TABLE a(t TEXT NOT NULL, b BLOB NOT NULL, n INTEGER) STRICT").ok());
    const std::string odd("a\0b\"';\xC3\xA9", 8);
    const std::vector<std::uint8_t> none;
    auto put = database.prepare("INSERT INTO a VALUES(?,?,?)");
    put->bind(1, std::string_view(odd));
    put->bind(2, ByteSpan(none));
    put->bindNull(3);
    ASSERT_TRUE(put->run());
    put->bind(1, std::string_view());
    put->bind(3, std::int64_t{-5});
    ASSERT_TRUE(put->run()) << "an empty text is not NULL";
    auto get = database.prepare("SELECT t,b,n FROM a");
    ASSERT_EQ(get->step(), Step::Row);
    EXPECT_EQ(get->text(0), odd);
    EXPECT_EQ(get->type(1), CellType::Blob);
    EXPECT_TRUE(get->blob(1).empty());
    EXPECT_TRUE(get->isNull(2));
    ASSERT_EQ(get->step(), Step::Row);
    EXPECT_EQ(get->text(0), "");
    EXPECT_EQ(get->integer(2), -5);
    EXPECT_EQ(get->step(), Step::Done);
}

}  // namespace
}  // namespace ww::store
