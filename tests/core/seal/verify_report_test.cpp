// The verifier's four answers, and what must never pass. What counts as a change after signing follows ISO
// 32000-1, 12.8; the forged files are made here with the program's own writer.
#include "core/seal/verify_report.h"

#include <gtest/gtest.h>

#include <random>

#include "core/seal/seal_messages.h"
#include "tests/support/signed_report.h"

namespace ww::seal {
namespace {

using namespace support;

std::string faultsOf(const ReportVerification& verification) {
    std::string out;
    for (const base::Fault& fault : verification.faults) {
        out += base::english(fault) + "\n";
    }
    for (const SignatureFinding& signature : verification.signatures) {
        for (const base::Fault& fault : signature.faults) {
            out += signature.field + ": " + base::english(fault) + "\n";
        }
    }
    return out;
}

TEST(VerifyReport, GivesTheFourAnswers) {
    const auto found = verifyReport(twiceSigned(), *TrustAnchors::fromPem(root().pem()));
    EXPECT_TRUE(found.isIntact) << faultsOf(found);
    ASSERT_EQ(found.signatures.size(), 2U);
    const SignatureFinding& first = found.signatures[0];
    EXPECT_EQ(first.role, Role::Technician);
    EXPECT_EQ(first.signer->name, "T. Ashdown");
    EXPECT_EQ(first.time->text(), "2026-03-05T09:30:00+05:30");
    EXPECT_TRUE(first.isValid);
    EXPECT_FALSE(first.coversWholeFile);
    EXPECT_FALSE(first.isTrusted);
    EXPECT_TRUE(first.signer->isSelfMade);
    const SignatureFinding& last = found.signatures[1];
    EXPECT_EQ(last.role, Role::Supervisor);
    EXPECT_EQ(last.signer->name, "S. Wärme");
    EXPECT_EQ(last.signer->issuer, "Weir House Root");
    EXPECT_TRUE(last.isValid);
    EXPECT_TRUE(last.coversWholeFile);
    EXPECT_TRUE(last.isTrusted);
    EXPECT_TRUE(found.waiting.empty());
    EXPECT_EQ(found.binding, smallPreparation().binding);
}

TEST(VerifyReport, TellsWhoseSignatureIsMissing) {
    const auto found = verifyReport(onceSigned());
    EXPECT_TRUE(found.isIntact) << faultsOf(found);
    EXPECT_EQ(found.waiting, std::vector<Role>{Role::Supervisor});
}

TEST(VerifyReport, TrustsNobodyWithoutAnchors) {
    const auto found = verifyReport(twiceSigned());
    ASSERT_EQ(found.signatures.size(), 2U);
    for (const SignatureFinding& signature : found.signatures) {
        EXPECT_FALSE(signature.isTrusted);
    }
}

TEST(VerifyReport, NeverTrustsASelfMadeCertificate) {
    const SigningKey key(KeyWish{});
    const std::string pdf = signedBy(preparedPdf(), openKey(key), Role::Technician);
    const auto found = verifyReport(pdf, *TrustAnchors::fromPem(key.pem()));
    EXPECT_TRUE(found.isIntact) << faultsOf(found);
    EXPECT_FALSE(found.signatures.front().isTrusted);
}

TEST(VerifyReport, TrustsNoCertificateOfAnotherRoot) {
    const auto found = verifyReport(twiceSigned(), *TrustAnchors::fromPem(rootKey().pem()));
    EXPECT_TRUE(found.isIntact);
    EXPECT_FALSE(found.signatures[1].isTrusted);
}

TEST(VerifyReport, NeedsACertificateToTrust) {
    EXPECT_TRUE(TrustAnchors::fromPem("no certificate").fault().is(kTrustUnreadable));
}

TEST(VerifyReport, AnswersForFilesThatAreNoSignedReport) {
    const auto unsignedReport = verifyReport(preparedPdf());
    EXPECT_FALSE(unsignedReport.isIntact);
    ASSERT_EQ(unsignedReport.faults.size(), 1U);
    EXPECT_TRUE(unsignedReport.faults.front().is(kNotSigned));
    EXPECT_EQ(unsignedReport.waiting.size(), 2U);
    for (const std::string& other : {std::string(), std::string("%PDF-1.7\n"), std::string(5000, '\0')}) {
        EXPECT_FALSE(verifyReport(other).isIntact);
        EXPECT_FALSE(hasSignature(other));
    }
}

class Flips : public testing::TestWithParam<bool> {
  protected:
    const std::string& pdf() const { return GetParam() ? twiceSigned() : onceSigned(); }
    static bool survives(std::string bytes, std::size_t bit) {
        bytes[bit / 8] = static_cast<char>(bytes[bit / 8] ^ (1 << (bit % 8)));
        return verifyReport(bytes).isIntact;
    }
};

TEST_P(Flips, AnySingleBitIsFound) {
    std::mt19937 random(20260304);
    std::uniform_int_distribution<std::size_t> anywhere(0, pdf().size() * 8 - 1);
    for (int i = 0; i < 2000; ++i) {
        const std::size_t bit = anywhere(random);
        ASSERT_FALSE(survives(pdf(), bit)) << "byte " << bit / 8 << " bit " << bit % 8;
    }
}

/// The signature itself is what it cannot cover: nothing but its form protects those bytes.
TEST_P(Flips, AnyBitOfTheLastSignatureIsFound) {
    const std::size_t begin = pdf().rfind("/Contents <") + 10;
    const std::size_t end = pdf().find('>', begin) + 1;
    // Every seventh bit, which is prime to the eight of a byte, so that each place of a byte has its turn.
    for (std::size_t bit = begin * 8; bit < end * 8; bit += 7) {
        ASSERT_FALSE(survives(pdf(), bit)) << "byte " << bit / 8 << " bit " << bit % 8;
    }
}

TEST_P(Flips, AnyTruncationIsFound) {
    for (std::size_t size = 0; size < pdf().size(); size += 101) {
        ASSERT_FALSE(verifyReport(std::string_view(pdf()).substr(0, size)).isIntact) << size;
    }
}

INSTANTIATE_TEST_SUITE_P(OnceAndTwice, Flips, testing::Bool());

}  // namespace
}  // namespace ww::seal
