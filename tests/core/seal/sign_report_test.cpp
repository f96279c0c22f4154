// Preparing and signing: what is refused, what stays as it was, and what other programs say of the result.
#include "core/seal/sign_report.h"

#include <gtest/gtest.h>

#include "core/seal/seal_messages.h"
#include "core/seal/verify_report.h"
#include "tests/support/shell_run.h"
#include "tests/support/signed_report.h"
#include "tests/support/temporary_folder.h"

namespace ww::seal {
namespace {

using namespace support;

std::string printedBy(const std::string& command) {
    return support::runInShell(command).output;
}
std::size_t count(const std::string& text, const std::string& part) {
    std::size_t found = 0;
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) {
        ++found;
    }
    return found;
}

TEST(PrepareReport, IsRepeatable) {
    EXPECT_EQ(preparedPdf(), preparedPdf());
}

TEST(PrepareReport, LeavesTheReportInFront) {
    EXPECT_TRUE(preparedPdf().starts_with(smallPdf()));
}

TEST(PrepareReport, IsDoneOnce) {
    EXPECT_TRUE(prepareReport(preparedPdf(), smallPreparation()).fault().is(kAlreadyPrepared));
}

TEST(PrepareReport, RefusesAPageThatIsNotThere) {
    Preparation preparation = smallPreparation();
    preparation.fields[0].place.page = 1;
    EXPECT_TRUE(prepareReport(smallPdf(), preparation).fault().is(kNoSuchPage));
}

TEST(PrepareReport, RefusesWhatIsNoPdf) {
    EXPECT_TRUE(prepareReport("report\n", smallPreparation()).fault().is(kPdfDamaged));
}

/// ISO 19005-3: the part in the metadata, a relationship for every file, blocks that print.
TEST(PrepareReport, SaysWhatPdfA3Asks) {
    const std::string pdf = preparedPdf();
    EXPECT_NE(pdf.find("pdfaid:part=\"3\""), std::string::npos);
    EXPECT_EQ(count(pdf, "/AFRelationship /Data"), 2U);
    EXPECT_EQ(count(pdf, "/Subtype /text#2fcsv"), 1U);
    EXPECT_EQ(count(pdf, "/F 132"), 2U);
    EXPECT_EQ(count(pdf, "/NeedAppearances"), 0U);
}

TEST(SignReport, AddsToTheFileAndChangesNothingInIt) {
    EXPECT_TRUE(onceSigned().starts_with(preparedPdf()));
    EXPECT_TRUE(twiceSigned().starts_with(onceSigned()));
}

TEST(SignReport, CertifiesWithTheFirstSignatureOnly) {
    EXPECT_EQ(count(twiceSigned(), "/TransformMethod /DocMDP"), 1U);
    EXPECT_EQ(count(twiceSigned(), "/P 2"), 1U);
    EXPECT_EQ(count(onceSigned().substr(preparedPdf().size()), "/Perms"), 1U);
    EXPECT_EQ(count(twiceSigned().substr(onceSigned().size()), "/Perms"), 0U);
}

TEST(SignReport, TakesEitherOrder) {
    const std::string first = signedBy(preparedPdf(), supervisor(), Role::Supervisor);
    EXPECT_TRUE(verifyReport(signedBy(first, technician(), Role::Technician)).isIntact);
}

TEST(SignReport, RefusesASecondSignatureInAField) {
    EXPECT_TRUE(
        signReport(onceSigned(), supervisor(), signingBy(Role::Technician)).fault().is(kAlreadySigned));
}

TEST(SignReport, RefusesARoleWithoutField) {
    EXPECT_TRUE(signReport(preparedPdf(false), supervisor(), signingBy(Role::Supervisor))
                    .fault()
                    .is(kNoSignatureField));
    EXPECT_TRUE(
        signReport(smallPdf(), technician(), signingBy(Role::Technician)).fault().is(kNoSignatureField));
}

TEST(SignReport, RefusesAReportChangedSinceTheFirstSignature) {
    std::string changed = onceSigned();
    changed[changed.find("98 %")] = '8';
    EXPECT_TRUE(
        signReport(changed, supervisor(), signingBy(Role::Supervisor)).fault().is(kNotIntactNotSigned));
}

TEST(SignReport, RefusesKeysThatMayNotSign) {
    const auto refused = [](const KeyWish& wish) {
        return signReport(preparedPdf(), openKey(SigningKey(wish)), signingBy(Role::Technician)).fault();
    };
    KeyWish expired;
    expired.until = 1767225600;  // 2026-01-01
    EXPECT_TRUE(refused(expired).is(kKeyExpired));
    KeyWish early;
    early.from = 1798761600;  // 2027-01-01
    EXPECT_TRUE(refused(early).is(kKeyNotYetValid));
    KeyWish sealing;
    sealing.usage = "critical,keyEncipherment";
    EXPECT_TRUE(refused(sealing).is(kKeyUsage));
    KeyWish weak;
    weak.bits = 1024;
    EXPECT_TRUE(refused(weak).is(kKeyKind));
}

TEST(Identity, OpensWithItsPassphraseOnly) {
    const std::string file = SigningKey(KeyWish{}).keyFile(kPassphrase);
    EXPECT_EQ(Identity::open(file, kPassphrase)->facts().name, "T. Ashdown");
    EXPECT_TRUE(Identity::open(file, "").fault().is(kPassphraseWrong));
    EXPECT_TRUE(Identity::open(file, "valve and pumps").fault().is(kPassphraseWrong));
    EXPECT_TRUE(Identity::open("no key", kPassphrase).fault().is(kKeyFileUnreadable));
    EXPECT_TRUE(Identity::open(file.substr(0, file.size() / 2), kPassphrase).fault().is(kKeyFileUnreadable));
}

TEST(Identity, MadeHereIsSelfMadeAndSigns) {
    const auto now = signingBy(Role::Technician).time;
    const auto file = makeSelfMade({"Zoë Ťáž", "Weir & Sons", 5}, kPassphrase, now);
    ASSERT_TRUE(file);
    const auto identity = Identity::open(*file, kPassphrase);
    ASSERT_TRUE(identity);
    EXPECT_TRUE(identity->facts().isSelfMade);
    EXPECT_EQ(identity->facts().name, "Zoë Ťáž");
    EXPECT_EQ(identity->facts().organization, "Weir & Sons");
    EXPECT_EQ(identity->facts().validUntil.date(), "2031-03-04");
    EXPECT_TRUE(verifyReport(signedBy(preparedPdf(), *identity, Role::Technician)).isIntact);
    EXPECT_TRUE(makeSelfMade({"", "", 5}, kPassphrase, now).fault().is(kSignerUnnamed));
    EXPECT_TRUE(makeSelfMade({"Zoë", "", 5}, "short", now).fault().is(kPassphraseShort));
}

/// pdfsig of poppler-utils: another reader of PDF, another library of cryptography.
TEST(SignedReport, IsValidTwiceForAnotherReader) {
    if (!hasTool("pdfsig")) {
        GTEST_SKIP() << "pdfsig (package poppler-utils) is not installed";
    }
    const TemporaryFolder folder;
    const std::string said = printedBy("pdfsig '" + folder.write("two.pdf", twiceSigned()) + "'");
    EXPECT_EQ(count(said, "Signature is Valid."), 2U) << said;
    EXPECT_EQ(count(said, "ETSI.CAdES.detached"), 2U) << said;
    EXPECT_EQ(count(said, "Not total document signed"), 1U) << said;
    EXPECT_GT(said.find("Total document signed"), said.find("Signature #2")) << said;
    EXPECT_EQ(count(said, "Total document signed"), 1U) << said;
    std::string changed = twiceSigned();
    changed[changed.find("98 %")] = '8';
    const std::string told = printedBy("pdfsig '" + folder.write("changed.pdf", changed) + "'");
    EXPECT_EQ(count(told, "Digest Mismatch"), 2U) << told;
    EXPECT_EQ(count(told, "Signature is Valid."), 0U) << told;
}

/// openssl cms: the signature alone against the bytes it covers, by a reader that knows no PDF.
TEST(SignedReport, IsVerifiedByOpenSslAlone) {
    if (!hasTool("openssl")) {
        GTEST_SKIP() << "openssl is not installed";
    }
    const TemporaryFolder folder;
    const std::string& pdf = twiceSigned();
    const std::size_t begin = pdf.rfind("/Contents <") + 10;
    const std::size_t end = pdf.find('>', begin) + 1;
    std::string cms;
    for (std::size_t at = begin + 1; at + 1 < end; at += 2) {
        cms += static_cast<char>(std::stoi(pdf.substr(at, 2), nullptr, 16));
    }
    const std::string content = folder.write("content", pdf.substr(0, begin) + pdf.substr(end));
    const std::string command = "openssl cms -verify -binary -cades -inform DER -in '" +
                                folder.write("cms", cms) + "' -content '" + content + "' -CAfile '" +
                                folder.write("root.pem", root().pem()) + "' -purpose any -out /dev/null";
    const std::string said = printedBy(command);
    EXPECT_NE(said.find("erification successful"), std::string::npos) << said;
    folder.write("content", pdf.substr(0, begin) + pdf.substr(end) + " ");
    EXPECT_EQ(printedBy(command).find("erification successful"), std::string::npos);
}

}  // namespace
}  // namespace ww::seal
