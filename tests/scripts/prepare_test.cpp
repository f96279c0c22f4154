// What app/prepare.sh does with a machine's packages and a build folder, seen on a machine of stand-ins:
// every program it can find is one of this test.
#include <gtest/gtest.h>

#include "tests/support/shell_run.h"
#include "tests/support/temporary_folder.h"

namespace ww::support {
namespace {

class Prepare : public testing::Test {
  protected:
    void SetUp() override {
        for (const char* tool : {"bash", "cat", "dirname", "env", "grep", "true"}) {
            const std::string target =
                std::filesystem::exists(std::string("/usr/bin/") + tool) ? "/usr/bin/" : "/bin/";
            std::filesystem::create_symlink(target + tool, m_folder.path() / tool);
        }
        tool("id", "[ \"$1\" = -u ] && echo ${FAKE_UID:-0} || echo somebody");
        tool("dpkg-query",
             "for p; do case $p in known*) echo \"installed $p\";; gone*) echo \"config-files $p\";; esac; "
             "done");
    }

    /// A program of this machine: a script with these lines.
    void tool(const std::string& name, const std::string& lines) {
        m_folder.write(name, "#!" + m_folder.file("bash") + "\n" + lines + "\n");
        std::filesystem::permissions(m_folder.path() / name, std::filesystem::perms::owner_all);
    }
    void aptGet(const std::string& lines = "") {
        tool("apt-get", "echo \"apt-get [$DEBIAN_FRONTEND] $*\"; " + lines);
    }
    void sudo(const std::string& lines = "[ \"$1\" = -n ] && shift; exec \"$@\"") { tool("sudo", lines); }

    ShellRun run(const std::string& line, const std::string& setting = "") {
        m_folder.write("line.sh", "source '" WW_SOURCE_DIR "/app/prepare.sh'\n" + line + "\n");
        return runInShell("env -i PATH='" + m_folder.path().string() + "' " + setting + " bash -eu '" +
                          m_folder.file("line.sh") + "'");
    }

    static testing::AssertionResult says(const ShellRun& ran, const std::string& part) {
        return ran.output.find(part) != std::string::npos ? testing::AssertionSuccess()
                                                          : testing::AssertionFailure() << ran.output;
    }

    TemporaryFolder m_folder;
};

// Source of every expectation: decisions of this project; options of apt-get as in apt-get(8).
TEST_F(Prepare, nothingMissingCallsNothing) {
    aptGet();
    const ShellRun ran = run("ww_install_missing known1 known2");
    EXPECT_EQ(ran.status, 0);
    EXPECT_EQ(ran.output, "");
}

TEST_F(Prepare, rootInstallsWhatIsMissingAndNoMore) {
    aptGet();
    const ShellRun ran = run("ww_install_missing known1 new1 gone1");
    EXPECT_EQ(ran.status, 0);
    EXPECT_TRUE(says(ran, "apt-get [noninteractive] -q -o DPkg::Lock::Timeout=120 update\n"));
    EXPECT_TRUE(says(ran, "install --yes --no-install-recommends new1 gone1\n"));
}

TEST_F(Prepare, othersInstallThroughSudo) {
    aptGet();
    sudo();
    const ShellRun ran = run("ww_install_missing new1", "FAKE_UID=1000");
    EXPECT_EQ(ran.status, 0);
    EXPECT_TRUE(says(ran, "install --yes --no-install-recommends new1\n"));
}

TEST_F(Prepare, withoutSudoItSaysWhatToRun) {
    aptGet();
    const ShellRun ran = run("ww_install_missing new1 new2", "FAKE_UID=1000");
    EXPECT_EQ(ran.status, 2);
    EXPECT_TRUE(says(ran, "run as root: apt-get install --no-install-recommends new1 new2\n"));
    EXPECT_FALSE(says(ran, "apt-get [")) << "apt-get must not be tried";
}

TEST_F(Prepare, whereSudoIsRefusedItSaysWhatToRun) {
    aptGet();
    sudo("exit 1");
    const ShellRun ran = run("ww_install_missing new1", "FAKE_UID=1000");
    EXPECT_EQ(ran.status, 2);
    EXPECT_TRUE(says(ran, "sudo is refused to somebody, so run as root: apt-get install"));
}

TEST_F(Prepare, withoutAptGetItNamesThePackages) {
    const ShellRun ran = run("ww_install_missing new1");
    EXPECT_EQ(ran.status, 2);
    EXPECT_TRUE(says(ran, "install by hand: new1\n"));
}

TEST_F(Prepare, withoutDpkgItGoesOn) {
    std::filesystem::remove(m_folder.path() / "dpkg-query");
    const ShellRun ran = run("ww_install_missing new1");
    EXPECT_EQ(ran.status, 0);
    EXPECT_TRUE(says(ran, "has no dpkg"));
}

TEST_F(Prepare, oldListsAreTriedWhereNewOnesCannotBeFetched) {
    aptGet("case $* in *update) exit 100;; esac");
    EXPECT_EQ(run("ww_install_missing new1").status, 0);
    aptGet("exit 100");
    const ShellRun ran = run("ww_install_missing new1");
    EXPECT_EQ(ran.status, 2);
    EXPECT_TRUE(says(ran, "could not install the packages; check the network"));
}

TEST_F(Prepare, aBuildFolderIsConfiguredWhenItMust) {
    tool("cmake", "echo cmake \"$*\"");
    const std::string build = m_folder.file("b");
    const std::string line = "ww_configure '" + build + "' WW_TESTS=ON";
    const std::string home =
        "CMAKE_HOME_DIRECTORY:INTERNAL=" + std::filesystem::canonical(WW_SOURCE_DIR).string() + "\n";
    EXPECT_TRUE(says(run(line), "--fresh -DWW_TESTS:BOOL=ON\n")) << "a new folder";

    m_folder.write("b/CMakeCache.txt", home + "WW_TESTS:BOOL=ON\n");
    EXPECT_TRUE(says(run(line), "--fresh")) << "half configured";

    m_folder.write("b/build.ninja", "");
    EXPECT_EQ(run(line).output, "") << "configured";
    EXPECT_EQ(run("ww_configure '" + build + "'").output, "");

    m_folder.write("b/CMakeCache.txt", home + "WW_TESTS:BOOL=OFF\n");
    const ShellRun other = run(line);
    EXPECT_TRUE(says(other, "-DWW_TESTS:BOOL=ON")) << "another setting";
    EXPECT_FALSE(says(other, "--fresh"));

    m_folder.write("b/CMakeCache.txt", "CMAKE_HOME_DIRECTORY:INTERNAL=/elsewhere\nWW_TESTS:BOOL=ON\n");
    EXPECT_TRUE(says(run(line), "--fresh")) << "moved";
}

}  // namespace
}  // namespace ww::support
