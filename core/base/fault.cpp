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

std::string english(const Fault& fault) {
    return filledIn(fault.form->text, fault.arguments);
}

std::string englishWithSubject(const Fault& fault) {
    return fault.subject.empty() ? english(fault) : fault.subject + ": " + english(fault);
}

}  // namespace ww::base
