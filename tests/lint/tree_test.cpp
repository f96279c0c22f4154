// Holds the rules of this folder against the whole source tree.
#include <gtest/gtest.h>

#include <algorithm>
#include <regex>
#include <sstream>

#include "tests/lint/file_rules.h"
#include "tests/lint/include_rules.h"
#include "tests/lint/message_rules.h"
#include "tests/lint/quantity_rules.h"
#include "tests/lint/source_tree.h"

namespace ww::lint {
namespace {

// The source of every rule here is a decision of this project (DEVELOPERS.md); no outside source.
class Tree : public testing::Test {
  protected:
    static void SetUpTestSuite() { s_files = new std::vector<SourceFile>(readSourceTree(WW_SOURCE_DIR)); }
    static void TearDownTestSuite() {
        delete s_files;
        s_files = nullptr;
    }

    template <class Rule>
    static testing::AssertionResult holds(Rule rule) {
        std::vector<Violation> all;
        for (const SourceFile& file : *s_files) {
            const std::vector<Violation> found = rule(file);
            all.insert(all.end(), found.begin(), found.end());
        }
        return none(all);
    }
    static testing::AssertionResult none(const std::vector<Violation>& violations) {
        return violations.empty() ? testing::AssertionSuccess()
                                  : testing::AssertionFailure() << "\n"
                                                                << listed(violations);
    }

    static const SourceFile* file(const std::string& path) {
        for (const SourceFile& file : *s_files) {
            if (file.path == path) {
                return &file;
            }
        }
        return nullptr;
    }

    static std::set<std::string> paths() {
        std::set<std::string> all;
        for (const SourceFile& file : *s_files) {
            all.insert(file.path);
        }
        return all;
    }

    static std::vector<SourceFile>* s_files;
};
std::vector<SourceFile>* Tree::s_files = nullptr;

TEST_F(Tree, isThere) {
    EXPECT_NE(file("core/base/result.h"), nullptr);
}

TEST_F(Tree, includesFollowTheTable) {
    const std::set<std::string> all = paths();
    EXPECT_TRUE(holds([&](const SourceFile& file) {
        return file.isCode() ? includeViolations(file, all) : std::vector<Violation>();
    }));
}

TEST_F(Tree, noNumberWithAUnitIsABareDouble) {
    const SourceFile* list = file("tests/lint/allowed_doubles.txt");
    ASSERT_NE(list, nullptr);
    const auto allowed = readAllowedDoubles(list->text);
    std::set<std::string> used;
    EXPECT_TRUE(holds([&](const SourceFile& file) { return doubleViolations(file, allowed, used); }));
    for (const AllowedDouble& entry : allowed) {
        EXPECT_FALSE(entry.reason.empty()) << "allowed_doubles.txt: no reason beside " << entry.path;
        EXPECT_TRUE(used.contains(entry.path + " " + entry.name))
            << "allowed_doubles.txt: nothing needs " << entry.path << " " << entry.name << " any more";
    }
}

// A label of the journal is translated by its form (core/project/edit_label.h); one that is put together on
// the spot would stay English.
TEST_F(Tree, labelsOfActionsAreForms) {
    static const std::regex kOnTheSpot("label\\s*\\+?=\\s*\"|apply\\(\\s*\\{\\s*\"");
    EXPECT_TRUE(holds([](const SourceFile& file) {
        std::vector<Violation> found;
        const bool isOurs = file.path.starts_with("core/") || file.path.starts_with("ui/");
        if (isOurs && file.isCode() && std::regex_search(file.text, kOnTheSpot)) {
            found.push_back({file.path, 1,
                             "a label of an action is written on the spot; make it a form of "
                             "core/project/edit_label.h"});
        }
        return found;
    }));
}

TEST_F(Tree, headersSayWhatTheyAreFor) {
    EXPECT_TRUE(holds(headViolations));
}
TEST_F(Tree, filesStayShort) {
    EXPECT_TRUE(holds(lengthViolations));
}
TEST_F(Tree, nothingIsLeftUndone) {
    EXPECT_TRUE(holds(wordViolations));
}
TEST_F(Tree, namesAreSnakeCase) {
    EXPECT_TRUE(holds(nameViolations));
}
TEST_F(Tree, theMapNamesOnlyWhatIsThere) {
    const SourceFile* map = file("DEVELOPERS.md");
    ASSERT_NE(map, nullptr);
    EXPECT_TRUE(none(namedPathViolations(*map, paths())));
}
TEST_F(Tree, topIsTidy) {
    EXPECT_TRUE(none(topViolations(namesAtTop(WW_SOURCE_DIR))));
}

TEST_F(Tree, messagesHaveCodesOfTheirOwnAndSayWhatToDo) {
    std::vector<MessageInCode> messages;
    for (const SourceFile& file : *s_files) {
        if (file.isCode() && !file.path.starts_with("tests/")) {
            const auto found = messagesOf(file);
            messages.insert(messages.end(), found.begin(), found.end());
        }
    }
    EXPECT_GT(messages.size(), 20u);
    const SourceFile* list = file("tests/lint/plain_messages.txt");
    ASSERT_NE(list, nullptr);
    std::vector<std::string> plain;
    std::istringstream lines(list->text);
    for (std::string line; std::getline(lines, line);) {
        if (!line.empty() && line.front() != '#') {
            plain.push_back(line.substr(0, line.find(':')));
        }
    }
    EXPECT_TRUE(none(messageViolations(messages, plain)));
    for (const std::string& code : plain) {
        EXPECT_TRUE(std::any_of(messages.begin(), messages.end(),
                                [&](const MessageInCode& message) { return message.code == code; }))
            << "plain_messages.txt: there is no message " << code << " any more";
    }
}

}  // namespace
}  // namespace ww::lint
