// The two sample jobs through the commands, held against the hidden loop that their readings come from.
// Source of every expected value: sample_projects/*_truth.csv, solved apart from the program by
// sample_projects/loop_model.py (square law, Newton's method); verdicts and states follow from those flows.
#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <cstdlib>
#include <fstream>
#include <map>
#include <nlohmann/json.hpp>
#include <regex>
#include <sstream>

#include "app/commands/run_commands.h"
#include "core/fluid/fluid.h"
#include "tests/support/counting_ids.h"
#include "tests/support/fixed_clock.h"
#include "tests/support/temporary_folder.h"

namespace {

using Json = nlohmann::json;
using ww::support::TemporaryFolder;

const std::filesystem::path kSamples = std::filesystem::path(WW_SOURCE_DIR) / "sample_projects";

struct Answer {
    int status = 0;
    std::string out;
    std::string err;
};

Answer run(const std::vector<std::string>& arguments) {
    std::ostringstream out;
    std::ostringstream err;
    ww::support::FixedClock clock;
    ww::support::CountingIds ids;
    ww::app::Surroundings surroundings{out, err, clock, ids, "Test", "test", {}};
    const int status = ww::app::runCommands(arguments, surroundings);
    return {status, out.str(), err.str()};
}

std::string bytesOf(const std::filesystem::path& path) {
    std::ifstream stream(path, std::ios::binary);
    EXPECT_TRUE(stream) << path;
    return std::string(std::istreambuf_iterator<char>(stream), {});
}

/// A workbook made from a sample, and what `check` says about its rounds.
class Sample {
  public:
    explicit Sample(std::string name) : m_name(std::move(name)), m_file(m_folder.file("job.wwj")) {
        const Answer made = run({"new", m_file, "--from", (kSamples / m_name).string()});
        EXPECT_EQ(made.status, 0) << made.err;
        readTruth();
    }

    int statusOf(int round) const { return check(round).status; }
    Json round(int number) const {
        const Answer answer = check(number);
        const Json json = Json::parse(answer.out, nullptr, false);
        EXPECT_FALSE(json.is_discarded()) << answer.out << answer.err;
        return json;
    }
    /// True flow, m3/s.
    double trueFlow(int round, const std::string& tag) const { return m_flows_m3h.at({round, tag}) / 3600; }

  private:
    Answer check(int round) const {
        return run({"check", m_file, "--round", std::to_string(round), "--json"});
    }
    void readTruth() {
        std::istringstream lines(bytesOf(kSamples / (m_name + "_truth.csv")));
        std::string line;
        std::getline(lines, line);
        while (std::getline(lines, line)) {
            std::istringstream cells(line);
            std::array<std::string, 4> cell;
            for (std::string& text : cell) {
                std::getline(cells, text, ',');
            }
            m_flows_m3h[{std::stoi(cell[0]), cell[1]}] = std::stod(cell[2]);
        }
    }

    std::string m_name;
    TemporaryFolder m_folder;
    std::string m_file;
    std::map<std::pair<int, std::string>, double> m_flows_m3h;
};

Json branchOf(const Json& round, const std::string& tag) {
    for (const Json& branch : round.at("branches")) {
        if (branch.at("tag") == tag) {
            return branch;
        }
    }
    ADD_FAILURE() << "no branch " << tag;
    return {};
}

bool hasFinding(const Json& round, const std::string& code, const std::string& subject) {
    for (const Json& finding : round.at("findings")) {
        if (finding.at("code") == code && finding.at("subject") == subject) {
            return true;
        }
    }
    return false;
}

/// Every flow lies within three standard uncertainties of the truth, and most within one and a half: the
/// stated uncertainties are neither too small nor idle.
void expectTrueFlows(const Sample& sample, int rounds) {
    int count = 0;
    int near = 0;
    for (int number = 1; number <= rounds; ++number) {
        const Json round = sample.round(number);
        for (const Json& branch : round.at("branches")) {
            const std::string tag = branch.at("tag");
            const double off = branch.at("flow_m3s").get<double>() - sample.trueFlow(number, tag);
            const double u = branch.at("flow_u_m3s").get<double>();
            EXPECT_LE(std::abs(off), 3 * u) << "round " << number << ", " << tag;
            ++count;
            near += std::abs(off) <= 1.5 * u ? 1 : 0;
        }
    }
    EXPECT_GE(near, 0.85 * count);
}

TEST(SamplesTest, LibraryFlowsAgreeWithTheLoopBehindThem) {
    expectTrueFlows(Sample("library_heating"), 4);
}

TEST(SamplesTest, ClinicFlowsAgreeWithTheLoopBehindThem) {
    expectTrueFlows(Sample("clinic_cooling"), 3);
}

TEST(SamplesTest, LibraryIsAcceptedInItsLastRoundOnly) {
    const Sample sample("library_heating");
    for (int number = 1; number <= 4; ++number) {
        const Json round = sample.round(number);
        EXPECT_EQ(sample.statusOf(number), number == 4 ? 0 : 1);
        EXPECT_EQ(round.at("verdict"), number == 4 ? "accepted" : "not_accepted") << number;
        EXPECT_EQ(round.at("index").at("tag"), "C5") << number;
        EXPECT_TRUE(round.at("index").at("valve_fully_open").get<bool>()) << number;
    }
}

TEST(SamplesTest, LibraryStatesTellTheStoryOfTheWrongReference) {
    const Sample sample("library_heating");
    const Json matchedToLast = sample.round(2);
    for (const Json& branch : matchedToLast.at("branches")) {
        const std::string tag = branch.at("tag");
        EXPECT_EQ(branch.at("state"), tag == "C5" ? "at_stop" : "on_share") << tag;
    }
    const Json half = sample.round(3);
    EXPECT_EQ(branchOf(half, "C1").at("state"), "drifted");
    EXPECT_EQ(branchOf(half, "C2").at("state"), "drifted");
    const Json final = sample.round(4);
    for (const Json& branch : final.at("branches")) {
        EXPECT_EQ(branch.at("state"), "on_share") << branch.at("tag");
    }
    EXPECT_LT(final.at("groups").at(0).at("spread").get<double>(), 0.05);
    EXPECT_NEAR(final.at("total_flow_m3s").get<double>() / final.at("total_design_m3s").get<double>(), 1,
                0.02);
    EXPECT_TRUE(final.at("findings").empty()) << final.at("findings");
}

TEST(SamplesTest, ClinicIsNotFinished) {
    const Sample sample("clinic_cooling");
    for (int number = 1; number <= 3; ++number) {
        const Json round = sample.round(number);
        EXPECT_EQ(sample.statusOf(number), 1);
        EXPECT_EQ(round.at("verdict"), "not_accepted");
        EXPECT_EQ(branchOf(round, "A7").at("state"), number < 3 ? "at_stop" : "doubtful")
            << "a round is closed with a reason for what is in doubt";
        EXPECT_TRUE(hasFinding(round, "dp_under_readable", "A7"));
        EXPECT_EQ(branchOf(round, "B5").at("state"), "on_share");
        EXPECT_TRUE(hasFinding(round, "self_acting_in_group", "B5"));
        EXPECT_TRUE(round.at("index").at("path_fully_open").get<bool>());
    }
    EXPECT_EQ(sample.round(1).at("index").at("path"), (Json{"RC", "CX", "X3"}));
    EXPECT_EQ(sample.round(3).at("index").at("path"), (Json{"RC", "CX", "X3"}));
}

TEST(SamplesTest, ClinicGroupsThatWereMatchedAreTight) {
    const Json round = Sample("clinic_cooling").round(3);
    std::map<std::string, double> spreads;
    for (const Json& group : round.at("groups")) {
        spreads[group.at("parent").is_null() ? "" : group.at("parent").get<std::string>()] =
            group.at("spread");
    }
    ASSERT_EQ(spreads.size(), 5U);
    for (const char* matched : {"RB", "RC", "CX"}) {
        EXPECT_LE(spreads.at(matched), 0.05) << matched;
    }
    EXPECT_GT(spreads.at("RA"), 0.3);
    EXPECT_GT(spreads.at(""), 0.1);
}

/// The density that the script took, kg/m3.
double densityOfScript(const std::string& name) {
    const std::string script = bytesOf(kSamples / "make_samples.py");
    std::smatch found;
    return std::regex_search(script, found, std::regex(name + " = ([0-9.]+)")) ? std::stod(found[1]) : 0;
}

TEST(SamplesTest, TheScriptTakesTheDensitiesOfTheProgram) {
    using ww::quantity::Ratio;
    using ww::quantity::Temperature;
    using ww::quantity::Unit;
    const auto water = ww::fluid::Fluid::make(ww::fluid::FluidKind::Water, Ratio::si(0),
                                              Temperature::from(170, Unit::Fahrenheit));
    const auto glycol = ww::fluid::Fluid::make(ww::fluid::FluidKind::PropyleneGlycol, Ratio::si(0.3),
                                               Temperature::from(7, Unit::Celsius));
    ASSERT_TRUE(water && glycol);
    EXPECT_NEAR(densityOfScript("WATER_170F"), water->density().si(), 1e-3);
    EXPECT_NEAR(densityOfScript("GLYCOL_30_7C"), glycol->density().si(), 1e-3);
}

TEST(SamplesTest, ExportedTablesMakeAnEqualJob) {
    for (const char* name : {"library_heating", "clinic_cooling"}) {
        const TemporaryFolder folder;
        const auto make = [&](const std::string& from, const std::string& to) {
            const std::string file = folder.file(to + ".wwj");
            EXPECT_EQ(run({"new", file, "--from", from}).status, 0) << name;
            EXPECT_EQ(run({"export", file, "--csv", folder.file(to)}).status, 0) << name;
            return run({"check", file, "--json"}).out;
        };
        const std::string first = make((kSamples / name).string(), "first");
        const std::string second = make(folder.file("first"), "second");
        EXPECT_EQ(first, second) << name;
        int compared = 0;
        for (const auto& entry : std::filesystem::directory_iterator(folder.path() / "first")) {
            const std::string table = entry.path().filename().string();
            EXPECT_EQ(folder.read("first/" + table), folder.read("second/" + table)) << name << ", " << table;
            ++compared;
        }
        EXPECT_GE(compared, 8);
    }
}

TEST(SamplesTest, TheScriptMakesTheSameBytesAgain) {
    if (std::system("python3 -c '' >/dev/null 2>&1") != 0) {
        GTEST_SKIP() << "python3 is not installed";
    }
    const TemporaryFolder folder;
    const std::string command =
        "python3 '" + (kSamples / "make_samples.py").string() + "' '" + folder.path().string() + "'";
    ASSERT_EQ(std::system(command.c_str()), 0);
    int compared = 0;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder.path())) {
        if (entry.is_regular_file()) {
            const auto relative = std::filesystem::relative(entry.path(), folder.path());
            EXPECT_EQ(bytesOf(entry.path()), bytesOf(kSamples / relative)) << relative;
            ++compared;
        }
    }
    EXPECT_EQ(compared, 22);
}

}  // namespace
