#include "core/base/id.h"

#include <random>

#include "core/base/hex.h"

namespace ww::base {

namespace {

int hexValue(char c) {
    if (c >= '0' && c <= '9') {
        return c - '0';
    }
    if (c >= 'a' && c <= 'f') {
        return c - 'a' + 10;
    }
    return -1;
}

}  // namespace

std::string Id::text() const {
    return hex(bytes);
}

std::optional<Id> Id::fromText(std::string_view text) {
    if (text.size() != 32) {
        return std::nullopt;
    }
    Id id;
    for (std::size_t i = 0; i < 16; ++i) {
        const int high = hexValue(text[2 * i]);
        const int low = hexValue(text[2 * i + 1]);
        if (high < 0 || low < 0) {
            return std::nullopt;
        }
        id.bytes[i] = static_cast<std::uint8_t>(high * 16 + low);
    }
    return id;
}

Id RandomIds::next() {
    static thread_local std::random_device device;
    Id id;
    for (std::size_t i = 0; i < 16; i += 4) {
        const std::uint32_t word = device();
        for (std::size_t k = 0; k < 4; ++k) {
            id.bytes[i + k] = static_cast<std::uint8_t>(word >> (8 * k));
        }
    }
    id.bytes[6] = static_cast<std::uint8_t>((id.bytes[6] & 0x0F) | 0x40);
    id.bytes[8] = static_cast<std::uint8_t>((id.bytes[8] & 0x3F) | 0x80);
    return id;
}

}  // namespace ww::base
