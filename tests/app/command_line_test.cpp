// The command line as a whole: words it does not know, every command's help; verify after one byte has
// changed.
#include <gtest/gtest.h>

#include <cstdlib>

#include "core/base/version.h"
#include "tests/support/command_job.h"
#include "tests/support/job_tables.h"

namespace {

using Json = nlohmann::json;
using ww::support::CommandJob;
using ww::support::CommandRun;
using ww::support::JobTables;
using ww::support::runCommand;
using ww::support::TemporaryFolder;
using Arguments = std::vector<std::string>;

CommandJob farIndex() {
    return CommandJob(CommandJob::ofLoop("four_circuits_far_index"));
}

// A workbook is told by its content, so neither its name nor a slip of the hand makes it a target.
TEST(OutputTargetTest, NoOutputReplacesAWorkbook) {
    const CommandJob job = farIndex();
    const std::string sound = job.folder().read("job.wwj");
    job.folder().write("old report.pdf", sound);
    for (const std::string name : {"job.wwj", "old report.pdf"}) {
        for (const auto& [command, option] : {std::pair("report", "--out"), std::pair("export", "--json")}) {
            const CommandRun ran = job.run(command, {option, job.folder().file(name)});
            EXPECT_EQ(ran.status, 2) << command << ran.err;
            EXPECT_NE(ran.err.find("would be lost; give the output another name"), std::string::npos)
                << ran.err;
            EXPECT_EQ(job.folder().read(name), sound) << command;
        }
    }
}

TEST(VerifyCommandTest, OneFlippedByteWhereverTheNameStands) {
    const CommandJob job = farIndex();
    const std::string sound = job.folder().read("job.wwj");
    const std::string name = "Four circuits with a far index";
    int places = 0;
    for (std::size_t at = sound.find(name); at != std::string::npos; at = sound.find(name, at + 1)) {
        SCOPED_TRACE(at);
        std::string bytes = sound;
        bytes[at + 3] = static_cast<char>(bytes[at + 3] ^ 1);
        job.folder().write("job.wwj", bytes);
        const CommandRun ran = job.run("verify", {"--json"});
        EXPECT_EQ(ran.status, 1) << ran.out << ran.err;
        const Json json = Json::parse(ran.out, nullptr, false);
        ASSERT_FALSE(json.is_discarded()) << ran.out;
        EXPECT_EQ(json.at("intact"), false);
        EXPECT_NE(ran.err.find("; "), std::string::npos) << ran.err;
        ++places;
    }
    EXPECT_GE(places, 2) << "once in its table, once in the journal";
}

TEST(CommandLineTest, HelpAndVersion) {
    const CommandRun help = runCommand({"--help"});
    EXPECT_EQ(help.status, 0);
    EXPECT_EQ(help.err, "");
    for (const char* command :
         {"new", "record", "check", "predict", "advise", "pump", "report", "export", "merge", "verify"}) {
        EXPECT_NE(help.out.find(command), std::string::npos) << command;
        const CommandRun own = runCommand({command, "--help"});
        EXPECT_EQ(own.status, 0);
        EXPECT_NE(own.out.find(".wwj"), std::string::npos) << own.out;
    }
    const CommandRun version = runCommand({"--version"});
    EXPECT_EQ(version.status, 0);
    EXPECT_EQ(version.out, "waterwright " + std::string(ww::base::version()) + "\n");
}

TEST(CommandLineTest, WordThatIsNeitherCommandNorWorkbook) {
    using ww::app::isCommandLine;
    EXPECT_TRUE(isCommandLine({"chek", "job.wwj"}));
    EXPECT_TRUE(isCommandLine({"check", "job.wwj"}));
    EXPECT_TRUE(isCommandLine({"--help"}));
    EXPECT_FALSE(isCommandLine({}));
    EXPECT_FALSE(isCommandLine({"not_yet_there.wwj"}));
    EXPECT_FALSE(isCommandLine({WW_SOURCE_DIR "/README.md"}));
    EXPECT_FALSE(isCommandLine({"-platform", "offscreen"}));
    const CommandRun ran = runCommand({"chek", "job.wwj"});
    EXPECT_EQ(ran.status, 2);
    EXPECT_EQ(ran.err, "\"chek\" is no command and no workbook; see waterwright --help\n");
}

#ifdef WW_PROGRAM
TEST(CommandLineTest, TheProgramItselfNeedsNoDisplayForAWordItDoesNotKnow) {
    const int status =
        std::system("env -u DISPLAY -u WAYLAND_DISPLAY -u QT_QPA_PLATFORM " WW_PROGRAM " chek 2>/dev/null");
    EXPECT_EQ(WEXITSTATUS(status), 2);
}

TEST(CommandLineTest, TheDesktopTakesNoOptionThatItDoesNotKnowForAFile) {
    const int status = std::system("env QT_QPA_PLATFORM=offscreen timeout 20 " WW_PROGRAM
                                   " --large 2>&1 | grep -q '\"--large\"; see waterwright --help'");
    EXPECT_EQ(WEXITSTATUS(status), 0);
}
#endif

TEST(FollowOnFaultsTest, ATableThatIsMissingIsTheOnlyFault) {
    const TemporaryFolder folder;
    for (const char* file : {"valves.csv", "branches.csv", "pumps.csv"}) {
        JobTables tables;
        tables.remove(file);
        const CommandRun ran =
            runCommand({"new", folder.file("job.wwj"), "--from", tables.writeTo(folder, file)});
        EXPECT_TRUE(ran.err.starts_with(std::string(file) + ":1:-: ")) << ran.err;
        EXPECT_NE(ran.err.find("\n1 fault; nothing was written\n"), std::string::npos) << ran.err;
    }
}

TEST(FollowOnFaultsTest, AHeaderWithASlipIsTheOnlyFault) {
    const TemporaryFolder folder;
    JobTables tables;
    tables.replace("instruments.csv", "serial", "serail");
    const CommandRun ran = runCommand({"new", folder.file("job.wwj"), "--from", tables.writeTo(folder)});
    EXPECT_TRUE(ran.err.starts_with("instruments.csv:1:serail: ")) << ran.err;
    EXPECT_NE(ran.err.find("\n1 fault; nothing was written\n"), std::string::npos) << ran.err;
}

TEST(FollowOnFaultsTest, AValveThatIsNotThereIsToldOnce) {
    const TemporaryFolder folder;
    JobTables tables;
    tables.replace("branches.csv", "8,V,1,4", "8,W,1,4");
    const CommandRun ran = runCommand({"new", folder.file("job.wwj"), "--from", tables.writeTo(folder)});
    EXPECT_TRUE(ran.err.starts_with("branches.csv:3:valve_model: ")) << ran.err;
    EXPECT_NE(ran.err.find("\n1 fault; nothing was written\n"), std::string::npos) << ran.err;
}

}  // namespace
