// Proves or disproves a signed report: who signed, when, whether it was changed, whether the signer is
// trusted. Not for workbooks.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"
#include "core/seal/certificate_facts.h"
#include "core/seal/prepare_report.h"
#include "core/seal/role.h"

namespace ww::seal {

/// The root certificates that the reader trusts.
class TrustAnchors {
  public:
    TrustAnchors() = default;
    /// Reads a PEM file of one or more certificates; fails where it holds none.
    static base::Result<TrustAnchors> fromPem(std::string_view pem);
    const std::string& pem() const { return m_pem; }
    bool isEmpty() const { return m_pem.empty(); }

  private:
    std::string m_pem;
};

/// One signature and what was found about it.
struct SignatureFinding {
    std::string field;  ///< name of its field; "technician" and "supervisor" are roles
    std::optional<Role> role;
    std::optional<CertificateFacts> signer;  ///< nothing: the certificate cannot be read
    std::optional<base::Instant> time;       ///< as the signer's clock said; nothing proves it
    bool coversWholeFile = false;            ///< its range runs to the end of the file
    bool isValid = false;                    ///< what it covers is what was signed, by the certificate's key
    bool isTrusted = false;  ///< a chain leads to an anchor; never for a self-made certificate
    std::vector<base::Fault> faults;
};

struct ReportVerification {
    /// At least one signature, all valid, the last covers the whole file, and every later revision changed
    /// its own signature field alone.
    bool isIntact = false;
    std::vector<SignatureFinding> signatures;  ///< in the order in which they were made
    std::vector<Role> waiting;                 ///< roles whose fields are not signed
    std::optional<ReportBinding> binding;      ///< workbook and state that the report names
    std::vector<base::Fault> faults;           ///< of the file as a whole
};

/// Judges the bytes of a file. Anything that is no sound PDF is an answer too: not intact, with the fault.
ReportVerification verifyReport(std::string_view pdf, const TrustAnchors& anchors = {});

/// Whether some bytes are a PDF that carries at least one signature, sound or not.
bool hasSignature(std::string_view pdf);

}  // namespace ww::seal
