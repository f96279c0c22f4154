// SHA-256 digests. Not for passwords.
#pragma once

#include <array>
#include <cstdint>
#include <memory>
#include <span>
#include <string>
#include <string_view>

namespace ww::base {

/// A SHA-256 value (FIPS 180-4).
struct Digest {
    std::array<std::uint8_t, 32> bytes{};

    bool operator==(const Digest&) const = default;
    /// 64 lower-case hexadecimal digits.
    std::string text() const;
};

/// SHA-256 of pieces fed one after another. Numbers and texts are fed with their length, so that two different
/// sequences of pieces never give the same input.
class Digester {
  public:
    Digester();
    ~Digester();
    Digester(const Digester&) = delete;
    Digester& operator=(const Digester&) = delete;

    /// Each feeds one piece.
    void add(std::span<const std::uint8_t> bytes);
    void addText(std::string_view text);
    void addNumber(std::int64_t number);
    /// The digest of everything fed so far; the digester must not be used afterwards.
    Digest finish();

  private:
    struct State;
    std::unique_ptr<State> m_state;
};

/// SHA-256 of the bytes alone, with no length put in front: what other programs compute for a file.
Digest sha256(std::span<const std::uint8_t> bytes);

}  // namespace ww::base
