// Keys and certificates for tests of signing, made with OpenSSL itself and not with what is tested.
#pragma once

#include <openssl/evp.h>
#include <openssl/pem.h>
#include <openssl/pkcs12.h>
#include <openssl/x509v3.h>

#include <cstdint>
#include <memory>
#include <string>

namespace ww::support {

struct KeyWish {
    std::string name = "T. Ashdown";
    bool isCurve = false;             ///< a P-256 key; otherwise RSA
    unsigned bits = 2048;             ///< of an RSA key
    std::int64_t from = 1735689600;   ///< 2025-01-01
    std::int64_t until = 2051222400;  ///< 2035-01-01
    const char* usage = "critical,digitalSignature,nonRepudiation";
    const char* constraints = "critical,CA:FALSE";
};

/// A key with its certificate, issued by another one or by itself.
class SigningKey {
  public:
    explicit SigningKey(const KeyWish& wish, const SigningKey* issuer = nullptr) {
        m_key.reset(wish.isCurve ? EVP_EC_gen("P-256") : EVP_RSA_gen(wish.bits), EVP_PKEY_free);
        m_certificate.reset(X509_new(), X509_free);
        X509* certificate = m_certificate.get();
        X509_set_version(certificate, X509_VERSION_3);
        ASN1_INTEGER_set(X509_get_serialNumber(certificate), s_serial++);
        ASN1_TIME_set(X509_getm_notBefore(certificate), wish.from);
        ASN1_TIME_set(X509_getm_notAfter(certificate), wish.until);
        X509_NAME_add_entry_by_txt(X509_get_subject_name(certificate), "CN", MBSTRING_UTF8,
                                   reinterpret_cast<const unsigned char*>(wish.name.c_str()), -1, -1, 0);
        X509* above = issuer != nullptr ? issuer->m_certificate.get() : certificate;
        X509_set_issuer_name(certificate, X509_get_subject_name(above));
        X509_set_pubkey(certificate, m_key.get());
        extend(above, NID_basic_constraints, wish.constraints);
        extend(above, NID_key_usage, wish.usage);
        X509_sign(certificate, issuer != nullptr ? issuer->m_key.get() : m_key.get(), EVP_sha256());
    }

    /// The bytes of a PKCS#12 file; `above` is carried in it too.
    std::string keyFile(const std::string& passphrase, const SigningKey* above = nullptr) const {
        STACK_OF(X509)* others = sk_X509_new_null();
        if (above != nullptr) {
            sk_X509_push(others, above->m_certificate.get());
        }
        PKCS12* container = PKCS12_create(passphrase.c_str(), "key", m_key.get(), m_certificate.get(), others,
                                          0, 0, 1000, 1000, 0);
        unsigned char* der = nullptr;
        const int size = i2d_PKCS12(container, &der);
        std::string bytes(reinterpret_cast<const char*>(der), static_cast<std::size_t>(size));
        OPENSSL_free(der);
        PKCS12_free(container);
        sk_X509_free(others);
        return bytes;
    }

    std::string pem() const {
        BIO* bio = BIO_new(BIO_s_mem());
        PEM_write_bio_X509(bio, m_certificate.get());
        char* text = nullptr;
        const long size = BIO_get_mem_data(bio, &text);
        std::string out(text, static_cast<std::size_t>(size));
        BIO_free(bio);
        return out;
    }

  private:
    void extend(X509* issuer, int kind, const char* value) {
        X509V3_CTX context;
        X509V3_set_ctx(&context, issuer, m_certificate.get(), nullptr, nullptr, 0);
        X509_EXTENSION* extension = X509V3_EXT_conf_nid(nullptr, &context, kind, value);
        X509_add_ext(m_certificate.get(), extension, -1);
        X509_EXTENSION_free(extension);
    }

    inline static long s_serial = 1001;
    std::shared_ptr<EVP_PKEY> m_key;
    std::shared_ptr<X509> m_certificate;
};

/// A firm's root: signs certificates, never documents.
inline SigningKey rootKey() {
    KeyWish wish;
    wish.name = "Weir House Root";
    wish.usage = "critical,keyCertSign,cRLSign";
    wish.constraints = "critical,CA:TRUE";
    return SigningKey(wish);
}

}  // namespace ww::support
