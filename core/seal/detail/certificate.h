// Reading certificates (RFC 5280). Part of identities and verifying.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/seal/certificate_facts.h"
#include "core/seal/detail/openssl_handles.h"

namespace ww::seal::detail {

/// The certificate that the bytes are, all of them; null where they are none, or not as DER would write it.
Certificate readCertificate(std::string_view der);
std::string derOf(X509* certificate);
/// Issuer and serial number as a signature names its certificate: SEQUENCE { Name, INTEGER } in DER.
std::string issuerAndSerial(X509* certificate);
CertificateFacts factsOf(X509* certificate);
bool isSelfMade(X509* certificate);
/// Whether the certificate may be used to sign documents: RFC 5280, 4.2.1.3; without the extension it may.
bool isForSigning(X509* certificate);

enum class KeyKind { Rsa, Ec };
/// Which kind of key it is; nothing where it is another kind or too short to be relied on (NIST SP 800-57).
std::optional<KeyKind> keyKind(EVP_PKEY* key);

/// Whether a chain leads from a certificate through `others` to one of `anchors`, valid at that moment. A
/// certificate that names itself as issuer is never trusted, whatever the anchors.
bool isTrusted(X509* certificate, const std::vector<Certificate>& others,
               const std::vector<Certificate>& anchors, const base::Instant& when);

/// The certificates of a PEM file; empty where there are none.
std::vector<Certificate> readPem(std::string_view pem);

}  // namespace ww::seal::detail
