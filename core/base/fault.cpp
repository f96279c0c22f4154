#include "core/base/fault.h"

namespace ww::base {

std::string filledIn(std::string_view text, const std::vector<std::string>& arguments) {
    std::string out;
    out.reserve(text.size() + 32);
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool isPlace = text[i] == '{' && i + 2 < text.size() && text[i + 1] >= '1' && text[i + 1] <= '9' &&
                             text[i + 2] == '}';
        const std::size_t index = isPlace ? static_cast<std::size_t>(text[i + 1] - '1') : 0;
        if (isPlace && index < arguments.size()) {
            out += arguments[index];
            i += 2;
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
