// Writes an incremental update behind a PDF (ISO 32000-1, 7.5.6): new and changed objects, a table, a
// trailer. The bytes that were there stay as they are.
#pragma once

#include <map>
#include <string>
#include <string_view>

#include "core/seal/detail/pdf_document.h"

namespace ww::seal::detail {

class PdfUpdate {
  public:
    /// The document must outlive the update.
    explicit PdfUpdate(const PdfDocument& before) : m_before(before), m_next(before.nextNumber()) {}

    /// The number of a new object, to be set afterwards.
    int newNumber() { return m_next++; }
    void set(int number, const PdfObject& value) { setText(number, pdfText(value)); }
    /// A new object; gives its number.
    int add(const PdfObject& value);
    /// A new stream; its length is added to the dictionary. Gives its number.
    int addStream(PdfDictionary dictionary, std::string_view data);
    void setStream(int number, PdfDictionary dictionary, std::string_view data);
    /// An object whose PDF text the caller wrote.
    void setText(int number, std::string text);

    /// The whole file: the document's bytes and the update.
    std::string written() const;
    /// Where the text of an object begins in what written() gives.
    std::size_t placeOf(int number) const;

  private:
    std::string_view opening() const;

    const PdfDocument& m_before;
    int m_next;
    std::map<int, std::string> m_objects;
};

}  // namespace ww::seal::detail
