// The values a PDF file is made of (ISO 32000-1, 7.3), as far as signing and verifying look at them.
// Not for page content, fonts or images.
#pragma once

#include <compare>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace ww::seal::detail {

struct PdfReference {
    int number = 0;
    int generation = 0;
    auto operator<=>(const PdfReference&) const = default;
};
/// A number with its digits as written, so that writing it again changes nothing.
struct PdfNumber {
    std::string text;
    bool operator==(const PdfNumber&) const = default;
};
struct PdfName {
    std::string text;  ///< without the slash, #xx resolved
    bool operator==(const PdfName&) const = default;
};
/// A text or byte string, and where its token stood in the file: from its opening to behind its closing sign.
struct PdfString {
    std::string bytes;
    bool isHexadecimal = false;
    std::size_t begin = 0;
    std::size_t end = 0;
    /// By value; not by how or where it was written.
    bool operator==(const PdfString& other) const { return bytes == other.bytes; }
};

class PdfObject;
struct PdfEntry;
using PdfArray = std::vector<PdfObject>;

/// Names with values, in the order written. No name stands twice.
class PdfDictionary {
  public:
    PdfDictionary();
    PdfDictionary(const PdfDictionary&);
    PdfDictionary(PdfDictionary&&) noexcept;
    PdfDictionary& operator=(const PdfDictionary&);
    PdfDictionary& operator=(PdfDictionary&&) noexcept;
    ~PdfDictionary();

    /// The value of a name; null where there is none.
    const PdfObject* find(std::string_view name) const;
    void set(std::string_view name, PdfObject value);
    void erase(std::string_view name);
    const std::vector<PdfEntry>& entries() const { return m_entries; }

    /// The whole number, name or reference behind a name; nothing where it is missing or something else.
    std::optional<std::int64_t> number(std::string_view name) const;
    std::optional<std::string> name(std::string_view key) const;
    std::optional<PdfReference> reference(std::string_view name) const;

    /// By content; the order of names does not count.
    bool operator==(const PdfDictionary& other) const;

  private:
    std::vector<PdfEntry> m_entries;
};

class PdfObject {
  public:
    using Value = std::variant<std::monostate, bool, PdfNumber, PdfName, PdfString, PdfArray, PdfDictionary,
                               PdfReference>;
    PdfObject() = default;
    PdfObject(Value value) : m_value(std::move(value)) {}
    static PdfObject ofNumber(std::int64_t number) { return Value(PdfNumber{std::to_string(number)}); }
    static PdfObject ofName(std::string name) { return Value(PdfName{std::move(name)}); }
    static PdfObject ofReference(int number) { return Value(PdfReference{number, 0}); }
    static PdfObject ofString(std::string bytes) { return Value(PdfString{std::move(bytes)}); }

    /// The value of one kind; null where it is of another.
    template <class T>
    const T* as() const {
        return std::get_if<T>(&m_value);
    }
    template <class T>
    T* as() {
        return std::get_if<T>(&m_value);
    }
    bool isNull() const { return std::holds_alternative<std::monostate>(m_value); }
    /// A whole number of at most 15 digits.
    std::optional<std::int64_t> wholeNumber() const;

    const Value& value() const { return m_value; }
    bool operator==(const PdfObject& other) const { return m_value == other.m_value; }

  private:
    Value m_value;
};

struct PdfEntry {
    std::string name;
    PdfObject value;
};

/// The object as PDF text. Strings come out as hexadecimal.
std::string pdfText(const PdfObject& object);

/// A text string (7.9.2.2): PDFDocEncoding where it is ASCII, UTF-16BE with its mark otherwise. Bytes that
/// are not UTF-8 become U+FFFD.
std::string pdfTextString(std::string_view utf8);
/// The UTF-8 of such a string.
std::string utf8OfTextString(std::string_view bytes);

/// Adds every reference inside an object, at any depth.
void collectReferences(const PdfObject& object, std::vector<PdfReference>& out);

}  // namespace ww::seal::detail
