// Single loops with an answer known by hand, and the states a loop can be in.

#include "core/hydraulics/solve.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/hydraulics/network_builder.h"

namespace ww::hydraulics {
namespace {

Element resistor(double k) {
    return Element::resistance(Resistance::si(k));
}

/// rise = h0 - a q^2, points to `last`.
Element parabolaPump(double h0, double a, double last, PumpOperation operation = {}) {
    std::vector<PumpDuty> points;
    for (const double part : {0.0, 0.5, 1.0}) {
        const double q = part * last;
        points.push_back({VolumeFlow::si(q), PressureDifference::si(h0 - a * q * q)});
    }
    return Element::pump(PumpModel::powerThroughThree(points).value(), operation);
}

struct Bench {
    NetworkBuilder builder;

    explicit Bench(std::initializer_list<const char*> nodes) {
        for (const char* node : nodes) {
            builder.addNode(node);
        }
    }
    Network network() const {
        auto built = builder.build();
        EXPECT_TRUE(built.network);
        return *built.network;
    }
};

double flowOf(const Network& network, const Solution& solution, const char* link) {
    return solution.flow(*network.findLink(link)).si();
}

// q = sqrt(h0 / (k + a)): the pump's parabola on the loop's.
TEST(Solve, onePumpOneCircuit) {
    Bench bench({"in", "out"});
    bench.builder.addLink("pump", "in", "out", parabolaPump(6e4, 1e10, 2e-3));
    bench.builder.addLink("circuit", "out", "in", resistor(3e10));
    bench.builder.setReference("in", GaugePressure::si(1.5e5));
    const Network network = bench.network();
    const Solution solution = solve(network);
    const double q = std::sqrt(6e4 / 4e10);
    EXPECT_NEAR(flowOf(network, solution, "circuit"), q, 1e-15);
    EXPECT_NEAR(solution.pressure(*network.findNode("out"))->si(), 1.5e5 + 3e10 * q * q, 1e-9);
    EXPECT_EQ(solution.summary().outcome, SolveOutcome::Converged);
    EXPECT_EQ(solution.summary().method, SolveMethod::SeriesParallel);
}

TEST(Solve, everyCircuitClosedLeavesADeadHeadedPump) {
    Bench bench({"in", "out"});
    bench.builder.addLink("pump", "in", "out", parabolaPump(6e4, 1e10, 2e-3));
    bench.builder.addLink("circuit", "out", "in", resistor(3e10), true);
    const Network network = bench.network();
    const Solution solution = solve(network);
    EXPECT_EQ(solution.summary().outcome, SolveOutcome::AtRest);
    EXPECT_EQ(flowOf(network, solution, "pump"), 0);
    EXPECT_NEAR(solution.drop(network, *network.findLink("circuit"))->si(), 6e4, 1e-9);
    EXPECT_EQ(solution.state(network, *network.findLink("circuit")), LinkState::Closed);
}

TEST(Solve, stoppedPumpLeavesEverythingAtRest) {
    PumpOperation stopped;
    stopped.speedFraction = 0;
    Bench bench({"in", "out"});
    bench.builder.addLink("pump", "in", "out", parabolaPump(6e4, 1e10, 2e-3, stopped));
    bench.builder.addLink("circuit", "out", "in", resistor(3e10));
    const Network network = bench.network();
    const Solution solution = solve(network);
    EXPECT_EQ(solution.summary().outcome, SolveOutcome::AtRest);
    EXPECT_EQ(solution.summary().massFraction(), 0);
    EXPECT_EQ(solution.pressure(*network.findNode("out"))->si(), 0);
}

// Three times the speed: three times the flow and nine times the rise (affinity).
TEST(Solve, threeTimesTheSpeed) {
    PumpOperation fast;
    fast.speedFraction = 3;
    Bench bench({"in", "out"});
    bench.builder.addLink("pump", "in", "out", parabolaPump(6e4, 1e10, 2e-3, fast));
    bench.builder.addLink("circuit", "out", "in", resistor(3e10));
    const Network network = bench.network();
    EXPECT_NEAR(flowOf(network, solve(network), "circuit"), 3 * std::sqrt(6e4 / 4e10), 1e-14);
}

TEST(Solve, flowBeyondTheCurveIsSaid) {
    Bench bench({"in", "out"});
    bench.builder.addLink("pump", "in", "out", parabolaPump(6e4, 1e10, 1e-3));
    bench.builder.addLink("circuit", "out", "in", resistor(1e9));
    const Network network = bench.network();
    const Solution solution = solve(network);
    EXPECT_EQ(solution.state(network, {0}), LinkState::PumpBeyondCurve);
    EXPECT_NEAR(flowOf(network, solution, "pump"), std::sqrt(6e4 / 1.1e10), 1e-14);
}

// A weak pump beside a strong one whose duty pressure is above its shutoff: its flap stays shut, exactly.
TEST(Solve, weakPumpIsHeldShut) {
    Bench bench({"in", "out"});
    bench.builder.addLink("strong", "in", "out", parabolaPump(8e4, 1e10, 2e-3));
    bench.builder.addLink("weak", "in", "out", parabolaPump(3e4, 1e10, 1e-3));
    bench.builder.addLink("circuit", "out", "in", resistor(3e10));
    const Network network = bench.network();
    const Solution solution = solve(network);
    EXPECT_EQ(flowOf(network, solution, "weak"), 0);
    EXPECT_EQ(solution.state(network, *network.findLink("weak")), LinkState::HeldShut);
    EXPECT_NEAR(flowOf(network, solution, "strong"), std::sqrt(8e4 / 4e10), 1e-14);
    EXPECT_NEAR(solution.drop(network, *network.findLink("weak"))->si(), -6e4, 1e-9);
}

TEST(Solve, checkValveAgainstTheFlowStopsItsCircuit) {
    Bench bench({"in", "out", "mid"});
    bench.builder.addLink("pump", "in", "out", parabolaPump(6e4, 1e10, 2e-3));
    bench.builder.addLink("circuit", "out", "in", resistor(3e10));
    bench.builder.addLink("check", "mid", "out", Element::checkValve(Resistance::si(1e9)));
    bench.builder.addLink("rest", "mid", "in", resistor(1e9));
    const Network network = bench.network();
    const Solution solution = solve(network);
    EXPECT_EQ(flowOf(network, solution, "check"), 0);
    EXPECT_EQ(flowOf(network, solution, "rest"), 0);
    EXPECT_EQ(solution.state(network, *network.findLink("check")), LinkState::HeldShut);
    EXPECT_EQ(solution.state(network, *network.findLink("rest")), LinkState::AtRest);
}

TEST(Solve, limiterHoldsItsFlowUntilThePressureIsGone) {
    const auto withRiser = [](double k) {
        Bench bench({"in", "out", "top"});
        bench.builder.addLink("pump", "in", "out", parabolaPump(8e4, 1e10, 2e-3));
        bench.builder.addLink("riser", "out", "top", resistor(k));
        bench.builder.addLink("limiter", "top", "in",
                              Element::flowLimiter(VolumeFlow::si(5e-4), PressureDifference::si(1.5e4),
                                                   PressureDifference::si(2e5)));
        return bench.network();
    };
    const Network strong = withRiser(1e9);
    const Solution held = solve(strong);
    EXPECT_NEAR(flowOf(strong, held, "limiter"), 5e-4, 5e-7);
    EXPECT_EQ(held.state(strong, {2}), LinkState::LimiterHolds);
    const Network weak = withRiser(1e12);
    const Solution below = solve(weak);
    EXPECT_EQ(below.state(weak, {2}), LinkState::LimiterBelow);
    EXPECT_NEAR(flowOf(weak, below, "limiter"), std::sqrt(8e4 / (1e12 + 1e10 + 1.5e4 / 25e-8)), 1e-13);
}

// Static lift between two open vessels: H0 - a q^2 = lift + k q^2.
TEST(Solve, staticLiftOfAnOpenCircuit) {
    Bench bench({"sump", "out", "tank"});
    bench.builder.addLink("pump", "sump", "out", parabolaPump(6e4, 1e10, 2e-3));
    bench.builder.addLink("pipe", "out", "tank", resistor(3e10));
    bench.builder.addLink("lift", "tank", "sump", Element::staticLift(PressureDifference::si(2e4)));
    const Network network = bench.network();
    EXPECT_NEAR(flowOf(network, solve(network), "pipe"), std::sqrt(4e4 / 4e10), 1e-14);
}

// Primary and secondary pumps with a common pipe: with both taking the same flow it stands still, and neither
// loop feels the other. The small resistance of the common pipe is a millionth of the loops'.
TEST(Solve, decouplerBetweenTwoLoops) {
    Bench bench({"cold", "warm", "a", "b"});
    const auto pump = parabolaPump(6e4, 1e10, 2e-3);
    bench.builder.addLink("primary pump", "warm", "a", pump);
    bench.builder.addLink("primary", "a", "cold", resistor(3e10));
    bench.builder.addLink("secondary pump", "cold", "b", pump);
    bench.builder.addLink("secondary", "b", "warm", resistor(3e10));
    bench.builder.addLink("common", "cold", "warm", Element::decoupler(Resistance::si(3e4)));
    const Network network = bench.network();
    const Solution solution = solve(network);
    EXPECT_NEAR(flowOf(network, solution, "primary"), std::sqrt(6e4 / 4e10), 1e-14);
    EXPECT_NEAR(flowOf(network, solution, "common"), 0, 1e-14);
    const LinkChange change{*network.findLink("secondary"), resistor(1e10)};
    const Network more = *network.with({&change, 1}).network;
    const Solution second = solve(more);
    EXPECT_NEAR(flowOf(more, second, "primary"), std::sqrt(6e4 / 4e10), 1e-9);
    EXPECT_NEAR(flowOf(more, second, "secondary"), std::sqrt(6e4 / 2e10), 1e-9);
    EXPECT_NEAR(flowOf(more, second, "common"), std::sqrt(6e4 / 4e10) - std::sqrt(6e4 / 2e10), 1e-9);
}

// A three-way valve shares the flow of its two paths; fully to one side the other stands still.
TEST(Solve, threeWayValveShutsOneLeg) {
    for (const double position : {0.0, 0.5, 1.0}) {
        Bench bench({"in", "out", "coil", "bypass", "common"});
        bench.builder.addLink("pump", "in", "out", parabolaPump(6e4, 1e10, 2e-3));
        bench.builder.addLink("coil", "out", "coil", resistor(2e10));
        bench.builder.addLink("bypass", "out", "bypass", resistor(2e10));
        bench.builder.addThreeWayValve("valve", "coil", "bypass", "common", FlowCoefficient::si(4), position,
                                       Density::si(998));
        bench.builder.addLink("back", "common", "in", resistor(1e9));
        const Network network = bench.network();
        const Solution solution = solve(network);
        const double coil = flowOf(network, solution, "coil");
        const double bypass = flowOf(network, solution, "bypass");
        EXPECT_NEAR(coil + bypass, flowOf(network, solution, "pump"), 1e-15);
        EXPECT_EQ(coil == 0, position == 0);
        EXPECT_EQ(bypass == 0, position == 1);
        if (position == 0.5) {
            EXPECT_NEAR(coil, bypass, 1e-15);
        }
    }
}

// A riser behind its shut valve is a set of loops at rest: exactly, not nearly.
TEST(Solve, riserBehindAShutValveIsAtRest) {
    Bench bench({"in", "out", "s", "m", "r"});
    bench.builder.addLink("pump", "in", "out", parabolaPump(6e4, 1e10, 2e-3));
    bench.builder.addLink("circuit", "out", "in", resistor(3e10));
    bench.builder.addLink("shut", "out", "s", resistor(1e9), true);
    bench.builder.addLink("one", "s", "r", resistor(2e10));
    bench.builder.addLink("two", "s", "m", resistor(2e10));
    bench.builder.addLink("three", "m", "r", resistor(2e10));
    bench.builder.addLink("four", "m", "r", resistor(2e10));
    bench.builder.addLink("home", "r", "in", resistor(1e9));
    const Network network = bench.network();
    const Solution solution = solve(network);
    for (const char* link : {"one", "two", "three", "four", "home"}) {
        EXPECT_EQ(flowOf(network, solution, link), 0) << link;
    }
    EXPECT_NEAR(solution.drop(network, *network.findLink("shut"))->si(), 3e10 * 6e4 / 4e10, 1e-9);
}

TEST(Solve, partsCutOffHaveNoPressure) {
    Bench bench({"in", "out", "a", "b"});
    bench.builder.addLink("pump", "in", "out", parabolaPump(6e4, 1e10, 2e-3));
    bench.builder.addLink("circuit", "out", "in", resistor(3e10));
    bench.builder.addLink("shut 1", "out", "a", resistor(1e9), true);
    bench.builder.addLink("between", "a", "b", resistor(1e9));
    bench.builder.addLink("shut 2", "b", "in", resistor(1e9), true);
    const Network network = bench.network();
    const Solution solution = solve(network);
    EXPECT_FALSE(solution.pressure(*network.findNode("a")));
    EXPECT_FALSE(solution.drop(network, *network.findLink("shut 1")));
    EXPECT_EQ(solution.summary().outcome, SolveOutcome::Converged);
}

// A balanced bridge: the link across carries nothing, and nothing divides by its slope.
TEST(Solve, balancedBridgeStandsStill) {
    Bench bench({"in", "out", "a", "b"});
    bench.builder.addLink("pump", "in", "out", parabolaPump(6e4, 1e10, 2e-3));
    bench.builder.addLink("1", "out", "a", resistor(2e10));
    bench.builder.addLink("2", "out", "b", resistor(2e10));
    bench.builder.addLink("3", "a", "in", resistor(5e10));
    bench.builder.addLink("4", "b", "in", resistor(5e10));
    bench.builder.addLink("across 1", "a", "b", resistor(1e9));
    bench.builder.addLink("across 2", "a", "b", resistor(1e8));
    const Network network = bench.network();
    const Solution solution = solve(network);
    EXPECT_EQ(solution.summary().method, SolveMethod::LoopNewton);
    EXPECT_NEAR(flowOf(network, solution, "across 1"), 0, 1e-12);
    EXPECT_NEAR(flowOf(network, solution, "1"), 0.5 * std::sqrt(6e4 / (7e10 / 4 + 1e10)), 1e-13);
}

TEST(Solve, startsAgainFromAFormerSolution) {
    Bench bench({"in", "out", "a", "b"});
    bench.builder.addLink("pump", "in", "out", parabolaPump(6e4, 1e10, 2e-3));
    bench.builder.addLink("1", "out", "a", resistor(2e10));
    bench.builder.addLink("2", "out", "b", resistor(1e10));
    bench.builder.addLink("3", "a", "in", resistor(5e10));
    bench.builder.addLink("4", "b", "in", resistor(9e10));
    bench.builder.addLink("across", "a", "b", resistor(1e9));
    const Network network = bench.network();
    const Solution first = solve(network);
    const LinkChange change{*network.findLink("4"), resistor(1e11)};
    const Network moved = *network.with({&change, 1}).network;
    SolveOptions options;
    options.start = &first;
    const Solution warm = solve(moved, options);
    const Solution cold = solve(moved);
    EXPECT_LT(warm.summary().iterations, cold.summary().iterations);
    for (std::uint32_t link = 0; link < moved.linkCount(); ++link) {
        EXPECT_NEAR(warm.flow({link}).si(), cold.flow({link}).si(), 1e-15);
    }
    const LinkChange shut{*network.findLink("4"), resistor(1e11), true};
    const Network closed = *network.with({&shut, 1}).network;
    EXPECT_EQ(solve(closed, options).summary().outcome, SolveOutcome::Converged);
    const Solution closedSolution = solve(closed);
    options.start = &closedSolution;
    EXPECT_NEAR(solve(network, options).flow({5}).si(), first.flow({5}).si(), 1e-15);
}

TEST(Solve, tooFewStepsIsSaidWithTheBestReached) {
    Bench bench({"in", "out"});
    bench.builder.addLink("pump", "in", "out", parabolaPump(6e4, 1e10, 2e-3));
    bench.builder.addLink("circuit", "out", "in", resistor(3e10));
    SolveOptions options;
    options.maxIterations = 1;
    const Solution solution = solve(bench.network(), options);
    EXPECT_EQ(solution.summary().outcome, SolveOutcome::NotConverged);
    EXPECT_GT(solution.summary().energyResidual.si(), 0);
    EXPECT_TRUE(solution.summary().energyWhere);
}

}  // namespace
}  // namespace ww::hydraulics
