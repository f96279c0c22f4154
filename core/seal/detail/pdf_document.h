// Finds the objects of a PDF file through its cross-reference tables (ISO 32000-1, 7.5), revision by
// revision. Reads what the report writer and incremental updates write: tables, no cross-reference streams,
// no encryption. Not for repairing: a file that is not well formed is refused.
#pragma once

#include <map>
#include <optional>
#include <set>
#include <string_view>
#include <vector>

#include "core/base/result.h"
#include "core/seal/detail/pdf_object.h"

namespace ww::seal::detail {

/// One numbered object, and the bytes it takes from its number to behind "endobj".
struct PdfIndirect {
    PdfObject value;
    std::optional<std::string_view> stream;  ///< as stored, not decoded
    std::size_t begin = 0;
    std::size_t end = 0;

    const PdfDictionary* dictionary() const { return value.as<PdfDictionary>(); }
};

struct PdfXrefEntry {
    std::size_t offset = 0;
    int generation = 0;
    bool isFree = false;
};
/// One table with its trailer: the file as written at first, or one incremental update.
struct PdfSection {
    std::size_t begin = 0;  ///< of the word xref
    std::size_t end = 0;    ///< behind %%EOF
    std::map<int, PdfXrefEntry> entries;
    PdfDictionary trailer;
};

/// A PDF file as it stands at the end of some bytes, which must outlive it.
class PdfDocument {
  public:
    /// Reads the tables. Fails where they are damaged, or of a kind that is not read here.
    static base::Result<PdfDocument> open(std::string_view bytes);

    std::string_view bytes() const { return m_bytes; }
    /// Newest first; at least one.
    const std::vector<PdfSection>& sections() const { return m_sections; }
    const PdfDictionary& trailer() const { return m_sections.front().trailer; }
    /// The newest entry of a number that is in use; null for none.
    const PdfXrefEntry* entry(int number) const;
    /// Every number in use.
    std::set<int> numbers() const;
    /// One more than the highest number.
    int nextNumber() const;

    /// The object of a number; nothing where there is none or it is damaged.
    std::optional<PdfIndirect> object(int number) const;
    std::optional<PdfIndirect> object(const std::optional<PdfReference>& reference) const;
    /// The value itself, or the object it refers to (once).
    PdfObject resolved(const PdfObject& value) const;
    /// The resolved value of a name in a dictionary; null object where there is none.
    PdfObject resolved(const PdfDictionary& dictionary, std::string_view name) const;
    /// The document's catalog; nothing where it is damaged.
    std::optional<PdfIndirect> catalog() const { return object(trailer().reference("Root")); }

    /// Whether every byte from `begin` on belongs to an object, a table, white space or a comment.
    bool isFilledFrom(std::size_t begin) const;

  private:
    explicit PdfDocument(std::string_view bytes) : m_bytes(bytes) {}
    std::optional<PdfIndirect> objectAt(int number, const PdfXrefEntry& entry) const;
    std::optional<std::string_view> streamAt(const PdfDictionary& dictionary, std::size_t& at) const;

    std::string_view m_bytes;
    std::vector<PdfSection> m_sections;
};

/// Object numbers of the pages, first page first; nothing where the tree of pages is damaged.
std::optional<std::vector<int>> pageNumbers(const PdfDocument& document);

}  // namespace ww::seal::detail
