// Two loops that are exact by construction (every loss is H = k Q^2, so the flows follow from the square law
// alone; own derivation): tables in, flows out of `check --json`, round by round. In the first the far
// circuit is the index, in the second the near one. Expected figures are percent of design flow of that
// solution.
#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <nlohmann/json.hpp>

#include "tests/support/command_run.h"
#include "tests/support/temporary_folder.h"

namespace ww::app {
namespace {

constexpr double kCubicMetrePerSecondPerGpm = 3.785411784e-3 / 60;  // US gallon: 231 in3, exact (NIST SP 811)
constexpr std::array<double, 4> kDesign_gpm{20, 30, 25, 25};

struct Expected {
    std::array<double, 4> ofDesign;  ///< percent
    double total_gpm;
};

void expectRounds(const char* folderName, const std::vector<Expected>& rounds, const char* index) {
    const support::TemporaryFolder folder;
    const std::string file = folder.file("job.wwj");
    const std::string from = std::string(WW_SOURCE_DIR) + "/tests/data/" + folderName;
    ASSERT_EQ(support::runCommand({"new", file, "--from", from}).status, 0);
    for (std::size_t round = 0; round < rounds.size(); ++round) {
        SCOPED_TRACE("round " + std::to_string(round + 1));
        const auto run = support::runCommand({"check", file, "--json", "--round", std::to_string(round + 1)});
        ASSERT_LE(run.status, 1) << run.err;
        const auto document = nlohmann::json::parse(run.out);
        ASSERT_EQ(document["branches"].size(), 4U);
        for (std::size_t i = 0; i < 4; ++i) {
            const double flow_gpm =
                document["branches"][i]["flow_m3s"].get<double>() / kCubicMetrePerSecondPerGpm;
            const double expected_gpm = kDesign_gpm[i] * rounds[round].ofDesign[i] / 100;
            EXPECT_NEAR(flow_gpm, expected_gpm, 0.0005 * expected_gpm) << i;
        }
        const double total_gpm = document["total_flow_m3s"].get<double>() / kCubicMetrePerSecondPerGpm;
        EXPECT_NEAR(total_gpm, rounds[round].total_gpm, 0.0005 * rounds[round].total_gpm);
        EXPECT_EQ(document["index"]["tag"], index);
    }
}

TEST(NetworkTables, FarIndexComesOutRoundByRound) {
    expectRounds("four_circuits_far_index",
                 {{{153.73, 123.06, 131.57, 100.91}, 125.780},
                  {{156.98, 127.25, 107.55, 107.55}, 123.344},
                  {{160.20, 110.99, 110.99, 110.99}, 120.834},
                  {{115.47, 115.47, 115.47, 115.47}, 115.470},
                  {{100, 100, 100, 100}, 100.000}},
                 "T4");
}

TEST(NetworkTables, NearIndexComesOutRoundByRound) {
    expectRounds("four_circuits_near_index",
                 {{{97.83, 132.91, 138.82, 138.82}, 128.848},
                  {{101.21, 140.00, 150.39, 101.21}, 125.141},
                  {{105.63, 149.07, 105.63, 110.64}, 119.914},
                  {{110.79, 110.79, 112.94, 118.29}, 113.204},
                  {{100, 100, 100, 100}, 100.000}},
                 "T1");
}

}  // namespace
}  // namespace ww::app
