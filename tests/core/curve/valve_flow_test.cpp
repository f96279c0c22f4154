#include "core/curve/valve_flow.h"

#include <gtest/gtest.h>

#include <cmath>

namespace ww::curve {
namespace {

using quantity::Unit;

FlowCoefficient kv(double number) {
    return FlowCoefficient::from(number, Unit::Kv);
}

// By the definition of Kv (IEC 60534-1): Kv m3/h at 1 bar and specific gravity 1.
TEST(ValveFlow, isTheCoefficientAtOneBar) {
    const VolumeFlow flow = valveFlow(kv(6.3), PressureDifference::from(1, Unit::Bar), kReferenceDensity);
    EXPECT_DOUBLE_EQ(flow.in(Unit::CubicMetrePerHour), 6.3);
}

TEST(ValveFlow, isTheCoefficientAtOnePsiInUsUnits) {
    const VolumeFlow flow = valveFlow(FlowCoefficient::from(14, Unit::Cv),
                                      PressureDifference::from(1, Unit::Psi), kReferenceDensity);
    EXPECT_NEAR(flow.in(Unit::GallonPerMinute), 14, 1e-12);
}

TEST(ValveFlow, runsBackwardsUnderANegativeDrop) {
    const Density density = Density::si(1030);
    const PressureDifference dp = PressureDifference::si(12e3);
    EXPECT_DOUBLE_EQ(valveFlow(kv(4), -dp, density).si(), -valveFlow(kv(4), dp, density).si());
    EXPECT_DOUBLE_EQ(valveDrop(kv(4), VolumeFlow::si(-2e-4), density).si(),
                     -valveDrop(kv(4), VolumeFlow::si(2e-4), density).si());
    EXPECT_EQ(valveFlow(kv(4), PressureDifference(), density).si(), 0);
    EXPECT_EQ(valveFlow(kv(0), dp, density).si(), 0);
}

TEST(ValveFlow, itsThreeFormsAgree) {
    const Density density = Density::si(971.9);
    for (const double coefficient : {0.1, 1.7, 33.0}) {
        for (const double drop_Pa : {50.0, 3e3, 2.2e5}) {
            const PressureDifference dp = PressureDifference::si(drop_Pa);
            const VolumeFlow flow = valveFlow(kv(coefficient), dp, density);
            EXPECT_NEAR(valveDrop(kv(coefficient), flow, density).si(), drop_Pa, 1e-12 * drop_Pa);
            EXPECT_NEAR(coefficientNeeded(flow, dp, density).si(), coefficient, 1e-12 * coefficient);
            EXPECT_NEAR(valveResistance(kv(coefficient), density).si() * flow.si() * flow.si(), drop_Pa,
                        1e-12 * drop_Pa);
        }
    }
}

TEST(ValveFlow, ofADenserFluidIsLessByTheRootOfItsGravity) {
    const PressureDifference dp = PressureDifference::si(2e4);
    const double ratio =
        valveFlow(kv(4), dp, Density::si(999.0 * 1.04)) / valveFlow(kv(4), dp, kReferenceDensity);
    EXPECT_NEAR(ratio, 1 / std::sqrt(1.04), 1e-14);
}

TEST(ValveFlow, brokenContractsAreCaught) {
    EXPECT_THROW((void)valveDrop(kv(0), VolumeFlow::si(1e-4), kReferenceDensity), base::ContractBreach);
    EXPECT_THROW((void)coefficientNeeded(VolumeFlow::si(0), PressureDifference::si(1), kReferenceDensity),
                 base::ContractBreach);
    EXPECT_THROW((void)specificGravity(Density()), base::ContractBreach);
}

// JCGM 100:2008, 5.1.6: relative uncertainties of a product of powers, each times its exponent, in
// quadrature.
TEST(FlowUncertainty, addsItsPartsInQuadrature) {
    EXPECT_DOUBLE_EQ(flowUncertainty({}), 0);
    EXPECT_DOUBLE_EQ(flowUncertainty({.coefficient = 0.05}), 0.05);
    EXPECT_DOUBLE_EQ(flowUncertainty({.pressure = 0.04}), 0.02);
    EXPECT_DOUBLE_EQ(flowUncertainty({.density = 0.04}), 0.02);
    EXPECT_NEAR(flowUncertainty({0.02, 0.02, 0.04, 0.04}), 0.05, 1e-15);
}

}  // namespace
}  // namespace ww::curve
