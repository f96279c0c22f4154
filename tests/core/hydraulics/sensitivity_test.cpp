// Derivatives at the solution against central differences of whole solves, on hand-made and random loops.

#include "core/hydraulics/sensitivity.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "core/hydraulics/solve.h"
#include "tests/core/hydraulics/random_network.h"

namespace ww::hydraulics {
namespace {

constexpr double kStep = 1e-5;

Network meshWith(std::uint64_t seed, bool isSquareOnly) {
    RandomMix mix;
    mix.hasOnlySquareLaws = isSquareOnly;
    mix.hasCheckValves = false;
    mix.resistanceDecades = 2;
    return randomMesh(seed, mix);
}

/// The network with the drop of one square-law link times a factor.
Solution withFactor(const Network& network, LinkIndex link, double factor) {
    const auto law = std::get<detail::SquareLaw>(network.element(link).law());
    const LinkChange change{link, Element::resistance(Resistance::si(law.resistance * factor))};
    return solve(*network.with({&change, 1}).network);
}

TEST(Sensitivity, resistancesAgreeWithDifferencesOnRandomLoops) {
    double worst = 0;
    int compared = 0;
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        const Network network = meshWith(seed, true);
        const Solution solution = solve(network);
        const double largest = solution.summary().largestFlow.si();
        for (std::uint32_t pushed = 0; pushed < network.linkCount(); pushed += 5) {
            const Parameter parameter{{pushed}, ParameterKind::Drop};
            if (network.isClosed({pushed}) || network.element({pushed}).law().index() != 0) {
                continue;
            }
            const Sensitivities exact = sensitivities(network, solution, {&parameter, 1});
            const Solution up = withFactor(network, {pushed}, 1 + kStep);
            const Solution down = withFactor(network, {pushed}, 1 - kStep);
            if (up.heldShut() != solution.heldShut() || down.heldShut() != solution.heldShut()) {
                continue;
            }
            for (std::uint32_t link = 0; link < network.linkCount(); ++link) {
                const double slope = (up.flow({link}) - down.flow({link})).si() / (2 * kStep);
                worst = std::max(worst, std::abs(exact.flow(link, 0).si() - slope) / largest);
                EXPECT_NEAR(exact.flow(link, 0).si(), slope, 2e-7 * largest) << seed << " " << pushed;
                ++compared;
            }
        }
    }
    EXPECT_GT(compared, 5000);
    std::printf("%d derivatives, largest difference %.1e of the largest flow\n", compared, worst);
}

/// A pump, a riser valve, two circuits and a closed one beside them.
struct Riser {
    double speed = 0.9;
    double coefficient = 6;
    double limit_m3s = 4e-4;

    Network network() const {
        const auto water = Density::si(998.2);
        const PumpDuty points[] = {{VolumeFlow::si(0), PressureDifference::si(8e4)},
                                   {VolumeFlow::si(1.5e-3), PressureDifference::si(6.5e4)},
                                   {VolumeFlow::si(2.5e-3), PressureDifference::si(4e4)}};
        NetworkBuilder builder;
        for (const char* node : {"R", "S", "M", "E", "F"}) {
            builder.addNode(node);
        }
        PumpOperation operation;
        operation.speedFraction = speed;
        builder.addLink("pump", "R", "S",
                        Element::pump(PumpModel::powerThroughThree(points).value(), operation));
        builder.addLink("riser", "S", "M", Element::valve(FlowCoefficient::si(coefficient), water));
        builder.addLink("circuit", "M", "E", Element::resistance(Resistance::si(2e10)));
        builder.addLink("back", "E", "R", Element::resistance(Resistance::si(4e9)));
        builder.addLink("limited", "M", "E",
                        Element::flowLimiter(VolumeFlow::si(limit_m3s), PressureDifference::si(1e4),
                                             PressureDifference::si(2e5)));
        builder.addLink("tap", "M", "F", Element::resistance(Resistance::si(1e10)));
        builder.addLink("shut", "F", "R", Element::resistance(Resistance::si(1e10)), true);
        return *builder.build().network;
    }
};

void expectSlopes(const Riser& up, const Riser& down, double step, const char* link, ParameterKind kind) {
    const Network network = Riser{}.network();
    const Solution solution = solve(network);
    const Parameter parameter{*network.findLink(link), kind};
    const Sensitivities exact = sensitivities(network, solution, {&parameter, 1});
    const Network upper = up.network();
    const Network lower = down.network();
    const Solution high = solve(upper);
    const Solution low = solve(lower);
    for (std::uint32_t i = 0; i < network.linkCount(); ++i) {
        const double flowSlope = (high.flow({i}) - low.flow({i})).si() / (2 * step);
        const double dropSlope = (*high.drop(upper, {i}) - *low.drop(lower, {i})).si() / (2 * step);
        EXPECT_NEAR(exact.flow(i, 0).si(), flowSlope, 1e-9) << network.linkId({i});
        EXPECT_NEAR(exact.drop(i, 0)->si(), dropSlope, 1e-3) << network.linkId({i});
    }
}

TEST(Sensitivity, speedSettingAndLimitAgreeWithDifferences) {
    const Riser riser;
    const auto scaled = [&](double Riser::*part, double factor) {
        Riser other = riser;
        other.*part *= factor;
        return other;
    };
    expectSlopes(scaled(&Riser::speed, 1 + kStep), scaled(&Riser::speed, 1 - kStep), kStep, "pump",
                 ParameterKind::Speed);
    expectSlopes(scaled(&Riser::coefficient, 1 + kStep), scaled(&Riser::coefficient, 1 - kStep), kStep,
                 "riser", ParameterKind::Coefficient);
    expectSlopes(scaled(&Riser::limit_m3s, 1 + kStep), scaled(&Riser::limit_m3s, 1 - kStep), kStep, "limited",
                 ParameterKind::Coefficient);
}

// One circuit on a pump of rise h0 - a q^2: q = sqrt(h0/(k + a)), so d q/d ln k = -q/2 k/(k + a), and with
// the speed every flow of a square-law loop grows in proportion (affinity): d q/d ln n = q.
TEST(Sensitivity, oneCircuitByHand) {
    const double h0 = 6e4;
    const double a = 1e10;
    const double k = 3e10;
    std::vector<PumpDuty> points;
    for (const double q : {0.0, 1e-3, 2e-3}) {
        points.push_back({VolumeFlow::si(q), PressureDifference::si(h0 - a * q * q)});
    }
    NetworkBuilder builder;
    builder.addNode("in");
    builder.addNode("out");
    builder.addLink("pump", "in", "out", Element::pump(PumpModel::powerThroughThree(points).value()));
    builder.addLink("circuit", "out", "in", Element::resistance(Resistance::si(k)));
    const Network network = *builder.build().network;
    const Solution solution = solve(network);
    const double q = std::sqrt(h0 / (k + a));
    EXPECT_NEAR(solution.flow({1}).si(), q, 1e-15);
    const Parameter parameters[] = {{{1}, ParameterKind::Drop}, {{0}, ParameterKind::Speed}};
    const Sensitivities out = sensitivities(network, solution, parameters);
    EXPECT_NEAR(out.flow(1, 0).si(), -0.5 * q * k / (k + a), 1e-12 * q);
    EXPECT_NEAR(out.flow(1, 1).si(), q, 1e-12 * q);
}

TEST(Sensitivity, scaledElementsFollowTheirOwnDerivative) {
    const auto flow = VolumeFlow::si(1e-3);
    const auto bar = PressureDifference::si(1e5);
    const std::vector<PumpDuty> duties{{VolumeFlow(), bar}, {flow, bar * 0.9}, {flow * 2, bar * 0.4}};
    Pipe pipe{Length::si(20), Length::si(0.03), Length::si(5e-5), 3, FrictionLaw::Colebrook};
    const std::vector<Element> elements{Element::resistance(Resistance::si(2e10)),
                                        Element::exponentLaw(bar * 0.1, flow, 1.85),
                                        Element::valve(FlowCoefficient::si(4), Density::si(998)),
                                        Element::pipe(pipe, Density::si(998), KinematicViscosity::si(1e-6)),
                                        Element::checkValve(Resistance::si(2e10)),
                                        Element::flowLimiter(flow * 1.5, bar * 0.2, bar),
                                        Element::staticLift(bar * 0.3),
                                        Element::pump(PumpModel::powerThroughThree(duties).value())};
    for (const ParameterKind kind : {ParameterKind::Drop, ParameterKind::Coefficient, ParameterKind::Speed}) {
        for (const Element& element : elements) {
            const double up = scaled(element, kind, std::exp(kStep)).drop(flow).si();
            const double down = scaled(element, kind, std::exp(-kStep)).drop(flow).si();
            EXPECT_NEAR(dropPerLogarithm(element, kind, flow).si(), (up - down) / (2 * kStep),
                        1e-6 * std::abs(element.drop(flow).si()))
                << element.law().index();
        }
    }
}

TEST(Sensitivity, fewLinksGiveTheSameAsAll) {
    const Network network = meshWith(77, false);
    const Solution solution = solve(network);
    std::vector<Parameter> parameters;
    std::vector<LinkIndex> links;
    for (std::uint32_t link = 0; link < network.linkCount(); ++link) {
        parameters.push_back({{link}, ParameterKind::Drop});
        if (link % 7 == 0 && !network.isClosed({link}) &&
            !std::binary_search(solution.heldShut().begin(), solution.heldShut().end(), link)) {
            links.push_back({link});
        }
    }
    ASSERT_GT(links.size(), 2U);
    const Sensitivities all = sensitivities(network, solution, parameters);
    const Sensitivities few = sensitivities(network, solution, parameters, links);
    const double scale = solution.summary().largestFlow.si();
    for (std::size_t row = 0; row < links.size(); ++row) {
        for (std::size_t column = 0; column < parameters.size(); ++column) {
            EXPECT_NEAR(few.flow(row, column).si(), all.flow(links[row].value, column).si(), 1e-9 * scale);
        }
    }
}

}  // namespace
}  // namespace ww::hydraulics
