// Merging and migrating while programs die, disks fill and files are copied: what was there stays, and a file
// is whole or not there. WW_MERGE_KILLS sets how often a program is killed (40 unless said otherwise).

#include <gtest/gtest.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <chrono>
#include <cstdlib>
#include <functional>
#include <random>
#include <thread>

#include "core/store/store_messages.h"
#include "tests/support/full_disk.h"
#include "tests/support/two_laptops.h"
#include "tests/support/whole_job.h"

namespace ww::workbook {
namespace {

using support::Laptop;

int kills() {
    const char* wanted = std::getenv("WW_MERGE_KILLS");
    return wanted == nullptr ? 40 : std::atoi(wanted);
}

using Ready = std::function<void()>;

/// Runs a program and kills it a while after it said that it is ready.
void liveAndDie(const std::function<void(const Ready&)>& life, std::chrono::microseconds span) {
    std::array<int, 2> ends{};
    ASSERT_EQ(::pipe(ends.data()), 0);
    const pid_t child = ::fork();
    if (child == 0) {
        ::close(ends[0]);
        life([&] { ::close(ends[1]); });
        ::_exit(0);
    }
    ::close(ends[1]);
    char nothing = 0;
    EXPECT_EQ(::read(ends[0], &nothing, 1), 0) << "ready when the other end is closed";
    ::close(ends[0]);
    // The moment of death is the matter of these tests, so time has to pass; nothing depends on how much.
    std::this_thread::sleep_for(span);
    ::kill(child, SIGKILL);
    int status = 0;
    ::waitpid(child, &status, 0);
}

class MergeFaults : public testing::Test {
  protected:
    MergeFaults() {
        for (int i = 1; i <= 12; ++i) {
            m_two.a.read(support::walkTag(i), "20.5");
            m_two.b.read(support::walkTag(i + 6), "30.5");
        }
        m_two.a.job.reset();
        m_two.b.job.reset();
    }
    std::string a() const { return m_two.fileOf("a"); }
    std::string b() const { return m_two.fileOf("b"); }
    std::size_t filesLeft() const {
        std::size_t files = 0;
        for ([[maybe_unused]] const auto& entry : std::filesystem::directory_iterator(m_two.folder.path())) {
            ++files;
        }
        return files;
    }
    std::chrono::microseconds span() { return std::chrono::microseconds(m_span_us(m_random)); }

    support::TwoLaptops m_two;
    std::mt19937 m_random{20260302};
    std::uniform_int_distribution<int> m_span_us{0, 120'000};
};

TEST_F(MergeFaults, aMergeThatIsKilledHappenedOrDidNot) {
    int merged = 0;
    const int wanted = kills();
    for (int life = 0; life < wanted; ++life) {
        liveAndDie(
            [&](const Ready& ready) {
                Laptop laptop("A. Fields", "LT-1", 10'000'000 + static_cast<std::uint64_t>(life) * 1000);
                auto job = Workbook::open(a(), OpenMode::ReadWrite, laptop.session());
                ready();
                while (job && (*job)->merge(b()).ok() && (*job)->undo().ok()) {
                }
            },
            span());
        Laptop laptop("A. Fields", "LT-1", 20'000'000);
        laptop.open(a());
        ASSERT_NE(laptop.job, nullptr) << "life " << life;
        const auto round = laptop.project().lastRound()->id;
        const std::size_t readings = laptop.project().readingsOf(round).size();
        ASSERT_TRUE(readings == 12 || readings == 24) << readings;
        // Six valves were read on both: the conflicts come and go with the readings.
        ASSERT_EQ(openConflicts(laptop.project()).size(), readings == 24 ? 6u : 0u);
        merged += readings == 24 ? 1 : 0;
    }
    EXPECT_TRUE(verify(a())->isIntact);
    EXPECT_TRUE(verify(b())->isIntact);
    std::cout << wanted << " kills, " << merged << " after a merge\n";
}

TEST_F(MergeFaults, aThirdFileIsWholeOrNotThere) {
    const std::string before = m_two.folder.read("a.wwj") + m_two.folder.read("b.wwj");
    const std::string out = m_two.fileOf("out");
    const int wanted = kills() / 2;
    for (int life = 0; life < wanted; ++life) {
        std::filesystem::remove(out);
        liveAndDie(
            [&](const Ready& ready) {
                Laptop office("Office", "PC", 30'000'000);
                ready();
                (void)mergeFiles(a(), b(), out, office.session());
            },
            span());
        if (std::filesystem::exists(out)) {
            Laptop office("Office", "PC", 40'000'000);
            office.open(out);
            ASSERT_NE(office.job, nullptr);
            EXPECT_EQ(openConflicts(office.project()).size(), 6u);
        }
    }
    EXPECT_EQ(m_two.folder.read("a.wwj") + m_two.folder.read("b.wwj"), before);
}

TEST_F(MergeFaults, aMigrationThatIsKilledLeavesTheJobAndACopy) {
    const std::string frozen = std::string(WW_SOURCE_DIR) + "/tests/data/schema_1.wwj";
    const int wanted = kills() / 2;
    for (int life = 0; life < wanted; ++life) {
        support::TemporaryFolder folder;
        const std::string file = folder.file("job.wwj");
        std::filesystem::copy_file(frozen, file);
        liveAndDie(
            [&](const Ready& ready) {
                Laptop laptop("A. Fields", "LT-1", 10'000'000);
                ready();
                (void)Workbook::open(file, OpenMode::ReadWrite, laptop.session());
            },
            span() / 4);
        Laptop laptop("A. Fields", "LT-1", 20'000'000);
        laptop.open(file);
        ASSERT_NE(laptop.job, nullptr) << "life " << life;
        EXPECT_EQ(laptop.project().readings().size(), 3u);
        EXPECT_TRUE(verify(file)->isIntact);
        EXPECT_TRUE(std::filesystem::exists(folder.file("job.schema-1.wwj")));
        EXPECT_TRUE(verify(folder.file("job.schema-1.wwj"))->isIntact);
    }
}

TEST_F(MergeFaults, aFullDiskRefusesTheMergeAndKeepsAllAsItWas) {
    Laptop laptop("A. Fields", "LT-1", 10'000'000);
    laptop.open(a());
    const auto before = support::recordsOf(laptop.project());
    const std::size_t files = filesLeft();
    {
        const support::FullDisk full(std::filesystem::file_size(a()));
        const auto merged = laptop.job->merge(b());
        ASSERT_FALSE(merged.ok());
        EXPECT_EQ(merged.fault().code(), store::kFileUnwritable.code);
        EXPECT_EQ(support::recordsOf(laptop.project()), before);
        EXPECT_FALSE(mergeFiles(b(), a(), m_two.fileOf("out"), laptop.session()).ok());
    }
    EXPECT_EQ(filesLeft(), files);
    ASSERT_TRUE(laptop.job->merge(b()).ok()) << "with room again it goes on";
    EXPECT_TRUE(verify(a())->isIntact);
}

TEST_F(MergeFaults, aFolderThatCannotBeWrittenIsMergedFromButNotInto) {
    using std::filesystem::perms;
    const perms reading = perms::owner_read | perms::group_read | perms::others_read;
    const perms entering = perms::owner_exec | perms::group_exec | perms::others_exec;
    support::TemporaryFolder stick;
    std::filesystem::copy_file(b(), stick.file("b.wwj"));
    std::filesystem::permissions(m_two.folder.path(), perms::all);
    std::filesystem::permissions(a(), perms::all);
    std::filesystem::permissions(stick.file("b.wwj"), reading);
    std::filesystem::permissions(stick.path(), reading | entering);
    // The superuser may write anywhere; an ordinary user is bound.
    constexpr uid_t kNobody = 65534;
    const uid_t before = ::geteuid();
    EXPECT_EQ(before == 0 ? ::seteuid(kNobody) : 0, 0);
    {
        Laptop laptop("A. Fields", "LT-1", 10'000'000);
        laptop.open(a());
        EXPECT_TRUE(laptop.job->merge(stick.file("b.wwj")).ok());
        const auto refused = mergeFiles(a(), stick.file("b.wwj"), stick.file("out.wwj"), laptop.session());
        ASSERT_FALSE(refused.ok());
        EXPECT_EQ(refused.fault().code(), store::kFileUnwritable.code);
        EXPECT_EQ(refused.fault().subject, stick.file("out.wwj"));
    }
    EXPECT_EQ(::seteuid(before), 0);
}

TEST_F(MergeFaults, aWorkbookThatIsOpenElsewhereCanBeMergedFrom) {
    m_two.b.open(b());
    m_two.a.open(a());
    m_two.b.read("B-24", "33.3");
    auto report = m_two.a.job->merge(b());
    ASSERT_TRUE(report.ok());
    EXPECT_EQ(report->actions, 13u);
    Laptop second("K. Meyer", "LT-2", 10'000'000);
    auto opened = Workbook::open(b(), OpenMode::ReadWrite, second.session());
    ASSERT_TRUE(opened.ok());
    EXPECT_TRUE((*opened)->isReadOnly());
    EXPECT_EQ((*opened)->merge(a()).fault().code(), store::kHeldElsewhere.code);
}

/// A copy that was taken while a reading was stored has some page of before beside those of after, or the
/// other way round: whatever page it is, what opens is intact.
TEST_F(MergeFaults, aCopyTornBetweenTwoStatesIsIntactOrRefused) {
    constexpr std::size_t kPage_bytes = 4096;
    const std::string copy = m_two.fileOf("copied");
    m_two.a.open(a());
    int whole = 0;
    int refused = 0;
    for (int i = 0; i < 8; ++i) {
        const std::string before = m_two.folder.read("a.wwj");
        m_two.a.read(support::walkTag(1 + i), "20." + std::to_string(i));
        const std::string after = m_two.folder.read("a.wwj");
        for (std::size_t page = 0; page < before.size(); page += kPage_bytes) {
            if (before.compare(page, kPage_bytes, after, page, kPage_bytes) == 0) {
                continue;
            }
            for (const auto& [most, one] : {std::pair(&after, &before), std::pair(&before, &after)}) {
                std::string torn = *most;
                torn.replace(page, kPage_bytes, *one, page, kPage_bytes);
                m_two.folder.write("copied.wwj", torn);
                Laptop reader("Office", "PC", 50'000'000);
                const bool isOpened = Workbook::open(copy, OpenMode::ReadOnly, reader.session()).ok();
                isOpened ? ++whole : ++refused;
                EXPECT_TRUE(!isOpened || verify(copy)->isIntact)
                    << "reading " << i << ", page " << page / kPage_bytes;
            }
        }
    }
    EXPECT_GT(refused, 0);
    std::cout << whole << " torn copies intact, " << refused << " refused\n";
}

/// Another program copies the file byte by byte, without asking, while readings are stored.
TEST_F(MergeFaults, aFileCopiedWhileOpenIsWholeOrRefused) {
    const std::string copy = m_two.fileOf("copied");
    const pid_t child = ::fork();
    if (child == 0) {
        Laptop laptop("A. Fields", "LT-1", 10'000'000);
        laptop.open(a());
        for (int i = 0;; ++i) {
            laptop.read(support::walkTag(1 + i % 24), "20." + std::to_string(i % 10));
        }
    }
    int whole = 0;
    int refused = 0;
    for (int i = 0; i < kills(); ++i) {
        std::this_thread::sleep_for(span() / 20);
        std::filesystem::remove(copy);
        m_two.folder.write("copied.wwj", m_two.folder.read("a.wwj"));
        Laptop reader("Office", "PC", 50'000'000);
        const auto opened = Workbook::open(copy, OpenMode::ReadOnly, reader.session());
        if (opened) {
            ++whole;
            EXPECT_TRUE(verify(copy)->isIntact);
        } else {
            ++refused;
        }
    }
    ::kill(child, SIGKILL);
    int status = 0;
    ::waitpid(child, &status, 0);
    m_two.a.open(a());
    EXPECT_TRUE(verify(a())->isIntact);
    std::cout << whole << " copies whole, " << refused << " refused\n";
}

}  // namespace
}  // namespace ww::workbook
