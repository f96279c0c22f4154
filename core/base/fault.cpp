#include "core/base/fault.h"

namespace ww::base {
namespace {

/// The length of a place {1} or {1w} that begins here; 0 where none does.
std::size_t placeAt(std::string_view text, std::size_t at) {
    const std::string_view rest = text.substr(at, 4);
    if (rest.size() < 3 || rest[0] != '{' || rest[1] < '1' || rest[1] > '9') {
        return 0;
    }
    if (rest[2] == '}') {
        return 3;
    }
    return rest.size() == 4 && rest[2] == 'w' && rest[3] == '}' ? 4 : 0;
}

/// One step through a form: letters that stand there, then the place behind them.
struct FormPiece {
    std::string_view letters;
    std::optional<std::size_t> argument;  ///< nothing: the form ends with its letters
};

/// "DP {1}, {2}" as "DP " with place 0, ", " with place 1, and "".
std::vector<FormPiece> piecesOf(std::string_view form) {
    std::vector<FormPiece> pieces;
    std::size_t from = 0;
    for (std::size_t at = 0; at < form.size(); ++at) {
        if (const std::size_t length = placeAt(form, at); length > 0) {
            pieces.push_back({form.substr(from, at - from), static_cast<std::size_t>(form[at + 1] - '1')});
            from = at + length;
            at = from - 1;
        }
    }
    pieces.push_back({form.substr(from), {}});
    return pieces;
}

}  // namespace

std::string filledIn(std::string_view text, const std::vector<std::string>& arguments) {
    std::string out;
    out.reserve(text.size() + 32);
    for (std::size_t i = 0; i < text.size(); ++i) {
        const std::size_t length = placeAt(text, i);
        const std::size_t index = length > 0 ? static_cast<std::size_t>(text[i + 1] - '1') : 0;
        if (length > 0 && index < arguments.size()) {
            out += arguments[index];
            i += length - 1;
        } else {
            out += text[i];
        }
    }
    return out;
}

std::optional<std::vector<std::string>> argumentsIn(std::string_view form, std::string_view text) {
    const std::vector<FormPiece> pieces = piecesOf(form);
    if (!text.starts_with(pieces.front().letters)) {
        return {};
    }
    std::vector<std::string> arguments(pieces.size() - 1);
    std::string_view rest = text.substr(pieces.front().letters.size());
    for (std::size_t i = 0; i + 1 < pieces.size(); ++i) {
        const std::string_view behind = pieces[i + 1].letters;
        const bool isLast = i + 2 == pieces.size();
        const std::size_t end = !isLast                  ? rest.find(behind)
                                : rest.ends_with(behind) ? rest.size() - behind.size()
                                                         : std::string_view::npos;
        if (end == std::string_view::npos) {
            return {};
        }
        arguments[*pieces[i].argument] = std::string(rest.substr(0, end));
        rest.remove_prefix(end + behind.size());
    }
    return rest.empty() ? std::optional(arguments) : std::nullopt;
}

std::string english(const Fault& fault) {
    return filledIn(fault.form->text, fault.arguments);
}

std::string englishWithSubject(const Fault& fault) {
    return fault.subject.empty() ? english(fault) : fault.subject + ": " + english(fault);
}

}  // namespace ww::base
