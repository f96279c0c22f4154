// Bytes as hexadecimal text. Not for numbers.
#pragma once

#include <cstdint>
#include <span>
#include <string>

namespace ww::base {

/// Two lower-case digits a byte, nothing between them.
std::string hex(std::span<const std::uint8_t> bytes);

}  // namespace ww::base
