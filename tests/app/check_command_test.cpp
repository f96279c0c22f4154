// waterwright check: verdict, index circuit and spread of each round; digits as typed.
// The loops of four circuits are computed from the square law H = k Q², pump H = 60 − 0.0012 Q² (ft, gpm);
// own derivation, exact.
#include <gtest/gtest.h>

#include "tests/support/command_job.h"
#include "tests/support/job_tables.h"

namespace {

using Json = nlohmann::json;
using ww::support::CommandJob;
using ww::support::CommandRun;
using ww::support::JobTables;
using ww::support::runCommand;
using ww::support::TemporaryFolder;
using Arguments = std::vector<std::string>;

CommandJob farIndex() {
    return CommandJob(CommandJob::ofLoop("four_circuits_far_index"));
}
CommandJob nearIndex() {
    return CommandJob(CommandJob::ofLoop("four_circuits_near_index"));
}

TEST(CheckCommandTest, FarIndexIsAcceptedOnceItsCircuitsAreMatched) {
    // Spread of each round from the exact flows over the exact total, of target.
    static constexpr double kSpreads[] = {(1.5373 - 1.0091) / 1.25780, (1.5698 - 1.0755) / 1.23344,
                                          (1.6020 - 1.1099) / 1.20834, 0, 0};
    const CommandJob job = farIndex();
    for (int number = 1; number <= 5; ++number) {
        SCOPED_TRACE(number);
        const Arguments round{"--round", std::to_string(number)};
        const Json json = job.json("check", round);
        EXPECT_NEAR(json.at("spread").get<double>(), kSpreads[number - 1], 1e-3);
        EXPECT_EQ(json.at("index").at("path"), Json::array({"T4"}));
        EXPECT_TRUE(json.at("index").at("valve_fully_open").get<bool>());
        EXPECT_TRUE(json.at("index").at("path_fully_open").get<bool>());
        EXPECT_EQ(json.at("groups").at(0).at("reference"), "T4");
        // A round that still adjusts is judged by shares alone: in the fourth they are right, 15 % above
        // design.
        EXPECT_EQ(json.at("verdict"), number >= 4 ? "accepted" : "not_accepted");
        EXPECT_EQ(job.run("check", round).status, number >= 4 ? 0 : 1);
    }
}

TEST(CheckCommandTest, NearIndexStaysSpreadAfterOnePass) {
    const CommandJob job = nearIndex();
    const Json onePass = job.json("check", {"--round", "4"});
    // T4 above T1: one pass in which each circuit is matched to the first leaves the last ones behind.
    EXPECT_NEAR(onePass.at("spread").get<double>(), (1.1829 - 1.1079) / 1.13204, 1e-3);
    // Yet none is more than 5 % off its target share, the band of this job.
    EXPECT_NEAR(onePass.at("branches")[3].at("of_target").get<double>(), 1.1829 / 1.13204, 1e-3);
    EXPECT_EQ(onePass.at("verdict"), "accepted");
    const Json exact = job.json("check", {"--round", "5"});
    EXPECT_NEAR(exact.at("spread").get<double>(), 0, 1e-3);
    EXPECT_EQ(exact.at("index").at("tag"), "T1");
    EXPECT_EQ(exact.at("verdict"), "accepted");
}

TEST(CheckCommandTest, ErrorsGoToStandardErrorAlone) {
    const CommandRun ran = farIndex().run("check", {"--round", "9", "--json"});
    EXPECT_EQ(ran.status, 2);
    EXPECT_EQ(ran.out, "");
    EXPECT_NE(ran.err.find("no round 9; "), std::string::npos) << ran.err;
}

TEST(CheckCommandTest, TextShowsDigitsAsTyped) {
    const CommandRun survey = farIndex().run("check", {"--round", "1"});
    EXPECT_NE(survey.out.find("6.565"), std::string::npos) << survey.out;
    EXPECT_NE(survey.out.find("Verdict: not accepted"), std::string::npos);
    JobTables tables;
    tables.replace("readings.csv", "T1,3.0,1.20", "T1,3.00,1.20");
    tables.replace("readings.csv", "T2,4,2.85", "T2,4,19.65 kPa");
    const TemporaryFolder folder;
    const CommandRun typed = CommandJob(tables.writeTo(folder)).run("check");
    EXPECT_NE(typed.out.find(" 3.00 "), std::string::npos) << typed.out;
    EXPECT_NE(typed.out.find(" 1.20 "), std::string::npos);
    // 19.65 kPa are 2.850 psi (6.894757 kPa each, NIST SP 811); the column is in psi.
    EXPECT_NE(typed.out.find(" 2.85 "), std::string::npos);
}

TEST(CheckCommandTest, ABranchThatCameLaterIsNoPartOfAClosedRound) {
    JobTables tables;
    tables.append("branches.csv", "T3,R1,attic,manual,6,2,8,V,1,4\n");
    tables.put("rounds.csv",
               "round,kind,state,opened,closed,tolerance_low[%],tolerance_high[%],matching_band[%]\n"
               "1,survey,closed,,,,,\n2,final,closed,,,-10,10,3\n");
    tables.put("earlier_designs.csv",
               "round,tag,in_loop,design_flow[gpm]\n1,T3,no,\n2,T3,no,\n1,R1,yes,30\n2,R1,yes,30\n");
    tables.replace("branches.csv", "R1,,riser,none,30", "R1,,riser,none,36");
    const TemporaryFolder folder;
    const CommandJob job(tables.writeTo(folder));
    EXPECT_EQ(job.run("verify").status, 0);
    const Json json = job.json("check", {"--round", "2"});
    EXPECT_NEAR(json.at("total_design_m3s").get<double>(), 30 * 6.30902e-5, 1e-7);
    EXPECT_EQ(json.at("branches").back().at("tag"), "T3");
    EXPECT_EQ(json.at("branches").back().at("in_loop"), false);
    ASSERT_EQ(json.at("changed_since").size(), 3u);
    EXPECT_EQ(json.at("changed_since")[0].at("code"), "branches_added_after_round");
    EXPECT_EQ(json.at("changed_since")[1].at("code"), "design_changed_after_round");
    EXPECT_EQ(json.at("changed_since")[2].at("code"), "limits_changed_after_round");
    const CommandRun text = job.run("check", {"--round", "2"});
    EXPECT_NE(text.out.find("of 2 terminals"), std::string::npos) << text.out;
    EXPECT_NE(text.out.find("added later"), std::string::npos) << text.out;
    EXPECT_NE(text.out.find("Changed since\n  branches added after round 2 was closed: T3 6 gpm"),
              std::string::npos)
        << text.out;
    EXPECT_EQ(job.run("export", {"--csv", folder.file("out")}).status, 0);
    EXPECT_EQ(CommandJob(folder.file("out")).json("check"), job.json("check"));
}

TEST(CheckCommandTest, LimiterKnownByItsRangeAlone) {
    JobTables tables;
    tables.replace("valves.csv", "V,1,turns,4,12,0.3,5\n", "V,1,turns,4,12,0.3,5\nL,15,,,,2.0,\n");
    tables.replace("branches.csv", "T1,R1,office,manual,12,2,8,V,1,4", "T1,R1,office,limiter,12,2,8,L,15,");
    tables.replace("readings.csv", "T1,4,1.10", "T1,,1.10");
    tables.replace("readings.csv", "T1,3.0,1.20", "T1,,5.20");
    const TemporaryFolder folder;
    const CommandJob job(tables.writeTo(folder));
    EXPECT_EQ(job.run("verify").status, 0);
    const auto stateOfLimiter = [&](const char* round) {
        const Json json = job.json("check", {"--round", round});
        for (const Json& branch : json.at("branches")) {
            if (branch.at("tag") == "T1") {
                EXPECT_EQ(branch.at("self_acting"), true);
                return branch.at("state").get<std::string>();
            }
        }
        return std::string();
    };
    // 1.10 psi lies below the 2.0 psi from which it holds its flow, 5.20 psi above.
    EXPECT_EQ(stateOfLimiter("1"), "short");
    EXPECT_EQ(stateOfLimiter("2"), "on_share");
    EXPECT_EQ(job.run("predict").status, 0) << job.run("predict").err;
    EXPECT_EQ(job.run("report", {"--out", folder.file("r.pdf")}).status, 0);
    EXPECT_EQ(job.run("export", {"--csv", folder.file("out")}).status, 0);
    const CommandJob again(folder.file("out"));
    EXPECT_EQ(again.json("check"), job.json("check"));
}

}  // namespace
