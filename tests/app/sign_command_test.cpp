// report --sign and verify of a report: who may sign what, what stays untouched, and what is told of the
// result. The outside contract is this program's own.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "core/seal/detail/pdf_document.h"
#include "core/seal/detail/pdf_update.h"
#include "core/seal/identity.h"
#include "tests/support/command_run.h"
#include "tests/support/job_tables.h"

namespace ww::app {
namespace {

using nlohmann::json;
using support::JobTables;
using support::runCommand;
using support::TemporaryFolder;

class SignCommand : public testing::Test {
  protected:
    void SetUp() override {
        const std::string tables = JobTables().writeTo(folder);
        // Two terminals are off design for reasons that are not the balancer's.
        folder.write("tables/deficiencies.csv",
                     "number,tag,description\n1,T1,coil half blocked\n2,T2,control valve passes\n");
        const auto made = runCommand({"new", file, "--from", tables});
        ASSERT_EQ(made.status, 0) << made.err;
        folder.write("pass", "valve and pump\n");
        const auto now = *base::Instant::fromText("2026-03-02T08:00:00Z");
        folder.write("t.p12", *seal::makeSelfMade({"T. Ashdown", "", 5}, "valve and pump", now));
        folder.write("s.p12", *seal::makeSelfMade({"S. Weir", "", 5}, "valve and pump", now));
    }
    support::CommandRun sign(const char* key, const char* role, const std::string& name = "r.pdf",
                             const char* pass = "pass") const {
        return runCommand({"report", file, "--out", folder.file(name), "--sign", folder.file(key), "--role",
                           role, "--pass-file", folder.file(pass)});
    }
    json verified(int status, const std::string& name = "r.pdf", std::vector<std::string> more = {}) const {
        std::vector<std::string> arguments{"verify", folder.file(name), "--json"};
        arguments.insert(arguments.end(), more.begin(), more.end());
        const auto run = runCommand(arguments);
        EXPECT_EQ(run.status, status) << run.err;
        return json::parse(run.out);
    }

    TemporaryFolder folder;
    std::string file = folder.file("job.wwj");
};

TEST_F(SignCommand, BothSignAndTheReportIsIntact) {
    const auto first = sign("t.p12", "technician");
    ASSERT_EQ(first.status, 0) << first.err;
    EXPECT_NE(first.err.find("self-made"), std::string::npos);
    json found = verified(0);
    EXPECT_EQ(found["waiting"], json::array({"supervisor"}));
    ASSERT_EQ(sign("s.p12", "supervisor").status, 0);
    found = verified(0, "r.pdf", {"--workbook", file});
    EXPECT_EQ(found["kind"], "report");
    EXPECT_EQ(found["intact"], true);
    EXPECT_EQ(found["state"], "current");
    ASSERT_EQ(found["signatures"].size(), 2U);
    EXPECT_EQ(found["signatures"][0]["signer"], "T. Ashdown");
    EXPECT_EQ(found["signatures"][0]["role"], "technician");
    EXPECT_EQ(found["signatures"][0]["time"], "2026-03-02T08:00:00Z");
    EXPECT_EQ(found["signatures"][0]["covers_whole_file"], false);
    EXPECT_EQ(found["signatures"][1]["covers_whole_file"], true);
    EXPECT_EQ(found["signatures"][1]["valid"], true);
    EXPECT_EQ(found["signatures"][1]["trusted"], false);
    EXPECT_EQ(runCommand({"verify", file}).status, 0);
}

TEST_F(SignCommand, AReviewerWhoReadTheRoundsIsToldAndSigns) {
    const auto now = *base::Instant::fromText("2026-03-02T08:00:00Z");
    folder.write("a.p12", *seal::makeSelfMade({"A. Fields", "", 5}, "valve and pump", now));
    EXPECT_EQ(sign("a.p12", "technician").err.find("read or sent"), std::string::npos);
    const auto run = sign("a.p12", "supervisor");
    EXPECT_EQ(run.status, 0) << run.err;
    EXPECT_NE(run.err.find("A. Fields read or sent rounds 1, 2 and signs as reviewer; the report tells it"),
              std::string::npos)
        << run.err;
    EXPECT_NE(run.err.find("A. Fields signed this revision in the other role too"), std::string::npos)
        << run.err;
}

TEST_F(SignCommand, OneWhoSignsAsBothIsToldAndSigns) {
    EXPECT_EQ(sign("s.p12", "supervisor").err.find("other role"), std::string::npos);
    const auto run = sign("s.p12", "technician");
    EXPECT_EQ(run.status, 0) << run.err;
    EXPECT_NE(run.err.find("signed this revision in the other role too; the report tells it"),
              std::string::npos)
        << run.err;
}

TEST_F(SignCommand, AChangedReportIsTold) {
    ASSERT_EQ(sign("t.p12", "technician").status, 0);
    std::string bytes = folder.read("r.pdf");
    bytes[bytes.find("98 %")] = '8';
    folder.write("r.pdf", bytes);
    const json found = verified(1);
    EXPECT_EQ(found["intact"], false);
    EXPECT_EQ(found["signatures"][0]["valid"], false);
    EXPECT_EQ(sign("s.p12", "supervisor").status, 2);
    EXPECT_EQ(folder.read("r.pdf"), bytes);
}

/// The file with a revision behind it that changes what its page says; both signatures stay as they are.
std::string withAppendedRevision(const std::string& bytes) {
    using namespace seal::detail;
    const auto document = PdfDocument::open(bytes);
    EXPECT_TRUE(document.ok());
    const int page = pageNumbers(*document)->front();
    const int content = document->object(page)->dictionary()->reference("Contents")->number;
    PdfUpdate update(*document);
    update.setStream(content, PdfDictionary(), "BT /F1 12 Tf 72 720 Td (Share of T1: 100 %) Tj ET");
    return update.written();
}

TEST_F(SignCommand, AnAppendedRevisionIsTold) {
    ASSERT_EQ(sign("t.p12", "technician").status, 0);
    ASSERT_EQ(sign("s.p12", "supervisor").status, 0);
    EXPECT_EQ(runCommand({"verify", folder.file("r.pdf")}).status, 0);
    const std::string bytes = folder.read("r.pdf");
    const std::string forged = withAppendedRevision(bytes);
    ASSERT_TRUE(forged.starts_with(bytes)) << "what was signed is still there, byte for byte";
    folder.write("r.pdf", forged);
    const auto run = runCommand({"verify", folder.file("r.pdf")});
    EXPECT_EQ(run.status, 1) << run.out;
    const json found = verified(1);
    EXPECT_EQ(found["intact"], false);
    EXPECT_EQ(found["signatures"].size(), 2U);
    EXPECT_EQ(found["signatures"][1]["covers_whole_file"], false);
}

TEST_F(SignCommand, ALaterEditSupersedesTheReport) {
    ASSERT_EQ(sign("t.p12", "technician").status, 0);
    const std::string before = folder.read("r.pdf");
    std::filesystem::create_directories(folder.path() / "more");
    folder.write("more/readings.csv",
                 "round,kind,time,tag,setting,dp[psi]\n3,adjusting,2026-03-04T10:00,T1,4,1.20\n");
    const auto recorded = runCommand({"record", file, "--from", folder.file("more")});
    ASSERT_EQ(recorded.status, 0) << recorded.err;
    EXPECT_EQ(verified(1, "r.pdf", {"--workbook", file})["state"], "superseded");
    EXPECT_EQ(sign("s.p12", "supervisor").status, 2);
    EXPECT_EQ(folder.read("r.pdf"), before);
}

TEST_F(SignCommand, ASignedReportIsNeverReplaced) {
    ASSERT_EQ(sign("t.p12", "technician").status, 0);
    const std::string before = folder.read("r.pdf");
    EXPECT_EQ(runCommand({"report", file, "--out", folder.file("r.pdf")}).status, 2);
    EXPECT_EQ(sign("s.p12", "technician").status, 2);
    EXPECT_EQ(folder.read("r.pdf"), before);
}

TEST_F(SignCommand, AFailureLeavesTheUnsignedFile) {
    folder.write("r.pdf", "report\n");
    folder.write("wrong", "pump and valve\n");
    const auto run = sign("t.p12", "technician", "r.pdf", "wrong");
    EXPECT_EQ(run.status, 2);
    EXPECT_NE(run.err.find("passphrase"), std::string::npos) << run.err;
    EXPECT_EQ(sign("none.p12", "technician").status, 3);
    EXPECT_EQ(sign("t.p12", "owner").status, 2);
    EXPECT_EQ(sign("pass", "technician").status, 2);
    EXPECT_EQ(folder.read("r.pdf"), "report\n");
    EXPECT_EQ(
        runCommand({"report", file, "--out", folder.file("r.pdf"), "--sign", folder.file("t.p12")}).status,
        2);
}

TEST_F(SignCommand, VerifyNeedsFilesThatAreThere) {
    EXPECT_EQ(runCommand({"verify", folder.file("none.pdf")}).status, 3);
    ASSERT_EQ(sign("t.p12", "technician").status, 0);
    EXPECT_EQ(runCommand({"verify", folder.file("r.pdf"), "--trust", folder.file("none.pem")}).status, 3);
    EXPECT_EQ(runCommand({"verify", folder.file("r.pdf"), "--trust", folder.file("pass")}).status, 2);
}

}  // namespace
}  // namespace ww::app
