// The solver and its friction laws against published values and two exact reference networks.

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <numbers>
#include <string>
#include <vector>

#include "core/hydraulics/network_builder.h"
#include "core/hydraulics/solve.h"
#include "tests/support/us_units.h"

namespace ww::hydraulics {
namespace {

using quantity::Head;
using quantity::Unit;
using support::gpm;
using support::kTradeWater;

double inGpm(VolumeFlow flow) {
    return flow.in(Unit::GallonPerMinute);
}
PressureDifference ft(double number) {
    return quantity::pressureOf(Head::from(number, Unit::Foot), kTradeWater);
}
double inFt(PressureDifference dp) {
    return quantity::headOf(dp, kTradeWater).in(Unit::Foot);
}
/// ft/gpm^2
Resistance perSquare(double number) {
    const double flow = gpm(1).si();
    return Resistance::si(ft(number).si() / (flow * flow));
}

/// H = 60 - 0.0012 Q^2, ft and gpm; exactly, as a power law through three of its points.
Element sixtyFootPump(double speedFraction = 1) {
    std::array<PumpDuty, 3> points;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const double flow = 100.0 * static_cast<double>(i);
        points[i] = {gpm(flow), ft(60 - 0.0012 * flow * flow)};
    }
    PumpOperation operation;
    operation.speedFraction = speedFraction;
    return Element::pump(PumpModel::powerThroughThree(points).value(), operation);
}

/// One branch with direct return: four circuits of a given loss at design flow with their valves open, main
/// segments before each, all of the square law. The flows follow from that law alone ("exact reference
/// networks, computed from the square law"); tolerance 0.05 % of flow.
class FourCircuits {
  public:
    static constexpr std::array<double, 4> kDesign_gpm{20, 30, 25, 25};

    FourCircuits(std::array<double, 4> circuits_ft, std::array<double, 4> segments_ft) {
        for (std::size_t i = 0; i < 4; ++i) {
            m_circuits[i] = circuits_ft[i] / (kDesign_gpm[i] * kDesign_gpm[i]);
            const double carried = kCarried_gpm[i];
            m_segments[i] = segments_ft[i] / (carried * carried);
        }
    }

    std::array<double, 4> added{};  ///< to each circuit, ft/gpm^2
    std::array<bool, 4> isClosed{};
    double discharge = 0;  ///< resistance at the pump, ft/gpm^2
    double speed = 1;

    struct State {
        std::array<double, 4> percent;  ///< of design flow
        double total_gpm;
        double pump_ft;
        SolveSummary summary;
    };

    State solved(SolveWay way = SolveWay::Fold) const {
        NetworkBuilder builder;
        for (const char* node : {"in", "out", "S0", "S1", "S2", "S3", "S4"}) {
            builder.addNode(node);
        }
        builder.addLink("pump", "in", "out", sixtyFootPump(speed));
        builder.addLink("discharge", "out", "S0", Element::resistance(perSquare(discharge)));
        for (std::size_t i = 0; i < 4; ++i) {
            const std::string number = std::to_string(i + 1);
            builder.addLink("main " + number, "S" + std::to_string(i), "S" + number,
                            Element::resistance(perSquare(m_segments[i])));
            builder.addLink("T" + number, "S" + number, "in",
                            Element::resistance(perSquare(m_circuits[i] + added[i])), isClosed[i]);
        }
        const Network network = *builder.build().network;
        SolveOptions options;
        options.way = way;
        const Solution solution = solve(network, options);
        State state{};
        for (std::size_t i = 0; i < 4; ++i) {
            const LinkIndex link = *network.findLink("T" + std::to_string(i + 1));
            state.percent[i] = 100 * inGpm(solution.flow(link)) / kDesign_gpm[i];
        }
        state.total_gpm = inGpm(solution.flow({0}));
        state.pump_ft = -inFt(*solution.drop(network, {0}));
        state.summary = solution.summary();
        return state;
    }

    /// Throttles one circuit until it takes the same percentage as another, read at the same moment.
    void match(std::size_t circuit, std::size_t reference) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < 60; ++i) {
            added[circuit] = 0.5 * (low + high);
            const State state = solved();
            (state.percent[circuit] > state.percent[reference] ? low : high) = added[circuit];
        }
    }

  private:
    static constexpr std::array<double, 4> kCarried_gpm{100, 80, 50, 25};
    std::array<double, 4> m_circuits{};
    std::array<double, 4> m_segments{};
};

FourCircuits lastIsIndex() {
    return {{12, 15, 10, 14}, {8, 4, 4, 3}};
}
FourCircuits firstIsIndex() {
    return {{28, 12, 9, 8}, {8, 3, 2, 1}};
}

void expectState(const FourCircuits& network, std::array<double, 4> percent, double total_gpm,
                 double pump_ft) {
    for (const SolveWay way : {SolveWay::Fold, SolveWay::Global}) {
        const auto state = network.solved(way);
        for (std::size_t i = 0; i < 4; ++i) {
            EXPECT_NEAR(state.percent[i], percent[i], 5e-4 * percent[i]) << "T" << i + 1;
        }
        EXPECT_NEAR(state.total_gpm, total_gpm, 5e-4 * total_gpm);
        EXPECT_NEAR(state.pump_ft, pump_ft, 5e-4 * pump_ft);
    }
}

TEST(ReferenceLoop, lastCircuitIsIndex) {
    FourCircuits network = lastIsIndex();
    expectState(network, {153.73, 123.06, 131.57, 100.91}, 125.780, 41.015);
    network.added[2] = 0.0112;
    expectState(network, {156.98, 127.25, 107.55, 107.55}, 123.344, 41.743);
    network.added[1] = 0.00666667;
    expectState(network, {160.20, 110.99, 110.99, 110.99}, 120.834, 42.479);
    network.added[0] = 0.0325;
    expectState(network, {115.47, 115.47, 115.47, 115.47}, 115.470, 44.000);
    network.speed = 0.86603;
    expectState(network, {100, 100, 100, 100}, 100.000, 33.000);
}

// The valve coefficients that the added resistances stand for: dp (psi) = (Q/Cv)^2, 2.309 ft/psi.
TEST(ReferenceLoop, valveSettingsOfTheAddedResistances) {
    const std::array<double, 3> open{12, 20, 16};
    const std::array<double, 3> set{6.897, 13.624, 10.686};
    const std::array<double, 3> added{0.0325, 0.00666667, 0.0112};
    for (std::size_t i = 0; i < 3; ++i) {
        EXPECT_NEAR(2.309 / (set[i] * set[i]) - 2.309 / (open[i] * open[i]), added[i], 5e-4 * added[i]);
    }
}

TEST(ReferenceLoop, matchingFindsTheSameResistances) {
    FourCircuits network = lastIsIndex();
    network.match(2, 3);
    EXPECT_NEAR(network.added[2], 0.0112, 1e-7);
    network.match(1, 3);
    EXPECT_NEAR(network.added[1], 0.00666667, 1e-7);
    network.match(0, 3);
    EXPECT_NEAR(network.added[0], 0.0325, 1e-7);
}

TEST(ReferenceLoop, proportionHoldsUpstreamAndBreaksDownstream) {
    FourCircuits network = lastIsIndex();
    network.added = {0.0325, 0.00666667, 0.0112, 0};
    for (const auto& [discharge, percent] : {std::pair(0.001, 104.45), {0.0015, 100.0}, {0.003, 89.44}}) {
        network.discharge = discharge;
        for (const double one : network.solved().percent) {
            EXPECT_NEAR(one, percent, 5e-4 * percent);
        }
    }
    network.discharge = 0;
    network.isClosed = {true, false, false, false};
    auto percent = network.solved().percent;
    EXPECT_EQ(percent[0], 0);
    for (std::size_t i = 1; i < 4; ++i) {
        EXPECT_NEAR(percent[i], 125.99, 5e-4 * 125.99);
    }
    network.isClosed = {false, false, false, true};
    percent = network.solved().percent;
    EXPECT_NEAR(percent[0], 126.31, 5e-4 * 126.31);
    EXPECT_NEAR(percent[1], 131.60, 5e-4 * 131.60);
    EXPECT_NEAR(percent[2], 142.15, 5e-4 * 142.15);
    EXPECT_EQ(percent[3], 0);
}

TEST(ReferenceLoop, firstCircuitIsIndex) {
    FourCircuits network = firstIsIndex();
    expectState(network, {97.83, 132.91, 138.82, 138.82}, 128.848, 40.078);
    network.match(3, 0);
    EXPECT_NEAR(network.added[3], 0.0173982, 1e-6);
    expectState(network, {101.21, 140.00, 150.39, 101.21}, 125.141, 41.208);
    network.match(2, 0);
    EXPECT_NEAR(network.added[2], 0.0204864, 1e-6);
    expectState(network, {105.63, 149.07, 105.63, 110.64}, 119.914, 42.745);
    network.match(1, 0);
    EXPECT_NEAR(network.added[1], 0.0142606, 1e-6);
    expectState(network, {110.79, 110.79, 112.94, 118.29}, 113.204, 44.622);
    for (const std::size_t circuit : {3, 2, 1}) {
        network.match(circuit, 0);
    }
    expectState(network, {111.78, 111.78, 111.79, 112.01}, 111.839, 44.991);
    for (const std::size_t circuit : {3, 2, 1}) {
        network.match(circuit, 0);
    }
    expectState(network, {111.80, 111.80, 111.80, 111.81}, 111.804, 45.000);
}

TEST(ReferenceLoop, exactValveLossesBalanceTheFirstIndex) {
    FourCircuits network = firstIsIndex();
    network.added = {0, 13.0 / 900, 14.0 / 625, 14.0 / 625};
    network.speed = 0.89443;
    expectState(network, {100, 100, 100, 100}, 100.000, 36.000);
}

// Two pumps of H = 60 - 0.0012 Q^2 on a system of 0.0033 Q^2: sqrt(60/0.0045) alone and sqrt(60/0.0036)
// together (computed from the square laws).
TEST(ReferenceLoop, twoPumpsGiveMuchLessThanTwice) {
    for (const auto& [pumps, expected] : {std::pair(1, 115.47), {2, 129.10}}) {
        NetworkBuilder builder;
        builder.addNode("in");
        builder.addNode("out");
        for (int i = 0; i < pumps; ++i) {
            builder.addLink("pump " + std::to_string(i), "in", "out", sixtyFootPump());
        }
        builder.addLink("system", "out", "in", Element::resistance(perSquare(0.0033)));
        const Network network = *builder.build().network;
        EXPECT_NEAR(inGpm(solve(network).flow(*network.findLink("system"))), expected, 0.005);
    }
}

// Two such pumps in series: heads add, so sqrt(120/(0.0033 + 0.0024)) (computed from the square laws).
TEST(ReferenceLoop, pumpsInSeriesAddTheirHeads) {
    NetworkBuilder builder;
    for (const char* node : {"in", "mid", "out"}) {
        builder.addNode(node);
    }
    builder.addLink("first", "in", "mid", sixtyFootPump());
    builder.addLink("second", "mid", "out", sixtyFootPump());
    builder.addLink("system", "out", "in", Element::resistance(perSquare(0.0033)));
    EXPECT_NEAR(inGpm(solve(*builder.build().network).flow({2})), std::sqrt(120 / 0.0057), 1e-9);
}

double factor(FrictionLaw law, double reynolds, double roughness) {
    return frictionFactor(law, reynolds, roughness).factor;
}

TEST(Friction, formulasByTheirNumbers) {
    // C. Colebrook, J. Inst. Civ. Eng. 11 (1939) 133, solved to 14 digits at Re 1e5, roughness 1e-4.
    EXPECT_NEAR(factor(FrictionLaw::Colebrook, 1e5, 1e-4), 0.018513866077471, 1e-14);
    // P. Swamee and A. Jain, J. Hydraul. Div. ASCE 102 (1976) 657, at the same point: 0.018452424 with the
    // constant as 6.97^0.9 = 5.739968; the law here has it rounded to 5.74, which is 1.15e-6 more.
    EXPECT_NEAR(factor(FrictionLaw::SwameeJain, 1e5, 1e-4), 0.018452424 * (1 + 1.155e-6), 1e-10);
    // S. Haaland, J. Fluids Eng. 105 (1983) 89, at the same point gives 0.018265053: within its own 2 %.
    EXPECT_NEAR(factor(FrictionLaw::Colebrook, 1e5, 1e-4), 0.018265053, 0.02 * 0.018265053);
    // H. Blasius (1913), smooth pipe at Re 1e4: 0.3164/10 = 0.03164, within 3 % of a smooth Colebrook.
    EXPECT_NEAR(factor(FrictionLaw::Colebrook, 1e4, 0), 0.03164, 0.03 * 0.03164);
    // Laminar 64/Re (Hagen-Poiseuille) at Re 128.
    EXPECT_DOUBLE_EQ(factor(FrictionLaw::Colebrook, 128, 0), 0.5);
}

// A published table of the Colebrook equation (four decimals; the rougher rows there are an approximation, to
// 0.5 %).
TEST(Friction, tableOfColebrook) {
    const std::array<double, 4> reynolds{5e3, 1e4, 1e5, 1e6};
    const std::array<double, 4> smooth{0.0385, 0.0324, 0.0222, 0.0199};
    const std::array<double, 4> rough{0.04726, 0.04313, 0.0385, 0.03796};
    const std::array<double, 4> roughest{0.0758, 0.0736, 0.0716, 0.0716};
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_NEAR(factor(FrictionLaw::Colebrook, reynolds[i], 0.001), smooth[i], 5.1e-5);
        EXPECT_NEAR(factor(FrictionLaw::Colebrook, reynolds[i], 0.01), rough[i], 5.1e-5);
        EXPECT_NEAR(factor(FrictionLaw::Colebrook, reynolds[i], 0.05), roughest[i], 0.005 * roughest[i]);
    }
}

TEST(Friction, joinsWithoutASkip) {
    for (const auto law :
         {FrictionLaw::Colebrook, FrictionLaw::ColebrookLinearTransition, FrictionLaw::SwameeJain}) {
        for (const double roughness : {0.0, 1e-4, 0.02}) {
            for (const double end : {2000.0, 4000.0}) {
                const double below = factor(law, end * (1 - 1e-12), roughness);
                const double above = factor(law, end * (1 + 1e-12), roughness);
                EXPECT_NEAR(below, above, 1e-12);
            }
        }
    }
}

Pipe pipeOf(double length_m, double diameter_m, double roughness_m) {
    Pipe pipe;
    pipe.length = Length::si(length_m);
    pipe.insideDiameter = Length::si(diameter_m);
    pipe.roughness = Length::si(roughness_m);
    return pipe;
}

double meanVelocityFlow(double velocity, double diameter_m) {
    return velocity * std::numbers::pi / 4 * diameter_m * diameter_m;
}

// Y. Cengel and J. Cimbala, Fluid Mechanics, example 8-3: 60 m of 50 mm steel, 6 L/s of water at 15 C (999
// kg/m3, 1.138e-3 Pa s), relative roughness 4e-5: f 0.0172, 96.5 kPa, 9.85 m.
TEST(Friction, turbulentPipeOfATextbook) {
    const auto viscosity = KinematicViscosity::si(1.138e-3 / 999);
    const double reynolds = 6e-3 * 4 / (std::numbers::pi * 0.05 * viscosity.si());
    EXPECT_NEAR(reynolds, 1.34e5, 500);
    EXPECT_NEAR(factor(FrictionLaw::Colebrook, reynolds, 4e-5), 0.0172, 5e-5);
    const Element element = Element::pipe(pipeOf(60, 0.05, 2e-6), Density::si(999), viscosity);
    const auto drop = element.drop(VolumeFlow::si(6e-3));
    EXPECT_NEAR(drop.in(Unit::Kilopascal), 96.5, 0.005 * 96.5);
    EXPECT_NEAR(quantity::headOf(drop, Density::si(999)).si(), 9.85, 0.005 * 9.85);
}

// The same book, example 8-2: 9 m of 3 mm pipe at 0.9 m/s, 5 C (1000 kg/m3, 1.519e-3 Pa s): laminar, 43.7
// kPa, 4.46 m.
TEST(Friction, laminarPipeOfATextbook) {
    const Element element =
        Element::pipe(pipeOf(9, 0.003, 0), Density::si(1000), KinematicViscosity::si(1.519e-6));
    const auto drop = element.drop(VolumeFlow::si(meanVelocityFlow(0.9, 0.003)));
    EXPECT_NEAR(drop.in(Unit::Kilopascal), 43.7, 0.05);
    EXPECT_NEAR(quantity::headOf(drop, Density::si(1000)).si(), 4.46, 0.005);
}

// Technical Paper 410, Flow of Fluids, example 7.1: 50 mm plastic (1.5e-6 m), 200 L/min of water at 30 C
// (0.8007e-6 m2/s; from memory). The paper's rounded numbers are Re 1.006e5 and f 0.0179.
TEST(Friction, plasticPipeOfTheTechnicalPaper) {
    const double reynolds = 200e-3 / 60 * 4 / (std::numbers::pi * 0.0525 * 0.8007e-6);
    EXPECT_NEAR(reynolds, 1.010e5, 0.005 * 1.010e5);
    EXPECT_NEAR(factor(FrictionLaw::Colebrook, reynolds, 1.5e-6 / 0.0525), 0.0181, 0.012 * 0.0181);
}

// 100 gpm in 3 in schedule 40 steel (3.068 in inside, 0.0457 mm) at 60 F: 2.392 ft per 100 ft, f 0.02089
// (computed from Colebrook with 1.1225e-6 m2/s). Hazen-Williams with C 140 gives 2.382 (computed from its
// formula).
TEST(Friction, threeInchSteelPipe) {
    const double diameter_m = 3.068 * 0.0254;
    const auto viscosity =
        KinematicViscosity::si(gpm(100).si() * 4 / (std::numbers::pi * diameter_m * 91880));
    EXPECT_NEAR(factor(FrictionLaw::Colebrook, 91880, 4.57e-5 / diameter_m), 0.02089, 1e-5);
    const Element element = Element::pipe(pipeOf(100 * 0.3048, diameter_m, 4.57e-5), kTradeWater, viscosity);
    EXPECT_NEAR(inFt(element.drop(gpm(100))), 2.392, 0.002);
    EXPECT_NEAR(inFt(element.drop(gpm(100))), 2.382, 0.01 * 2.382);
}

// Cengel and Cimbala, example 8-8: 89 m of 50 mm cast iron (0.26 mm), sum of K 2.36, between two lakes 4 m
// and 31.8 m above datum: 6 L/s of water at 10 C (999.7 kg/m3, 1.307e-3 Pa s), f 0.0315.
TEST(Friction, lakeToLake) {
    const Density cold = Density::si(999.7);
    Pipe pipe = pipeOf(89, 0.05, 2.6e-4);
    pipe.minorLossSum = 2.36;
    NetworkBuilder builder;
    builder.addNode("upper");
    builder.addNode("lower");
    builder.addLink("pipe", "upper", "lower",
                    Element::pipe(pipe, cold, KinematicViscosity::si(1.307e-3 / 999.7)));
    builder.addLink("height", "lower", "upper",
                    Element::staticLift(-quantity::pressureOf(Head::si(31.8 - 4), cold)));
    const Network network = *builder.build().network;
    EXPECT_NEAR(solve(network).flow({0}).si(), 6e-3, 0.003 * 6e-3);
}

}  // namespace
}  // namespace ww::hydraulics
