// What a certificate says of its holder, for people to read. Not for deciding trust (verify_report.h).
#pragma once

#include <string>

#include "core/base/instant.h"

namespace ww::seal {

struct CertificateFacts {
    std::string name;          ///< of the holder: common name, else organization; control signs replaced
    std::string organization;  ///< may be empty
    std::string issuer;        ///< name of who issued it
    base::Instant validFrom;
    base::Instant validUntil;
    bool isSelfMade = false;  ///< issuer and holder are the same: nobody else vouches for the name
    std::string fingerprint;  ///< SHA-256 of the certificate, hexadecimal, to be compared by telephone
};

}  // namespace ww::seal
