#include "core/seal/detail/pdf_object.h"

#include <algorithm>
#include <charconv>

#include "core/base/hex.h"
#include "core/seal/detail/byte_view.h"

namespace ww::seal::detail {

PdfDictionary::PdfDictionary() = default;
PdfDictionary::PdfDictionary(const PdfDictionary&) = default;
PdfDictionary::PdfDictionary(PdfDictionary&&) noexcept = default;
PdfDictionary& PdfDictionary::operator=(const PdfDictionary&) = default;
PdfDictionary& PdfDictionary::operator=(PdfDictionary&&) noexcept = default;
PdfDictionary::~PdfDictionary() = default;

const PdfObject* PdfDictionary::find(std::string_view name) const {
    for (const PdfEntry& entry : m_entries) {
        if (entry.name == name) {
            return &entry.value;
        }
    }
    return nullptr;
}

void PdfDictionary::set(std::string_view name, PdfObject value) {
    for (PdfEntry& entry : m_entries) {
        if (entry.name == name) {
            entry.value = std::move(value);
            return;
        }
    }
    m_entries.push_back({std::string(name), std::move(value)});
}

void PdfDictionary::erase(std::string_view name) {
    std::erase_if(m_entries, [&](const PdfEntry& entry) { return entry.name == name; });
}

std::optional<std::int64_t> PdfDictionary::number(std::string_view name) const {
    const PdfObject* found = find(name);
    return found != nullptr ? found->wholeNumber() : std::nullopt;
}

std::optional<std::string> PdfDictionary::name(std::string_view key) const {
    const PdfObject* found = find(key);
    const PdfName* name = found != nullptr ? found->as<PdfName>() : nullptr;
    return name != nullptr ? std::optional(name->text) : std::nullopt;
}

std::optional<PdfReference> PdfDictionary::reference(std::string_view name) const {
    const PdfObject* found = find(name);
    const PdfReference* reference = found != nullptr ? found->as<PdfReference>() : nullptr;
    return reference != nullptr ? std::optional(*reference) : std::nullopt;
}

bool PdfDictionary::operator==(const PdfDictionary& other) const {
    return m_entries.size() == other.m_entries.size() &&
           std::all_of(m_entries.begin(), m_entries.end(), [&other](const PdfEntry& entry) {
               const PdfObject* its = other.find(entry.name);
               return its != nullptr && *its == entry.value;
           });
}

std::optional<std::int64_t> PdfObject::wholeNumber() const {
    const PdfNumber* number = as<PdfNumber>();
    if (number == nullptr || number->text.size() > 15) {
        return std::nullopt;
    }
    const char* begin = number->text.data() + (number->text.starts_with('+') ? 1 : 0);
    const char* end = number->text.data() + number->text.size();
    std::int64_t value = 0;
    const auto read = std::from_chars(begin, end, value);
    return read.ec == std::errc() && read.ptr == end ? std::optional(value) : std::nullopt;
}

namespace {

void writeName(std::string& out, std::string_view name) {
    constexpr std::string_view kPlain = "+-_.:*!";
    out += '/';
    for (const char sign : name) {
        const bool isPlain = (sign >= '0' && sign <= '9') || (sign >= 'A' && sign <= 'Z') ||
                             (sign >= 'a' && sign <= 'z') || kPlain.find(sign) != std::string_view::npos;
        if (isPlain) {
            out += sign;
        } else {
            out += '#' + base::hex(bytesOf(std::string_view(&sign, 1)));
        }
    }
}

void write(std::string& out, const PdfObject& object);

struct Writer {
    std::string& out;
    void operator()(std::monostate) const { out += "null"; }
    void operator()(bool value) const { out += value ? "true" : "false"; }
    void operator()(const PdfNumber& value) const { out += value.text; }
    void operator()(const PdfName& value) const { writeName(out, value.text); }
    void operator()(const PdfString& value) const { out += '<' + base::hex(bytesOf(value.bytes)) + '>'; }
    void operator()(const PdfReference& value) const {
        out += std::to_string(value.number) + " " + std::to_string(value.generation) + " R";
    }
    void operator()(const PdfArray& value) const {
        out += '[';
        for (std::size_t i = 0; i < value.size(); ++i) {
            out += i > 0 ? " " : "";
            write(out, value[i]);
        }
        out += ']';
    }
    void operator()(const PdfDictionary& value) const {
        out += "<<\n";
        for (const PdfEntry& entry : value.entries()) {
            writeName(out, entry.name);
            out += ' ';
            write(out, entry.value);
            out += '\n';
        }
        out += ">>";
    }
};

void write(std::string& out, const PdfObject& object) {
    std::visit(Writer{out}, object.value());
}

/// The code points of UTF-8; U+FFFD for bytes that are none.
std::vector<char32_t> codePoints(std::string_view utf8) {
    std::vector<char32_t> points;
    std::size_t at = 0;
    while (at < utf8.size()) {
        const auto lead = static_cast<unsigned char>(utf8[at]);
        const std::size_t length = lead < 0x80U   ? 1
                                   : lead < 0xC2U ? 0
                                   : lead < 0xE0U ? 2
                                   : lead < 0xF0U ? 3
                                                  : 4;
        char32_t point = length <= 1 ? lead : lead & (0xFFU >> (length + 1));
        bool isGood = length > 0 && lead < 0xF5U && at + length <= utf8.size();
        for (std::size_t i = 1; isGood && i < length; ++i) {
            const auto next = static_cast<unsigned char>(utf8[at + i]);
            isGood = (next & 0xC0U) == 0x80U;
            point = (point << 6U) | (next & 0x3FU);
        }
        const bool isSurrogate = point >= 0xD800 && point < 0xE000;
        isGood = isGood && !isSurrogate && point <= 0x10FFFF;
        points.push_back(isGood ? point : U'\uFFFD');
        at += isGood ? length : 1;
    }
    return points;
}

void addUtf16(std::string& out, char32_t point) {
    const auto unit = [&out](unsigned value) {
        out += static_cast<char>(value >> 8U);
        out += static_cast<char>(value & 0xFFU);
    };
    if (point >= 0x10000) {
        unit(0xD800U + static_cast<unsigned>((point - 0x10000U) >> 10U));
        unit(0xDC00U + static_cast<unsigned>((point - 0x10000U) & 0x3FFU));
    } else {
        unit(static_cast<unsigned>(point));
    }
}

void addUtf8(std::string& out, char32_t point) {
    const auto tail = [&out, point](unsigned shift) {
        out += static_cast<char>(0x80U | ((point >> shift) & 0x3FU));
    };
    if (point < 0x80) {
        out += static_cast<char>(point);
    } else if (point < 0x800) {
        out += static_cast<char>(0xC0U | (point >> 6U));
        tail(0);
    } else if (point < 0x10000) {
        out += static_cast<char>(0xE0U | (point >> 12U));
        tail(6);
        tail(0);
    } else {
        out += static_cast<char>(0xF0U | (point >> 18U));
        tail(12);
        tail(6);
        tail(0);
    }
}

}  // namespace

std::string pdfText(const PdfObject& object) {
    std::string out;
    write(out, object);
    return out;
}

std::string pdfTextString(std::string_view utf8) {
    const bool isAscii =
        std::all_of(utf8.begin(), utf8.end(), [](char sign) { return sign >= ' ' && sign <= '~'; });
    if (isAscii) {
        return std::string(utf8);
    }
    std::string out = "\xFE\xFF";
    for (const char32_t point : codePoints(utf8)) {
        addUtf16(out, point);
    }
    return out;
}

std::string utf8OfTextString(std::string_view bytes) {
    std::string out;
    if (!bytes.starts_with("\xFE\xFF")) {
        // Between the ASCII signs and the rest PDFDocEncoding is close enough to Latin-1 for a name.
        for (const char sign : bytes) {
            addUtf8(out, static_cast<unsigned char>(sign));
        }
        return out;
    }
    const auto unit = [bytes](std::size_t at) {
        return static_cast<char32_t>((static_cast<unsigned char>(bytes[at]) << 8U) |
                                     static_cast<unsigned char>(bytes[at + 1]));
    };
    for (std::size_t at = 2; at + 1 < bytes.size(); at += 2) {
        char32_t point = unit(at);
        const bool isHigh = point >= 0xD800 && point < 0xDC00;
        const bool hasLow = at + 3 < bytes.size() && unit(at + 2) >= 0xDC00 && unit(at + 2) < 0xE000;
        if (isHigh && hasLow) {
            point = 0x10000 + ((point - 0xD800) << 10U) + (unit(at + 2) - 0xDC00);
            at += 2;
        } else if (point >= 0xD800 && point < 0xE000) {
            point = U'\uFFFD';
        }
        addUtf8(out, point);
    }
    return out;
}

void collectReferences(const PdfObject& object, std::vector<PdfReference>& out) {
    if (const auto* reference = object.as<PdfReference>()) {
        out.push_back(*reference);
    } else if (const auto* array = object.as<PdfArray>()) {
        for (const PdfObject& item : *array) {
            collectReferences(item, out);
        }
    } else if (const auto* dictionary = object.as<PdfDictionary>()) {
        for (const PdfEntry& entry : dictionary->entries()) {
            collectReferences(entry.value, out);
        }
    }
}

}  // namespace ww::seal::detail
