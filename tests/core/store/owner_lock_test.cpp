#include "core/store/owner_lock.h"

#include <gtest/gtest.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>

#include "core/store/store_messages.h"
#include "tests/support/temporary_folder.h"

namespace ww::store {
namespace {

Holder holder(const std::string& person) {
    return {person, "LT-1", 4711, *base::Instant::fromText("2026-03-02T09:12:00Z")};
}

TEST(OwnerLock, isHeldByOneAndNamesIt) {
    const support::TemporaryFolder folder;
    auto first = OwnerLock::take(folder.file("job.wwj"), holder("A. Fields"));
    ASSERT_TRUE(first.ok());
    EXPECT_EQ(folder.read("job.wwj-lock"), "A. Fields\nLT-1\n4711\n2026-03-02T09:12:00Z\n");
    const auto second = OwnerLock::take(folder.file("job.wwj"), holder("B. Other"));
    ASSERT_FALSE(second.ok());
    EXPECT_EQ(
        base::english(second.fault()),
        "open for changes by A. Fields on LT-1 since 2026-03-02T09:12:00Z (process 4711), so it can only be "
        "read here; close it there first");
}

TEST(OwnerLock, isFreeAgainAndLeavesNothingBehind) {
    const support::TemporaryFolder folder;
    { ASSERT_TRUE(OwnerLock::take(folder.file("job.wwj"), holder("A. Fields")).ok()); }
    EXPECT_FALSE(folder.has("job.wwj-lock"));
    EXPECT_TRUE(OwnerLock::take(folder.file("job.wwj"), holder("B. Other")).ok());
}

TEST(OwnerLock, namesOfSeveralLinesCannotShiftTheOthers) {
    const support::TemporaryFolder folder;
    auto first = OwnerLock::take(folder.file("job.wwj"), holder("A.\nFields"));
    EXPECT_EQ(OwnerLock::take(folder.file("job.wwj"), holder("B")).fault().arguments[0], "A. Fields");
}

TEST(OwnerLock, aHolderThatHasNotWrittenItsNameYetIsStillAHolder) {
    const support::TemporaryFolder folder;
    auto first = OwnerLock::take(folder.file("job.wwj"), holder("A. Fields"));
    folder.write("job.wwj-lock", "");
    const auto second = OwnerLock::take(folder.file("job.wwj"), holder("B. Other"));
    ASSERT_FALSE(second.ok());
    EXPECT_EQ(second.fault().arguments, (std::vector<std::string>{"?", "?", "?", "?"}));
}

TEST(OwnerLock, aFolderThatCannotBeWrittenIsToldApart) {
    EXPECT_EQ(OwnerLock::take("/no_such_folder/job.wwj", holder("A")).fault().code(), kFolderUnwritable.code);
}

TEST(OwnerLock, endsWithAKilledProgram) {
    const support::TemporaryFolder folder;
    std::array<int, 2> ends{};
    ASSERT_EQ(::pipe(ends.data()), 0);
    const pid_t child = ::fork();
    if (child == 0) {
        auto lock = OwnerLock::take(folder.file("job.wwj"), holder("A. Fields"));
        const char done = lock.ok() ? 'y' : 'n';
        (void)!::write(ends[1], &done, 1);
        for (;;) {
            ::pause();
        }
    }
    char done = 0;
    ASSERT_EQ(::read(ends[0], &done, 1), 1);
    EXPECT_EQ(done, 'y');
    EXPECT_EQ(OwnerLock::take(folder.file("job.wwj"), holder("B. Other")).fault().code(),
              kHeldElsewhere.code);
    ::kill(child, SIGKILL);
    int status = 0;
    ::waitpid(child, &status, 0);
    EXPECT_TRUE(folder.has("job.wwj-lock")) << "the file stays, but nobody holds it";
    EXPECT_TRUE(OwnerLock::take(folder.file("job.wwj"), holder("B. Other")).ok());
    ::close(ends[0]);
    ::close(ends[1]);
}

}  // namespace
}  // namespace ww::store
