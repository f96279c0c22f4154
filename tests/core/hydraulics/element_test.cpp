// Every law of an element: hand cases, slope against differences, and that no drop falls with flow.

#include "core/hydraulics/element.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>
#include <vector>

#include "core/curve/valve_flow.h"

namespace ww::hydraulics {
namespace {

constexpr Density kWater = Density::si(998.2);
constexpr KinematicViscosity kViscosity = KinematicViscosity::si(1.004e-6);

VolumeFlow flow(double m3s) {
    return VolumeFlow::si(m3s);
}
PressureDifference Pa(double number) {
    return PressureDifference::si(number);
}
double dropAt(const Element& element, double m3s) {
    return element.drop(flow(m3s)).si();
}

PumpModel powerPump() {
    const PumpDuty points[] = {{flow(0), Pa(75000)}, {flow(2e-3), Pa(60000)}, {flow(3.2e-3), Pa(33000)}};
    return PumpModel::powerThroughThree(points).value();
}
PumpModel straightPump() {
    const PumpDuty points[] = {{flow(0), Pa(75000)}, {flow(2e-3), Pa(60000)}, {flow(3.2e-3), Pa(33000)}};
    return PumpModel::straightLines(points).value();
}
PumpModel tablePump() {
    std::vector<curve::PumpPoint> rows(4);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const double q = 1e-3 * static_cast<double>(i);
        rows[i].flow = flow(q);
        rows[i].head = quantity::Head::si(8 - 5e5 * q * q);
    }
    return PumpModel::fromCurve(curve::PumpCurve::make(rows).value(), kWater);
}

Pipe steelPipe(FrictionLaw law) {
    Pipe pipe;
    pipe.length = Length::si(10);
    pipe.insideDiameter = Length::si(0.0273);
    pipe.roughness = Length::si(4.6e-5);
    pipe.minorLossSum = 2;
    pipe.friction = law;
    return pipe;
}

struct Named {
    std::string name;
    Element element;
    std::vector<double> kinks;  ///< flows at which the slope steps
};

std::vector<Named> allLaws() {
    PumpOperation slow;
    slow.speedFraction = 0.7;
    slow.diameterFraction = 0.95;
    PumpOperation open;
    open.hasNonReturn = false;
    const double reynoldsPerFlow = 4 / (std::numbers::pi * 0.0273 * kViscosity.si());
    const std::vector<double> regimes = {-4000 / reynoldsPerFlow, -2000 / reynoldsPerFlow,
                                         2000 / reynoldsPerFlow, 4000 / reynoldsPerFlow};
    return {
        {"resistance", Element::resistance(Resistance::si(3e9)), {}},
        {"exponent 1.85", Element::exponentLaw(Pa(2e4), flow(1e-3), 1.85), {}},
        {"valve", Element::valve(FlowCoefficient::si(4), kWater), {}},
        {"pipe Colebrook", Element::pipe(steelPipe(FrictionLaw::Colebrook), kWater, kViscosity), {}},
        {"pipe Colebrook linear",
         Element::pipe(steelPipe(FrictionLaw::ColebrookLinearTransition), kWater, kViscosity), regimes},
        {"pipe Swamee-Jain", Element::pipe(steelPipe(FrictionLaw::SwameeJain), kWater, kViscosity), {}},
        {"check valve", Element::checkValve(Resistance::si(1e9)), {0}},
        {"limiter", Element::flowLimiter(flow(4e-4), Pa(1.5e4), Pa(2.2e5)), {4e-4, 4e-4 * 1.001}},
        {"pressure independent",
         Element::pressureIndependentValve(flow(8e-4), 0.5, Pa(1.5e4), Pa(4e5)),
         {4e-4, 4e-4 * 1.001}},
        {"lift", Element::staticLift(Pa(2e4)), {}},
        {"pump by power", Element::pump(powerPump()), {0}},
        {"pump by power, slow and trimmed", Element::pump(powerPump(), slow), {0}},
        {"pump by lines", Element::pump(straightPump()), {0, 2e-3}},
        {"pump by table", Element::pump(tablePump()), {0}},
        {"pump without non-return", Element::pump(powerPump(), open), {}},
    };
}

std::vector<double> sampleFlows() {
    std::vector<double> flows;
    for (double size = 1e-8; size < 1e-2; size *= 1.17) {
        flows.push_back(size);
        flows.push_back(-size);
    }
    flows.push_back(0);
    std::sort(flows.begin(), flows.end());
    return flows;
}

TEST(Element, slopeIsTheDerivativeOfTheDrop) {
    for (const Named& law : allLaws()) {
        for (const double q : sampleFlows()) {
            const double step = std::max(std::abs(q) * 1e-5, 1e-12);
            const bool isAtKink = std::any_of(law.kinks.begin(), law.kinks.end(),
                                              [&](double kink) { return std::abs(q - kink) <= 2 * step; });
            if (isAtKink) {
                continue;
            }
            const double upper = dropAt(law.element, q + step);
            const double lower = dropAt(law.element, q - step);
            const double rounding = 4e-16 * (std::abs(upper) + std::abs(lower)) / step;
            const double slope = law.element.slope(flow(q)).si();
            // At zero flow the slope of a power is zero and grows by that of the step.
            const double change = q == 0 ? law.element.slope(flow(step)).si() : 1e-5 * slope;
            EXPECT_NEAR(slope, (upper - lower) / (2 * step), change + rounding) << law.name << " at " << q;
        }
    }
}

TEST(Element, noDropFallsWithFlow) {
    for (const Named& law : allLaws()) {
        double before = -INFINITY;
        for (const double q : sampleFlows()) {
            const double here = dropAt(law.element, q);
            EXPECT_TRUE(std::isfinite(here)) << law.name << " at " << q;
            EXPECT_GE(here, before) << law.name << " at " << q;
            EXPECT_GE(law.element.slope(flow(q)).si(), 0) << law.name << " at " << q;
            before = here;
        }
    }
}

// dp = k q|q| by its definition.
TEST(Element, squareLawByHand) {
    const Element element = Element::resistance(Resistance::si(2e9));
    EXPECT_DOUBLE_EQ(dropAt(element, 1e-3), 2000);
    EXPECT_DOUBLE_EQ(dropAt(element, -1e-3), -2000);
    EXPECT_DOUBLE_EQ(element.slope(flow(1e-3)).si(), 4e6);
    EXPECT_EQ(dropAt(element, 0), 0);
}

TEST(Element, exponentLawPassesThroughItsPoint) {
    const Element element = Element::exponentLaw(Pa(12000), flow(5e-4), 1.852);
    EXPECT_NEAR(dropAt(element, 5e-4), 12000, 1e-9);
    EXPECT_NEAR(dropAt(element, 1e-3), 12000 * std::pow(2, 1.852), 1e-8);
}

// Kv is the flow in m3/h at 1 bar (IEC 60534-1); a denser fluid needs dp in proportion.
TEST(Element, valveHasItsFlowAtOneBar) {
    const Element element = Element::valve(FlowCoefficient::si(3.6), curve::kReferenceDensity);
    EXPECT_NEAR(dropAt(element, 1e-3), 1e5, 1e-6);
    const Element glycol =
        Element::valve(FlowCoefficient::si(3.6), Density::si(1.05 * curve::kReferenceDensity.si()));
    EXPECT_NEAR(dropAt(glycol, 1e-3), 1.05e5, 1e-6);
    EXPECT_TRUE(Element::valve(FlowCoefficient::si(0), kWater).isShut());
}

// Hagen-Poiseuille: dp = 128 mu L Q / (pi D^4).
TEST(Element, laminarPipeIsPoiseuille) {
    Pipe pipe = steelPipe(FrictionLaw::Colebrook);
    pipe.minorLossSum = 0;
    const Element element = Element::pipe(pipe, kWater, kViscosity);
    const double q = 1e-5;  // Re 465
    const double exact =
        128 * kViscosity.si() * kWater.si() * pipe.length.si() * q / (std::numbers::pi * std::pow(0.0273, 4));
    EXPECT_NEAR(dropAt(element, q), exact, 1e-12 * exact);
    EXPECT_GT(element.slope(flow(0)).si(), 0);
}

TEST(Element, limiterHoldsItsFlowInsideItsRange) {
    const Element limiter = Element::flowLimiter(flow(4e-4), Pa(1.5e4), Pa(2.2e5));
    EXPECT_NEAR(dropAt(limiter, 4e-4), 1.5e4, 1e-6);
    EXPECT_NEAR(dropAt(limiter, 4e-4 * 1.001), 2.2e5, 1e-3);
    EXPECT_NEAR(dropAt(limiter, 2e-4), 1.5e4 / 4, 1e-9);
    EXPECT_NEAR(dropAt(limiter, 8e-4 * 1.001), 4 * 2.2e5, 1e-3);
}

TEST(Element, pumpFollowsAffinity) {
    const PumpModel model = powerPump();
    PumpOperation operation;
    operation.speedFraction = 0.8;
    const Element slow = Element::pump(model, operation);
    for (const double q : {0.0, 5e-4, 2e-3, 3.5e-3}) {
        EXPECT_NEAR(dropAt(slow, 0.8 * q), -0.64 * model.rise(flow(q)).si(), 1e-9);
    }
}

TEST(Element, stoppedPumpIsShutUnlessItsResistanceIsKnown) {
    PumpOperation stopped;
    stopped.isRunning = false;
    EXPECT_TRUE(Element::pump(powerPump(), stopped).isShut());
    PumpOperation standing;
    standing.speedFraction = 0;
    EXPECT_TRUE(Element::pump(powerPump(), standing).isShut());
    stopped.stoppedResistance = Resistance::si(5e9);
    EXPECT_FALSE(Element::pump(powerPump(), stopped).isShut());
    EXPECT_NEAR(dropAt(Element::pump(powerPump(), stopped), 1e-3), 5000, 1e-9);
}

TEST(Element, everyBadNumberIsReported) {
    EXPECT_TRUE(Element::resistance(Resistance::si(-1)).faults().at(0).is(kElementResistance));
    EXPECT_TRUE(Element::resistance(Resistance::si(NAN)).faults().at(0).is(kElementResistance));
    EXPECT_TRUE(Element::valve(FlowCoefficient::si(-2), kWater).faults().at(0).is(kElementCoefficient));
    EXPECT_TRUE(Element::exponentLaw(Pa(1e4), flow(1e-3), 0.5).faults().at(0).is(kElementExponent));
    EXPECT_TRUE(Element::flowLimiter(flow(1e-4), Pa(2e4), Pa(1e4)).faults().at(0).is(kLimiterRange));
    EXPECT_TRUE(Element::staticLift(Pa(INFINITY)).faults().at(0).is(kLiftNumber));
    PumpOperation backwards;
    backwards.speedFraction = -0.5;
    EXPECT_TRUE(Element::pump(powerPump(), backwards).faults().at(0).is(kPumpSpeed));
    Pipe pipe;
    pipe.roughness = Length::si(-1);
    pipe.minorLossSum = -1;
    EXPECT_EQ(Element::pipe(pipe, Density::si(0), KinematicViscosity::si(0)).faults().size(), 6U);
}

TEST(PumpModel, everyBadCurveIsRefused) {
    const PumpDuty rising[] = {{flow(0), Pa(5e4)}, {flow(1e-3), Pa(6e4)}, {flow(2e-3), Pa(3e4)}};
    EXPECT_TRUE(PumpModel::powerThroughThree(rising).fault().is(kPumpDutyFalls));
    EXPECT_TRUE(PumpModel::straightLines(rising).fault().is(kPumpDutyFalls));
    const PumpDuty late[] = {{flow(1e-4), Pa(5e4)}, {flow(1e-3), Pa(4e4)}, {flow(2e-3), Pa(3e4)}};
    EXPECT_TRUE(PumpModel::powerThroughThree(late).fault().is(kPumpDutyStart));
    EXPECT_TRUE(PumpModel::powerThroughThree({late, 2}).fault().is(kPumpDutyCount));
    EXPECT_TRUE(PumpModel::straightLines({late, 1}).fault().is(kPumpDutyCount));
}

}  // namespace
}  // namespace ww::hydraulics
