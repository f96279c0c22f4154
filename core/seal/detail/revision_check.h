// What an incremental update changed. Part of verifying.
#pragma once

#include <optional>

#include "core/base/fault.h"
#include "core/seal/detail/pdf_document.h"

namespace ww::seal::detail {

/// The fault of a later revision that does more than sign one field: `before` is the file up to the end of a
/// signature's range, `after` the file up to the end of the next, which signs the field of this number.
/// Allowed are the field's own signature and appearance, new objects that nothing referred to before, and a
/// store of validation data (DSS of ETSI EN 319 142-1) in the catalog.
std::optional<base::Fault> changesBeside(const PdfDocument& before, const PdfDocument& after, int field);

}  // namespace ww::seal::detail
