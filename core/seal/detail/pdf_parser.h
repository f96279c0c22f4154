// Reads PDF objects from bytes (ISO 32000-1, 7.2 and 7.3), strictly: what can be read two ways is refused.
// Not for finding objects in a file (pdf_document.h).
#pragma once

#include <optional>
#include <string_view>

#include "core/seal/detail/pdf_object.h"

namespace ww::seal::detail {

bool isPdfSpace(char sign);

/// Reads forward from a place in the bytes, which must outlive it. Every function gives nothing, and leaves
/// the place anywhere, where the bytes are not what it reads.
class PdfParser {
  public:
    PdfParser(std::string_view bytes, std::size_t at) : m_bytes(bytes), m_at(at) {}

    std::size_t at() const { return m_at; }
    bool isAtEnd() const { return m_at >= m_bytes.size(); }
    /// Goes past white space and comments.
    void skipSpace();
    /// Goes past white space alone.
    void skipBlanks();
    /// Goes past exactly these signs, if they come next.
    bool take(std::string_view signs);
    /// Goes past a keyword that ends where a word can end.
    bool takeWord(std::string_view word);
    /// One object; arrays and dictionaries at most 32 deep. A name twice in a dictionary is refused.
    std::optional<PdfObject> object();
    /// Digits only, at most 10 of them.
    std::optional<std::int64_t> digits();

  private:
    std::optional<PdfObject> objectAt(int depth);
    std::optional<PdfObject> numberOrReference();
    std::optional<std::string> name();
    std::optional<PdfString> literalString();
    std::optional<PdfString> hexadecimalString();
    std::optional<PdfArray> array(int depth);
    std::optional<PdfDictionary> dictionary(int depth);
    char peek() const { return m_at < m_bytes.size() ? m_bytes[m_at] : '\0'; }

    std::string_view m_bytes;
    std::size_t m_at;
};

}  // namespace ww::seal::detail
