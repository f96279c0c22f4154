// Seeded random loops: every one is solved, in few steps, to the last places; independent ways agree.

#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>

#include "core/hydraulics/solve.h"
#include "tests/core/hydraulics/random_network.h"

namespace ww::hydraulics {
namespace {

constexpr int kMostSteps = 25;

struct Worst {
    int iterations = 0;
    double mass = 0;
    double energy = 0;
    std::uint64_t iterationSeed = 0;
    std::uint64_t energySeed = 0;
    int moving = 0;

    void take(const SolveSummary& summary, std::uint64_t seed) {
        if (summary.iterations > iterations) {
            iterations = summary.iterations;
            iterationSeed = seed;
        }
        mass = std::max(mass, summary.massFraction());
        if (summary.energyFraction() > energy) {
            energy = summary.energyFraction();
            energySeed = seed;
        }
        moving += summary.largestFlow.si() > 0 ? 1 : 0;
    }
    void print(const char* what) const {
        std::printf(
            "%s: %d moving; at most %d steps (seed %llu); mass %.1e of the largest flow, energy %.1e "
            "of the largest pressure (seed %llu)\n",
            what, moving, iterations, static_cast<unsigned long long>(iterationSeed), mass, energy,
            static_cast<unsigned long long>(energySeed));
    }
};

void expectSolved(const SolveSummary& summary, std::uint64_t seed) {
    EXPECT_NE(summary.outcome, SolveOutcome::NotConverged) << "seed " << seed;
    EXPECT_LE(summary.iterations, kMostSteps) << "seed " << seed;
    EXPECT_LE(summary.massFraction(), 1e-12) << "seed " << seed;
    EXPECT_LE(summary.energyFraction(), 1e-12) << "seed " << seed;
}

TEST(SolveRandom, twoThousandMeshesConvergeInFewSteps) {
    Worst worst;
    for (std::uint64_t seed = 1; seed <= 2000; ++seed) {
        RandomMix mix;
        mix.hasOnlySquareLaws = seed % 2 == 0;
        const Solution solution = solve(randomMesh(seed, mix));
        expectSolved(solution.summary(), seed);
        worst.take(solution.summary(), seed);
    }
    worst.print("2,000 random meshes");
    EXPECT_GT(worst.moving, 1500);
}

/// Largest difference of flows, as a part of the largest flow.
double difference(const Network& network, const Solution& a, const Solution& b) {
    double largest = 0;
    for (std::uint32_t link = 0; link < network.linkCount(); ++link) {
        largest = std::max(largest, std::abs((a.flow({link}) - b.flow({link})).si()));
    }
    const double scale = a.summary().largestFlow.si();
    return scale > 0 ? largest / scale : largest;
}

TEST(SolveRandom, foldingAgreesWithOneGlobalIterationOnTrees) {
    Worst folded;
    Worst global;
    double worst = 0;
    for (std::uint64_t seed = 1; seed <= 500; ++seed) {
        RandomMix mix;
        mix.hasOnlySquareLaws = seed % 2 == 0;
        mix.hasCheckValves = false;
        mix.resistanceDecades = mix.hasOnlySquareLaws ? 6 : 2;
        const Network network = randomTree(seed, mix);
        const Solution byFolding = solve(network);
        SolveOptions options;
        options.way = SolveWay::Global;
        options.maxDenseLoops = seed % 4 < 2 ? 0 : 120;
        const Solution byNewton = solve(network, options);
        expectSolved(byFolding.summary(), seed);
        expectSolved(byNewton.summary(), seed);
        EXPECT_EQ(byFolding.summary().method, SolveMethod::SeriesParallel) << "seed " << seed;
        const double apart = difference(network, byFolding, byNewton);
        EXPECT_LE(apart, 1e-10) << "seed " << seed;
        worst = std::max(worst, apart);
        folded.take(byFolding.summary(), seed);
        global.take(byNewton.summary(), seed);
    }
    folded.print("500 random trees folded");
    global.print("500 random trees without folding");
    std::printf("largest difference %.1e of the largest flow\n", worst);
}

TEST(SolveRandom, loopAndNodeMatricesAgreeOnMeshes) {
    double worst = 0;
    for (std::uint64_t seed = 5001; seed <= 5300; ++seed) {
        RandomMix mix;
        mix.hasOnlySquareLaws = seed % 2 == 0;
        const Network network = randomMesh(seed, mix);
        SolveOptions options;
        options.maxDenseLoops = 0;
        const Solution byNodes = solve(network, options);
        expectSolved(byNodes.summary(), seed);
        const double apart = difference(network, solve(network), byNodes);
        EXPECT_LE(apart, 1e-10) << "seed " << seed;
        worst = std::max(worst, apart);
    }
    std::printf("largest difference of loop and node matrices %.1e of the largest flow\n", worst);
}

}  // namespace
}  // namespace ww::hydraulics
