// Every case of every reference network, against the answers of two independent solvers that the files carry
// (an extended-precision Newton method on loop flows, and a general water-network engine run to 1e-8).
// Other networks in the same format: --networks DIR, or the environment variable WW_NETWORKS.

#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>
#include <string_view>

#include "core/hydraulics/solve.h"
#include "tests/reference_networks/network_file.h"

namespace ww::hydraulics {
namespace {

double largestFlow(const nlohmann::json& flows) {
    double largest = 0;
    for (const auto& flow : flows) {
        largest = std::max(largest, std::abs(flow.get<double>()));
    }
    return largest;
}

/// The files agree on this part of the largest flow at worst where it is above the 1e-9 asked for.
double tolerance(const ReferenceAnswer& answer) {
    return std::max(1e-9, 2 * answer.agreement);
}

void compareFlows(const Network& network, const Solution& solution, const ReferenceAnswer& answer,
                  const std::string& what) {
    const double largest = largestFlow(answer.flows);
    double worst = 0;
    for (const auto& [id, flow] : answer.flows.items()) {
        const auto link = network.findLink(id);
        ASSERT_TRUE(link) << what << " " << id;
        const double miss = std::abs(solution.flow(*link).si() - flow.get<double>());
        worst = std::max(worst, largest > 0 ? miss / largest : miss);
        EXPECT_LE(miss, tolerance(answer) * largest) << what << " " << id;
    }
    std::printf("%-60s %-9s %.1e of the largest flow, %d steps\n", what.c_str(), answer.name.c_str(), worst,
                solution.summary().iterations);
}

void comparePressures(const Network& network, const Solution& solution, const ReferenceAnswer& answer,
                      const std::string& what) {
    const double largest = largestFlow(answer.pressures);
    for (const auto& [id, pressure] : answer.pressures.items()) {
        const auto node = network.findNode(id);
        ASSERT_TRUE(node) << what << " " << id;
        if (const auto ours = solution.pressure(*node); ours && pressure.is_number()) {
            EXPECT_NEAR(ours->si(), pressure.get<double>(), tolerance(answer) * largest) << what << " " << id;
        }
    }
}

void compareCase(const NetworkFile& file, const ReferenceCase& one, SolveWay way) {
    for (const ReferenceAnswer& answer : one.answers) {
        const std::string what = file.name() + ": " + one.name;
        const auto built = file.network(
            one, answer.isColebrook ? FrictionLaw::ColebrookLinearTransition : FrictionLaw::SwameeJain);
        for (const base::Fault& fault : built.faults) {
            ADD_FAILURE() << what << " " << base::englishWithSubject(fault);
        }
        ASSERT_TRUE(built.network);
        SolveOptions options;
        options.way = way;
        const Solution solution = solve(*built.network, options);
        EXPECT_NE(solution.summary().outcome, SolveOutcome::NotConverged) << what;
        EXPECT_LE(solution.summary().massFraction(), 1e-12) << what;
        EXPECT_LE(solution.summary().energyFraction(), 1e-12) << what;
        compareFlows(*built.network, solution, answer, what);
        comparePressures(*built.network, solution, answer, what);
    }
}

TEST(ReferenceNetworks, bothAnswersOfEveryCaseByFolding) {
    ASSERT_FALSE(networkFiles().empty());
    for (const auto& path : networkFiles()) {
        const NetworkFile file(path);
        for (const ReferenceCase& one : file.cases()) {
            compareCase(file, one, SolveWay::Fold);
        }
    }
}

TEST(ReferenceNetworks, bothAnswersOfEveryCaseWithoutFolding) {
    for (const auto& path : networkFiles()) {
        const NetworkFile file(path);
        for (const ReferenceCase& one : file.cases()) {
            compareCase(file, one, SolveWay::Global);
        }
    }
}

}  // namespace
}  // namespace ww::hydraulics

int main(int argc, char** argv) {
    testing::InitGoogleTest(&argc, argv);
    for (int i = 1; i + 1 < argc; ++i) {
        if (std::string_view(argv[i]) == "--networks") {
            ww::hydraulics::addNetworkFolder(argv[i + 1]);
        }
    }
    return RUN_ALL_TESTS();
}
