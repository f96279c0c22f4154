// C++ text made easy to search: comments and literals blanked out, every character left where it stood; its
// words and marks one by one. Not a parser: it knows no meaning.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace ww::lint {

/// The text with every comment turned into spaces; line ends stay.
std::string withoutComments(std::string_view code);
/// The same, with what stands between quotes turned into spaces too; the quotes stay.
std::string withoutCommentsAndLiterals(std::string_view code);

/// The line of a position, from 1.
std::size_t lineOf(std::string_view text, std::size_t position);

/// Whether a character can stand inside a C++ name.
bool isNameCharacter(char character);
/// Whether `word` stands at this position by itself, not as part of a longer name.
bool isWordAt(std::string_view text, std::size_t position, std::string_view word);

/// A name, a number, or one other character.
struct Token {
    std::string_view text;
    std::size_t position = 0;
};
/// What stands between the spaces; preprocessor lines are left out. Views into `code`, which must outlive
/// them.
std::vector<Token> tokens(std::string_view code);

}  // namespace ww::lint
