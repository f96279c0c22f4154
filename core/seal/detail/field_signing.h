// Puts a signature into one field of a report, as an incremental update. Asks nothing: whether the key may
// sign and the field is free is settled before (sign_report.h).
#pragma once

#include <optional>
#include <string>

#include "core/base/result.h"
#include "core/seal/detail/signature_field.h"
#include "core/seal/identity.h"
#include "core/seal/sign_report.h"

namespace ww::seal::detail {

/// The size of a field's block; nothing where its rectangle is damaged.
std::optional<PaperSize> fieldSize(const PdfDictionary& field);

/// The document's file with `update` and the signature behind it; the first signature certifies the report.
base::Result<std::string> signField(const PdfDocument& document, PdfUpdate& update, const FieldFound& field,
                                    const Identity& identity, const Signing& signing, bool isFirst);

}  // namespace ww::seal::detail
