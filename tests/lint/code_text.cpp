#include "tests/lint/code_text.h"

#include <algorithm>
#include <cctype>

namespace ww::lint {
namespace {

void blank(std::string& text, std::size_t from, std::size_t to) {
    for (std::size_t i = from; i < to; ++i) {
        if (text[i] != '\n') {
            text[i] = ' ';
        }
    }
}

/// The position behind the closing quote of the literal that opens at `open`.
std::size_t endOfQuoted(std::string_view code, std::size_t open) {
    std::size_t i = open + 1;
    while (i < code.size() && code[i] != code[open] && code[i] != '\n') {
        i += code[i] == '\\' ? 2 : 1;
    }
    return std::min(i + 1, code.size());
}

/// The same for R"mark( ... )mark".
std::size_t endOfRaw(std::string_view code, std::size_t open) {
    const std::size_t bracket = code.find('(', open);
    if (bracket == std::string_view::npos) {
        return code.size();
    }
    const std::string close = ")" + std::string(code.substr(open + 1, bracket - open - 1)) + "\"";
    const std::size_t end = code.find(close, bracket);
    return end == std::string_view::npos ? code.size() : end + close.size();
}

bool opensRaw(std::string_view code, std::size_t quote) {
    return code[quote] == '"' && quote > 0 && code[quote - 1] == 'R' &&
           (quote == 1 || !isNameCharacter(code[quote - 2]));
}

/// An apostrophe between digits groups them: 1'000'000.
bool isDigitMark(std::string_view code, std::size_t position) {
    return code[position] == '\'' && position > 0 &&
           std::isxdigit(static_cast<unsigned char>(code[position - 1])) && position + 1 < code.size() &&
           std::isxdigit(static_cast<unsigned char>(code[position + 1]));
}

std::string blanked(std::string_view code, bool literalsToo) {
    std::string text(code);
    std::size_t i = 0;
    while (i < code.size()) {
        std::size_t end = i + 1;
        if (code.substr(i, 2) == "//") {
            end = std::min(code.find('\n', i), code.size());
            blank(text, i, end);
        } else if (code.substr(i, 2) == "/*") {
            const std::size_t close = code.find("*/", i + 2);
            end = close == std::string_view::npos ? code.size() : close + 2;
            blank(text, i, end);
        } else if ((code[i] == '"' || code[i] == '\'') && !isDigitMark(code, i)) {
            end = opensRaw(code, i) ? endOfRaw(code, i) : endOfQuoted(code, i);
            if (literalsToo) {
                blank(text, i + 1, end - 1);
            }
        }
        i = end;
    }
    return text;
}

}  // namespace

std::string withoutComments(std::string_view code) {
    return blanked(code, false);
}

std::string withoutCommentsAndLiterals(std::string_view code) {
    return blanked(code, true);
}

std::size_t lineOf(std::string_view text, std::size_t position) {
    const std::string_view before = text.substr(0, position);
    return 1 + static_cast<std::size_t>(std::count(before.begin(), before.end(), '\n'));
}

bool isNameCharacter(char character) {
    return std::isalnum(static_cast<unsigned char>(character)) != 0 || character == '_';
}

bool isWordAt(std::string_view text, std::size_t position, std::string_view word) {
    const std::size_t end = position + word.size();
    return text.substr(position, word.size()) == word &&
           (position == 0 || !isNameCharacter(text[position - 1])) &&
           (end >= text.size() || !isNameCharacter(text[end]));
}

std::vector<Token> tokens(std::string_view code) {
    std::vector<Token> found;
    bool isLineStart = true;
    std::size_t i = 0;
    while (i < code.size()) {
        if (code[i] == '\n') {
            isLineStart = true;
            ++i;
        } else if (std::isspace(static_cast<unsigned char>(code[i])) != 0) {
            ++i;
        } else if (isLineStart && code[i] == '#') {
            // To the end of the line, and of the lines that it goes on in.
            do {
                i = std::min(code.find('\n', i + 1), code.size());
            } while (i < code.size() && code[i - 1] == '\\');
        } else {
            isLineStart = false;
            std::size_t end = i;
            while (end < code.size() && isNameCharacter(code[end])) {
                ++end;
            }
            end = std::max(end, i + 1);
            found.push_back({code.substr(i, end - i), i});
            i = end;
        }
    }
    return found;
}

}  // namespace ww::lint
