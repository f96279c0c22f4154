// Makes a finished PDF ready for signatures, once and before the first: fields for all signers with their
// waiting blocks, the record as attached files, and PDF/A-3b in its metadata. Not for signing
// (sign_report.h).
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"
#include "core/seal/signature_block.h"

namespace ww::seal {

/// A field for one signer and the block that stands there until it is signed.
struct SignatureField {
    Role role{};
    PaperPlace place;
    BlockDrawing waiting;
};

/// A file carried inside the report (PDF/A-3: an associated file).
struct Attachment {
    std::string name;         ///< of the file, "readings.csv"
    std::string mediaType;    ///< "text/csv"
    std::string description;  ///< one sentence for viewers
    std::string bytes;
};

/// Which workbook the report shows, and in which state.
struct ReportBinding {
    std::string workbookId;     ///< 32 hexadecimal digits
    std::string journalDigest;  ///< of the newest record then, 64 hexadecimal digits
    bool operator==(const ReportBinding&) const = default;
};

struct Preparation {
    std::vector<SignatureField> fields;  ///< one a role at most; none: nobody is to sign
    std::vector<Attachment> attachments;
    ReportBinding binding;
    base::Instant made;  ///< date of the attachments
};

/// The PDF with an incremental update behind it. Equal input gives equal bytes. Fails where the PDF is
/// damaged, has fields already, or has no such page.
base::Result<std::string> prepareReport(std::string_view pdf, const Preparation& preparation);

}  // namespace ww::seal
