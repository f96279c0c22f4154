#include "core/seal/detail/certificate.h"

#include <openssl/err.h>
#include <openssl/pem.h>
#include <openssl/x509v3.h>

#include <algorithm>

#include "core/base/digest.h"
#include "core/seal/detail/byte_view.h"
#include "core/seal/detail/der.h"

namespace ww::seal::detail {
namespace {

/// The text with every control sign replaced, so that a name cannot move a terminal's cursor.
std::string printable(std::string text) {
    std::replace_if(
        text.begin(), text.end(),
        [](char sign) { return static_cast<unsigned char>(sign) < 0x20U || sign == 0x7F; }, '?');
    return text;
}

std::string nameField(const X509_NAME* name, int field) {
    const int place = X509_NAME_get_index_by_NID(name, field, -1);
    if (place < 0) {
        return {};
    }
    unsigned char* utf8 = nullptr;
    const int size = ASN1_STRING_to_UTF8(&utf8, X509_NAME_ENTRY_get_data(X509_NAME_get_entry(name, place)));
    if (size < 0) {
        ERR_clear_error();
        return {};
    }
    std::string text(reinterpret_cast<const char*>(utf8), static_cast<std::size_t>(size));
    OPENSSL_free(utf8);
    return printable(std::move(text));
}

std::string displayName(const X509_NAME* name) {
    const std::string common = nameField(name, NID_commonName);
    return common.empty() ? nameField(name, NID_organizationName) : common;
}

base::Instant instantOf(const ASN1_TIME* time) {
    tm parts{};
    if (ASN1_TIME_to_tm(time, &parts) != 1) {
        ERR_clear_error();
        return base::Instant{0, std::int16_t{0}};
    }
    return base::Instant{timegm(&parts), std::int16_t{0}};
}

/// What an i2d function of OpenSSL writes.
template <class Object>
std::string written(const Object* object, int (*write)(const Object*, unsigned char**)) {
    const int size = write(object, nullptr);
    std::string out(size > 0 ? static_cast<std::size_t>(size) : 0, '\0');
    auto* place = reinterpret_cast<unsigned char*>(out.data());
    if (size > 0) {
        write(object, &place);
    }
    return out;
}

}  // namespace

Certificate readCertificate(std::string_view der) {
    const auto* place = reinterpret_cast<const unsigned char*>(der.data());
    Certificate certificate(d2i_X509(nullptr, &place, static_cast<long>(der.size())));
    ERR_clear_error();
    if (certificate == nullptr || derOf(certificate.get()) != der) {
        return nullptr;
    }
    return certificate;
}

std::string derOf(X509* certificate) {
    return written<X509>(certificate, i2d_X509);
}

std::string issuerAndSerial(X509* certificate) {
    return der(kDerSequence, {written<X509_NAME>(X509_get_issuer_name(certificate), i2d_X509_NAME),
                              written<ASN1_INTEGER>(X509_get0_serialNumber(certificate), i2d_ASN1_INTEGER)});
}

bool isSelfMade(X509* certificate) {
    return X509_NAME_cmp(X509_get_subject_name(certificate), X509_get_issuer_name(certificate)) == 0;
}

CertificateFacts factsOf(X509* certificate) {
    CertificateFacts facts;
    facts.name = displayName(X509_get_subject_name(certificate));
    facts.organization = nameField(X509_get_subject_name(certificate), NID_organizationName);
    facts.issuer = displayName(X509_get_issuer_name(certificate));
    facts.validFrom = instantOf(X509_get0_notBefore(certificate));
    facts.validUntil = instantOf(X509_get0_notAfter(certificate));
    facts.isSelfMade = isSelfMade(certificate);
    facts.fingerprint = base::sha256(bytesOf(derOf(certificate))).text();
    return facts;
}

bool isForSigning(X509* certificate) {
    // All bits are set where the extension is missing.
    const std::uint32_t usage = X509_get_key_usage(certificate);
    return (usage & (KU_DIGITAL_SIGNATURE | KU_NON_REPUDIATION)) != 0;
}

std::optional<KeyKind> keyKind(EVP_PKEY* key) {
    if (key == nullptr) {
        return std::nullopt;
    }
    constexpr int kFewestRsaBits = 2048;
    constexpr int kMostRsaBits = 16384;
    constexpr int kFewestEcBits = 256;
    const int bits = EVP_PKEY_get_bits(key);
    if (EVP_PKEY_get_base_id(key) == EVP_PKEY_RSA && bits >= kFewestRsaBits && bits <= kMostRsaBits) {
        return KeyKind::Rsa;
    }
    if (EVP_PKEY_get_base_id(key) == EVP_PKEY_EC && bits >= kFewestEcBits) {
        return KeyKind::Ec;
    }
    return std::nullopt;
}

bool isTrusted(X509* certificate, const std::vector<Certificate>& others,
               const std::vector<Certificate>& anchors, const base::Instant& when) {
    if (isSelfMade(certificate) || anchors.empty() || !isForSigning(certificate)) {
        return false;
    }
    const Store store(X509_STORE_new());
    const StoreContext context(X509_STORE_CTX_new());
    STACK_OF(X509)* borrowed = sk_X509_new_null();
    for (const Certificate& anchor : anchors) {
        X509_STORE_add_cert(store.get(), anchor.get());
    }
    for (const Certificate& other : others) {
        sk_X509_push(borrowed, other.get());
    }
    bool isGood = X509_STORE_CTX_init(context.get(), store.get(), certificate, borrowed) == 1;
    if (isGood) {
        X509_VERIFY_PARAM* parameters = X509_STORE_CTX_get0_param(context.get());
        X509_VERIFY_PARAM_set_time(parameters, when.seconds);
        X509_VERIFY_PARAM_set_depth(parameters, 8);
        // A root is signed by itself: looked at too, since a file that was given may be damaged.
        X509_VERIFY_PARAM_set_flags(parameters, X509_V_FLAG_CHECK_SS_SIGNATURE);
        isGood = X509_verify_cert(context.get()) == 1;
    }
    sk_X509_free(borrowed);
    ERR_clear_error();
    return isGood;
}

std::vector<Certificate> readPem(std::string_view pem) {
    std::vector<Certificate> all;
    const Bio bio(
        BIO_new_mem_buf(pem.data(), static_cast<int>(std::min<std::size_t>(pem.size(), 1U << 24U))));
    while (X509* next = PEM_read_bio_X509(bio.get(), nullptr, nullptr, nullptr)) {
        all.emplace_back(next);
    }
    ERR_clear_error();
    return all;
}

}  // namespace ww::seal::detail
