// Signs one field of a prepared report. Not for drawing its block nor for writing files.
#pragma once

#include <string>
#include <string_view>

#include "core/base/result.h"
#include "core/seal/identity.h"
#include "core/seal/signature_block.h"

namespace ww::seal {

struct Signing {
    Role role{};
    base::Instant time;    ///< by this computer's clock, with its zone
    BlockDrawing drawing;  ///< of signedText(), in the size of blockSize()
};

/// The size of a role's block in a prepared report; fails where the report has no field for it.
base::Result<PaperSize> blockSize(std::string_view pdf, Role role);

/// The PDF with an incremental update behind it that changes the role's own field and nothing else: a
/// detached CMS signature over the whole file (SubFilter ETSI.CAdES.detached, SHA-256). The first signature
/// certifies the report so that only further signatures may follow (DocMDP 2). Fails, with the report as it
/// was, where the key may not sign at that moment, the field is missing or signed, or the report was changed
/// after a signature.
base::Result<std::string> signReport(std::string_view pdf, const Identity& identity, const Signing& signing);

}  // namespace ww::seal
