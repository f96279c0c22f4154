// 128-bit identity of a record: made on any laptop without asking another, never reused.
// Not an address and not a position: order comes from fields of the record.
#pragma once

#include <array>
#include <bit>
#include <compare>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>

namespace ww::base {

struct Id {
    std::array<std::uint8_t, 16> bytes{};

    auto operator<=>(const Id&) const = default;
    /// Two words at once: ids are compared in the innermost loops.
    bool operator==(const Id& other) const {
        const auto mine = words();
        const auto its = other.words();
        return mine[0] == its[0] && mine[1] == its[1];
    }
    /// The bytes as two numbers of this machine: for comparing and hashing, never for files.
    std::array<std::uint64_t, 2> words() const { return std::bit_cast<std::array<std::uint64_t, 2>>(bytes); }
    /// All zero: no record has it.
    bool isNull() const { return *this == Id{}; }
    /// 32 lower-case hexadecimal digits.
    std::string text() const;
    /// The id written by text(); nothing if the text is anything else.
    static std::optional<Id> fromText(std::string_view text);
};

/// Where new ids come from. Programs use RandomIds; tests use CountingIds of tests/support.
class IdSource {
  public:
    virtual ~IdSource() = default;
    /// One that was never given before.
    virtual Id next() = 0;
};

/// Ids from the operating system's random source (RFC 9562 version 4 layout).
class RandomIds : public IdSource {
  public:
    Id next() override;
};

}  // namespace ww::base

template <>
struct std::hash<ww::base::Id> {
    std::size_t operator()(const ww::base::Id& id) const noexcept {
        // The bytes are random already; folding them is enough.
        const auto words = id.words();
        return static_cast<std::size_t>(words[0] ^ (words[1] * 0x9E3779B97F4A7C15ULL));
    }
};
