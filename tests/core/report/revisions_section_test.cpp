// What a report says of its own revision and of who signed: drafts, copies of what is signed, and signers who
// did more than sign. What belongs there is common practice, no source.
#include <gtest/gtest.h>

#include <tuple>

#include "core/report/report.h"
#include "tests/support/demo_project.h"
#include "tests/support/section_text.h"

namespace ww::report {
namespace {

using support::demoProject;
using support::textOf;

std::string revisionsOf(const project::Project& project) {
    return textOf(sectionOf(build(project, {}), kRevisions));
}

TEST(RevisionsSection, withoutSignaturesASignedRevisionThatStandsIsACopy) {
    project::Project project = demoProject();
    project::SignedReport signature;
    int id = 990;
    for (const auto& [revision, role, signer] :
         {std::tuple{1, "technician", "A. Fields"}, std::tuple{2, "technician", "A. Fields"},
          std::tuple{2, "supervisor", "S. Olsen"}}) {
        signature.id = support::CountingIds::numbered(++id);
        signature.revision = revision;
        signature.role = role;
        signature.signer = signer;
        signature.journalDigest = std::string(64, revision == 2 ? 'c' : 'a');
        project.put(signature);
    }
    ReportOptions options;
    options.standing = 2;
    options.journalDigest = std::string(64, 'd');
    const Report copy = build(project, options);
    EXPECT_EQ(copy.copyOf, 2);
    EXPECT_EQ(copy.revision, 2);
    EXPECT_EQ(copy.supersedes, 1);
    EXPECT_EQ(copy.digest, "cccccccccccc") << "as the signed file";
    EXPECT_TRUE(copy.isDraft) << "it carries no signature";
    const std::string told =
        "A copy of revision 2, signed by A. Fields, S. Olsen; nothing was changed since.";
    EXPECT_NE(base::english(*copy.revisionLine).find(told), std::string::npos);
    EXPECT_NE(textOf(sectionOf(copy, kRevisions)).find(told), std::string::npos);
    EXPECT_EQ(textOf(sectionOf(copy, kResult)).find("nobody has signed"), std::string::npos);
    // What is signed anew is the next.
    options.signers = Signers::Technician;
    const Report next = build(project, options);
    EXPECT_EQ(next.copyOf, std::nullopt);
    EXPECT_EQ(next.revision, 3);
    EXPECT_EQ(next.digest, "dddddddddddd");
    EXPECT_EQ(next.supersedes, 2);
}

TEST(RevisionsSection, onlyADraftSaysThatNobodySigned) {
    ReportOptions options;
    options.signers = Signers::Technician;
    const std::string text = textOf(sectionOf(build(demoProject(), options), kResult));
    EXPECT_EQ(text.find("Draft until signed"), std::string::npos) << text;
}

TEST(RevisionsSection, tellsAReviewerWhoReadTheRoundsBesideTheSignature) {
    project::Project project = demoProject();
    project::SignedReport signature;
    signature.id = support::CountingIds::numbered(992);
    signature.revision = 1;
    signature.role = "supervisor";
    signature.signer = "A. Fields";
    project.put(signature);
    const std::string told = "Revision 1: A. Fields signed as reviewer, and read or sent rounds 1, 2, 3 too.";
    EXPECT_TRUE(revisionsOf(project).find(told) != std::string::npos) << revisionsOf(project);
    signature.role = "technician";
    project.put(signature);
    EXPECT_FALSE(revisionsOf(project).find("signed as reviewer") != std::string::npos);
    signature.role = "supervisor";
    signature.signer = "S. Olsen";
    project.put(signature);
    EXPECT_FALSE(revisionsOf(project).find("signed as reviewer") != std::string::npos);
}

TEST(RevisionsSection, tellsOneWhoSignedBothTheReadingsAndTheReview) {
    project::Project project = demoProject();
    project::SignedReport readings;
    readings.id = support::CountingIds::numbered(992);
    readings.revision = 1;
    readings.role = "technician";
    readings.signer = "S. Olsen";
    readings.certificate = "ab12";
    project.put(readings);
    project::SignedReport review = readings;
    review.id = support::CountingIds::numbered(993);
    review.role = "supervisor";
    const std::string told = "Revision 1: S. Olsen signed both the readings and the review.";
    const auto isTold = [&](const project::SignedReport& signature) {
        project.put(signature);
        return revisionsOf(project).find("signed both") != std::string::npos;
    };
    project.put(review);
    EXPECT_NE(revisionsOf(project).find(told), std::string::npos) << revisionsOf(project);
    ReportOptions options;
    options.standing = 1;
    EXPECT_NE(base::english(*build(project, options).revisionLine).find("signed by S. Olsen; nothing"),
              std::string::npos)
        << "each is named once";
    review.revision = 2;
    EXPECT_FALSE(isTold(review)) << "each of another revision";
    review.revision = 1;
    review.signer = "S. Olsen, PE";
    EXPECT_TRUE(isTold(review)) << "with the same key";
    review.certificate = "cd34";
    EXPECT_FALSE(isTold(review));
    review.signer = "S. Olsen";
    review.isWithdrawn = true;
    EXPECT_FALSE(isTold(review));
}

}  // namespace
}  // namespace ww::report
