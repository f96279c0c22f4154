// Words of the program that are put into its sentences: "discharge valve", "not known". Not for names that a
// person gave.
#pragma once

#include <cstddef>
#include <functional>
#include <string>
#include <string_view>

namespace ww::base {

/// Marks a word, so that it is collected for translation; gives it back. Write the literal itself as the
/// argument. It is translated at places of a sentence that are written {1w}.
constexpr const char* term(const char* word) {
    return word;
}

/// Whether a sentence takes its argument (0 is the first) as a word of the program: its place is written
/// {1w}.
constexpr bool isWordPlace(std::string_view text, std::size_t argument) {
    const char place[] = {'{', static_cast<char>('1' + argument), 'w', '}'};
    return argument < 9 && text.find(std::string_view(place, sizeof place)) != std::string_view::npos;
}

/// Puts words of the program into the language of the reader; empty: they stay English.
using Wording = std::function<std::string(std::string_view)>;

}  // namespace ww::base
