// A key with a certificate that vouches for itself.
#include <openssl/err.h>
#include <openssl/rand.h>
#include <openssl/rsa.h>
#include <openssl/x509v3.h>

#include <algorithm>

#include "core/seal/detail/openssl_handles.h"
#include "core/seal/detail/passphrase.h"
#include "core/seal/identity.h"
#include "core/seal/seal_messages.h"

namespace ww::seal {
namespace {

constexpr unsigned kBits = 3072;      // 128 bits of strength: NIST SP 800-57 part 1, table 2
constexpr int kIterations = 100'000;  // of the passphrase's hash
constexpr std::int64_t kHour = 3600;
constexpr std::int64_t kDay = 24 * kHour;

bool addName(X509_NAME* name, const char* field, const std::string& text) {
    return text.empty() || X509_NAME_add_entry_by_txt(name, field, MBSTRING_UTF8,
                                                      reinterpret_cast<const unsigned char*>(text.data()),
                                                      static_cast<int>(text.size()), -1, 0) == 1;
}

bool addExtension(X509* certificate, int kind, const char* value) {
    X509V3_CTX context;
    X509V3_set_ctx(&context, certificate, certificate, nullptr, nullptr, 0);
    const detail::Extension extension(X509V3_EXT_conf_nid(nullptr, &context, kind, value));
    return extension != nullptr && X509_add_ext(certificate, extension.get(), -1) == 1;
}

bool setSerial(X509* certificate) {
    unsigned char random[16];
    if (RAND_bytes(random, sizeof random) != 1) {
        return false;
    }
    random[0] &= 0x7FU;  // positive: RFC 5280, 4.1.2.2
    random[0] |= 0x01U;
    BIGNUM* number = BN_bin2bn(random, sizeof random, nullptr);
    const bool isSet =
        number != nullptr && BN_to_ASN1_INTEGER(number, X509_get_serialNumber(certificate)) != nullptr;
    BN_free(number);
    return isSet;
}

bool setTimes(X509* certificate, const base::Instant& now, int years) {
    constexpr std::int64_t kDaysPerYear = 365;
    // An hour back: the clock of whoever checks may be behind.
    return ASN1_TIME_set(X509_getm_notBefore(certificate), now.seconds - kHour) != nullptr &&
           ASN1_TIME_set(X509_getm_notAfter(certificate), now.seconds + years * kDaysPerYear * kDay) !=
               nullptr;
}

detail::Certificate certificateOf(EVP_PKEY* key, const SelfMade& who, const base::Instant& now) {
    detail::Certificate certificate(X509_new());
    X509_NAME* name = X509_get_subject_name(certificate.get());
    const bool isGood =
        X509_set_version(certificate.get(), X509_VERSION_3) == 1 && setSerial(certificate.get()) &&
        setTimes(certificate.get(), now, std::clamp(who.years, 1, 20)) && addName(name, "CN", who.name) &&
        addName(name, "O", who.organization) && X509_set_issuer_name(certificate.get(), name) == 1 &&
        X509_set_pubkey(certificate.get(), key) == 1 &&
        addExtension(certificate.get(), NID_basic_constraints, "critical,CA:FALSE") &&
        addExtension(certificate.get(), NID_key_usage, "critical,digitalSignature,nonRepudiation") &&
        addExtension(certificate.get(), NID_subject_key_identifier, "hash") &&
        X509_sign(certificate.get(), key, EVP_sha256()) > 0;
    return isGood ? std::move(certificate) : nullptr;
}

}  // namespace

base::Result<std::string> makeSelfMade(const SelfMade& who, std::string_view passphrase,
                                       const base::Instant& now) {
    constexpr std::size_t kLongestName = 64;  // RFC 5280, appendix A.1: ub-common-name
    if (who.name.empty() || who.name.size() > kLongestName || who.organization.size() > kLongestName) {
        return base::Fault{&kSignerUnnamed, {}, {}};
    }
    if (passphrase.size() < static_cast<std::size_t>(kShortestPassphrase) ||
        passphrase.find('\0') != std::string_view::npos) {
        return base::Fault{&kPassphraseShort, {}, {std::to_string(kShortestPassphrase)}};
    }
    const detail::Passphrase secret(passphrase);
    const detail::Key key(EVP_RSA_gen(kBits));
    const detail::Certificate certificate = key != nullptr ? certificateOf(key.get(), who, now) : nullptr;
    const detail::KeyContainer container(
        certificate != nullptr ? PKCS12_create(secret.text(), who.name.c_str(), key.get(), certificate.get(),
                                               nullptr, 0, 0, kIterations, kIterations, 0)
                               : nullptr);
    unsigned char* der = nullptr;
    const int size = container != nullptr ? i2d_PKCS12(container.get(), &der) : -1;
    ERR_clear_error();
    if (size <= 0) {
        return base::Fault{&kSigningFailed, {}, {"no key could be made for " + who.name}};
    }
    std::string bytes(reinterpret_cast<const char*>(der), static_cast<std::size_t>(size));
    OPENSSL_free(der);
    return bytes;
}

}  // namespace ww::seal
