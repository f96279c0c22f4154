#include "tests/lint/message_rules.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <map>
#include <string_view>

#include "tests/lint/code_text.h"

namespace ww::lint {
namespace {

constexpr std::string_view kType = "MessageForm";

std::size_t behindSpaces(std::string_view code, std::size_t at) {
    const std::size_t next = code.find_first_not_of(" \n", at);
    return next == std::string_view::npos ? code.size() : next;
}

/// The literals that stand side by side at `at`, put together; `at` moves behind them.
std::string joinedLiterals(std::string_view code, std::size_t& at) {
    std::string joined;
    at = behindSpaces(code, at);
    while (at < code.size() && code[at] == '"') {
        std::size_t i = at + 1;
        while (i < code.size() && code[i] != '"') {
            const std::size_t step = code[i] == '\\' ? 2 : 1;
            joined += code.substr(i, step);
            i += step;
        }
        at = behindSpaces(code, i + 1);
    }
    return joined;
}

bool isSnakeCase(std::string_view code) {
    return !code.empty() && std::islower(static_cast<unsigned char>(code.front())) != 0 &&
           std::all_of(code.begin(), code.end(), [](unsigned char c) {
               return std::islower(c) != 0 || std::isdigit(c) != 0 || c == '_';
           });
}

/// Whether a code names a heading or a label of the report, which says nothing that one could do.
bool isHeading(std::string_view code) {
    constexpr std::array<std::string_view, 5> kEnds{"_title", "_table", "_column", "_figure", "_label"};
    return code.starts_with("report_") &&
           std::any_of(kEnds.begin(), kEnds.end(), [&](std::string_view end) { return code.ends_with(end); });
}

}  // namespace

std::vector<MessageInCode> messagesOf(const SourceFile& file) {
    std::vector<MessageInCode> messages;
    const std::string code = withoutComments(file.text);
    for (std::size_t at = code.find(kType); at != std::string::npos; at = code.find(kType, at + 1)) {
        if (!isWordAt(code, at, kType)) {
            continue;
        }
        std::size_t i = behindSpaces(code, at + kType.size());
        while (i < code.size() && isNameCharacter(code[i])) {
            ++i;
        }
        i = behindSpaces(code, i);
        if (i < code.size() && code[i] == '=') {
            i = behindSpaces(code, i + 1);
        }
        if (i >= code.size() || code[i] != '{') {
            continue;
        }
        i = behindSpaces(code, i + 1);
        if (i >= code.size() || code[i] != '"') {
            continue;
        }
        MessageInCode message{file.path, lineOf(code, at), joinedLiterals(code, i), ""};
        if (i < code.size() && code[i] == ',') {
            ++i;
            message.text = joinedLiterals(code, i);
        }
        messages.push_back(std::move(message));
    }
    return messages;
}

std::vector<std::string> termsOf(const SourceFile& file) {
    std::vector<std::string> terms;
    const std::string code = withoutComments(file.text);
    const auto takeLiteral = [&](std::size_t at) {
        std::string word = joinedLiterals(code, at);
        if (!word.empty()) {
            terms.push_back(std::move(word));
        }
    };
    constexpr std::string_view kMark = "term(";
    for (std::size_t at = code.find(kMark); at != std::string::npos; at = code.find(kMark, at + 1)) {
        if (isWordAt(code, at, kMark.substr(0, kMark.size() - 1))) {
            takeLiteral(at + kMark.size());
        }
    }
    constexpr std::string_view kPair = "std::pair{";
    for (std::size_t at = code.find(kPair); at != std::string::npos; at = code.find(kPair, at + 1)) {
        const std::size_t comma = code.find(',', at);
        if (comma != std::string::npos &&
            code.substr(at, comma - at).find("::", kPair.size()) != std::string::npos) {
            takeLiteral(comma + 1);
        }
    }
    return terms;
}

std::vector<Violation> messageViolations(const std::vector<MessageInCode>& messages,
                                         const std::vector<std::string>& plain) {
    std::vector<Violation> violations;
    std::map<std::string, const MessageInCode*> first;
    for (const MessageInCode& message : messages) {
        if (!isSnakeCase(message.code)) {
            violations.push_back(
                {message.path, message.line, "code \"" + message.code + "\" is not snake_case"});
        }
        const auto [earlier, isNew] = first.emplace(message.code, &message);
        if (!isNew) {
            violations.push_back({message.path, message.line,
                                  "code \"" + message.code + "\" is taken by " + earlier->second->path + ":" +
                                      std::to_string(earlier->second->line)});
        }
        const bool isPlain =
            isHeading(message.code) || std::find(plain.begin(), plain.end(), message.code) != plain.end();
        if (!isPlain && message.text.find("; ") == std::string::npos) {
            violations.push_back(
                {message.path, message.line,
                 "message \"" + message.code +
                     "\" does not say behind \"; \" what to do; add it, or give the reason in "
                     "tests/lint/plain_messages.txt"});
        }
    }
    return violations;
}

}  // namespace ww::lint
