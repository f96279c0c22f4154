// What is said to people: each message of the program has a code of its own and says what to do.
// Not for the wording beyond that.
#pragma once

#include <string>
#include <vector>

#include "tests/lint/source_tree.h"

namespace ww::lint {

/// One constant of base::MessageForm as it stands in a file.
struct MessageInCode {
    std::string path;
    std::size_t line = 0;
    std::string code;
    std::string text;  ///< the pieces between the quotes put together, escapes as written
};

/// The MessageForm constants of one C++ file: MessageForm, a name or none, and literals in braces.
std::vector<MessageInCode> messagesOf(const SourceFile& file);

/// The words that a file marks for translation, escapes as written: the literals in base::term("..."), and
/// the words of enumerations in tables of std::pair{Enumeration::Value, "..."}.
std::vector<std::string> termsOf(const SourceFile& file);

/// Codes that are not snake_case or stand twice, and texts that do not say, behind "; ", what to do. `plain`
/// are the codes whose texts are statements only; those of headings of the report need not be among them.
std::vector<Violation> messageViolations(const std::vector<MessageInCode>& messages,
                                         const std::vector<std::string>& plain);

}  // namespace ww::lint
