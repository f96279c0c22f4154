// A small report prepared, signed by one or two people, for tests of signing.
#pragma once

#include <gtest/gtest.h>

#include "core/seal/sign_report.h"
#include "tests/support/detail/signing_keys.h"
#include "tests/support/small_report.h"

namespace ww::support {

inline constexpr const char* kPassphrase = "valve and pump";

inline std::string preparedPdf(bool withSupervisor = true) {
    auto prepared = seal::prepareReport(smallPdf(), smallPreparation(withSupervisor));
    EXPECT_TRUE(prepared) << (prepared ? "" : base::english(prepared.fault()));
    return prepared ? *prepared : std::string();
}

inline seal::Identity openKey(const SigningKey& key, const SigningKey* above = nullptr) {
    return *seal::Identity::open(key.keyFile(kPassphrase, above), kPassphrase);
}
/// Keys made once in a process: making them takes time.
inline const SigningKey& root() {
    static const SigningKey key = rootKey();
    return key;
}
inline const seal::Identity& technician() {
    static const seal::Identity identity = openKey(SigningKey(KeyWish{"T. Ashdown"}));
    return identity;
}
/// Issued by root(), which the key file carries.
inline const seal::Identity& supervisor() {
    KeyWish wish;
    wish.name = "S. Wärme";
    wish.isCurve = true;
    static const seal::Identity identity = openKey(SigningKey(wish, &root()), &root());
    return identity;
}

inline seal::Signing signingBy(seal::Role role, const char* time = "2026-03-05T09:30:00+05:30") {
    return {role, *base::Instant::fromText(time), squareDrawing(role == seal::Role::Technician ? 0 : 60)};
}
inline std::string signedBy(const std::string& pdf, const seal::Identity& identity, seal::Role role) {
    auto done = seal::signReport(pdf, identity, signingBy(role));
    EXPECT_TRUE(done) << (done ? "" : base::english(done.fault()));
    return done ? *done : std::string();
}
/// Signed by the technician alone, the supervisor's field waiting.
inline const std::string& onceSigned() {
    static const std::string pdf = signedBy(preparedPdf(), technician(), seal::Role::Technician);
    return pdf;
}
inline const std::string& twiceSigned() {
    static const std::string pdf = signedBy(onceSigned(), supervisor(), seal::Role::Supervisor);
    return pdf;
}

}  // namespace ww::support
