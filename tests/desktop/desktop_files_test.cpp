// What the desktop is told of the program: its entry in the menus, its file type, its icons, its page in a
// catalogue of programs; judged by the tools that desktops bring along.
#include <gtest/gtest.h>

#include <QMimeDatabase>

#include "core/base/version.h"
#include "core/store/schema.h"
#include "tests/support/command_run.h"
#include "tests/support/shell_run.h"
#include "tests/support/temporary_folder.h"

namespace ww::support {
namespace {

const std::string kDesktopFolder = WW_SOURCE_DIR "/resources/desktop/";
const std::string kMadeFolder = WW_BINARY_DIR "/resources/";
const std::string kId = "org.waterwright.Waterwright";
const std::string kType = "application/x-waterwright-workbook";

// Source: Desktop Entry Specification, as desktop-file-validate holds it.
TEST(DesktopFiles, TheEntryIsValid) {
    WW_NEEDS_TOOL("desktop-file-validate", "desktop-file-utils");
    const ShellRun ran = runInShell("desktop-file-validate " + kDesktopFolder + kId + ".desktop");
    EXPECT_EQ(ran.status, 0);
    EXPECT_EQ(ran.output, "");
}

// Source: AppStream specification, as appstreamcli holds it.
TEST(DesktopFiles, TheMetainfoIsValid) {
    WW_NEEDS_TOOL("appstreamcli", "appstream");
    const ShellRun ran =
        runInShell("appstreamcli validate --no-net --no-color " + kMadeFolder + kId + ".metainfo.xml");
    EXPECT_EQ(ran.status, 0) << ran.output;
    EXPECT_EQ(ran.output.find("W: "), std::string::npos) << ran.output;
}

/// A database of file types of its own, with the system's types of SQLite and ours.
class FileType : public testing::Test {
  protected:
    void SetUp() override {
        WW_NEEDS_TOOL("update-mime-database", "shared-mime-info");
        // Qt reads these when it is first asked for a type; each test is a process of its own.
        qputenv("XDG_DATA_HOME", m_folder.path().c_str());
        qputenv("XDG_DATA_DIRS", m_folder.path().c_str());
        // The database is gone in a moment and need not be brought to disk.
        qputenv("PKGSYSTEM_ENABLE_FSYNC", "0");
        const std::string packages = m_folder.file("mime/packages/");
        const ShellRun made =
            runInShell("mkdir -p " + packages + " && cp " + kDesktopFolder + kId + ".mime.xml " + packages +
                       kId + ".xml && cp /usr/share/mime/packages/freedesktop.org.xml " + packages +
                       " && update-mime-database " + m_folder.file("mime"));
        ASSERT_EQ(made.status, 0) << made.output;
        ASSERT_EQ(made.output, "");
        const std::string workbook = m_folder.file("job.wwj");
        ASSERT_EQ(
            runCommand({"new", workbook, "--from", WW_SOURCE_DIR "/sample_projects/library_heating"}).status,
            0);
        const std::string bytes = m_folder.read("job.wwj");
        m_folder.write("no_ending", bytes);
        // SQLite file format, 1.3: the application id is at byte 68; 0 for no application.
        m_folder.write("other.sqlite", std::string(bytes).replace(68, 4, 4, '\0'));
    }

    std::string typeOf(const std::string& name, QMimeDatabase::MatchMode mode) const {
        return QMimeDatabase()
            .mimeTypeForFile(QString::fromStdString(m_folder.file(name)), mode)
            .name()
            .toStdString();
    }

    TemporaryFolder m_folder;
};

TEST_F(FileType, AWorkbookIsToldByContentAndByName) {
    EXPECT_EQ(typeOf("job.wwj", QMimeDatabase::MatchDefault), kType);
    EXPECT_EQ(typeOf("job.wwj", QMimeDatabase::MatchContent), kType);
    EXPECT_EQ(typeOf("no_ending", QMimeDatabase::MatchContent), kType);
    EXPECT_EQ(typeOf("other.sqlite", QMimeDatabase::MatchContent), "application/vnd.sqlite3");
    const QMimeType type = QMimeDatabase().mimeTypeForName(QString::fromStdString(kType));
    EXPECT_TRUE(type.inherits(QStringLiteral("application/vnd.sqlite3")));
    EXPECT_EQ(type.iconName(), QStringLiteral("application-x-waterwright-workbook"));
}

// Another reader of the same database than Qt's.
TEST_F(FileType, OtherDesktopsTellItLikewise) {
    WW_NEEDS_TOOL("gio", "libglib2.0-bin");
    for (const char* name : {"job.wwj", "no_ending"}) {
        const ShellRun ran =
            runInShell("gio info --attributes standard::content-type " + m_folder.file(name));
        EXPECT_NE(ran.output.find("standard::content-type: " + kType + "\n"), std::string::npos)
            << ran.output;
    }
}

// Source: the magic file of the program file: "SQLite 3.x database, application id N".
TEST_F(FileType, TheProgramFileSeesTheApplicationId) {
    WW_NEEDS_TOOL("file", "file");
    const ShellRun ran = runInShell("file --brief " + m_folder.file("job.wwj"));
    EXPECT_NE(ran.output.find("application id " + std::to_string(store::kApplicationId)), std::string::npos)
        << ran.output;
}

// The pictures of fixed sizes are kept, so that a build needs no tool to draw them.
TEST(DesktopFiles, IconsAreThoseOfTheirDrawings) {
    WW_NEEDS_TOOL("rsvg-convert", "librsvg2-bin");
    WW_NEEDS_TOOL("compare", "imagemagick");
    const TemporaryFolder folder;
    ASSERT_EQ(runInShell("bash " + kDesktopFolder + "icons/make_icons.sh " + folder.path().string()).status,
              0);
    for (const std::string size : {"16", "22", "24", "32", "48", "64", "128", "256"}) {
        for (const std::string& name : {kId, std::string("application-x-waterwright-workbook")}) {
            const std::string picture = size + "/" + name + ".png";
            // Another release of the drawing library may round an edge differently: 2 % of pixels.
            const ShellRun ran = runInShell("compare -metric AE -fuzz 5% " + folder.file(picture) + " " +
                                            kDesktopFolder + "icons/" + picture + " null:");
            const double side = std::stod(size);
            EXPECT_LE(std::stod(ran.output), 0.02 * side * side) << picture << ": " << ran.output;
        }
    }
}

// A window belongs to the entry of its id; the icon and the metainfo go by the same id.
TEST(DesktopFiles, OneIdEverywhere) {
    const ShellRun entry = runInShell("cat " + kDesktopFolder + kId + ".desktop");
    EXPECT_NE(entry.output.find("\nIcon=" + kId + "\n"), std::string::npos);
    EXPECT_NE(entry.output.find("\nMimeType=" + kType + ";\n"), std::string::npos);
    EXPECT_NE(entry.output.find("\nExec=waterwright %F\n"), std::string::npos);
    const ShellRun program = runInShell("cat " WW_SOURCE_DIR "/ui/run_desktop.cpp");
    EXPECT_NE(program.output.find("\"" + kId + "\""), std::string::npos);
    const ShellRun metainfo = runInShell("cat " + kMadeFolder + kId + ".metainfo.xml");
    EXPECT_NE(metainfo.output.find("<id>" + kId + "</id>"), std::string::npos);
    EXPECT_NE(metainfo.output.find("<release version=\"" + std::string(base::version()) + "\""),
              std::string::npos);
}

}  // namespace
}  // namespace ww::support
