#include "core/seal/detail/cms.h"

#include <openssl/err.h>
#include <openssl/x509v3.h>

#include <algorithm>

#include "core/seal/detail/byte_view.h"
#include "core/seal/detail/der.h"
#include "core/seal/detail/identity_state.h"
#include "core/seal/seal_messages.h"

namespace ww::seal::detail {
namespace {

using std::string_view_literals::operator""sv;

// Object identifiers, whole: RFC 5652 (signed data, data, content type, message digest), RFC 5035 (signing
// certificate, version 2), RFC 5754 (SHA-256), RFC 8017 (RSA), RFC 5758 (ECDSA).
constexpr auto kSignedData = "\x06\x09\x2A\x86\x48\x86\xF7\x0D\x01\x07\x02"sv;
constexpr auto kDataContent = "\x06\x09\x2A\x86\x48\x86\xF7\x0D\x01\x07\x01"sv;
constexpr auto kContentType = "\x06\x09\x2A\x86\x48\x86\xF7\x0D\x01\x09\x03"sv;
constexpr auto kMessageDigest = "\x06\x09\x2A\x86\x48\x86\xF7\x0D\x01\x09\x04"sv;
constexpr auto kSigningCertificate = "\x06\x0B\x2A\x86\x48\x86\xF7\x0D\x01\x09\x10\x02\x2F"sv;
constexpr auto kSha256 = "\x06\x09\x60\x86\x48\x01\x65\x03\x04\x02\x01"sv;
constexpr auto kRsa = "\x06\x09\x2A\x86\x48\x86\xF7\x0D\x01\x01\x01"sv;
constexpr auto kRsaWithSha256 = "\x06\x09\x2A\x86\x48\x86\xF7\x0D\x01\x01\x0B"sv;
constexpr auto kEcWithSha256 = "\x06\x08\x2A\x86\x48\xCE\x3D\x04\x03\x02"sv;
constexpr auto kNull = "\x05\x00"sv;
constexpr auto kVersion1 = "\x02\x01\x01"sv;

std::string_view view(const base::Digest& digest) {
    return {reinterpret_cast<const char*>(digest.bytes.data()), digest.bytes.size()};
}

base::Digest digestOf(X509* certificate) {
    return base::sha256(bytesOf(derOf(certificate)));
}

std::string attribute(std::string_view kind, std::string_view value) {
    return der(kDerSequence, {kind, der(kDerSet, value)});
}

/// SigningCertificateV2 of RFC 5035 with the digest of every certificate carried, the signer's first.
std::string signingCertificates(const Identity::State& identity) {
    const auto entry = [](X509* certificate) {
        return der(kDerSequence, der(kDerOctetString, view(digestOf(certificate))));
    };
    std::string entries = entry(identity.certificate.get());
    for (const Certificate& other : identity.chain) {
        entries += entry(other.get());
    }
    return der(kDerSequence, der(kDerSequence, entries));
}

std::optional<std::string> signedBy(EVP_PKEY* key, std::string_view bytes) {
    const DigestContext context(EVP_MD_CTX_new());
    const auto input = bytesOf(bytes);
    std::size_t size = 0;
    std::string signature;
    bool isGood = EVP_DigestSignInit(context.get(), nullptr, EVP_sha256(), nullptr, key) == 1 &&
                  EVP_DigestSign(context.get(), nullptr, &size, input.data(), input.size()) == 1;
    if (isGood) {
        signature.resize(size);
        isGood = EVP_DigestSign(context.get(), reinterpret_cast<unsigned char*>(signature.data()), &size,
                                input.data(), input.size()) == 1;
        signature.resize(size);
    }
    ERR_clear_error();
    return isGood ? std::optional(std::move(signature)) : std::nullopt;
}

bool isSignedBy(EVP_PKEY* key, std::string_view bytes, std::string_view signature) {
    const DigestContext context(EVP_MD_CTX_new());
    const auto input = bytesOf(bytes);
    const auto proof = bytesOf(signature);
    const bool isGood =
        EVP_DigestVerifyInit(context.get(), nullptr, EVP_sha256(), nullptr, key) == 1 &&
        EVP_DigestVerify(context.get(), proof.data(), proof.size(), input.data(), input.size()) == 1;
    ERR_clear_error();
    return isGood;
}

/// The parts of a signature that are looked at, as they stand in its bytes.
struct Parts {
    std::vector<std::string_view> certificates;
    std::string_view signerName;  ///< issuer and serial number
    std::string_view attributes;  ///< contents of the signed attributes
    std::string_view algorithm;   ///< of the signature, whole
    std::string_view signature;
};

/// AlgorithmIdentifier of SHA-256, its parameters missing or null: RFC 5754, 2.
bool takeSha256(DerReader& reader) {
    return reader.takeExactly(der(kDerSequence, kSha256)) ||
           reader.takeExactly(der(kDerSequence, {kSha256, kNull}));
}

bool readSigner(std::string_view bytes, Parts& parts) {
    DerReader outer(bytes);
    const auto info = outer.take(kDerSequence);
    if (!info || !outer.isAtEnd()) {
        return false;
    }
    DerReader reader(info->content);
    if (!reader.takeExactly(kVersion1)) {
        return false;
    }
    const auto name = reader.take(kDerSequence);
    const bool isSha256 = name && takeSha256(reader);
    const auto attributes = isSha256 ? reader.take(kDerContext0) : std::nullopt;
    const auto algorithm = attributes ? reader.take(kDerSequence) : std::nullopt;
    const auto signature = algorithm ? reader.take(kDerOctetString) : std::nullopt;
    // Attributes behind the signature are covered by nothing, so that there must be none.
    if (!signature || !reader.isAtEnd()) {
        return false;
    }
    parts.signerName = name->whole;
    parts.attributes = attributes->content;
    parts.algorithm = algorithm->whole;
    parts.signature = signature->content;
    return true;
}

std::optional<Parts> readParts(std::string_view bytes) {
    DerReader outer(bytes);
    const auto content = outer.take(kDerSequence);
    if (!content || !outer.isAtEnd()) {
        return std::nullopt;
    }
    DerReader info(content->content);
    const auto wrapped = info.takeExactly(kSignedData) ? info.take(kDerContext0) : std::nullopt;
    if (!wrapped || !info.isAtEnd()) {
        return std::nullopt;
    }
    DerReader whole(wrapped->content);
    const auto data = whole.take(kDerSequence);
    if (!data || !whole.isAtEnd()) {
        return std::nullopt;
    }
    DerReader reader(data->content);
    const auto digests = reader.takeExactly(kVersion1) ? reader.take(kDerSet) : std::nullopt;
    DerReader digest(digests ? digests->content : std::string_view());
    const bool isExpected = digests && takeSha256(digest) && digest.isAtEnd() &&
                            reader.takeExactly(der(kDerSequence, kDataContent));
    const auto certificates = isExpected ? reader.take(kDerContext0) : std::nullopt;
    const auto signers = certificates ? reader.take(kDerSet) : std::nullopt;
    if (!signers || !reader.isAtEnd()) {
        return std::nullopt;
    }
    Parts parts;
    DerReader each(certificates->content);
    while (const auto certificate = each.take(kDerSequence)) {
        parts.certificates.push_back(certificate->whole);
    }
    const bool isRead = each.isAtEnd() && readSigner(signers->content, parts);
    return isRead ? std::optional(parts) : std::nullopt;
}

/// The only value of an attribute that stands exactly once; nothing otherwise.
std::optional<std::string_view> attributeValue(std::string_view attributes, std::string_view kind) {
    std::optional<std::string_view> found;
    DerReader reader(attributes);
    while (const auto attribute = reader.take(kDerSequence)) {
        DerReader inside(attribute->content);
        if (!inside.takeExactly(kind)) {
            continue;
        }
        const auto values = inside.take(kDerSet);
        if (found || !values || !inside.isAtEnd()) {
            return std::nullopt;
        }
        found = values->content;
    }
    return reader.isAtEnd() ? found : std::nullopt;
}

/// Digests of the certificates that the signature names, the signer's first. Empty where they cannot be read.
std::vector<std::string_view> namedCertificates(std::string_view value) {
    DerReader outer(value);
    const auto attribute = outer.take(kDerSequence);
    DerReader inside(attribute ? attribute->content : std::string_view());
    const auto list = inside.take(kDerSequence);
    DerReader reader(list ? list->content : std::string_view());
    std::vector<std::string_view> digests;
    while (const auto entry = reader.take(kDerSequence)) {
        DerReader fields(entry->content);
        // DER leaves SHA-256, the default, unsaid; some programs say it all the same.
        takeSha256(fields);
        const auto digest = fields.take(kDerOctetString);
        if (!digest) {
            return {};
        }
        digests.push_back(digest->content);
    }
    return digests;
}

/// Whether the certificates carried are those that the signature names, or lead on from them.
bool areCovered(const CmsReading& reading, const std::vector<std::string_view>& named) {
    const auto has = [&](std::string_view digest) {
        return view(digestOf(reading.signer.get())) == digest ||
               std::any_of(reading.others.begin(), reading.others.end(),
                           [&](const Certificate& other) { return view(digestOf(other.get())) == digest; });
    };
    if (named.empty() || view(digestOf(reading.signer.get())) != named.front() ||
        !std::all_of(named.begin(), named.end(), has)) {
        return false;
    }
    // Other programs name the signer's certificate alone and add those above it.
    const auto issues = [&](X509* issuer, X509* holder) {
        return issuer != holder && X509_check_issued(issuer, holder) == X509_V_OK &&
               X509_verify(holder, X509_get0_pubkey(issuer)) == 1;
    };
    return std::all_of(reading.others.begin(), reading.others.end(), [&](const Certificate& other) {
        const bool isNamed =
            std::find(named.begin(), named.end(), view(digestOf(other.get()))) != named.end();
        return isNamed || issues(other.get(), reading.signer.get()) ||
               std::any_of(reading.others.begin(), reading.others.end(),
                           [&](const Certificate& below) { return issues(other.get(), below.get()); });
    });
}

bool isAlgorithmOf(KeyKind kind, std::string_view algorithm) {
    if (kind == KeyKind::Ec) {
        return algorithm == der(kDerSequence, kEcWithSha256);
    }
    return algorithm == der(kDerSequence, {kRsa, kNull}) ||
           algorithm == der(kDerSequence, {kRsaWithSha256, kNull});
}

base::Fault malformed(const char* what) {
    return {&kSignatureMalformed, {}, {what}};
}

}  // namespace

std::optional<std::string> makeCms(const Identity::State& identity, const base::Digest& digest) {
    const auto kind = keyKind(identity.key.get());
    if (!kind) {
        return std::nullopt;
    }
    const std::initializer_list<std::string> attributes = {
        attribute(kContentType, kDataContent),
        attribute(kMessageDigest, der(kDerOctetString, view(digest))),
        attribute(kSigningCertificate, signingCertificates(identity)),
    };
    // Signed as a SET, carried under [0]: RFC 5652, 5.4.
    const auto signature = signedBy(identity.key.get(), derSetOf(kDerSet, attributes));
    if (!signature) {
        return std::nullopt;
    }
    const std::string sha256 = der(kDerSequence, kSha256);
    const std::string algorithm =
        *kind == KeyKind::Ec ? der(kDerSequence, kEcWithSha256) : der(kDerSequence, {kRsa, kNull});
    const std::string signer =
        der(kDerSequence, {kVersion1, issuerAndSerial(identity.certificate.get()), sha256,
                           derSetOf(kDerContext0, attributes), algorithm, der(kDerOctetString, *signature)});
    std::vector<std::string> sorted{derOf(identity.certificate.get())};
    for (const Certificate& other : identity.chain) {
        sorted.push_back(derOf(other.get()));
    }
    std::sort(sorted.begin(), sorted.end());
    std::string certificates;
    for (const std::string& certificate : sorted) {
        certificates += certificate;
    }
    const std::string data =
        der(kDerSequence, {kVersion1, der(kDerSet, sha256), der(kDerSequence, kDataContent),
                           der(kDerContext0, certificates), der(kDerSet, signer)});
    return der(kDerSequence, {kSignedData, der(kDerContext0, data)});
}

CmsReading checkCms(std::string_view bytes, const base::Digest& digest) {
    CmsReading reading;
    const auto parts = readParts(bytes);
    if (!parts) {
        reading.fault = malformed("not a detached SHA-256 signature");
        return reading;
    }
    for (const std::string_view each : parts->certificates) {
        Certificate certificate = readCertificate(each);
        if (certificate == nullptr) {
            reading.fault = malformed("certificate");
            return reading;
        }
        const bool isSigner =
            reading.signer == nullptr && issuerAndSerial(certificate.get()) == parts->signerName;
        (isSigner ? reading.signer : reading.others.emplace_back()) = std::move(certificate);
    }
    if (reading.signer == nullptr) {
        reading.fault = malformed("the signer's certificate is missing");
        return reading;
    }
    EVP_PKEY* key = X509_get0_pubkey(reading.signer.get());
    const auto kind = keyKind(key);
    const auto content = attributeValue(parts->attributes, kContentType);
    const auto signedDigest = attributeValue(parts->attributes, kMessageDigest);
    const auto named = attributeValue(parts->attributes, kSigningCertificate);
    if (!kind || !isAlgorithmOf(*kind, parts->algorithm)) {
        reading.fault = malformed("kind of key");
    } else if (content != kDataContent || !signedDigest || !named) {
        reading.fault = malformed("signed attributes");
    } else if (!areCovered(reading, namedCertificates(*named))) {
        reading.fault = malformed("certificates");
    } else if (!isSignedBy(key, der(kDerSet, parts->attributes), parts->signature)) {
        reading.fault = base::Fault{&kSignatureWrong, {}, {factsOf(reading.signer.get()).name}};
    } else if (*signedDigest != der(kDerOctetString, view(digest))) {
        reading.fault = base::Fault{&kContentChanged, {}, {}};
    }
    ERR_clear_error();
    return reading;
}

}  // namespace ww::seal::detail
