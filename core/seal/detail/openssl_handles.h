// OpenSSL's objects with owners. Not to be included outside this folder.
#pragma once

#include <openssl/bio.h>
#include <openssl/evp.h>
#include <openssl/pkcs12.h>
#include <openssl/x509.h>
#include <openssl/x509_vfy.h>

#include <memory>

namespace ww::seal::detail {

template <auto kFree>
struct Freed {
    template <class T>
    void operator()(T* object) const {
        kFree(object);
    }
};

using Certificate = std::unique_ptr<X509, Freed<X509_free>>;
using Key = std::unique_ptr<EVP_PKEY, Freed<EVP_PKEY_free>>;
using DigestContext = std::unique_ptr<EVP_MD_CTX, Freed<EVP_MD_CTX_free>>;
using KeyContainer = std::unique_ptr<PKCS12, Freed<PKCS12_free>>;
using Store = std::unique_ptr<X509_STORE, Freed<X509_STORE_free>>;
using StoreContext = std::unique_ptr<X509_STORE_CTX, Freed<X509_STORE_CTX_free>>;
using Bio = std::unique_ptr<BIO, Freed<BIO_free>>;
using Extension = std::unique_ptr<X509_EXTENSION, Freed<X509_EXTENSION_free>>;

struct FreedStack {
    void operator()(STACK_OF(X509) * stack) const { sk_X509_pop_free(stack, X509_free); }
};
/// Owns its certificates.
using CertificateStack = std::unique_ptr<STACK_OF(X509), FreedStack>;

}  // namespace ww::seal::detail
