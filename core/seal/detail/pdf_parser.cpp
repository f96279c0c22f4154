#include "core/seal/detail/pdf_parser.h"

namespace ww::seal::detail {
namespace {

constexpr int kDeepest = 32;
constexpr std::size_t kLongestNumber = 32;
constexpr std::size_t kLongestName = 127;   // ISO 32000-1, annex C
constexpr std::size_t kMostEntries = 1000;  // of a dictionary; reports have far fewer

bool isDelimiter(char sign) {
    return std::string_view("()<>[]{}/%").find(sign) != std::string_view::npos;
}

bool isDigit(char sign) {
    return sign >= '0' && sign <= '9';
}

std::optional<unsigned> hexadecimalDigit(char sign) {
    if (isDigit(sign)) {
        return static_cast<unsigned>(sign - '0');
    }
    if (sign >= 'a' && sign <= 'f') {
        return static_cast<unsigned>(sign - 'a' + 10);
    }
    if (sign >= 'A' && sign <= 'F') {
        return static_cast<unsigned>(sign - 'A' + 10);
    }
    return std::nullopt;
}

}  // namespace

bool isPdfSpace(char sign) {
    return std::string_view("\0\t\n\f\r ", 6).find(sign) != std::string_view::npos;
}

void PdfParser::skipBlanks() {
    while (m_at < m_bytes.size() && isPdfSpace(m_bytes[m_at])) {
        ++m_at;
    }
}

void PdfParser::skipSpace() {
    skipBlanks();
    while (peek() == '%') {
        while (m_at < m_bytes.size() && m_bytes[m_at] != '\n' && m_bytes[m_at] != '\r') {
            ++m_at;
        }
        skipBlanks();
    }
}

bool PdfParser::take(std::string_view signs) {
    if (m_at > m_bytes.size() || !m_bytes.substr(m_at).starts_with(signs)) {
        return false;
    }
    m_at += signs.size();
    return true;
}

bool PdfParser::takeWord(std::string_view word) {
    const std::size_t begin = m_at;
    if (take(word) && (isAtEnd() || isPdfSpace(peek()) || isDelimiter(peek()))) {
        return true;
    }
    m_at = begin;
    return false;
}

std::optional<std::int64_t> PdfParser::digits() {
    std::int64_t value = 0;
    int count = 0;
    for (; isDigit(peek()) && count < 10; ++count) {
        value = value * 10 + (peek() - '0');
        ++m_at;
    }
    return count > 0 && !isDigit(peek()) ? std::optional(value) : std::nullopt;
}

std::optional<PdfObject> PdfParser::object() {
    return objectAt(0);
}

std::optional<PdfObject> PdfParser::objectAt(int depth) {
    skipSpace();
    if (depth > kDeepest) {
        return std::nullopt;
    }
    const auto wrap = [](auto read) {
        return read ? std::optional<PdfObject>(PdfObject::Value(std::move(*read))) : std::nullopt;
    };
    switch (peek()) {
        case '/':
            if (auto text = name()) {
                return PdfObject::ofName(std::move(*text));
            }
            return std::nullopt;
        case '(':
            return wrap(literalString());
        case '[':
            return wrap(array(depth));
        case '<':
            if (m_bytes.substr(m_at).starts_with("<<")) {
                return wrap(dictionary(depth));
            }
            return wrap(hexadecimalString());
        default:
            break;
    }
    if (takeWord("null")) {
        return PdfObject();
    }
    if (takeWord("true")) {
        return PdfObject(PdfObject::Value(true));
    }
    if (takeWord("false")) {
        return PdfObject(PdfObject::Value(false));
    }
    return numberOrReference();
}

std::optional<PdfObject> PdfParser::numberOrReference() {
    const std::size_t begin = m_at;
    if (isDigit(peek())) {
        if (const auto number = digits()) {
            PdfParser ahead = *this;
            ahead.skipSpace();
            const auto generation = ahead.m_at > m_at ? ahead.digits() : std::nullopt;
            ahead.skipSpace();
            if (generation && *number < 100'000'000 && *generation < 65536 && ahead.takeWord("R")) {
                m_at = ahead.m_at;
                return PdfObject(
                    PdfObject::Value(PdfReference{static_cast<int>(*number), static_cast<int>(*generation)}));
            }
        }
        m_at = begin;
    }
    bool hasDigit = false;
    bool hasPoint = false;
    while (m_at - begin < kLongestNumber && !isAtEnd()) {
        const char sign = peek();
        if (isDigit(sign)) {
            hasDigit = true;
        } else if (sign == '.' && !hasPoint) {
            hasPoint = true;
        } else if (!((sign == '+' || sign == '-') && m_at == begin)) {
            break;
        }
        ++m_at;
    }
    const bool isWhole = isAtEnd() || isPdfSpace(peek()) || isDelimiter(peek());
    if (!hasDigit || !isWhole) {
        return std::nullopt;
    }
    return PdfObject(PdfObject::Value(PdfNumber{std::string(m_bytes.substr(begin, m_at - begin))}));
}

std::optional<std::string> PdfParser::name() {
    if (!take("/")) {
        return std::nullopt;
    }
    std::string text;
    while (!isAtEnd() && !isPdfSpace(peek()) && !isDelimiter(peek())) {
        char sign = peek();
        ++m_at;
        if (sign == '#') {
            const auto high = hexadecimalDigit(peek());
            const auto low = m_at + 1 < m_bytes.size() ? hexadecimalDigit(m_bytes[m_at + 1]) : std::nullopt;
            if (!high || !low) {
                return std::nullopt;
            }
            sign = static_cast<char>(*high * 16 + *low);
            m_at += 2;
        }
        text += sign;
        if (text.size() > kLongestName) {
            return std::nullopt;
        }
    }
    return text;
}

std::optional<PdfString> PdfParser::literalString() {
    PdfString string;
    string.begin = m_at;
    ++m_at;
    int open = 1;
    while (!isAtEnd()) {
        const char sign = m_bytes[m_at++];
        if (sign == '(') {
            ++open;
        } else if (sign == ')' && --open == 0) {
            string.end = m_at;
            return string;
        }
        if (sign != '\\') {
            string.bytes += sign;
            continue;
        }
        const char escaped = peek();
        if (isAtEnd()) {
            return std::nullopt;
        }
        ++m_at;
        constexpr std::string_view kFrom = "nrtbf";
        constexpr std::string_view kTo = "\n\r\t\b\f";
        if (const auto place = kFrom.find(escaped); place != std::string_view::npos) {
            string.bytes += kTo[place];
        } else if (escaped >= '0' && escaped <= '7') {
            unsigned value = static_cast<unsigned>(escaped - '0');
            for (int i = 0; i < 2 && peek() >= '0' && peek() <= '7'; ++i) {
                value = value * 8 + static_cast<unsigned>(m_bytes[m_at++] - '0');
            }
            string.bytes += static_cast<char>(value & 0xFFU);
        } else if (escaped == '\r') {
            take("\n");
        } else if (escaped != '\n') {
            string.bytes += escaped;
        }
    }
    return std::nullopt;
}

std::optional<PdfString> PdfParser::hexadecimalString() {
    PdfString string;
    string.isHexadecimal = true;
    string.begin = m_at;
    ++m_at;
    unsigned high = 0;
    bool hasHigh = false;
    while (!isAtEnd()) {
        const char sign = m_bytes[m_at++];
        if (sign == '>') {
            if (hasHigh) {
                string.bytes += static_cast<char>(high * 16);
            }
            string.end = m_at;
            return string;
        }
        if (isPdfSpace(sign)) {
            continue;
        }
        const auto digit = hexadecimalDigit(sign);
        if (!digit) {
            return std::nullopt;
        }
        if (hasHigh) {
            string.bytes += static_cast<char>(high * 16 + *digit);
        } else {
            high = *digit;
        }
        hasHigh = !hasHigh;
    }
    return std::nullopt;
}

std::optional<PdfArray> PdfParser::array(int depth) {
    ++m_at;
    PdfArray items;
    while (true) {
        skipSpace();
        if (take("]")) {
            return items;
        }
        auto item = objectAt(depth + 1);
        if (!item) {
            return std::nullopt;
        }
        items.push_back(std::move(*item));
    }
}

std::optional<PdfDictionary> PdfParser::dictionary(int depth) {
    m_at += 2;
    PdfDictionary dictionary;
    while (true) {
        skipSpace();
        if (take(">>")) {
            return dictionary;
        }
        const auto key = name();
        if (!key || dictionary.find(*key) != nullptr || dictionary.entries().size() >= kMostEntries) {
            return std::nullopt;
        }
        auto value = objectAt(depth + 1);
        if (!value) {
            return std::nullopt;
        }
        dictionary.set(*key, std::move(*value));
    }
}

}  // namespace ww::seal::detail
