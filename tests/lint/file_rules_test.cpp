#include "tests/lint/file_rules.h"

#include <gtest/gtest.h>

namespace ww::lint {
namespace {

// Every rule is seen to catch what it is for. Source: decisions of this project.
TEST(FileRules, aHeaderHasAHeadAndIsIncludedOnce) {
    EXPECT_TRUE(headViolations({"core/a/b.h", "// What it is for.\n#pragma once\n"}).empty());
    EXPECT_EQ(headViolations({"core/a/b.h", "#pragma once\n"}).size(), 1u);
    EXPECT_EQ(headViolations({"core/a/b.h", "// What it is for.\n// #pragma once\n"}).size(), 1u);
    EXPECT_TRUE(headViolations({"core/a/b.cpp", "int a;\n"}).empty());
}

TEST(FileRules, aLongFileSaysWhy) {
    const std::string lines(700, '\n');
    EXPECT_TRUE(lengthViolations({"core/a/b.cpp", lines}).empty());
    EXPECT_EQ(lengthViolations({"core/a/b.cpp", lines + "\n"}).size(), 1u);
    EXPECT_TRUE(
        lengthViolations({"core/a/b.cpp", "// One table, and so longer than others.\n" + lines}).empty());
    EXPECT_EQ(lengthViolations({"core/a/b.cpp", lines + "// longer than others\n"}).size(), 1u);
    EXPECT_TRUE(lengthViolations({"tests/data/b.csv", lines + "\n"}).empty());
}

TEST(FileRules, workLeftUndoneIsFound) {
    for (const char* text : {"// TODO", "int a; // FIXME later", "/* XXX */", "f(\"not implemented\");",
                             "// a placeholder\n", "# HACK", "// see trade.md", "// as /work/notes says"}) {
        EXPECT_EQ(wordViolations({"core/a/b.cpp", text}).size(), 1u) << text;
    }
    EXPECT_TRUE(
        wordViolations({"ui/a/b.cpp", "edit->setPlaceholderText(text); // HACKSAW, framework/\n"}).empty());
    EXPECT_EQ(wordViolations({"app/run.sh", "\n# TODO\n"}).front().line, 2u);
    EXPECT_TRUE(wordViolations({"tests/data/b.csv", "TODO"}).empty());
}

TEST(FileRules, namesAreSnakeCase) {
    EXPECT_TRUE(nameViolations({"core/base/valve_flow.h", ""}).empty());
    EXPECT_TRUE(nameViolations({"sample_projects/small_office/README.md", ""}).empty());
    EXPECT_TRUE(nameViolations({"resources/licences/GPL-3.0-or-later.txt", ""}).empty());
    EXPECT_TRUE(nameViolations({"tests/data/networks/01-direct.json", ""}).empty());
    EXPECT_EQ(nameViolations({"core/base/valveFlow.h", ""}).size(), 1u);
    EXPECT_EQ(nameViolations({"core/Base/valve_flow.h", ""}).size(), 1u);
    EXPECT_EQ(nameViolations({"ui/valve-flow.cpp", ""}).size(), 1u);
}

TEST(FileRules, pagesNameOnlyWhatIsThere) {
    const std::set<std::string> paths{"core/base/result.h", "ui/text/words.cpp", "resources/a.1.in"};
    const auto found = [&](const char* text) { return namedPathViolations({"PAGE.md", text}, paths).size(); };
    EXPECT_EQ(found("in `core/`, `core/base`, `base/result.h`, `words.cpp`, `ui/text/words` and `a.1.in`"),
              0u);
    EXPECT_EQ(found("`main_window_MENU.cpp`, `core/*.h`, `build/tests/x_bench` and `word()`"), 0u);
    EXPECT_EQ(found("`core/base/results.h`"), 1u);
    EXPECT_EQ(found("`ase/result.h`, `word.cpp` and `text/word`"), 3u);
    EXPECT_EQ(namedPathViolations({"PAGE.md", "\n\n`gone.h`"}, paths).front().line, 3u);
}

TEST(FileRules, theTopHoldsOnlyWhatItShould) {
    EXPECT_TRUE(topViolations({"CMakeLists.txt", "README.md", "app", "core", "ui"}).empty());
    ASSERT_EQ(topViolations({"CMakeLists.txt", "docs", "core"}).size(), 1u);
    EXPECT_EQ(topViolations({"docs"}).front().path, "docs");
}

TEST(FileRules, violationsAreListedOneALine) {
    EXPECT_EQ(listed({{"a.h", 3, "is bad"}, {"b.h", 0, "is worse"}}), "a.h:3: is bad\nb.h: is worse\n");
    const SourceFile file{"core/base/id.h", ""};
    EXPECT_EQ(file.ending(), ".h");
    EXPECT_EQ(file.folder(), "core/base");
    EXPECT_EQ((SourceFile{"README", ""}).ending(), "");
    EXPECT_EQ((SourceFile{"README", ""}).folder(), "");
}

}  // namespace
}  // namespace ww::lint
