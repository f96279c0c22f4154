// The program as it was built, with no display and nothing in its environment: every command answers, and its
// exit status is the one of the outside contract. Not for what the commands compute.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "core/base/version.h"
#include "core/seal/identity.h"
#include "tests/support/shell_run.h"
#include "tests/support/two_laptops.h"

#ifdef WW_PROGRAM

namespace ww::app {
namespace {

using support::runInShell;
using support::ShellRun;

const std::string kSamples = WW_SOURCE_DIR "/sample_projects/";

/// A folder with one accepted and one unfinished job.
class NoDisplay : public testing::Test {
  protected:
    void SetUp() override {
        ASSERT_EQ(run("new done.wwj --from " + kSamples + "library_heating").status, 0);
        ASSERT_EQ(run("new open.wwj --from " + kSamples + "clinic_cooling").status, 0);
    }
    /// `environment`: variables beside the two that every program needs, as in "LANG=de_DE.UTF-8".
    ShellRun run(const std::string& arguments, const std::string& environment = "") const {
        return runInShell("cd '" + m_folder.path().string() + "' && env -i PATH=/usr/bin:/bin HOME=. " +
                          environment + " " WW_PROGRAM " " + arguments);
    }
    /// The words of a report that was written with these options in this environment.
    std::string reportWords(const std::string& options, const std::string& environment) const {
        const ShellRun ran = run("report done.wwj --out spoken.pdf " + options, environment);
        EXPECT_EQ(ran.status, 0) << ran.output;
        EXPECT_EQ(ran.output, "spoken.pdf\n") << "what a command prints stays English";
        return runInShell("pdftotext '" + m_folder.file("spoken.pdf") + "' -").output;
    }
    void expect(int status, const std::string& arguments) const {
        const ShellRun ran = run(arguments);
        EXPECT_EQ(ran.status, status) << arguments << "\n" << ran.output;
        EXPECT_NE(ran.output, "") << arguments;
    }
    /// With --json standard output is one document, whatever the status.
    void expectDocument(int status, const std::string& arguments) const {
        const ShellRun ran = run(arguments + " --json 2>messages");
        EXPECT_EQ(ran.status, status) << arguments << "\n" << ran.output;
        EXPECT_FALSE(nlohmann::json::parse(ran.output, nullptr, false).is_discarded()) << arguments << "\n"
                                                                                       << ran.output;
    }

    support::TemporaryFolder m_folder;
};

TEST_F(NoDisplay, HelpAndVersionOfTheProgramAndEveryCommand) {
    expect(0, "--help");
    expect(0, "-h");
    EXPECT_EQ(run("--version").output, "waterwright " + std::string(base::version()) + "\n");
    for (const std::string command :
         {"new", "record", "check", "predict", "advise", "pump", "report", "export", "merge", "verify"}) {
        expect(0, command + " --help");
        expect(2, command + " --nonsense");
        expect(2, command);
    }
}

TEST_F(NoDisplay, TheDesktopSaysThatItNeedsOne) {
    for (const std::string arguments : {"", "done.wwj"}) {
        const ShellRun ran = run(arguments);
        EXPECT_EQ(ran.status, 2);
        EXPECT_NE(ran.output.find("no display"), std::string::npos) << ran.output;
        EXPECT_NE(ran.output.find("; "), std::string::npos) << ran.output;
    }
}

TEST_F(NoDisplay, AReportSpeaksTheLanguageOfTheSystem) {
    EXPECT_NE(reportWords("", "LANG=de_DE.UTF-8").find("Einregulierungsbericht"), std::string::npos);
    EXPECT_NE(reportWords("", "").find("Balance report"), std::string::npos);
    EXPECT_NE(reportWords("", "LANG=de_DE.UTF-8 LC_ALL=C").find("Balance report"), std::string::npos);
    EXPECT_NE(reportWords("", "LANG=ja_JP.UTF-8 LANGUAGE=ja:de").find("Einregulierungsbericht"),
              std::string::npos);
    EXPECT_NE(reportWords("--language de", "LC_ALL=C").find("Einregulierungsbericht"), std::string::npos);
    EXPECT_NE(reportWords("--language en", "LANG=de_DE.UTF-8").find("Balance report"), std::string::npos);
    expect(2, "report done.wwj --out spoken.pdf --language xx");
    expect(2, "export done.wwj --csv tables --language de");
}

TEST_F(NoDisplay, AReportListsTheStepsOfReviewThatTheWorkbookKnows) {
    EXPECT_EQ(reportWords("", "").find("Every step of review"), std::string::npos) << "none was taken";
    runInShell("cp -r " + kSamples + "library_heating '" + m_folder.file("tables") + "'");
    m_folder.write("tables/rounds.csv",
                   "round,kind,state,sent,decided,sent_by,decided_by\n"
                   "1,survey,accepted,2026-03-02T15:00:00Z,2026-03-02T16:00:00Z,Maren Dahlke,Runa Feldt\n"
                   "2,adjusting,closed,,,,\n3,adjusting,closed,,,,\n4,final,open,,,,\n");
    expect(0, "new reviewed.wwj --from tables");
    expect(0, "report reviewed.wwj --out reviewed.pdf");
    const std::string words =
        runInShell("pdftotext -layout '" + m_folder.file("reviewed.pdf") + "' -").output;
    const std::size_t table = words.find("Every step of review");
    ASSERT_NE(table, std::string::npos) << words;
    EXPECT_NE(words.find("Maren Dahlke", table), std::string::npos);
    EXPECT_NE(words.find("2026-03-02 16:00 UTC", table), std::string::npos);
    EXPECT_NE(words.find("Runa Feldt", table), std::string::npos);
}

// Other programs read these: they are the same under every locale.
TEST_F(NoDisplay, TablesAndJsonAreTheSameInEveryLanguage) {
    ASSERT_EQ(run("export done.wwj --csv plain").status, 0);
    ASSERT_EQ(run("export done.wwj --csv spoken", "LANG=de_DE.UTF-8").status, 0);
    EXPECT_EQ(runInShell("cd '" + m_folder.path().string() + "' && diff -r plain spoken").output, "");
    EXPECT_EQ(run("check done.wwj --json").output, run("check done.wwj --json", "LANG=de_DE.UTF-8").output);
}

TEST_F(NoDisplay, JudgingCommandsEndWithOneWhereTheJobIsNotAccepted) {
    expect(0, "check done.wwj");
    expect(1, "check done.wwj --round 1");
    expect(1, "check open.wwj");
    expectDocument(0, "check done.wwj");
    expectDocument(1, "check open.wwj");
    expect(0, "verify done.wwj");
    expectDocument(0, "verify done.wwj");
    std::string bytes = m_folder.read("done.wwj");
    bytes[bytes.find("Library heating") + 3] ^= 1;
    m_folder.write("changed.wwj", bytes);
    expect(1, "verify changed.wwj");
}

TEST_F(NoDisplay, TheOthersEndWithZeroWhenTheyAreDone) {
    expect(0, "predict open.wwj --set A1=2 --close A2 --speed 90");
    expectDocument(0, "predict open.wwj --speed 90");
    expect(0, "advise done.wwj");
    expectDocument(0, "advise open.wwj");
    expect(0, "pump done.wwj");
    expectDocument(0, "pump open.wwj");
    expect(0, "report done.wwj --out report.pdf");
    EXPECT_EQ(m_folder.read("report.pdf").substr(0, 5), "%PDF-");
    expect(0, "export done.wwj --csv tables");
    expect(0, "export done.wwj --json job.json");
    EXPECT_FALSE(nlohmann::json::parse(m_folder.read("job.json"), nullptr, false).is_discarded());
    expectDocument(0, "new again.wwj --from tables");
    m_folder.write("more/readings.csv",
                   "round,kind,time,tag,setting,dp[psi]\n5,final,2026-02-05T09:00:00Z,C5,4,1.15\n");
    expect(0, "record done.wwj --from more");
    m_folder.write("copy.wwj", m_folder.read("done.wwj"));
    expect(0, "merge done.wwj copy.wwj --out both.wwj");
}

TEST_F(NoDisplay, BadUsageAndBadInputEndWithTwo) {
    expect(2, "chek done.wwj");
    expect(2, "new new.wwj --from nowhere");
    expectDocument(2, "new new.wwj --from nowhere");
    expect(2, "record done.wwj --from " + kSamples + "clinic_cooling");
    expect(2, "check done.wwj --round 99");
    expect(2, "predict done.wwj --set C99=4");
    expect(2, "predict done.wwj --speed fast");
    expect(2, "report done.wwj --out open.wwj");
    expect(2, "report done.wwj --out report.pdf --sign key.p12");
    expect(2, "export done.wwj");
    expect(2, "export done.wwj --csv tables --json job.json");
    expect(2, "merge done.wwj open.wwj --out both.wwj");
}

TEST_F(NoDisplay, FilesThatCannotBeReadOrWrittenEndWithThree) {
    for (const char* command : {"check", "predict", "advise", "pump", "verify"}) {
        expect(3, std::string(command) + " nowhere.wwj");
    }
    expect(3, "new done.wwj --from " + kSamples + "library_heating");
    expect(3, "record nowhere.wwj --from tables");
    expect(3, "report done.wwj --out nowhere/report.pdf");
    expect(3, "export done.wwj --json nowhere/job.json");
    expect(3, "merge done.wwj nowhere.wwj --out both.wwj");
    expect(3, "merge done.wwj done.wwj --out open.wwj");
}

TEST_F(NoDisplay, ConflictsThatAreLeftEndWithOne) {
    support::TwoLaptops two{6};
    two.a.read("B-01", "21.5");
    two.b.read("B-01", "22.5");
    two.a.job.reset();
    two.b.job.reset();
    expect(1, "merge " + two.fileOf("a") + " " + two.fileOf("b") + " --out both.wwj");
}

TEST_F(NoDisplay, ASignedReportIsMadeAndVerified) {
    base::SystemClock clock;
    m_folder.write("key.p12", *seal::makeSelfMade({"T. Ashdown", "", 5}, "valve and pump", clock.now()));
    m_folder.write("pass", "valve and pump\n");
    expect(0, "report done.wwj --out signed.pdf --sign key.p12 --role technician --pass-file pass");
    expect(0, "verify signed.pdf");
    expect(0, "verify signed.pdf --workbook done.wwj");
    expectDocument(0, "verify signed.pdf");
    std::string bytes = m_folder.read("signed.pdf");
    bytes[bytes.size() / 2] ^= 1;
    m_folder.write("changed.pdf", bytes);
    expect(1, "verify changed.pdf");
}

}  // namespace
}  // namespace ww::app

#endif
