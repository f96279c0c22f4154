// The manual page and the completion of the shell: clean, and with every command and option that --help
// shows.
#include <gtest/gtest.h>

#include <regex>
#include <set>

#include "tests/support/command_run.h"
#include "tests/support/shell_run.h"
#include "tests/support/temporary_folder.h"

namespace ww::support {
namespace {

const std::string kManualPage = WW_BINARY_DIR "/resources/waterwright.1";
const std::string kCompletion = WW_SOURCE_DIR "/resources/desktop/waterwright.bash";
const std::string kBashCompletion = "/usr/share/bash-completion/bash_completion";

/// The words that a pattern's first group finds in a text.
std::set<std::string> found(const std::string& text, const std::string& pattern) {
    const std::regex expression(pattern);
    std::set<std::string> words;
    for (auto it = std::sregex_iterator(text.begin(), text.end(), expression); it != std::sregex_iterator();
         ++it) {
        words.insert((*it)[1]);
    }
    return words;
}

std::set<std::string> commands() {
    const std::string help = runCommand({"--help"}).out;
    const std::string list = help.substr(help.find("Subcommands:"));
    return found(list, "\n  ([a-z]+) ");
}

std::set<std::string> optionsOf(const std::string& command) {
    return found(runCommand({command, "--help"}).out, "(--[a-z]+(?:-[a-z]+)*)");
}

TEST(ManualPage, HasNoWarnings) {
    WW_NEEDS_TOOL("man", "man-db");
    const ShellRun ran =
        runInShell("LC_ALL=C.UTF-8 MANROFFSEQ='' MANWIDTH=80 man --warnings -E UTF-8 -l -Tutf8 -Z " +
                   kManualPage + " >/dev/null");
    EXPECT_EQ(ran.status, 0) << ran.output;
    EXPECT_EQ(ran.output, "");
}

TEST(ManualPage, HasEveryCommandAndOptionAndExitStatus) {
    const std::string page = runInShell("cat " + kManualPage).output;
    const std::set<std::string> all = commands();
    ASSERT_GE(all.size(), 10u) << "the commands of the contract";
    for (const std::string& command : all) {
        const std::size_t begin = page.find("\n.SS " + command + "\n");
        ASSERT_NE(begin, std::string::npos) << command;
        const std::string section = page.substr(begin, page.find("\n.S", begin + 4) - begin);
        for (const std::string& option : optionsOf(command)) {
            if (option != "--help") {
                EXPECT_NE(section.find(std::regex_replace(option, std::regex("-"), "\\-")), std::string::npos)
                    << command << " " << option;
            }
        }
    }
    for (const char* status : {"\n.B 0\n", "\n.B 1\n", "\n.B 2\n", "\n.B 3\n"}) {
        EXPECT_NE(page.find(status), std::string::npos) << status;
    }
}

/// What completion offers for a line, typed to its end, in a folder with these files: job.wwj, report.pdf,
/// key.p12, tables/.
class Completion : public testing::Test {
  protected:
    void SetUp() override {
        if (!std::filesystem::exists(kBashCompletion)) {
            GTEST_SKIP() << "there is no " << kBashCompletion << "; install the package bash-completion";
        }
        for (const char* name : {"job.wwj", "report.pdf", "key.p12", "tables/job.csv"}) {
            m_folder.write(name, "");
        }
    }

    std::set<std::string> offered(const std::string& line) const {
        const std::string script =
            "cd '" + m_folder.path().string() + "'\nsource " + kBashCompletion + "\nsource " + kCompletion +
            "\nCOMP_LINE='" + line + "'\nCOMP_POINT=${#COMP_LINE}\nread -ra COMP_WORDS <<< \"$COMP_LINE\"\n" +
            "[[ $COMP_LINE == *' ' ]] && COMP_WORDS+=('')\nCOMP_CWORD=$((${#COMP_WORDS[@]} - 1))\n" +
            "_waterwright\nprintf '%s\\n' \"${COMPREPLY[@]}\"\n";
        m_folder.write(".completion_test.sh", script);
        const ShellRun ran = runInShell("bash --norc '" + m_folder.file(".completion_test.sh") + "'");
        return found(ran.output, "([^\n]+)\n");
    }

    TemporaryFolder m_folder;
};

TEST_F(Completion, OffersEveryCommandAndWorkbooks) {
    std::set<std::string> expected = commands();
    expected.insert({"job.wwj", "tables"});
    EXPECT_EQ(offered("waterwright "), expected);
    EXPECT_EQ(offered("waterwright re"), (std::set<std::string>{"record", "report"}));
    EXPECT_EQ(offered("waterwright --"), (std::set<std::string>{"--help", "--version"}));
}

TEST_F(Completion, OffersEveryOptionOfACommand) {
    for (const std::string& command : commands()) {
        EXPECT_EQ(offered("waterwright " + command + " job.wwj --"), optionsOf(command)) << command;
    }
}

TEST_F(Completion, OffersTheFilesThatAnOptionTakes) {
    using Words = std::set<std::string>;
    EXPECT_EQ(offered("waterwright check "), (Words{"job.wwj", "tables"}));
    EXPECT_EQ(offered("waterwright verify "), (Words{"job.wwj", "report.pdf", "tables"}));
    EXPECT_EQ(offered("waterwright new job.wwj --from "), (Words{"tables"}));
    EXPECT_EQ(offered("waterwright report job.wwj --out "), (Words{"report.pdf", "tables"}));
    EXPECT_EQ(offered("waterwright report job.wwj --sign "), (Words{"key.p12", "tables"}));
    EXPECT_EQ(offered("waterwright report job.wwj --role "), (Words{"technician", "supervisor"}));
    EXPECT_EQ(offered("waterwright merge job.wwj job.wwj --out "), (Words{"job.wwj", "tables"}));
    EXPECT_EQ(offered("waterwright check job.wwj --round "), Words{});
}

}  // namespace
}  // namespace ww::support
