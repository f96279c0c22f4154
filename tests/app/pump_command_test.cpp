// waterwright pump: the decision on a loop of four circuits, computed from the square law H = k Q^2, pump H =
// 60 - 0.0012 Q^2 (ft, gpm; own derivation, exact): 33 ft needed at 100 gpm, 48 ft made.
#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <sstream>

#include "tests/support/command_job.h"
#include "tests/support/job_tables.h"

namespace {

using Json = nlohmann::json;
using ww::support::CommandJob;
using ww::support::CommandRun;
using ww::support::JobTables;
using ww::support::kGpm_m3s;
using ww::support::TemporaryFolder;

constexpr double kHorsepower_W = 745.6999;  // NIST SP 811

std::string textOf(const std::filesystem::path& file) {
    std::ifstream in(file);
    std::stringstream text;
    text << in.rdbuf();
    return text.str();
}

/// The loop with the last circuit as index, its pump at 70 % efficiency with a 2 hp motor, 4000 h a year. The
/// pump's table has its heads times `heads`; the readings stay those of the curve as it is.
std::string tables(const TemporaryFolder& folder, double heads = 1) {
    const std::filesystem::path from = CommandJob::ofLoop("four_circuits_far_index");
    std::filesystem::create_directories(folder.path() / "loop");
    for (const char* file : {"branches.csv", "valves.csv", "readings.csv", "pump_readings.csv"}) {
        folder.write(std::string("loop/") + file, textOf(from / file));
    }
    folder.write("loop/job.csv", textOf(from / "job.csv") + "hours[h/yr],4000\npower_price[1/kWh],0.15\n");
    folder.write("loop/pumps.csv",
                 "tag,running,speed[rpm],impeller[in],motor_power[hp],motor_efficiency[%]\n"
                 "P-1,yes,1750,8.5,2,85\n");
    std::stringstream rows(textOf(from / "pump_curve.csv"));
    std::string curve;
    for (std::string row; std::getline(rows, row);) {
        row.erase(row.find_last_not_of('\r') + 1);
        if (const std::size_t comma = row.rfind(','); heads != 1 && !curve.empty()) {
            row = row.substr(0, comma + 1) + std::to_string(heads * std::stod(row.substr(comma + 1)));
        }
        curve += row + (curve.empty() ? ",efficiency[%]\n" : ",70\n");
    }
    folder.write("loop/pump_curve.csv", curve);
    return folder.file("loop");
}

class PumpCommandTest : public testing::Test {
  protected:
    PumpCommandTest() : m_job(tables(m_folder)) {}
    TemporaryFolder m_folder;
    CommandJob m_job;
};

const Json& optionOf(const Json& document, const std::string& kind) {
    for (const Json& option : document.at("options")) {
        if (option.at("kind") == kind) {
            return option;
        }
    }
    ADD_FAILURE() << "no option " << kind;
    return document;
}

TEST_F(PumpCommandTest, documentOfTheContract) {
    const CommandRun ran = m_job.run("pump", {"--json"});
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_TRUE(ran.err.empty()) << ran.err;
    const Json document = Json::parse(ran.out);
    for (const char* key : {"duty", "required_head_Pa", "excess_head_Pa", "options", "code"}) {
        EXPECT_TRUE(document.contains(key)) << key;
    }
    for (const char* key : {"flow_m3s", "head_Pa", "power_W", "efficiency"}) {
        EXPECT_TRUE(document.at("duty").contains(key)) << key;
    }
    for (const char* key : {"excess_power_W", "limit_W", "decision", "basis"}) {
        EXPECT_TRUE(document.at("code").contains(key)) << key;
    }
    for (const Json& option : document.at("options")) {
        for (const char* key : {"kind", "head_Pa", "power_W", "ratio", "impeller_m", "energy_Wh_per_year",
                                "cost_per_year", "caution"}) {
            EXPECT_TRUE(option.contains(key)) << key;
        }
        EXPECT_LT(std::abs(option.at("confirmed").at("flow_difference").get<double>()), 0.01);
    }
    // 15.0 ft of 48, speed 0.86603, 1.7316 against 1.1905 hp. The readings are rounded to three places, so
    // the loop learned from them is exact to about 0.5 %.
    const double excess_ft = document.at("excess_head_Pa").get<double>() / (999.0 * 9.80665 * 0.3048);
    EXPECT_NEAR(excess_ft, 15.0, 0.2);
    EXPECT_NEAR(optionOf(document, "speed").at("ratio").get<double>(), 0.86603, 0.003);
    EXPECT_NEAR(optionOf(document, "throttle").at("power_W").get<double>() / kHorsepower_W, 1.7316, 0.002);
    EXPECT_NEAR(optionOf(document, "speed").at("power_W").get<double>() / kHorsepower_W, 1.1905, 0.01);
    EXPECT_NEAR(optionOf(document, "trim").at("impeller_m").get<double>() / 0.0254, 7.361, 0.03);
    EXPECT_EQ(document.at("code").at("decision"), "exempt_small_motor");
    // The last round ran at 86.6 % of speed: 100 gpm at 33 ft, nothing left to take away.
    EXPECT_NEAR(document.at("duty").at("flow_m3s").get<double>() / kGpm_m3s, 100, 0.1);
    EXPECT_LT(std::abs(document.at("present_excess_head_Pa").get<double>()), 1000);
    // Each number says what it is counted above.
    EXPECT_EQ(document.at("excess_basis"),
              "above the index circuit with open valves, by the learned loop, at full speed");
    EXPECT_EQ(
        document.at("present_excess_basis"),
        "above the index circuit with open valves, by the learned loop, at the speed of the last round");
    ASSERT_GE(document.at("required").size(), 2U) << "side by side";
}

TEST_F(PumpCommandTest, textForAPerson) {
    const CommandRun ran = m_job.run("pump");
    EXPECT_EQ(ran.status, 0) << ran.err;
    for (const char* words :
         {"Index circuit needs", "Excess head", "above the index circuit with open valves",
          "at full speed, from the pump's curve: the pump decision uses this one", "throttle", "trim",
          "speed", "Read-and-set", "Energy code", "least throttling"}) {
        EXPECT_NE(ran.out.find(words), std::string::npos) << words << "\n" << ran.out;
    }
    EXPECT_EQ(ran.out.find("nan"), std::string::npos);
}

// The gauges contradict a table of a tenth more head: text and document count what they read.
TEST(PumpCommandGaugesTest, theCurveThroughTheGaugesCounts) {
    const TemporaryFolder folder;
    const CommandJob job(tables(folder, 1.1));
    const Json document = job.json("pump");
    EXPECT_EQ(document.at("curve").at("basis"), "through_gauges");
    EXPECT_NEAR(document.at("curve").at("head_factor").get<double>(), 1 / 1.1, 0.002);
    const double excess_ft = document.at("excess_head_Pa").get<double>() / (999.0 * 9.80665 * 0.3048);
    EXPECT_NEAR(excess_ft, 15.0, 0.3);
    EXPECT_NEAR(optionOf(document, "speed").at("ratio").get<double>(), 0.86603, 0.004);
    EXPECT_NEAR(
        document.at("published_head_Pa").get<double>() / document.at("available_head_Pa").get<double>(), 1.1,
        0.002);
    const std::string text = job.run("pump").out;
    for (const char* words :
         {"Curve: at the sum of the flows", "the numbers here rest on the gauges of round",
          "; the curve as published gives", "from the pump's curve through the gauges"}) {
        EXPECT_NE(text.find(words), std::string::npos) << words << "\n" << text;
    }
    EXPECT_EQ(text.find("at full speed, from the pump's curve:"), std::string::npos) << text;
}

TEST(PumpCommandGaugesTest, withoutContradictionTheTableCounts) {
    const TemporaryFolder folder;
    const Json document = CommandJob(tables(folder)).json("pump");
    EXPECT_EQ(document.at("curve").at("basis"), "published");
    EXPECT_EQ(document.at("curve").at("head_factor"), 1.0);
    EXPECT_TRUE(document.at("curve").at("reasons").empty());
}

TEST(PumpCommandBadInputTest, noPumpAndNoFile) {
    const TemporaryFolder folder;
    JobTables stopped;
    stopped.replace("pumps.csv", "P-1,yes", "P-1,no");
    const CommandJob job(stopped.writeTo(folder, "stopped"));
    const CommandRun ran = job.run("pump", {"--json"});
    EXPECT_EQ(ran.status, 2);
    EXPECT_TRUE(ran.out.empty());
    EXPECT_NE(ran.err.find("; "), std::string::npos) << ran.err;
    EXPECT_EQ(ww::support::runCommand({"pump", folder.file("none.wwj")}).status, 3);
}

TEST(PumpCommandBadInputTest, nothingIsInvented) {
    // No losses in the design of the riser's circuits beyond runs, no efficiency: heads stay, powers are
    // null.
    const TemporaryFolder folder;
    const CommandJob job(JobTables().writeTo(folder));
    const Json document = job.json("pump");
    for (const Json& option : document.at("options")) {
        EXPECT_TRUE(option.at("power_W").is_null());
        EXPECT_TRUE(option.at("energy_Wh_per_year").is_null());
    }
    EXPECT_TRUE(document.at("duty").at("efficiency").is_null());
}

}  // namespace
