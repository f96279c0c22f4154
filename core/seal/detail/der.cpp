#include "core/seal/detail/der.h"

#include <algorithm>
#include <vector>

namespace ww::seal::detail {

std::string der(DerTag tag, std::string_view content) {
    std::string out(1, static_cast<char>(tag));
    if (content.size() < 0x80U) {
        out += static_cast<char>(content.size());
    } else {
        std::string length;
        for (std::size_t rest = content.size(); rest > 0; rest >>= 8U) {
            length.insert(length.begin(), static_cast<char>(rest & 0xFFU));
        }
        out += static_cast<char>(0x80U | length.size());
        out += length;
    }
    return out.append(content);
}

std::string der(DerTag tag, std::initializer_list<std::string_view> parts) {
    std::string content;
    for (const std::string_view part : parts) {
        content += part;
    }
    return der(tag, content);
}

std::string derSetOf(DerTag tag, std::initializer_list<std::string> elements) {
    std::vector<std::string> sorted(elements);
    // As bytes without a sign: std::string compares so.
    std::sort(sorted.begin(), sorted.end());
    std::string content;
    for (const std::string& element : sorted) {
        content += element;
    }
    return der(tag, content);
}

std::optional<DerValue> DerReader::next() const {
    if (m_rest.size() < 2) {
        return std::nullopt;
    }
    std::size_t header = 2;
    std::size_t length = static_cast<unsigned char>(m_rest[1]);
    if (length >= 0x80U) {
        const std::size_t digits = length - 0x80U;
        if (digits < 1 || digits > 4 || m_rest.size() < 2 + digits) {
            return std::nullopt;
        }
        length = 0;
        for (std::size_t i = 0; i < digits; ++i) {
            length = (length << 8U) | static_cast<unsigned char>(m_rest[2 + i]);
        }
        header += digits;
        const bool isShortest = length >= 0x80U && (digits == 1 || (length >> (8U * (digits - 1))) != 0);
        if (!isShortest) {
            return std::nullopt;
        }
    }
    if (length > m_rest.size() - header) {
        return std::nullopt;
    }
    return DerValue{static_cast<std::uint8_t>(m_rest[0]), m_rest.substr(0, header + length),
                    m_rest.substr(header, length)};
}

std::optional<DerValue> DerReader::take(DerTag tag) {
    const auto value = next();
    if (!value || value->tag != tag) {
        return std::nullopt;
    }
    m_rest.remove_prefix(value->whole.size());
    return value;
}

bool DerReader::takeExactly(std::string_view encoded) {
    if (!m_rest.starts_with(encoded)) {
        return false;
    }
    m_rest.remove_prefix(encoded.size());
    return true;
}

}  // namespace ww::seal::detail
