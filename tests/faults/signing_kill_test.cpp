// A program that signs reports is killed at random moments: every signed file is whole and verifies, what the
// workbook noted is there, and the workbook is intact. WW_SIGN_KILLS sets how often (40 unless said
// otherwise).

#include <fcntl.h>
#include <gtest/gtest.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <random>
#include <thread>

#include "core/base/expects.h"
#include "core/seal/verify_report.h"
#include "core/workbook/report_signing.h"
#include "tests/support/full_disk.h"
#include "tests/support/signed_report.h"
#include "tests/support/two_laptops.h"

namespace ww::workbook {
namespace {

using support::Laptop;

int kills() {
    const char* wanted = std::getenv("WW_SIGN_KILLS");
    return wanted == nullptr ? 40 : std::atoi(wanted);
}

SigningRequest requestFor(const std::filesystem::path& out, seal::Role role) {
    return {role, role == seal::Role::Technician ? support::technician() : support::supervisor(), out,
            [] {
                const seal::Preparation prepared = support::smallPreparation();
                return ReportToSign{support::smallPdf(), prepared.fields, prepared.attachments};
            },
            [](const seal::BlockText&, const seal::PaperSize&) { return support::squareDrawing(0); }};
}

/// Tells by one byte each that the workbook is open and that a report is signed by both. A full pipe is no
/// matter: nobody listens for more than the first two.
class Progress {
  public:
    Progress() {
        EXPECTS(::pipe(m_ends) == 0);
        ::fcntl(m_ends[1], F_SETFL, O_NONBLOCK);
    }
    ~Progress() {
        ::close(m_ends[0]);
        ::close(m_ends[1]);
    }
    Progress(const Progress&) = delete;
    Progress& operator=(const Progress&) = delete;

    void tell() const { (void)!::write(m_ends[1], "x", 1); }
    void await() const {
        char byte = 0;
        (void)!::read(m_ends[0], &byte, 1);
    }

  private:
    int m_ends[2] = {-1, -1};
};

/// Signs one report after the other, by two people each, until it is killed.
[[noreturn]] void signOn(const std::string& file, const std::filesystem::path& folder, int life,
                         const Progress& progress) {
    Laptop laptop("A. Fields", "LT-1", 10'000'000 + static_cast<std::uint64_t>(life) * 10'000);
    laptop.clock = support::FixedClock("2026-03-05T09:30:00Z");
    laptop.open(file);
    progress.tell();
    for (int number = 0; laptop.job != nullptr; ++number) {
        const auto out = folder / ("r" + std::to_string(life) + "_" + std::to_string(number) + ".pdf");
        for (const seal::Role role : {seal::Role::Technician, seal::Role::Supervisor}) {
            if (!signReport(*laptop.job, requestFor(out, role))) {
                ::_exit(4);
            }
        }
        progress.tell();
        laptop.read(support::walkTag(1 + number % 24), "20." + std::to_string(number % 10));
    }
    ::_exit(3);
}

TEST(SigningKill, everySignedFileIsWholeAndEveryNoteHasItsFile) {
    support::TwoLaptops two;
    two.a.job.reset();
    const std::string file = two.fileOf("a");
    support::TemporaryFolder reports;
    // The keys take long to make: they are there before the first life.
    (void)support::technician();
    (void)support::supervisor();
    std::mt19937 random(20260302);
    std::uniform_real_distribution<double> share(0, 2);
    const int wanted = kills();
    std::chrono::duration<double> ofOneReport(0);
    for (int life = 0; life < wanted; ++life) {
        const Progress progress;
        const pid_t child = ::fork();
        if (child == 0) {
            signOn(file, reports.path(), life, progress);
        }
        // The moment of death is the matter of this test: any within two reports from the opening on, however
        // fast the machine is. The first life shows how long one takes.
        progress.await();
        if (life == 0) {
            const auto opened = std::chrono::steady_clock::now();
            progress.await();
            ofOneReport = std::chrono::steady_clock::now() - opened;
        } else {
            std::this_thread::sleep_for(ofOneReport * share(random));
        }
        ::kill(child, SIGKILL);
        int status = 0;
        ::waitpid(child, &status, 0);
        ASSERT_TRUE(WIFSIGNALED(status)) << "the program ended by itself with " << WEXITSTATUS(status);
    }
    std::size_t files = 0;
    for (const auto& entry : std::filesystem::directory_iterator(reports.path())) {
        if (entry.path().extension() == ".pdf") {
            ++files;
            EXPECT_TRUE(seal::verifyReport(reports.read(entry.path().filename().string())).isIntact)
                << entry.path();
        }
    }
    Laptop laptop("A. Fields", "LT-1", 90'000'000);
    laptop.open(file);
    ASSERT_NE(laptop.job, nullptr);
    EXPECT_TRUE(verify(file)->isIntact);
    for (const project::SignedReport& note : laptop.project().signedReports()) {
        ASSERT_TRUE(reports.has(note.fileName)) << note.fileName;
        EXPECT_TRUE(seal::hasSignature(reports.read(note.fileName)));
    }
    EXPECT_GT(files, 0U);
    std::cout << wanted << " kills, " << files << " signed files, all intact; "
              << laptop.project().signedReports().size() << " signatures noted\n";
}

TEST(SigningKill, aFullDiskLeavesNoFileAndNoNote) {
    support::TwoLaptops two;
    two.a.job.reset();
    support::TemporaryFolder reports;
    Laptop laptop("A. Fields", "LT-1", 10'000'000);
    laptop.clock = support::FixedClock("2026-03-05T09:30:00Z");
    laptop.open(two.fileOf("a"));
    const auto out = reports.path() / "r.pdf";
    {
        const support::FullDisk full(2000);
        EXPECT_FALSE(signReport(*laptop.job, requestFor(out, seal::Role::Technician)).ok());
    }
    EXPECT_TRUE(std::filesystem::is_empty(reports.path()));
    EXPECT_TRUE(laptop.project().signedReports().empty());
    EXPECT_TRUE(signReport(*laptop.job, requestFor(out, seal::Role::Technician)).ok());
}

}  // namespace
}  // namespace ww::workbook
