#include "tests/lint/message_rules.h"

#include <gtest/gtest.h>

namespace ww::lint {
namespace {

// Every rule is seen to catch what it is for. Source: decisions of this project.
TEST(MessageRules, formsAreRead) {
    const auto messages = messagesOf(
        {"core/a/b.h",
         "// MessageForm kNo{\"no\", \"no\"};\n"
         "struct MessageForm { int code; };\n"
         "inline constexpr base::MessageForm kOne{\"one\",\n   \"what \\\"{1}\\\" is; \"\n   \"do this\"};\n"
         "const auto two = MessageForm{\"two\", \"what; do\"};\n"
         "MessageForm kThree = {\"three\", \"x\"};\n"});
    ASSERT_EQ(messages.size(), 3u);
    EXPECT_EQ(messages[0].code, "one");
    EXPECT_EQ(messages[0].text, "what \\\"{1}\\\" is; do this");
    EXPECT_EQ(messages[0].line, 3u);
    EXPECT_EQ(messages[1].code, "two");
    EXPECT_EQ(messages[2].code, "three");
}

TEST(MessageRules, codesAreUniqueAndSnakeCase) {
    EXPECT_TRUE(messageViolations({{"a.h", 1, "one", "a; b"}, {"a.h", 2, "two", "a; b"}}, {}).empty());
    EXPECT_EQ(messageViolations({{"a.h", 1, "one", "a; b"}, {"b.h", 2, "one", "c; d"}}, {}).size(), 1u);
    EXPECT_EQ(messageViolations({{"a.h", 1, "One", "a; b"}}, {}).size(), 1u);
    EXPECT_EQ(messageViolations({{"a.h", 1, "", "a; b"}}, {}).size(), 1u);
}

TEST(MessageRules, aMessageSaysWhatToDo) {
    EXPECT_EQ(messageViolations({{"a.h", 1, "one", "it is wrong"}}, {}).size(), 1u);
    EXPECT_TRUE(messageViolations({{"a.h", 1, "one", "it is so"}}, {"one"}).empty());
    EXPECT_TRUE(messageViolations({{"a.h", 1, "report_flow_column", "Flow"}}, {}).empty());
    EXPECT_EQ(messageViolations({{"a.h", 1, "report_no_flow", "No flow is known"}}, {}).size(), 1u);
    EXPECT_EQ(messageViolations({{"a.h", 1, "valve_without_table", "it has no table"}}, {}).size(), 1u);
}

}  // namespace
}  // namespace ww::lint
