// What an opened key holds. Part of identities and signing.
#pragma once

#include <vector>

#include "core/seal/detail/openssl_handles.h"
#include "core/seal/identity.h"

namespace ww::seal {

struct Identity::State {
    detail::Key key;
    detail::Certificate certificate;
    std::vector<detail::Certificate> chain;  ///< further certificates of the file
    CertificateFacts facts;
};

}  // namespace ww::seal
