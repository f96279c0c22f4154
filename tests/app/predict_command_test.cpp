// waterwright predict: other states of a loop, and what cannot be.
// The loops of four circuits are computed from the square law H = k Q², pump H = 60 − 0.0012 Q² (ft, gpm);
// own derivation, exact.
#include <gtest/gtest.h>

#include "core/fluid/fluid.h"
#include "tests/support/command_job.h"
#include "tests/support/job_tables.h"

namespace {

using Json = nlohmann::json;
using ww::support::CommandJob;
using ww::support::CommandRun;
using ww::support::JobTables;
using ww::support::kGpm_m3s;
using ww::support::runCommand;
using ww::support::TemporaryFolder;
using Arguments = std::vector<std::string>;

/// The stated accuracy of the exact loops, of flow.
constexpr double kTolerance = 5e-4;

/// What Newton's law and the water of the loops (60 °F) make of one foot of head.
double pascalPerFoot() {
    using namespace ww::quantity;
    const auto water = ww::fluid::Fluid::make(ww::fluid::FluidKind::Water, Ratio::si(0),
                                              Temperature::from(60, Unit::Fahrenheit));
    return water->density().si() * 9.80665 * 0.3048;
}

CommandJob farIndex() {
    return CommandJob(CommandJob::ofLoop("four_circuits_far_index"));
}
CommandJob nearIndex() {
    return CommandJob(CommandJob::ofLoop("four_circuits_near_index"));
}

void expectFlow(const Json& branch, double expected_gpm) {
    EXPECT_NEAR(branch.at("flow_m3s").get<double>() / kGpm_m3s, expected_gpm, kTolerance * expected_gpm)
        << branch.at("tag");
}

void expectOfDesign(const Json& branch, double expected_percent) {
    EXPECT_NEAR(100 * branch.at("of_design").get<double>(), expected_percent, kTolerance * expected_percent)
        << branch.at("tag");
}

void expectKeys(const Json& object, std::initializer_list<const char*> keys) {
    for (const char* key : keys) {
        EXPECT_TRUE(object.contains(key)) << "no \"" << key << "\" in " << object;
    }
}

/// The loop in another state, from the settings of its last round (T1, T2, T3 throttled, 86.6 % speed).
struct State {
    const char* what;
    Arguments arguments;
    double flows_gpm[4];
    double total_gpm;
    double head_ft;
};

TEST(PredictCommandTest, FarIndexInOtherStates) {
    const State kStates[] = {
        {"survey",
         {"--set", "T1=4", "--set", "T2=4", "--set", "T3=4", "--speed", "100"},
         {30.746, 36.918, 32.891, 25.228},
         125.780,
         41.015},
        {"T3 set",
         {"--set", "T1=4", "--set", "T2=4", "--speed", "100"},
         {31.40, 38.17, 26.89, 26.89},
         123.344,
         41.743},
        {"T2 and T3 set", {"--set", "T1=4", "--speed", "100"}, {32.04, 33.30, 27.75, 27.75}, 120.834, 42.479},
        {"all set", {"--speed", "100"}, {23.094, 34.641, 28.868, 28.868}, 115.470, 44.000},
        {"all set, slower", {"--speed", "86.603"}, {20, 30, 25, 25}, 100.000, 33.000},
        {"T1 closed", {"--close", "T1", "--speed", "100"}, {0, 37.797, 31.4975, 31.4975}, 100.792, 0},
        {"T4 closed", {"--close", "T4", "--speed", "100"}, {25.262, 39.480, 35.5375, 0}, 100.280, 0}};
    const CommandJob job = farIndex();
    for (const State& state : kStates) {
        SCOPED_TRACE(state.what);
        const Json json = job.json("predict", state.arguments);
        expectKeys(json, {"converged", "iterations", "residual", "pump", "branches"});
        expectKeys(json.at("pump"), {"flow_m3s", "head_Pa", "speed_fraction"});
        EXPECT_TRUE(json.at("converged").get<bool>());
        ASSERT_EQ(json.at("branches").size(), 4U);
        for (std::size_t i = 0; i < 4; ++i) {
            expectKeys(json.at("branches")[i],
                       {"tag", "flow_m3s", "share", "of_target", "of_design", "dp_valve_Pa"});
            expectFlow(json.at("branches")[i], state.flows_gpm[i]);
        }
        EXPECT_NEAR(json.at("pump").at("flow_m3s").get<double>() / kGpm_m3s, state.total_gpm,
                    kTolerance * state.total_gpm);
        if (state.head_ft > 0) {
            EXPECT_NEAR(json.at("pump").at("head_Pa").get<double>() / pascalPerFoot(), state.head_ft,
                        1e-3 * state.head_ft);
        }
    }
}

TEST(PredictCommandTest, NearIndexWithItsExactSettings) {
    const Json json = nearIndex().json("predict", {"--speed", "89.443"});
    for (const Json& branch : json.at("branches")) {
        expectOfDesign(branch, 100);
    }
    EXPECT_NEAR(json.at("pump").at("head_Pa").get<double>() / pascalPerFoot(), 36.0, 0.036);
}

TEST(PredictCommandTest, TextNamesItselfAPrediction) {
    const CommandRun ran = farIndex().run("predict", {"--speed", "86.603"});
    EXPECT_EQ(ran.status, 0);
    EXPECT_NE(ran.out.find("not a reading"), std::string::npos) << ran.out;
    EXPECT_NE(ran.out.find("100.0 gpm at 33.0"), std::string::npos) << ran.out;
}

TEST(PredictCommandTest, EverythingClosedDeadHeadsThePump) {
    const CommandJob job = farIndex();
    const Arguments closed{"--close", "T1",      "--close", "T2",      "--close",
                           "T3",      "--close", "T4",      "--speed", "100"};
    const Json json = job.json("predict", closed);
    EXPECT_TRUE(json.at("converged").get<bool>());
    EXPECT_TRUE(json.at("residual").is_number());
    EXPECT_EQ(json.at("pump").at("flow_m3s"), 0.0);
    // Shutoff: 60 ft.
    EXPECT_NEAR(json.at("pump").at("head_Pa").get<double>() / pascalPerFoot(), 60.0, 0.06);
    for (const Json& branch : json.at("branches")) {
        EXPECT_EQ(branch.at("flow_m3s"), 0.0);
        EXPECT_EQ(branch.at("of_design"), 0.0);
        EXPECT_TRUE(branch.at("share").is_null());
        EXPECT_TRUE(branch.at("of_target").is_null());
    }
    const CommandRun text = job.run("predict", closed);
    EXPECT_EQ(text.status, 0);
    EXPECT_EQ(text.out.find("nan"), std::string::npos) << text.out;
    EXPECT_EQ(text.out.find("inf"), std::string::npos) << text.out;
}

TEST(PredictCommandTest, PumpThatStands) {
    const Json json = farIndex().json("predict", {"--speed", "0"});
    EXPECT_EQ(json.at("pump").at("flow_m3s"), 0.0);
    EXPECT_EQ(json.at("pump").at("head_Pa"), 0.0);
    for (const Json& branch : json.at("branches")) {
        EXPECT_EQ(branch.at("flow_m3s"), 0.0);
    }
}

TEST(PredictCommandTest, ImpellerInInchesAndMillimetres) {
    const TemporaryFolder folder;
    const CommandJob job(JobTables().writeTo(folder));
    const auto shutoff = [&](const char* impeller) {
        Arguments arguments{"--close", "R1"};
        if (*impeller != '\0') {
            arguments.insert(arguments.end(), {"--impeller", impeller});
        }
        return job.json("predict", arguments).at("pump").at("head_Pa").get<double>();
    };
    // Affinity of a trimmed impeller: head goes with the square of the diameter (common practice, no source).
    EXPECT_NEAR(shutoff("6in") / shutoff(""), (6.0 / 6.5) * (6.0 / 6.5), 1e-6);
    EXPECT_NEAR(shutoff("152.4") / shutoff("6in"), 1, 1e-12);
    EXPECT_NEAR(shutoff("152.4mm") / shutoff("6in"), 1, 1e-12);
}

TEST(PredictCommandTest, WhatCannotBe) {
    struct Refused {
        Arguments arguments;
        const char* says;
    };
    const Refused kRefused[] = {{{"--set", "T9=2"}, "\"T9\" is no branch"},
                                {{"--close", "T9"}, "\"T9\" is no branch"},
                                {{"--set", "T1"}, "TAG=SETTING"},
                                {{"--set", "T1=open"}, "TAG=SETTING"},
                                {{"--set", "R1=2"}, "no valve"},
                                {{"--set", "T1=4.5"}, "1.0 to 4.0"},
                                {{"--set", "T1=-1"}, "1.0 to 4.0"},
                                {{"--speed", "300"}, "0 to 120"},
                                {{"--speed=-5"}, "0 to 120"},
                                {{"--speed", "fast"}, "0 to 120"},
                                {{"--impeller", "20in"}, "no impeller"},
                                {{"--impeller", "1in"}, "no impeller"},
                                {{"--impeller", "large"}, "no impeller"}};
    const TemporaryFolder folder;
    const CommandJob job(JobTables().writeTo(folder));
    for (const Refused& refused : kRefused) {
        SCOPED_TRACE(refused.arguments.back());
        const CommandRun ran = job.run("predict", refused.arguments);
        EXPECT_EQ(ran.status, 2);
        EXPECT_EQ(ran.out, "");
        EXPECT_NE(ran.err.find(refused.says), std::string::npos) << ran.err;
        EXPECT_NE(ran.err.find("; "), std::string::npos) << ran.err;
    }
    const CommandRun both = job.run("predict", {"--set", "T9=2", "--speed", "300"});
    EXPECT_NE(both.err.find("T9"), std::string::npos);
    EXPECT_NE(both.err.find("300"), std::string::npos) << "all faults are told";
    EXPECT_EQ(farIndex().run("predict", {"--impeller", "5in"}).status, 2) << "no impeller is known there";
}

}  // namespace
