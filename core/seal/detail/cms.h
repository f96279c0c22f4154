// Detached signatures as PDF carries them: CMS SignedData (RFC 5652) with the attributes of CAdES (ETSI EN
// 319 122-1: content type, message digest, signing certificate) over a SHA-256 digest. Not for PDF.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/digest.h"
#include "core/base/fault.h"
#include "core/seal/detail/certificate.h"
#include "core/seal/identity.h"

namespace ww::seal::detail {

/// The signature over a digest, in DER; it names every certificate that it carries. Nothing where OpenSSL
/// refuses the key.
std::optional<std::string> makeCms(const Identity::State& identity, const base::Digest& digest);

/// What a signature proved.
struct CmsReading {
    std::optional<base::Fault> fault;  ///< why it proves nothing
    Certificate signer;                ///< null where it could not be read
    std::vector<Certificate> others;
};
/// Checks a signature against the digest of what it should cover. Every bit of `der` counts: it must be
/// written exactly as DER prescribes, and must carry nothing that the signature does not cover.
CmsReading checkCms(std::string_view der, const base::Digest& digest);

}  // namespace ww::seal::detail
