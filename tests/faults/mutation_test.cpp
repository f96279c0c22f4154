// Workbook files that were damaged in every way at hand: each opens with all its readings as they were, or is
// refused with what is wrong, and the newest sound copy beside it is named. WW_MUTATIONS sets how many files
// are changed at random (100 unless said otherwise).

#include <gtest/gtest.h>

#include <chrono>
#include <cstdlib>
#include <ctime>
#include <random>

#include "core/store/store_messages.h"
#include "core/workbook/sound_copy.h"
#include "core/workbook/workbook.h"
#include "tests/support/fixed_clock.h"
#include "tests/support/temporary_folder.h"
#include "tests/support/whole_job.h"

namespace ww::workbook {
namespace {

constexpr std::size_t kPage_bytes = 4096;

int mutations() {
    const char* wanted = std::getenv("WW_MUTATIONS");
    return wanted == nullptr ? 100 : std::atoi(wanted);
}

class Mutation : public testing::Test {
  protected:
    Mutation() {
        auto made = Workbook::create(path(), support::wholeJob(), session());
        EXPECT_TRUE(made.ok());
        for (int i = 0; i < 30; ++i) {
            auto reading = support::wholeJobReading(m_ids.next(), 10 + i, support::WholeJobIds{}.near,
                                                    std::to_string(20 + i) + ".5");
            reading.note = std::string(static_cast<std::size_t>(i) * 40, 'n');
            EXPECT_TRUE((*made)->apply({"DP", {reading}, {}, true}).ok());
        }
        m_records = support::recordsOf((*made)->project());
        made->reset();
        m_whole = m_folder.read("job.wwj");
        m_folder.write("job copy.wwj", m_whole);
    }
    Session session() { return {m_clock, m_ids, "A. Fields", "LT-1"}; }
    std::string path() const { return m_folder.file("job.wwj"); }

    /// Opens these bytes; false where they are refused. What opens must be the whole job.
    bool opens(const std::string& bytes, const std::string& what) {
        m_folder.write("job.wwj", bytes);
        // Seconds of the processor: other programs on the machine do not count.
        const std::clock_t begin = std::clock();
        auto opened = Workbook::open(path(), OpenMode::ReadOnly, session());
        EXPECT_LT(std::clock() - begin, 5 * CLOCKS_PER_SEC) << what;
        if (opened) {
            EXPECT_EQ(support::recordsOf((*opened)->project()), m_records) << what;
            return true;
        }
        EXPECT_FALSE(base::english(opened.fault()).empty()) << what;
        return false;
    }

    support::TemporaryFolder m_folder;
    support::FixedClock m_clock;
    support::CountingIds m_ids{support::kFirstFreeId};
    std::vector<project::AnyRecord> m_records;
    std::string m_whole;
};

TEST_F(Mutation, aFileCutAtAnyPageIsRefusedAndTheCopyNamed) {
    ASSERT_GT(m_whole.size(), 10 * kPage_bytes);
    for (std::size_t size = 0; size < m_whole.size(); size += kPage_bytes) {
        EXPECT_FALSE(opens(m_whole.substr(0, size), "cut at " + std::to_string(size)));
    }
    const base::Fault advice = adviceFor(path());
    EXPECT_EQ(advice.code(), kSoundCopyBeside.code);
    EXPECT_EQ(advice.subject, m_folder.file("job copy.wwj"));
    EXPECT_EQ(advice.arguments[0], "31");
}

TEST_F(Mutation, theNewestOfSeveralCopiesIsNamedAndDamagedOnesAreNot) {
    m_folder.write("job.wwj", m_whole.substr(0, 8192));
    EXPECT_TRUE(isDamage(Workbook::open(path(), OpenMode::ReadOnly, session()).fault()));
    {
        m_clock.advance(std::chrono::hours(1));
        auto copy = Workbook::open(m_folder.file("job copy.wwj"), OpenMode::ReadWrite, session());
        ASSERT_TRUE((*copy)->saveCopy(m_folder.file("job newer.wwj")).ok());
        auto newer = Workbook::open(m_folder.file("job newer.wwj"), OpenMode::ReadWrite, session());
        auto job = (*newer)->project().job();
        job.site = "elsewhere";
        ASSERT_TRUE((*newer)->apply({"site", {job}, {}, true}).ok());
    }
    EXPECT_EQ(newestSoundCopy(path())->file, m_folder.file("job newer.wwj"));
    m_folder.write("job newer.wwj", m_folder.read("job newer.wwj").substr(0, 20'480));
    EXPECT_EQ(newestSoundCopy(path())->file, m_folder.file("job copy.wwj"));
    std::filesystem::remove(m_folder.file("job copy.wwj"));
    EXPECT_EQ(adviceFor(path()).code(), kNoSoundCopyBeside.code);
}

TEST_F(Mutation, noChangedReadingIsEverTakenForSound) {
    std::mt19937 random(20260302);
    const auto below = [&](std::size_t limit) { return static_cast<std::size_t>(random()) % limit; };
    const auto byte = [&] { return static_cast<char>(random() & 0xFFU); };
    const int wanted = mutations();
    int refused = 0;
    for (int i = 0; i < wanted && !HasFailure(); ++i) {
        std::string bytes = m_whole;
        std::string what;
        switch (below(5)) {
            case 0:  // single bytes
                for (std::size_t n = 1 + below(4); n > 0; --n) {
                    const std::size_t at = below(bytes.size());
                    bytes[at] = static_cast<char>(bytes[at] ^ (1U << below(8)));
                    what += " flip " + std::to_string(at);
                }
                break;
            case 1: {  // a page of noise
                const std::size_t page = below(bytes.size() / kPage_bytes) * kPage_bytes;
                for (std::size_t n = 0; n < kPage_bytes; ++n) {
                    bytes[page + n] = byte();
                }
                what = "noise at " + std::to_string(page);
                break;
            }
            case 2: {  // one page in place of another
                const std::size_t from = below(bytes.size() / kPage_bytes) * kPage_bytes;
                const std::size_t to = below(bytes.size() / kPage_bytes) * kPage_bytes;
                bytes.replace(to, kPage_bytes, m_whole, from, kPage_bytes);
                what = "page " + std::to_string(from) + " over " + std::to_string(to);
                break;
            }
            case 3: {  // a stretch of zeros
                const std::size_t at = below(bytes.size());
                const std::size_t size = std::min(bytes.size() - at, 1 + below(600));
                bytes.replace(at, size, size, '\0');
                what = "zeros at " + std::to_string(at);
                break;
            }
            default: {  // digits of values
                std::size_t at = bytes.find(".5", below(bytes.size()));
                at = at == std::string::npos ? bytes.find(".5") : at;
                bytes[at - 1] = static_cast<char>('0' + below(10));
                what = "digit at " + std::to_string(at);
            }
        }
        refused += opens(bytes, std::to_string(i) + ":" + what) ? 0 : 1;
    }
    EXPECT_GT(refused, wanted / 4);
    std::cout << wanted << " files changed, " << refused << " refused, the others as they were\n";
}

}  // namespace
}  // namespace ww::workbook
