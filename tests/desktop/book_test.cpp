// The handbook for readers without the program: one HTML file and a PDF, with every chapter in them and no
// link that leads nowhere.
#include <gtest/gtest.h>

#include <filesystem>
#include <regex>
#include <set>
#include <vector>

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

/// A book as it is written, and the index.md that it follows.
struct WrittenBook {
    std::string name;
    std::string language;
    std::string index;
};

/// The English one, and that of each language that has a folder.
std::vector<WrittenBook> writtenBooks() {
    const std::filesystem::path chapters = WW_SOURCE_DIR "/resources/handbook";
    std::vector<WrittenBook> books{{"handbook", "en", chapters / "index.md"}};
    for (const auto& entry : std::filesystem::directory_iterator(chapters)) {
        if (std::filesystem::exists(entry.path() / "index.md")) {
            const std::string language = entry.path().filename();
            books.push_back({"handbook_" + language, language, entry.path() / "index.md"});
        }
    }
    return books;
}

TEST(Book, IsMadeAsHtmlAndAsPdfInEachLanguage) {
    WW_NEEDS_TOOL("pandoc", "pandoc");
    WW_NEEDS_TOOL("weasyprint", "weasyprint");
    WW_NEEDS_TOOL("pdftotext", "poppler-utils");
    const TemporaryFolder folder;
    const ShellRun made = runInShell(
        "LC_ALL=C.UTF-8 bash " WW_SOURCE_DIR "/resources/handbook/make_book.sh " + folder.path().string());
    ASSERT_EQ(made.status, 0) << made.output;

    std::set<std::size_t> pictures;
    for (const WrittenBook& book : writtenBooks()) {
        // The contents of the pictures are long and hold neither.
        const std::string html =
            runInShell("sed 's/data:[^\"]*//g' " + folder.file(book.name + ".html")).output;
        EXPECT_NE(html.find(" lang=\"" + book.language + "\""), std::string::npos) << book.name;
        const std::set<std::string> anchors = firstGroups(html, " id=\"([^\"]+)\"");
        for (const std::string& target : firstGroups(html, " href=\"([^\"]+)\"")) {
            ASSERT_EQ(target.front(), '#') << target << " leads out of " << book.name;
            EXPECT_TRUE(anchors.count(target.substr(1))) << target;
        }
        pictures.insert(firstGroups(html, "(<img [^>]*>)").size());

        const std::string pages =
            runInShell("pdftotext -layout " + folder.file(book.name + ".pdf") + " -").output;
        const std::string index = runInShell("cat " + book.index).output;
        const std::set<std::string> titles = firstGroups(index, "\n- \\[([^\\]]+)\\]");
        EXPECT_GE(titles.size(), 15u);
        for (const std::string& title : titles) {
            EXPECT_NE(pages.find(title), std::string::npos) << title;
        }
    }
    EXPECT_EQ(pictures.size(), 1u) << "every language shows as many pictures";
}

}  // namespace
}  // namespace ww::support
