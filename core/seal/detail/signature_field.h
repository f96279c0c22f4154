// The signature fields of a report: finding them, and their appearances. Part of preparing, signing,
// verifying.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/seal/detail/pdf_document.h"
#include "core/seal/detail/pdf_update.h"
#include "core/seal/signature_block.h"

namespace ww::seal::detail {

struct FieldFound {
    int number = 0;  ///< of the field's object
    std::string name;
    PdfDictionary dictionary;
    std::optional<int> signature;  ///< number of the object with its signature; nothing: not signed
};

/// Every signature field; nothing where the form is not as preparing writes it: fields at the top, each with
/// its one block, a signature in an object of its own.
std::optional<std::vector<FieldFound>> signatureFields(const PdfDocument& document);

/// Adds the drawing as a form of this size; gives the value of a field's AP.
PdfObject addAppearance(PdfUpdate& update, const BlockDrawing& drawing, const PaperSize& size);

/// A length as points: "12.345".
std::string inPoints(int thousandths);
/// The same back, rounded; nothing for text that is no length.
std::optional<int> thousandths(const PdfObject& number);

/// Names in the document's information dictionary under which the workbook is named.
inline constexpr const char* kWorkbookKey = "WaterwrightWorkbook";
inline constexpr const char* kJournalKey = "WaterwrightJournal";

}  // namespace ww::seal::detail
