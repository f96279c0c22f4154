// The commands as scripts use them: exit status, shape of the JSON, text, nothing left behind. The outside
// contract is this program's own.
#include <gtest/gtest.h>

#include <cstdlib>
#include <nlohmann/json.hpp>
#include <set>

#include "core/base/version.h"
#include "tests/support/command_run.h"
#include "tests/support/job_tables.h"

namespace ww::app {
namespace {

using nlohmann::json;
using support::JobTables;
using support::runCommand;
using support::TemporaryFolder;

/// The keys of an object, in order of name.
std::set<std::string> keysOf(const json& object) {
    std::set<std::string> keys;
    for (const auto& [key, value] : object.items()) {
        keys.insert(key);
    }
    return keys;
}

void expectKeys(const json& object, const std::vector<std::string>& keys) {
    for (const std::string& key : keys) {
        EXPECT_TRUE(object.contains(key)) << key;
    }
}

class Commands : public testing::Test {
  protected:
    void SetUp() override { ASSERT_EQ(runCommand({"new", file, "--from", from}).status, 0); }

    TemporaryFolder folder;
    std::string from = JobTables().writeTo(folder);
    std::string file = folder.file("job.wwj");
};

TEST_F(Commands, NewTellsWhatItWrote) {
    const auto run = runCommand({"new", folder.file("two.wwj"), "--from", from, "--json"});
    EXPECT_EQ(run.status, 0);
    const json document = json::parse(run.out);
    EXPECT_EQ(document["written"], folder.file("two.wwj"));
    EXPECT_TRUE(document["faults"].empty());
    EXPECT_TRUE(document["conflicts"].empty());
    EXPECT_EQ(run.err, "");
}

TEST_F(Commands, NewNeverReplacesAWorkbook) {
    const std::string before = folder.read("job.wwj");
    const auto run = runCommand({"new", file, "--from", from});
    EXPECT_EQ(run.status, 3);
    EXPECT_NE(run.err.find("; "), std::string::npos) << run.err;
    EXPECT_EQ(folder.read("job.wwj"), before);
}

TEST_F(Commands, NewGivesFileTroubleAsJsonToo) {
    const auto run = runCommand({"new", file, "--from", from, "--json"});
    EXPECT_EQ(run.status, 3);
    const json document = json::parse(run.out);
    EXPECT_TRUE(document["written"].is_null());
    EXPECT_EQ(document["faults"].size(), 1U);
}

TEST_F(Commands, NewGivesFaultsAsJsonToo) {
    JobTables tables;
    tables.replace("readings.csv", "T1,4,1.10", "T9,4,1.10");
    const auto run =
        runCommand({"new", folder.file("two.wwj"), "--from", tables.writeTo(folder, "bad"), "--json"});
    EXPECT_EQ(run.status, 2);
    const json document = json::parse(run.out);
    EXPECT_TRUE(document["written"].is_null());
    ASSERT_EQ(document["faults"].size(), 1U);
    EXPECT_EQ(document["faults"][0]["file"], "readings.csv");
    EXPECT_EQ(document["faults"][0]["row"], 2);
    EXPECT_EQ(document["faults"][0]["column"], "tag");
    EXPECT_FALSE(folder.has("two.wwj"));
}

TEST_F(Commands, NewWithoutAFolderIsBadInput) {
    EXPECT_EQ(runCommand({"new", folder.file("two.wwj"), "--from", folder.file("nowhere")}).status, 2);
    EXPECT_FALSE(folder.has("two.wwj"));
}

TEST_F(Commands, NewWhereNothingCanBeWrittenIsFileTrouble) {
    const auto run = runCommand({"new", folder.file("none/job.wwj"), "--from", from});
    EXPECT_EQ(run.status, 3) << run.err;
    EXPECT_FALSE(folder.has("none"));
}

TEST_F(Commands, CheckGivesTheContractsDocument) {
    const auto run = runCommand({"check", file, "--json"});
    EXPECT_LE(run.status, 1);
    EXPECT_EQ(run.err, "");
    const json document = json::parse(run.out);
    expectKeys(document, {"job", "round", "round_kind", "verdict", "total_flow_m3s", "total_design_m3s",
                          "branches", "groups", "index", "findings"});
    EXPECT_EQ(document["job"], "Weir House");
    EXPECT_EQ(document["round"], 2);
    EXPECT_EQ(document["round_kind"], "final");
    const std::set<std::string> verdicts{"accepted", "not_accepted", "undecidable"};
    EXPECT_TRUE(verdicts.contains(document["verdict"]));
    EXPECT_EQ(run.status == 0, document["verdict"] == "accepted");
    ASSERT_EQ(document["branches"].size(), 3U);
    for (const json& branch : document["branches"]) {
        expectKeys(branch, {"tag", "parent", "setting", "fully_open", "dp_Pa", "flow_m3s", "flow_u_m3s",
                            "share", "target_share", "of_target", "of_design", "state"});
    }
    EXPECT_TRUE(document["branches"][0]["parent"].is_null());
    EXPECT_EQ(document["branches"][1]["parent"], "R1");
    EXPECT_NEAR(document["branches"][2]["dp_Pa"], 2.85 * 6894.757293168, 1e-6);  // psi: NIST SP 811
    for (const json& group : document["groups"]) {
        EXPECT_EQ(keysOf(group), (std::set<std::string>{"parent", "reference", "spread"}));
    }
    EXPECT_EQ(keysOf(document["index"]),
              (std::set<std::string>{"tag", "path", "valve_fully_open", "path_fully_open"}));
    for (const json& finding : document["findings"]) {
        EXPECT_EQ(keysOf(finding), (std::set<std::string>{"code", "severity", "subject", "text"}));
    }
}

TEST_F(Commands, CheckTakesARoundByNumber) {
    EXPECT_EQ(json::parse(runCommand({"check", file, "--json", "--round", "1"}).out)["round"], 1);
    const auto run = runCommand({"check", file, "--round", "9"});
    EXPECT_EQ(run.status, 2);
    EXPECT_EQ(run.out, "");
    EXPECT_NE(run.err, "");
}

TEST_F(Commands, CheckSaysIndexAndVerdictInWords) {
    const auto run = runCommand({"check", file});
    EXPECT_NE(run.out.find("Index circuit"), std::string::npos) << run.out;
    EXPECT_NE(run.out.find("Verdict: "), std::string::npos) << run.out;
    EXPECT_NE(run.out.find("gpm"), std::string::npos) << run.out;
}

TEST_F(Commands, RecordAddsOneRound) {
    folder.write("more/readings.csv",
                 "round,kind,tag,setting,dp[psi]\n3,final,T1,2.5,1.3\n3,final,T2,4,2.9\n");
    EXPECT_EQ(runCommand({"record", file, "--from", folder.file("more")}).status, 0);
    EXPECT_EQ(json::parse(runCommand({"check", file, "--json"}).out)["round"], 3);
    folder.write("more/readings.csv", "round,kind,tag,setting,dp[psi]\n1,survey,T1,2.5,1.3\n");
    const std::string before = folder.read("job.wwj");
    const auto run = runCommand({"record", file, "--from", folder.file("more")});
    EXPECT_EQ(run.status, 2);
    EXPECT_TRUE(run.err.starts_with("readings.csv:2:round: ")) << run.err;
    EXPECT_EQ(folder.read("job.wwj"), before);
}

TEST_F(Commands, ExportAndNewGiveAnEqualJob) {
    ASSERT_EQ(runCommand({"export", file, "--csv", folder.file("out")}).status, 0);
    ASSERT_EQ(runCommand({"new", folder.file("two.wwj"), "--from", folder.file("out")}).status, 0);
    ASSERT_EQ(runCommand({"export", file, "--json", folder.file("one.json")}).status, 0);
    ASSERT_EQ(runCommand({"export", folder.file("two.wwj"), "--json", folder.file("two.json")}).status, 0);
    EXPECT_EQ(folder.read("one.json"), folder.read("two.json"));
    const json document = json::parse(folder.read("one.json"));
    EXPECT_EQ(document["rounds"][0]["readings"][0]["dp"]["digits"], "1.10");
    EXPECT_EQ(document["rounds"][0]["readings"][0]["dp"]["unit"], "psi");
}

TEST_F(Commands, ExportWantsExactlyOneTarget) {
    EXPECT_EQ(runCommand({"export", file}).status, 2);
    EXPECT_EQ(runCommand({"export", file, "--csv", folder.file("o"), "--json", folder.file("o.json")}).status,
              2);
    EXPECT_FALSE(folder.has("o"));
    EXPECT_EQ(runCommand({"export", file, "--json", folder.file("none/o.json")}).status, 3);
}

TEST_F(Commands, VerifyTellsIntactFromTouched) {
    const auto good = runCommand({"verify", file, "--json"});
    EXPECT_EQ(good.status, 0);
    const json document = json::parse(good.out);
    expectKeys(document, {"kind", "intact", "journal_records", "first_bad_record", "signatures"});
    EXPECT_EQ(document["kind"], "workbook");
    EXPECT_EQ(document["intact"], true);
    folder.write("other.wwj", "this is no workbook");
    EXPECT_NE(runCommand({"verify", folder.file("other.wwj")}).status, 0);
    EXPECT_EQ(runCommand({"verify", folder.file("nowhere.wwj")}).status, 3);
}

TEST_F(Commands, AMissingOrForeignFileIsFileTrouble) {
    folder.write("other.wwj", "this is no workbook");
    for (const std::string& name : {folder.file("nowhere.wwj"), folder.file("other.wwj")}) {
        for (const std::vector<std::string>& arguments : {std::vector<std::string>{"check", name},
                                                          {"report", name, "--out", folder.file("r.pdf")},
                                                          {"export", name, "--csv", folder.file("o")},
                                                          {"record", name, "--from", from}}) {
            const auto run = runCommand(arguments);
            EXPECT_EQ(run.status, 3) << arguments[0] << " " << run.err;
            EXPECT_EQ(run.out, "");
            EXPECT_NE(run.err, "");
        }
    }
    EXPECT_FALSE(folder.has("nowhere.wwj"));
    EXPECT_FALSE(folder.has("r.pdf"));
    EXPECT_FALSE(folder.has("o"));
}

TEST_F(Commands, ReportGoesWhereItIsTold) {
    EXPECT_EQ(runCommand({"report", file, "--out", folder.file("r.pdf")}).status, 0);
    EXPECT_TRUE(folder.has("r.pdf"));
    EXPECT_EQ(runCommand({"report", file, "--out", folder.file("s.pdf"), "--round", "9"}).status, 2);
    EXPECT_FALSE(folder.has("s.pdf"));
}

TEST(Usage, BadUsageIsStatusTwoAndHelpIsZero) {
    EXPECT_EQ(runCommand({"check"}).status, 2);
    EXPECT_EQ(runCommand({"check", "a.wwj", "--wrong"}).status, 2);
    EXPECT_EQ(runCommand({"new", "a.wwj"}).status, 2);
    EXPECT_EQ(runCommand({"check", "a.wwj", "--round", "two"}).status, 2);
    const auto help = runCommand({"--help"});
    EXPECT_EQ(help.status, 0);
    EXPECT_NE(help.out.find("export"), std::string::npos);
    const auto version = runCommand({"--version"});
    EXPECT_EQ(version.status, 0);
    EXPECT_NE(version.out.find(base::version()), std::string::npos);
    EXPECT_EQ(runCommand({"check", "--help"}).status, 0);
}

TEST_F(Commands, ASpreadsheetGoesOutAndComesBack) {
    const std::string sheet = folder.file("job.xlsx");
    const auto out = runCommand({"export", file, "--xlsx", sheet});
    EXPECT_EQ(out.status, 0) << out.err;
    EXPECT_EQ(out.out, sheet + "\n");
    const std::string again = folder.file("again.wwj");
    ASSERT_EQ(runCommand({"new", again, "--from", sheet}).status, 0);
    for (const std::string& job : {file, again}) {
        ASSERT_EQ(runCommand({"export", job, "--json", job + ".json"}).status, 0);
    }
    EXPECT_EQ(folder.read("again.wwj.json"), folder.read("job.wwj.json"));
    const auto refused = runCommand({"record", again, "--from", sheet, "--json"});
    EXPECT_EQ(refused.status, 2);
    const json document = json::parse(refused.out);
    EXPECT_TRUE(document["written"].is_null());
    ASSERT_FALSE(document["faults"].empty());
    EXPECT_EQ(document["faults"][0]["file"], "job.xlsx");
    EXPECT_EQ(document["faults"][0]["cell"], "readings!A2");
    EXPECT_NE(refused.err.find("job.xlsx:readings!A2: round 1 is closed"), std::string::npos) << refused.err;
}

TEST_F(Commands, AnotherProgramSavesASpreadsheetWithoutLoss) {
    if (std::system("command -v soffice >/dev/null 2>&1") != 0) {
        GTEST_SKIP() << "libreoffice-calc is not installed";
    }
    ASSERT_EQ(runCommand({"export", file, "--xlsx", folder.file("job.xlsx")}).status, 0);
    const std::string convert = "HOME='" + folder.path().string() +
                                "' timeout 100 soffice --headless --convert-to xlsx --outdir '" +
                                folder.file("saved") + "' '" + folder.file("job.xlsx") + "' >/dev/null 2>&1";
    ASSERT_EQ(std::system(convert.c_str()), 0);
    const std::string again = folder.file("again.wwj");
    const auto made = runCommand({"new", again, "--from", folder.file("saved/job.xlsx")});
    ASSERT_EQ(made.status, 0) << made.err;
    for (const std::string& job : {file, again}) {
        ASSERT_EQ(runCommand({"export", job, "--json", job + ".json"}).status, 0);
    }
    EXPECT_EQ(folder.read("again.wwj.json"), folder.read("job.wwj.json"));
}

TEST_F(Commands, ASpreadsheetNeverReplacesAWorkbook) {
    const std::string before = folder.read("job.wwj");
    EXPECT_EQ(runCommand({"export", file, "--xlsx", file}).status, 2);
    EXPECT_EQ(folder.read("job.wwj"), before);
    EXPECT_EQ(runCommand({"export", file, "--xlsx", folder.file("no/such/folder.xlsx")}).status, 3);
}

TEST_F(Commands, RecordTakesOneTableAlone) {
    const std::string table = folder.write(
        "walk sheet.csv", "round,kind,time,tag,setting,dp[psi]\n3,adjusting,2026-03-04T09:00,T1,3.0,1.3\n");
    const auto run = runCommand({"record", file, "--from", table});
    EXPECT_EQ(run.status, 0) << run.err;
    EXPECT_EQ(runCommand({"record", file, "--from", folder.file("none.csv")}).status, 2);
}

}  // namespace
}  // namespace ww::app
