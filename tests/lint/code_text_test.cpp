#include "tests/lint/code_text.h"

#include <gtest/gtest.h>

namespace ww::lint {
namespace {

// The source of these expectations is the C++20 standard, [lex.comment], [lex.string], [lex.icon].
TEST(CodeText, blanksCommentsAndKeepsPlaces) {
    EXPECT_EQ(withoutComments("a // b\nc"), "a     \nc");
    EXPECT_EQ(withoutComments("a /* b\nb */ c"), "a     \n     c");
    EXPECT_EQ(withoutComments("\"// no\" // yes"), "\"// no\"       ");
    EXPECT_EQ(withoutComments("a /* never closed"), "a                ");
}

TEST(CodeText, blanksLiterals) {
    EXPECT_EQ(withoutCommentsAndLiterals("f(\"a\\\"b\", 'c')"), "f(\"    \", ' ')");
    EXPECT_EQ(withoutCommentsAndLiterals("1'000 + 'x'"), "1'000 + ' '");
    EXPECT_EQ(withoutCommentsAndLiterals("R\"m(a)\" b)m\" c").substr(12), " c");
    EXPECT_EQ(withoutCommentsAndLiterals("\"open\nnext"), "\"    \nnext");
}

TEST(CodeText, findsWholeWordsAndLines) {
    EXPECT_TRUE(isWordAt("a double b", 2, "double"));
    EXPECT_FALSE(isWordAt("a doubles b", 2, "double"));
    EXPECT_FALSE(isWordAt("undouble", 2, "double"));
    EXPECT_EQ(lineOf("a\nb\nc", 4), 3u);
}

TEST(CodeText, dividesIntoTokensWithoutPreprocessorLines) {
    std::vector<std::string> texts;
    for (const Token& token : tokens("#define A \\\n  b\nint x_1 = f(2);")) {
        texts.emplace_back(token.text);
    }
    EXPECT_EQ(texts, (std::vector<std::string>{"int", "x_1", "=", "f", "(", "2", ")", ";"}));
}

}  // namespace
}  // namespace ww::lint
