// The handbook for readers without the program: one HTML file and a PDF, with every chapter in them and no
// link that leads nowhere.
#include <gtest/gtest.h>

#include <regex>
#include <set>

#include "tests/support/shell_run.h"
#include "tests/support/temporary_folder.h"

namespace ww::support {
namespace {

std::set<std::string> firstGroups(const std::string& text, const char* pattern) {
    const std::regex expression(pattern);
    std::set<std::string> found;
    for (auto it = std::sregex_iterator(text.begin(), text.end(), expression); it != std::sregex_iterator();
         ++it) {
        found.insert((*it)[1]);
    }
    return found;
}

TEST(Book, IsMadeAsHtmlAndAsPdf) {
    WW_NEEDS_TOOL("pandoc", "pandoc");
    WW_NEEDS_TOOL("weasyprint", "weasyprint");
    WW_NEEDS_TOOL("pdftotext", "poppler-utils");
    const TemporaryFolder folder;
    const ShellRun made = runInShell(
        "LC_ALL=C.UTF-8 bash " WW_SOURCE_DIR "/resources/handbook/make_book.sh " + folder.path().string());
    ASSERT_EQ(made.status, 0) << made.output;

    // The contents of the pictures are long and hold neither.
    const std::string html = runInShell("sed 's/data:[^\"]*//g' " + folder.file("handbook.html")).output;
    const std::set<std::string> anchors = firstGroups(html, " id=\"([^\"]+)\"");
    for (const std::string& target : firstGroups(html, " href=\"([^\"]+)\"")) {
        ASSERT_EQ(target.front(), '#') << target << " leads out of the book";
        EXPECT_TRUE(anchors.count(target.substr(1))) << target;
    }

    const std::string pages = runInShell("pdftotext -layout " + folder.file("handbook.pdf") + " -").output;
    const std::string index = runInShell("cat " WW_SOURCE_DIR "/resources/handbook/index.md").output;
    const std::set<std::string> titles = firstGroups(index, "\n- \\[([^\\]]+)\\]");
    EXPECT_GE(titles.size(), 15u);
    for (const std::string& title : titles) {
        EXPECT_NE(pages.find(title), std::string::npos) << title;
    }
}

}  // namespace
}  // namespace ww::support
