// A program that stores readings is killed at random moments: what it had acknowledged is there afterwards,
// and the journal is whole. WW_KILLS sets how often (200 unless said otherwise).

#include <gtest/gtest.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <chrono>
#include <cstdlib>
#include <random>
#include <thread>

#include "core/workbook/workbook.h"
#include "tests/support/fixed_clock.h"
#include "tests/support/temporary_folder.h"
#include "tests/support/whole_job.h"

namespace ww::workbook {
namespace {

using support::CountingIds;
using support::WholeJobIds;

/// Ids of one life of the program begin this far behind those of the one before.
constexpr std::uint64_t kIdsPerLife = 1'000'000;

int kills() {
    const char* wanted = std::getenv("WW_KILLS");
    return wanted == nullptr ? 200 : std::atoi(wanted);
}

/// What is read at step `n` of the walk, in tenths of a kilopascal.
std::string digitsOfStep(std::uint64_t n) {
    return std::to_string(10 + n % 90) + "." + std::to_string(n % 10);
}

void acknowledge(int pipe, std::uint64_t number) {
    if (::write(pipe, &number, sizeof number) != sizeof number) {
        ::_exit(3);
    }
}

/// Told when the file is open; no reading has this number.
constexpr std::uint64_t kOpened = 0;

/// The life of the program that will be killed: opens the workbook and walks. Every reading is acknowledged
/// when it is stored, never before. Now and then an action is undone and done again between two readings.
[[noreturn]] void walk(const std::string& file, std::uint64_t life, int pipe) {
    support::FixedClock clock;
    CountingIds ids(life * kIdsPerLife);
    auto workbook = Workbook::open(file, OpenMode::ReadWrite, {clock, ids, "A. Fields", "LT-1"});
    if (!workbook || (*workbook)->isReadOnly()) {
        ::_exit(2);
    }
    acknowledge(pipe, kOpened);
    int sequence = static_cast<int>(life * 10'000);
    for (std::uint64_t step = 0;; ++step) {
        const std::uint64_t number = life * kIdsPerLife + step;
        const auto reading = support::wholeJobReading(CountingIds::numbered(number), ++sequence,
                                                      WholeJobIds{}.near, digitsOfStep(number));
        if (!(*workbook)->apply({"DP, B-05", {reading}, {}, true})) {
            ::_exit(4);
        }
        acknowledge(pipe, number);
        if (step % 5 == 4) {
            auto job = (*workbook)->project().job();
            job.site = "visit " + std::to_string(number);
            const bool done = (*workbook)->apply({"Site", {job}, {}, true}).ok() &&
                              (*workbook)->undo().ok() && (*workbook)->redo().ok();
            if (!done) {
                ::_exit(5);
            }
        }
    }
}

/// Starts a life, ends it after a while, and gives what it had acknowledged. Every other life is timed from
/// when it has opened the file, as opening takes longer the more there is in it.
std::vector<std::uint64_t> liveAndDie(const std::string& file, std::uint64_t life,
                                      std::chrono::microseconds span) {
    std::array<int, 2> ends{};
    EXPECT_EQ(::pipe(ends.data()), 0);
    const pid_t child = ::fork();
    if (child == 0) {
        ::close(ends[0]);
        walk(file, life, ends[1]);
    }
    ::close(ends[1]);
    std::uint64_t number = 0;
    if (life % 2 == 0) {
        EXPECT_EQ(::read(ends[0], &number, sizeof number), static_cast<ssize_t>(sizeof number));
    }
    // The moment of death is the matter of this test, so time has to pass; nothing depends on how much.
    std::this_thread::sleep_for(span);
    ::kill(child, SIGKILL);
    int status = 0;
    ::waitpid(child, &status, 0);
    EXPECT_TRUE(WIFSIGNALED(status)) << "the program ended by itself with " << WEXITSTATUS(status);
    std::vector<std::uint64_t> acknowledged;
    while (::read(ends[0], &number, sizeof number) == sizeof number) {
        if (number != kOpened) {
            acknowledged.push_back(number);
        }
    }
    ::close(ends[0]);
    return acknowledged;
}

TEST(Kill, everyAcknowledgedReadingIsThereAndTheChainIsWhole) {
    const support::TemporaryFolder folder;
    const std::string file = folder.file("job.wwj");
    support::FixedClock clock;
    CountingIds ids(support::kFirstFreeId);
    const Session session{clock, ids, "B. Other", "LT-2"};
    ASSERT_TRUE(Workbook::create(file, support::wholeJob(), session).ok());

    std::mt19937 random(20260302);
    std::uniform_int_distribution<int> span_us(0, 90'000);
    std::vector<std::uint64_t> acknowledged;
    std::size_t cutShort = 0;
    const int wanted = kills();
    for (int life = 1; life <= wanted; ++life) {
        const auto lived =
            liveAndDie(file, static_cast<std::uint64_t>(life), std::chrono::microseconds(span_us(random)));
        acknowledged.insert(acknowledged.end(), lived.begin(), lived.end());
        cutShort += folder.has("job.wwj-journal") ? 1 : 0;
        // Opening checks pages and chain, and the dead program's hold on the file is gone.
        auto workbook = Workbook::open(file, OpenMode::ReadWrite, session);
        ASSERT_TRUE(workbook.ok()) << "life " << life << ": " << base::english(workbook.fault());
        ASSERT_FALSE((*workbook)->isReadOnly()) << "life " << life;
        for (const std::uint64_t number : lived) {
            const auto* reading = (*workbook)->project().readings().find(CountingIds::numbered(number));
            ASSERT_NE(reading, nullptr) << "life " << life;
            ASSERT_EQ(reading->dp->digits.text(), digitsOfStep(number)) << "life " << life;
        }
    }
    auto workbook = Workbook::open(file, OpenMode::ReadOnly, session);
    ASSERT_TRUE(workbook.ok());
    for (const std::uint64_t number : acknowledged) {
        ASSERT_TRUE((*workbook)->project().readings().contains(CountingIds::numbered(number)));
    }
    const auto verification = verify(file);
    ASSERT_TRUE(verification.ok());
    EXPECT_TRUE(verification->isIntact);
    EXPECT_FALSE(acknowledged.empty());
    std::cout << wanted << " kills, " << acknowledged.size() << " readings acknowledged, all there; "
              << cutShort << " died in the middle of a change\n";
}

}  // namespace
}  // namespace ww::workbook
