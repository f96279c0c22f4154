// Characters of a file as the bytes that digests and certificates are computed from.
#pragma once

#include <cstdint>
#include <span>
#include <string_view>

namespace ww::seal::detail {

inline std::span<const std::uint8_t> bytesOf(std::string_view text) {
    return {reinterpret_cast<const std::uint8_t*>(text.data()), text.size()};
}

}  // namespace ww::seal::detail
