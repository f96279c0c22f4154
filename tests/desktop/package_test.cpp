// The installed program: the files that an installation writes, the Debian package, and the program working
// from it without its source tree. The package stands in WW_PACKAGE_FOLDER, made before by the test
// "package".
#include <gtest/gtest.h>

#include <algorithm>

#include "core/base/version.h"
#include "tests/support/shell_run.h"
#include "tests/support/temporary_folder.h"

namespace ww::support {
namespace {

/// What a desktop, a shell and a person look for, below /usr.
const char* const kInstalled[] = {
    "bin/waterwright",
    "share/applications/org.waterwright.Waterwright.desktop",
    "share/bash-completion/completions/waterwright",
    "share/doc/waterwright/NOTICE.txt",
    "share/doc/waterwright/changelog.Debian.gz",
    "share/doc/waterwright/copyright",
    "share/icons/hicolor/16x16/apps/org.waterwright.Waterwright.png",
    "share/icons/hicolor/22x22/apps/org.waterwright.Waterwright.png",
    "share/icons/hicolor/24x24/apps/org.waterwright.Waterwright.png",
    "share/icons/hicolor/32x32/apps/org.waterwright.Waterwright.png",
    "share/icons/hicolor/48x48/apps/org.waterwright.Waterwright.png",
    "share/icons/hicolor/64x64/apps/org.waterwright.Waterwright.png",
    "share/icons/hicolor/128x128/apps/org.waterwright.Waterwright.png",
    "share/icons/hicolor/256x256/apps/org.waterwright.Waterwright.png",
    "share/icons/hicolor/256x256/mimetypes/application-x-waterwright-workbook.png",
    "share/icons/hicolor/scalable/apps/org.waterwright.Waterwright.svg",
    "share/icons/hicolor/scalable/mimetypes/application-x-waterwright-workbook.svg",
    "share/icons/hicolor/symbolic/apps/org.waterwright.Waterwright-symbolic.svg",
    "share/man/man1/waterwright.1.gz",
    "share/metainfo/org.waterwright.Waterwright.metainfo.xml",
    "share/mime/packages/org.waterwright.Waterwright.xml",
    "share/waterwright/handbook/de/index.md",
    "share/waterwright/handbook/index.md",
    "share/waterwright/handbook/pictures/handbook.png",
    "share/waterwright/release_notes.md",
    "share/waterwright/release_notes_de.md",
    "share/waterwright/samples/clinic_cooling/branches.csv",
    "share/waterwright/samples/library_heating/job.csv",
};

TEST(Install, WritesEveryFileBelowItsPrefixAlone) {
    const TemporaryFolder folder;
    const ShellRun ran = runInShell("DESTDIR='" + folder.path().string() +
                                    "' cmake --install " WW_BINARY_DIR " --prefix /usr");
    ASSERT_EQ(ran.status, 0) << ran.output;
    for (const char* file : kInstalled) {
        EXPECT_TRUE(folder.has(std::string("usr/") + file)) << file;
    }
    EXPECT_EQ(runInShell("ls " + folder.path().string()).output, "usr\n");
    const ShellRun dangling = runInShell("find " + folder.path().string() + " -type l");
    EXPECT_EQ(dangling.output, "") << "links lead out of the installation";
}

class Package : public testing::Test {
  protected:
    void SetUp() override {
        WW_NEEDS_TOOL("dpkg-deb", "dpkg");
        // A folder that was built in before holds those of earlier versions too.
        m_package =
            runInShell("ls " WW_PACKAGE_FOLDER "/waterwright_" + std::string(base::version()) + "-*.deb")
                .output;
        m_package.erase(m_package.find_last_not_of('\n') + 1);
        ASSERT_TRUE(std::filesystem::exists(m_package)) << m_package << "; run ctest, which makes it first";
    }

    std::string m_package;
    TemporaryFolder m_folder;
};

TEST_F(Package, SaysWhatItIsAndNeeds) {
    const ShellRun control = runInShell("dpkg-deb -I " + m_package);
    EXPECT_EQ(control.status, 0);
    const std::string version = " Version: " + std::string(base::version()) + "-1\n";
    for (const char* line :
         {" Package: waterwright\n", version.c_str(), " Section: science\n", " Maintainer: "}) {
        EXPECT_NE(control.output.find(line), std::string::npos) << line << control.output;
    }
    // As dpkg-shlibdeps finds them in the program.
    for (const char* library : {"libqt6widgets6", "libqt6charts6", "libsqlite3-0", "libssl3", "libc6"}) {
        EXPECT_NE(control.output.find(std::string(" ") + library + " (>= "), std::string::npos)
            << library << control.output;
    }
}

TEST_F(Package, HoldsTheInstalledFilesAsRoot) {
    const ShellRun contents = runInShell("dpkg-deb -c " + m_package);
    EXPECT_EQ(contents.status, 0);
    for (const char* file : kInstalled) {
        EXPECT_NE(contents.output.find(std::string(" ./usr/") + file + "\n"), std::string::npos) << file;
    }
    const auto lines = std::count(contents.output.begin(), contents.output.end(), '\n');
    EXPECT_EQ(runInShell("dpkg-deb -c " + m_package + " | grep -c ' root/root '").output,
              std::to_string(lines) + "\n");
    EXPECT_EQ(runInShell("dpkg-deb -c " + m_package + " | grep -v '^[d-]'").output, "") << "links";
}

// Source: Debian Policy, as lintian holds it; what is overridden is said in
// resources/desktop/lintian-overrides.
TEST_F(Package, LintianHasNothingToSay) {
    WW_NEEDS_TOOL("lintian", "lintian");
    const ShellRun ran = runInShell("lintian --allow-root --fail-on error,warning " + m_package);
    EXPECT_EQ(ran.status, 0) << ran.output;
    EXPECT_EQ(ran.output, "");
}

TEST_F(Package, WorksUnpackedWithoutASourceTree) {
    const std::string root = m_folder.file("root");
    ASSERT_EQ(runInShell("dpkg-deb -x " + m_package + " " + root).status, 0);
    const std::string program = "env -i PATH=/usr/bin:/bin HOME=" + m_folder.path().string() +
                                " LC_ALL=C.UTF-8 " + root + "/usr/bin/waterwright ";
    const std::string samples = root + "/usr/share/waterwright/samples/";
    const ShellRun version = runInShell(program + "--version");
    EXPECT_EQ(version.status, 0);
    EXPECT_EQ(version.output, "waterwright " + std::string(base::version()) + "\n");
    const std::string library = m_folder.file("library.wwj");
    EXPECT_EQ(runInShell(program + "new " + library + " --from " + samples + "library_heating").status, 0);
    const ShellRun accepted = runInShell(program + "check " + library);
    EXPECT_EQ(accepted.status, 0) << accepted.output;
    EXPECT_NE(accepted.output.find("C5"), std::string::npos) << accepted.output;
    const std::string report = m_folder.file("library.pdf");
    EXPECT_EQ(runInShell(program + "report " + library + " --out " + report).status, 0);
    EXPECT_EQ(runInShell("head -c 5 " + report).output, "%PDF-");
    const std::string clinic = m_folder.file("clinic.wwj");
    EXPECT_EQ(runInShell(program + "new " + clinic + " --from " + samples + "clinic_cooling").status, 0);
    EXPECT_EQ(runInShell(program + "check " + clinic).status, 1) << "not finished yet";
    const ShellRun inside = runInShell("grep -c " WW_SOURCE_DIR " " + root + "/usr/bin/waterwright");
    EXPECT_EQ(inside.output, "0\n") << "a path of the machine that built it";
}

}  // namespace
}  // namespace ww::support
