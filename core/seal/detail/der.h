// Distinguished encoding (ITU-T X.690, DER), written and read for signatures. What is read must be exactly as
// it would be written: no second way to say the same. Not for certificates, which OpenSSL reads.
#pragma once

#include <cstdint>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>

namespace ww::seal::detail {

/// Tags of X.690 8.1.2 that signatures use.
enum DerTag : std::uint8_t {
    kDerOctetString = 0x04,
    kDerSequence = 0x30,
    kDerSet = 0x31,
    kDerContext0 = 0xA0,
};

/// Tag, length and content.
std::string der(DerTag tag, std::string_view content);
std::string der(DerTag tag, std::initializer_list<std::string_view> parts);
/// A SET OF: the elements, each encoded, in the order that DER prescribes.
std::string derSetOf(DerTag tag, std::initializer_list<std::string> elements);

/// One value read: the whole of it and the content alone.
struct DerValue {
    std::uint8_t tag = 0;
    std::string_view whole;
    std::string_view content;
};

/// Reads values one after another from bytes that outlive it.
class DerReader {
  public:
    explicit DerReader(std::string_view bytes) : m_rest(bytes) {}

    bool isAtEnd() const { return m_rest.empty(); }
    /// The next value if it has this tag; nothing, and nothing is passed, otherwise.
    std::optional<DerValue> take(DerTag tag);
    /// Goes past the next value if it is encoded exactly so.
    bool takeExactly(std::string_view encoded);
    std::string_view rest() const { return m_rest; }

  private:
    std::optional<DerValue> next() const;

    std::string_view m_rest;
};

}  // namespace ww::seal::detail
