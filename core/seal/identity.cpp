#include "core/seal/identity.h"

#include <openssl/crypto.h>
#include <openssl/err.h>

#include "core/seal/detail/certificate.h"
#include "core/seal/detail/identity_state.h"
#include "core/seal/detail/passphrase.h"
#include "core/seal/seal_messages.h"

namespace ww::seal {

base::Result<Identity> Identity::open(std::string_view keyFile, std::string_view passphrase) {
    using namespace detail;
    const auto* place = reinterpret_cast<const unsigned char*>(keyFile.data());
    const KeyContainer container(d2i_PKCS12(nullptr, &place, static_cast<long>(keyFile.size())));
    ERR_clear_error();
    if (container == nullptr) {
        return base::Fault{&kKeyFileUnreadable, {}, {}};
    }
    const Passphrase secret(passphrase);
    const bool opens = PKCS12_verify_mac(container.get(), secret.text(), secret.size()) == 1;
    ERR_clear_error();
    if (!opens) {
        return base::Fault{&kPassphraseWrong, {}, {}};
    }
    EVP_PKEY* key = nullptr;
    X509* certificate = nullptr;
    STACK_OF(X509)* others = nullptr;
    const bool isRead = PKCS12_parse(container.get(), secret.text(), &key, &certificate, &others) == 1;
    ERR_clear_error();
    if (!isRead) {
        return base::Fault{&kKeyFileCipher, {}, {}};
    }
    auto state = std::make_shared<State>();
    state->key.reset(key);
    state->certificate.reset(certificate);
    const CertificateStack owned(others);
    while (owned != nullptr && sk_X509_num(owned.get()) > 0) {
        state->chain.emplace_back(sk_X509_shift(owned.get()));
    }
    const bool isWhole =
        key != nullptr && certificate != nullptr && X509_check_private_key(certificate, key) == 1;
    ERR_clear_error();
    if (!isWhole) {
        return base::Fault{&kKeyFileIncomplete, {}, {}};
    }
    state->facts = factsOf(certificate);
    return Identity(std::move(state));
}

const CertificateFacts& Identity::facts() const {
    return m_state->facts;
}

std::optional<base::Fault> Identity::refusal(const base::Instant& now) const {
    const CertificateFacts& mine = facts();
    if (!detail::keyKind(m_state->key.get())) {
        return base::Fault{&kKeyKind, {}, {}};
    }
    if (now < mine.validFrom) {
        return base::Fault{&kKeyNotYetValid, {}, {mine.name, mine.validFrom.date()}};
    }
    if (now > mine.validUntil) {
        return base::Fault{&kKeyExpired, {}, {mine.name, mine.validUntil.date()}};
    }
    if (!detail::isForSigning(m_state->certificate.get())) {
        return base::Fault{&kKeyUsage, {}, {mine.name}};
    }
    return std::nullopt;
}

}  // namespace ww::seal
