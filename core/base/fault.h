// What is said to a person when something is wrong: a stable code, an English sentence with places for
// arguments, and what it is about. Translation happens outside core, by the sentence.
// Not for broken contracts inside the program (expects.h).
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ww::base {

/// One kind of message. Every folder defines its own as constants with static lifetime, next to the code that
/// uses them. `text` says what is wrong and, after "; ", what to do; {1} {2} are arguments, {1w} a word
/// (term.h).
struct MessageForm {
    std::string_view code;  ///< stable, snake_case, unique in the program; appears in JSON output
    std::string_view text;  ///< English source sentence
};

/// One message about one thing. `subject` names the thing (a tag, a file, "file:row:column"); may be empty.
struct Fault {
    const MessageForm* form = nullptr;
    std::string subject;
    std::vector<std::string> arguments;

    std::string_view code() const { return form->code; }
    bool is(const MessageForm& other) const { return form->code == other.code; }
    bool operator==(const Fault& other) const {
        return form->code == other.form->code && subject == other.subject && arguments == other.arguments;
    }
};

/// The sentence with its arguments put in: {1} is the first. A missing argument leaves its place as written.
std::string filledIn(std::string_view text, const std::vector<std::string>& arguments);

/// What filledIn() put into a text of this form, read back; nothing where the text is of another. An argument
/// ends where the letters behind its place begin, the last one as late as it can.
std::optional<std::vector<std::string>> argumentsIn(std::string_view form, std::string_view text);

/// The English sentence of a fault, without its subject.
std::string english(const Fault& fault);

/// "subject: sentence", or the sentence alone where there is no subject.
std::string englishWithSubject(const Fault& fault);

}  // namespace ww::base
