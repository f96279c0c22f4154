// Pump power, heads, NPSH, motors, set-points and the energy code against published and hand-computed values.

#include <gtest/gtest.h>

#include <cmath>

#include "core/curve/pump_set.h"
#include "core/energy/code_test.h"
#include "core/energy/load_profile.h"
#include "core/energy/motor_power.h"
#include "core/energy/pump_head.h"
#include "core/energy/suction.h"
#include "core/fluid/fluid.h"
#include "tests/support/us_units.h"

namespace ww::energy {
namespace {

using quantity::Current;
using quantity::Duration;
using quantity::Unit;
using quantity::Voltage;
using support::ft;
using support::gpm;
using support::hp;
using support::inch;
using support::kTradeWater;
using support::psi;

constexpr double kKgPerPound = 0.45359237;
constexpr double kFoot_m = 0.3048;
Density poundsPerCubicFoot(double number) {
    return Density::si(number * kKgPerPound / (kFoot_m * kFoot_m * kFoot_m));
}
/// The density at which a foot of head is 1/2.31 psi, the trade's round figure.
Density ofRoundFigure() {
    const double psi_Pa = PressureDifference::from(1, Unit::Psi).si();
    return Density::si(psi_Pa / (2.31 * kFoot_m * quantity::kStandardGravity));
}

TEST(PumpPower, technicalPaper410Example7_34) {
    // Technical Paper 410, Flow of Fluids, example 7.34: 700 gpm, 428 ft, 62.364 lb/ft3, 70.7 % pump, 95 %
    // motor, 96 % drive, 8000 h a year at 0.12 a kWh: 107.06 hp, 117.39 hp, 84,033 a year (the paper prints
    // 83,970).
    const Power shaft = shaftPower(gpm(700), ft(428), poundsPerCubicFoot(62.364), Ratio::si(0.707));
    EXPECT_NEAR(shaft.in(Unit::Horsepower), 107.06, 0.05);
    const Power wire = wirePower(shaft, Ratio::si(0.95), Ratio::si(0.96));
    EXPECT_NEAR(wire.in(Unit::Horsepower), 117.39, 0.06);
    const Energy year = energyOver(wire, Duration::si(8000 * 3600.0));
    const Money bill = cost(year, pricePerKilowattHour(*base::Decimal::parse("0.12")));
    EXPECT_NEAR(bill.si(), 84033, 84);
    EXPECT_NEAR(bill.si(), 83970, 0.0012 * 83970);
}

TEST(PumpPower, technicalPaper410Example7_15) {
    // Technical Paper 410, example 7.15: 100 gpm, 421 ft (computed 420.35), 70 %: 15.2 hp (computed 15.15).
    EXPECT_NEAR(shaftPower(gpm(100), ft(420.35), kTradeWater, Ratio::si(0.7)).in(Unit::Horsepower), 15.15,
                0.025);
    EXPECT_NEAR(shaftPower(gpm(100), ft(421), kTradeWater, Ratio::si(0.7)).in(Unit::Horsepower), 15.2, 0.05);
}

TEST(PumpPower, textbooksInSi) {
    // Cengel and Cimbala, Fluid Mechanics, example 14-2 p. 770: 998 kg/m3, 0.0233 m3/s, 21.9 m at 76.5 %
    // and 7.3 m at 70 %: 6530.4 and 2378.9 W, with g = 9.81.
    const double g = 9.81 / quantity::kStandardGravity;
    const VolumeFlow flow = VolumeFlow::si(0.0233);
    EXPECT_NEAR(shaftPower(flow, Head::si(21.9), Density::si(998), Ratio::si(0.765)).si() * g, 6530.4, 0.7);
    EXPECT_NEAR(shaftPower(flow, Head::si(7.3), Density::si(998), Ratio::si(0.70)).si() * g, 2378.9, 0.3);
    // Schaschke, Fluid Mechanics: Worked Examples for Engineers, example 9.11 p. 257: 17,142 W.
    const Power schaschke =
        shaftPower(VolumeFlow::si(0.05), Head::si(27.958), Density::si(1000), Ratio::si(0.8));
    EXPECT_NEAR(schaschke.si() * g, 17142, 2);
}

TEST(PumpPower, tradeConstant) {
    // Own arithmetic: 100 gpm, 50 ft, 70 %, constant 3960: 1.8038 hp; the exact law differs by 0.05 %.
    EXPECT_NEAR(shaftPower(gpm(100), ft(50), kTradeWater, Ratio::si(0.7)).in(Unit::Horsepower), 1.8038,
                0.0018);
    // Own arithmetic: 231 in3 a gallon and 62.37 lb/ft3 give 3957.9; the trade rounds to 3960.
    const double constant = 1 / waterPower(gpm(1), ft(1), poundsPerCubicFoot(62.37)).in(Unit::Horsepower);
    EXPECT_NEAR(constant, 3957.9, 0.5);
    EXPECT_NEAR(constant, 3960, 0.0006 * 3960);
}

TEST(PumpPower, tipSheetTrim) {
    // US DOE Pumping Systems Tip Sheet 7 (2006), figures from memory: 3000 gpm, 165 then 125 ft, 80 %: 156.25
    // and 118.37 hp; 40 ft saved over 8000 h through a 94 % motor: 240,490 kWh a year.
    EXPECT_NEAR(shaftPower(gpm(3000), ft(165), kTradeWater, Ratio::si(0.8)).in(Unit::Horsepower), 156.25,
                0.16);
    EXPECT_NEAR(shaftPower(gpm(3000), ft(125), kTradeWater, Ratio::si(0.8)).in(Unit::Horsepower), 118.37,
                0.12);
    const Power saved =
        wirePower(shaftPower(gpm(3000), ft(40), kTradeWater, Ratio::si(0.8)), Ratio::si(0.94));
    EXPECT_NEAR(energyOver(saved, Duration::si(8000 * 3600.0)).si() / kKilowattHour.si(), 240490, 481);
}

TEST(PumpPower, excessOfThreeCircuits) {
    // Common practice, no source; power computed by hand: 1500 gpm, 70 ft made, 54 ft needed, 80 %: 16 ft and
    // 7.58 hp.
    EXPECT_NEAR((ft(70) - ft(54)).in(Unit::Foot), 16, 1e-12);
    EXPECT_NEAR(shaftPower(gpm(1500), ft(16), kTradeWater, Ratio::si(0.8)).in(Unit::Horsepower), 7.58,
                0.0076);
}

TEST(PumpHeadFromGauges, velocityHeadArticle) {
    // Pumps & Systems, August 2012 (L. Nelik): 70 gpm, 5 and 80 psig, 1.5 and 1.0 in pipe, suction gauge +1
    // ft, discharge gauge +6 ft, 2.31 ft a psi; total 188.45 ft computed; "discharge times 2.31" is 185 ft.
    GaugeReading gauges{psi(5), psi(80), {}};
    GaugeStation station{inch(12), inch(72), inch(1.5), inch(1.0)};
    const auto head = pumpHead(gauges, station, {}, gpm(70), ofRoundFigure());
    ASSERT_TRUE(head.ok());
    EXPECT_NEAR(head->pressure.in(Unit::Foot), 173.25, 0.01);
    EXPECT_NEAR(head->elevation.in(Unit::Foot), 5, 1e-9);
    EXPECT_NEAR(head->total.in(Unit::Foot), 188.45, 0.3);
    // The article's speeds, 28.61 and 12.72 ft/s with V = 0.321 Q/A.
    const auto speed = [](Head velocity) {
        return std::sqrt(2 * quantity::kStandardGravity * velocity.si()) / kFoot_m;
    };
    EXPECT_NEAR(speed(velocityHead(gpm(70), inch(1.0))), 28.61, 0.03);
    EXPECT_NEAR(speed(velocityHead(gpm(70), inch(1.5))), 12.72, 0.013);
    // V = 0.32083 Q/A exactly (gpm, in2).
    EXPECT_NEAR(speed(velocityHead(gpm(1), inch(std::sqrt(4 / 3.14159265358979)))), 0.32083, 0.000005);
    EXPECT_NEAR(80 * 2.31, 185, 0.3);
}

TEST(PumpHeadFromGauges, mercuryAndVacuum) {
    // Karassik et al., Pump Handbook, chapter 13: 24 inHg is 27.2 ft of water (SG 13.6).
    const Density mercury = Density::si(13.6 * 999.0);
    const PressureDifference vacuum = quantity::pressureOf(Head::si(24 * 0.0254), mercury);
    EXPECT_NEAR(quantity::headOf(vacuum, kTradeWater).in(Unit::Foot), 27.2, 0.01);
}

TEST(PumpHeadFromGauges, heightOfGauges) {
    // Computed by hand: (70 - 30) psi, discharge gauge 3 ft higher, equal pipes, 2.31 ft a psi: 95.4 ft.
    const GaugeStation station{inch(0), inch(36), inch(4), inch(4)};
    const auto head = pumpHead({psi(30), psi(70), {}}, station, {}, gpm(200), ofRoundFigure());
    ASSERT_TRUE(head.ok());
    EXPECT_NEAR(head->total.in(Unit::Foot), 95.4, 0.001);
    EXPECT_EQ(head->velocity.si(), 0);
}

TEST(PumpHeadFromGauges, temperatureOfTheWater) {
    // Computed with IAPWS-IF97: 40 psi is 92.27, 92.36 and 95.07 ft of water at 45, 60 and 180 F.
    struct Case {
        double temperature_F;
        double head_ft;
    };
    for (const Case& one : {Case{45, 92.27}, Case{60, 92.36}, Case{180, 95.07}}) {
        const auto water =
            fluid::Fluid::make(fluid::FluidKind::Water, Ratio::si(0),
                               quantity::Temperature::from(one.temperature_F, Unit::Fahrenheit));
        const auto head = pumpHead({psi(0), psi(40), {}}, {}, {}, {}, water->density());
        ASSERT_TRUE(head.ok());
        EXPECT_NEAR(head->total.in(Unit::Foot), one.head_ft, 0.02) << one.temperature_F;
    }
    // Pump Handbook, chapter 13: water at 68 F weighs 62.315 lb/ft3.
    const auto water = fluid::Fluid::make(fluid::FluidKind::Water, Ratio::si(0),
                                          quantity::Temperature::from(68, Unit::Fahrenheit));
    EXPECT_NEAR(water->density().si() / poundsPerCubicFoot(1).si(), 62.315, 0.01);
}

TEST(PumpHeadFromGauges, velocityHeadOfLargePipes) {
    // Computed by hand: 1500 gpm in 7.981 and 6.065 in: 9.619 and 16.656 ft/s, a difference of 2.874 ft.
    const Head difference = velocityHead(gpm(1500), inch(6.065)) - velocityHead(gpm(1500), inch(7.981));
    EXPECT_NEAR(difference.in(Unit::Foot), 2.874, 0.003);
}

TEST(Npsh, technicalPaper410Example7_32) {
    // Technical Paper 410, example 7.32: closed tank at 5 psig, vapour pressure 0.256 psi, pump 25 ft above
    // the water, 6 ft lost, 62.364 lb/ft3: 13.887 ft; required 20 ft at a ratio of 1.3 is 26.0 ft.
    SuctionReading suction;
    suction.gauge = psi(5);
    suction.gaugeHeight = -inch(31 * 12);  // the lift and the loss stand below the datum
    suction.air = AbsolutePressure::from(14.696, Unit::Psi);
    suction.vapour = AbsolutePressure::from(0.256, Unit::Psi);
    EXPECT_NEAR(npshAvailable(suction, poundsPerCubicFoot(62.364)).in(Unit::Foot), 13.887, 0.014);
    EXPECT_NEAR(20 * 1.3, 26.0, 1e-12);
}

TEST(Npsh, heightOfAPumpOverWater) {
    // Munson et al., Fundamentals of Fluid Mechanics, example 12.3 p. 702: 0.5 ft3/s, 15 ft required, loss
    // coefficient 20 in 4 in pipe, water at 80 F (0.5069 psi, 62.22 lb/ft3): at most 7.65 ft above the water.
    const VolumeFlow flow = VolumeFlow::si(0.5 * kFoot_m * kFoot_m * kFoot_m);
    const Head loss = velocityHead(flow, inch(4)) * 20;
    SuctionReading suction;
    suction.air = AbsolutePressure::from(14.7, Unit::Psi);
    suction.vapour = AbsolutePressure::from(0.5069, Unit::Psi);
    const Head available = npshAvailable(suction, poundsPerCubicFoot(62.22)) - loss;
    EXPECT_NEAR((available - ft(15)).in(Unit::Foot), 7.65, 0.03);
}

TEST(Npsh, staticHeightToTheTop) {
    // Trade magazine column, Troubleshooting hydronic systems, 2019: 36 ft to the top radiator is 16 psi
    // (15.6).
    EXPECT_NEAR(quantity::pressureOf(ft(36), kTradeWater).in(Unit::Psi), 15.6, 0.05);
}

TEST(Npsh, standardAtmosphere) {
    // ISO 2533, by geopotential height: 1000 m 89.8746 kPa, 5000 m 54.0199 kPa.
    EXPECT_NEAR(airPressure(Length::si(0)).si(), 101325, 1e-6);
    EXPECT_NEAR(airPressure(Length::si(1000)).si(), 89874.6, 2);
    EXPECT_NEAR(airPressure(Length::si(5000)).si(), 54019.9, 2);
}

MotorReading threePhase(std::vector<double> volts, std::vector<double> amps) {
    MotorReading reading;
    for (const double number : volts) {
        reading.volts.push_back(Voltage::si(number));
    }
    for (const double number : amps) {
        reading.amps.push_back(Current::si(number));
    }
    return reading;
}

Power estimateBy(const MotorPower& power, PowerMethod method) {
    for (const MotorPowerEstimate& estimate : power.estimates) {
        if (estimate.method == method) {
            return estimate.shaft;
        }
    }
    ADD_FAILURE() << "no estimate by method " << static_cast<int>(method);
    return Power();
}

TEST(MotorPowers, threePhaseInput) {
    // US DOE, Determining Electric Motor Load and Efficiency, from memory: 467/473/469 V, 36/38/37 A, power
    // factors 0.75/0.78/0.76: 22.9 to 23.0 kW; arithmetic 22.98.
    const MotorReading reading = threePhase({467, 473, 469}, {36, 38, 37});
    const auto input = electricalInput(reading, Ratio::si((0.75 + 0.78 + 0.76) / 3));
    ASSERT_TRUE(input.has_value());
    EXPECT_NEAR(input->in(Unit::Kilowatt), 22.98, 0.023);
}

TEST(MotorPowers, slip) {
    // The same fact sheet, from memory: 25 hp, 1800 rpm synchronous, 1750 plate, 1770 measured: 60 %, 15 hp;
    // with 475 V on a 460 V motor 64 %, 16.0 hp.
    MotorPlate plate;
    plate.power = hp(25);
    plate.speed = RotationalSpeed::from(1750, Unit::RevolutionPerMinute);
    plate.volts = Voltage::si(460);
    MotorReading reading;
    reading.speed = RotationalSpeed::from(1770, Unit::RevolutionPerMinute);
    EXPECT_NEAR(estimateBy(motorPower(plate, reading), PowerMethod::Slip).in(Unit::Horsepower), 15, 0.015);
    reading.volts = {Voltage::si(475)};
    EXPECT_NEAR(estimateBy(motorPower(plate, reading), PowerMethod::Slip).in(Unit::Horsepower), 16.0, 0.016);
    EXPECT_NEAR(synchronousSpeedAbove(*plate.speed)->in(Unit::RevolutionPerMinute), 1800, 1e-9);
}

TEST(MotorPowers, spreadOfMethods) {
    // Computed by hand: 15 hp, 460 V, plate 19.4 A, 16.2 A at 455 V, no-load 7 A: 11.85 hp with no-load
    // amps, 12.39 by the ratio of amps; at 460 V with power factor 0.82 and efficiency 0.91: 12.92 hp.
    MotorPlate plate;
    plate.power = hp(15);
    plate.volts = Voltage::si(460);
    plate.amps = Current::si(19.4);
    plate.noLoadAmps = Current::si(7);
    const MotorPower found = motorPower(plate, threePhase({455}, {16.2}));
    EXPECT_NEAR(estimateBy(found, PowerMethod::NoLoadAmps).in(Unit::Horsepower), 11.85, 0.012);
    EXPECT_NEAR(estimateBy(found, PowerMethod::AmpRatio).in(Unit::Horsepower), 12.39, 0.0124);
    ASSERT_TRUE(found.chosen.has_value());
    EXPECT_EQ(found.estimates[*found.chosen].method, PowerMethod::NoLoadAmps);
    EXPECT_NEAR(found.lowest->in(Unit::Horsepower), 11.85, 0.012);
    EXPECT_NEAR(found.highest->in(Unit::Horsepower), 12.39, 0.0124);
    MotorReading reading = threePhase({460}, {16.2});
    reading.powerFactor = Ratio::si(0.82);
    reading.efficiency = Ratio::si(0.91);
    const MotorPower measured = motorPower(plate, reading);
    EXPECT_NEAR(estimateBy(measured, PowerMethod::PowerFactor).in(Unit::Horsepower), 12.92, 0.013);
    EXPECT_EQ(measured.estimates[*measured.chosen].method, PowerMethod::PowerFactor);
}

TEST(MotorPowers, powerFactor) {
    // Computed by hand: 460 V, 12 A, power factor 0.85, efficiency 0.88: 9.586 hp.
    MotorReading reading = threePhase({460}, {12});
    reading.powerFactor = Ratio::si(0.85);
    reading.efficiency = Ratio::si(0.88);
    EXPECT_NEAR(motorPower({}, reading).shaft()->in(Unit::Horsepower), 9.586, 0.0096);
}

/// H = 60 - 0.0012 Q^2 in ft and gpm, at 70 % everywhere.
curve::PumpCurve sixtyFootPump() {
    std::vector<curve::PumpPoint> points;
    for (double flow_gpm = 0; flow_gpm <= 160; flow_gpm += 10) {
        curve::PumpPoint point;
        point.flow = gpm(flow_gpm);
        point.head = ft(60 - 0.0012 * flow_gpm * flow_gpm);
        point.efficiency = Ratio::si(0.70);
        points.push_back(point);
    }
    return curve::PumpCurve::make(points).value();
}

TEST(PumpSets, twoInParallelOnOneLoop) {
    // Computed by hand: H = 60 - 0.0012 Q^2 on 0.0033 Q^2: one pump 115.47 gpm, two 129.10 gpm (+11.8 %).
    const auto onLoop = [](const curve::PumpSet& set) {
        double low_gpm = 0;
        double high_gpm = 160;
        for (int i = 0; i < 60; ++i) {
            const double middle_gpm = 0.5 * (low_gpm + high_gpm);
            const bool isAbove = set.head(gpm(middle_gpm))->in(Unit::Foot) > 0.0033 * middle_gpm * middle_gpm;
            (isAbove ? low_gpm : high_gpm) = middle_gpm;
        }
        return low_gpm;
    };
    const curve::PumpCurve curve = sixtyFootPump();
    EXPECT_NEAR(onLoop({{{curve, {}}}, curve::PumpJoint::Parallel}), 115.47, 0.02);
    EXPECT_NEAR(onLoop({{{curve, {}}, {curve, {}}}, curve::PumpJoint::Parallel}), 129.10, 0.02);
    // In series the heads add: 120 - 0.0024 Q^2 = 0.0033 Q^2 at 145.095 gpm.
    EXPECT_NEAR(onLoop({{{curve, {}}, {curve, {}}}, curve::PumpJoint::Series}), std::sqrt(120 / 0.0057),
                0.02);
}

TEST(Affinities, slowedAndTrimmedSets) {
    // Computed by hand: a loop of 33 ft at 100 gpm on that pump: 0.86603 of its speed; at 80 % speed 450 gpm
    // and 120 ft become 360 gpm and 76.8 ft, half the power (common practice guide).
    const curve::PumpSet set({{sixtyFootPump(), {}}}, curve::PumpJoint::Parallel);
    EXPECT_NEAR(*speedFactorThrough(set, gpm(100), ft(33)), 0.86603, 0.5e-5);
    EXPECT_NEAR(set.atSpeed(0.8).head(gpm(80))->in(Unit::Foot), 0.64 * set.head(gpm(100))->in(Unit::Foot),
                1e-9);
    EXPECT_NEAR(set.atSpeed(0.8).shaftPower(gpm(80), kTradeWater)->si(),
                0.512 * set.shaftPower(gpm(100), kTradeWater)->si(), 1e-6);
    const curve::PumpCurve trimmed = curve::trimmedCurve(sixtyFootPump(), 0.9);
    EXPECT_NEAR(trimmed.head(gpm(90)) / set.head(gpm(100)).value(), 0.81, 1e-9);
}

struct CodeCase {
    const char* name;
    double flow_gpm;
    double throttled_ft;
    double needed_ft;
    double efficiencyShare;
    double motor_hp;
    double excess_hp;
    double limit_hp;
    double plateLimit_hp;
    CodeDecision decision;
    CodeDecision plateDecision;
};

TEST(EnergyCode, decisions) {
    // Computed from the two forms of the clause (ASHRAE/IES 90.1-2010, 6.7.2.3.3, and IECC C408.2.2.2, both
    // from memory): excess hp, limits 5 % or 3 hp against 5 % alone.
    const CodeDecision must = CodeDecision::MustReduce;
    const CodeDecision small = CodeDecision::ExemptSmallExcess;
    const CodeCase kCases[] = {
        {"15 hp", 400, 60, 45, 0.75, 15, 2.020, 3.0, 0.75, small, must},
        {"60 hp", 1500, 100, 60, 0.80, 60, 18.94, 3.0, 3.0, must, must},
        {"30 hp", 900, 80, 74, 0.78, 30, 1.748, 3.0, 1.5, small, must},
        {"75 hp", 2000, 110, 101, 0.82, 75, 5.543, 3.75, 3.75, must, must},
        {"exactly 10 hp", 400, 60, 45, 0.75, 10, 2.020, 3.0, 0.5, CodeDecision::ExemptSmallMotor, must},
        {"100 hp", 1600, 100, 91, 0.80, 100, 4.545, 5.0, 5.0, small, small}};
    for (const CodeCase& one : kCases) {
        SCOPED_TRACE(one.name);
        CodeTestInput input;
        input.flow = gpm(one.flow_gpm);
        input.headThrottled = ft(one.throttled_ft);
        input.headNeeded = ft(one.needed_ft);
        input.density = kTradeWater;
        input.efficiency = Ratio::si(one.efficiencyShare);
        input.plate = hp(one.motor_hp);
        const CodeTest floor = codeTest(input, percentOrFloorThresholds());
        const CodeTest plate = codeTest(input, percentOnlyThresholds());
        EXPECT_NEAR(floor.excess->in(Unit::Horsepower), one.excess_hp, 0.001 * one.excess_hp);
        EXPECT_NEAR(floor.limit->in(Unit::Horsepower), one.limit_hp, 1e-9);
        EXPECT_NEAR(plate.limit->in(Unit::Horsepower), one.plateLimit_hp, 1e-9);
        EXPECT_EQ(floor.decision, one.decision);
        EXPECT_EQ(plate.decision, one.plateDecision);
    }
}

}  // namespace
}  // namespace ww::energy
