// The disk refuses, or a change was interrupted and the place cannot be written: what is said, and what is
// kept.

#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include "core/store/database.h"
#include "core/store/store_messages.h"
#include "core/workbook/workbook.h"
#include "tests/support/fixed_clock.h"
#include "tests/support/full_disk.h"
#include "tests/support/temporary_folder.h"
#include "tests/support/whole_job.h"

namespace ww::workbook {
namespace {

using support::FullDisk;
using support::WholeJobIds;

class Disk : public testing::Test {
  protected:
    Disk() { EXPECT_TRUE(Workbook::create(path(), support::wholeJob(), session()).ok()); }
    Session session() { return {m_clock, m_ids, "A. Fields", "LT-1"}; }
    std::string path() const { return m_folder.file("job.wwj"); }
    project::Edit reading(int sequence, const std::string& note = "") {
        auto reading = support::wholeJobReading(m_ids.next(), sequence, WholeJobIds{}.near, "40.5");
        reading.note = note;
        return {"DP", {reading}, {}, true};
    }

    support::TemporaryFolder m_folder;
    support::FixedClock m_clock;
    support::CountingIds m_ids{support::kFirstFreeId};
};

TEST_F(Disk, fullRefusesTheEditAndKeepsFileAndMemoryAsTheyWere) {
    auto workbook = Workbook::open(path(), OpenMode::ReadWrite, session());
    ASSERT_TRUE(workbook.ok());
    const auto before = support::recordsOf((*workbook)->project());
    {
        const FullDisk full(std::filesystem::file_size(path()));
        const auto stored = (*workbook)->apply(reading(7, std::string(50'000, 'n')));
        ASSERT_FALSE(stored.ok());
        EXPECT_EQ(stored.fault().code(), store::kFileUnwritable.code);
        EXPECT_EQ(support::recordsOf((*workbook)->project()), before);
        EXPECT_EQ((*workbook)->journal().size(), 1u);
    }
    // With room again the same workbook goes on.
    ASSERT_TRUE((*workbook)->apply(reading(7)).ok());
    EXPECT_EQ((*workbook)->newestEntry().sequence, 2);
    EXPECT_TRUE(verify(path())->isIntact);
}

TEST_F(Disk, fullLeavesNothingOfANewWorkbookOrCopy) {
    const std::string other = m_folder.file("other.wwj");
    {
        const auto workbook = Workbook::open(path(), OpenMode::ReadOnly, session());
        const FullDisk full(20'000);
        EXPECT_EQ(Workbook::create(other, support::wholeJob(), session()).fault().code(),
                  store::kFileUnwritable.code);
        EXPECT_EQ((*workbook)->saveCopy(other).fault().code(), store::kFileUnwritable.code);
    }
    std::size_t files = 0;
    for ([[maybe_unused]] const auto& entry : std::filesystem::directory_iterator(m_folder.path())) {
        ++files;
    }
    EXPECT_EQ(files, 1u) << "only job.wwj may be left";
}

/// A program that dies with half of its pages in the file and the old ones in the rollback journal.
void dieInTheMiddle(const std::string& file) {
    const pid_t child = ::fork();
    if (child == 0) {
        auto database = store::Database::open(file, store::Access::Write);
        const bool isHalfDone = database.ok() && database
                                                     ->execute(
                                                         "PRAGMA cache_size=1; BEGIN IMMEDIATE;"
                                                         "UPDATE readings SET note=hex(randomblob(20000));"
                                                         "UPDATE branches SET serves=hex(randomblob(20000));")
                                                     .ok();
        ::_exit(isHalfDone ? 0 : 1);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    EXPECT_EQ(status, 0);
}

TEST_F(Disk, anInterruptedChangeIsTakenBackOnOpening) {
    dieInTheMiddle(path());
    ASSERT_TRUE(m_folder.has("job.wwj-journal"));
    auto workbook = Workbook::open(path(), OpenMode::ReadOnly, session());
    ASSERT_TRUE(workbook.ok()) << base::english(workbook.fault());
    EXPECT_EQ((*workbook)->project().readings().at(WholeJobIds{}.first).note, "");
    EXPECT_TRUE(verify(path())->isIntact);
}

TEST_F(Disk, anInterruptedChangeWhereNothingCanBeWrittenIsNotShownHalf) {
    dieInTheMiddle(path());
    ASSERT_TRUE(m_folder.has("job.wwj-journal"));
    using std::filesystem::perms;
    const perms reading = perms::owner_read | perms::group_read | perms::others_read;
    const perms entering = perms::owner_exec | perms::group_exec | perms::others_exec;
    std::filesystem::permissions(path(), reading);
    std::filesystem::permissions(path() + "-journal", reading);
    std::filesystem::permissions(m_folder.path(), reading | entering);
    // The superuser may write anywhere; an ordinary user is bound.
    constexpr uid_t kNobody = 65534;
    const uid_t before = ::geteuid();
    EXPECT_EQ(before == 0 ? ::seteuid(kNobody) : 0, 0);
    const auto opened = Workbook::open(path(), OpenMode::ReadWrite, session());
    EXPECT_EQ(::seteuid(before), 0);
    ASSERT_FALSE(opened.ok());
    EXPECT_EQ(opened.fault().code(), store::kRecoveryNeedsWriting.code);
}

}  // namespace
}  // namespace ww::workbook
