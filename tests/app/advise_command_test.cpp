// waterwright advise: settings from the survey of a loop of four circuits, computed from the square law H = k
// Q^2, pump H = 60 - 0.0012 Q^2 (ft, gpm; own derivation, exact).
#include <gtest/gtest.h>

#include <sstream>

#include "tests/support/command_job.h"
#include "tests/support/job_tables.h"

namespace {

using Json = nlohmann::json;
using ww::support::CommandJob;
using ww::support::CommandRun;
using ww::support::kGpm_m3s;

CommandJob farIndex() {
    return CommandJob(CommandJob::ofLoop("four_circuits_far_index"));
}

const Json& settingOf(const Json& document, const std::string& tag) {
    for (const Json& setting : document.at("settings")) {
        if (setting.at("tag") == tag) {
            return setting;
        }
    }
    ADD_FAILURE() << "no setting for " << tag;
    return document;
}

TEST(AdviseCommandTest, GivesTheDocumentOfTheContract) {
    const CommandJob job = farIndex();
    const CommandRun ran = job.run("advise", {"--json"});
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_TRUE(ran.err.empty()) << ran.err;
    const Json document = Json::parse(ran.out);
    for (const char* key : {"ready", "why_not", "settings", "next", "doubtful", "after"}) {
        EXPECT_TRUE(document.contains(key)) << key;
    }
    EXPECT_TRUE(document.at("ready").get<bool>()) << document.at("why_not");
    EXPECT_TRUE(document.at("why_not").is_null());
    ASSERT_EQ(document.at("settings").size(), 4U);
    for (const Json& setting : document.at("settings")) {
        for (const char* key : {"tag", "setting", "cv", "fully_open", "dp_Pa_at_target", "setting_u",
                                "expected_of_target", "expected_of_target_u"}) {
            EXPECT_TRUE(setting.contains(key)) << key;
        }
        EXPECT_NEAR(setting.at("expected_of_target").get<double>(), 1.0, 0.05) << setting;
    }
    EXPECT_TRUE(settingOf(document, "T4").at("fully_open").get<bool>());
    EXPECT_FALSE(settingOf(document, "T1").at("fully_open").get<bool>());
    EXPECT_TRUE(document.at("doubtful").empty()) << document.at("doubtful");
    EXPECT_TRUE(document.at("after").contains("spread"));
    // The last round was read at 86.6 % of speed, balanced: 100 gpm at 33 ft.
    EXPECT_NEAR(document.at("after").at("total_flow_m3s").get<double>() / kGpm_m3s, 100, 1.5);
}

TEST(AdviseCommandTest, TextSaysThatItIsNoReading) {
    const CommandRun ran = farIndex().run("advise");
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_NE(ran.out.find("not a reading"), std::string::npos) << ran.out;
    EXPECT_NE(ran.out.find("T4"), std::string::npos) << ran.out;
}

// One pump, one set of figures: those of its decision.
TEST(AdviseCommandTest, thePumpHasTheFiguresOfItsDecision) {
    const CommandJob job = farIndex();
    const std::string advised = job.run("advise").out;
    std::istringstream pump(job.run("pump").out);
    int told = 0;
    for (std::string line; std::getline(pump, line);) {
        if (line.find("Index circuit needs") == 0 || line.find("Excess head") == 0 ||
            line.find("At full speed the pump makes") == 0) {
            EXPECT_NE(advised.find(line), std::string::npos) << line << "\n" << advised;
            ++told;
        }
    }
    EXPECT_GE(told, 3);
    EXPECT_EQ(advised.find("needed at design flow"), std::string::npos) << advised;
    const Json decision = job.json("advise").at("pump_decision");
    const Json document = job.json("pump");
    for (const char* key : {"required_head_Pa", "available_head_Pa", "excess_head_Pa", "excess_basis"}) {
        EXPECT_EQ(decision.at(key), document.at(key)) << key;
    }
}

TEST(AdviseCommandTest, WithoutReadingsItIsNotReadyAndSaysWhy) {
    ww::support::JobTables tables;
    const std::string header = tables.at("readings.csv").substr(0, tables.at("readings.csv").find('\n') + 1);
    tables.put("readings.csv", header);
    tables.remove("pump_readings.csv");
    const ww::support::TemporaryFolder folder;
    const CommandJob job(tables.writeTo(folder));
    const Json document = job.json("advise");
    EXPECT_FALSE(document.at("ready").get<bool>());
    EXPECT_TRUE(document.at("why_not").is_string());
    EXPECT_TRUE(document.at("settings").is_array());
}

TEST(AdviseCommandTest, AFileThatIsNotThereIsFileTrouble) {
    const CommandRun ran = ww::support::runCommand({"advise", "/nowhere/job.wwj", "--json"});
    EXPECT_EQ(ran.status, 3);
}

}  // namespace
