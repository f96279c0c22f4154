// Motor readings: which way to the power is chosen, what is refused, and how phases compare.

#include "core/energy/motor_condition.h"

#include <gtest/gtest.h>

#include "tests/support/faults.h"
#include "tests/support/us_units.h"

namespace ww::energy {
namespace {

using support::has;
using support::hp;
using support::rpm;

MotorPlate plateOf15hp() {
    MotorPlate plate;
    plate.power = hp(15);
    plate.volts = Voltage::si(460);
    plate.amps = Current::si(19.4);
    plate.efficiency = Ratio::si(0.91);
    plate.speed = rpm(1750);
    return plate;
}

TEST(MotorTest, inputPowerGoesFirst) {
    MotorReading reading;
    reading.inputPower = Power::si(10000);
    reading.volts = {Voltage::si(460)};
    reading.amps = {Current::si(16)};
    reading.powerFactor = Ratio::si(0.8);
    const MotorPower found = motorPower(plateOf15hp(), reading);
    EXPECT_EQ(found.estimates[*found.chosen].method, PowerMethod::InputPower);
    EXPECT_NEAR(found.shaft()->si(), 9100, 1e-9);
    EXPECT_EQ(found.input->si(), 10000);
    EXPECT_TRUE(found.reason->is(kChosenInputPower));
    EXPECT_LE(*found.lowest, *found.shaft());
    EXPECT_GE(*found.highest, *found.shaft());
}

TEST(MotorTest, behindADriveOnlyItsDisplayCounts) {
    MotorPlate plate = plateOf15hp();
    plate.isBehindDrive = true;
    MotorReading reading;
    reading.volts = {Voltage::si(380)};
    reading.amps = {Current::si(16)};
    const MotorPower found = motorPower(plate, reading);
    EXPECT_TRUE(found.estimates.empty());
    EXPECT_TRUE(has(found.findings, kBehindDrive) && has(found.findings, kNoMotorPower));
    reading.inputPower = Power::si(8000);
    EXPECT_NEAR(motorPower(plate, reading).shaft()->si(), 7280, 1e-9);
}

TEST(MotorTest, ampsWithoutVolts) {
    MotorReading reading;
    reading.amps = {Current::si(16)};
    const MotorPower found = motorPower(plateOf15hp(), reading);
    EXPECT_FALSE(found.shaft().has_value());
    EXPECT_TRUE(has(found.findings, kAmpsWithoutVolts));
}

TEST(MotorTest, ratioOfAmpsAtLowLoad) {
    MotorReading reading;
    reading.volts = {Voltage::si(460)};
    reading.amps = {Current::si(9)};
    const MotorPower found = motorPower(plateOf15hp(), reading);
    ASSERT_EQ(found.estimates.size(), 1U);
    EXPECT_TRUE(has(found.estimates[0].cautions, kAmpRatioLowLoad));
}

TEST(MotorTest, impossibleSpeedAndNoLoadAmps) {
    MotorReading reading;
    reading.speed = rpm(1810);
    EXPECT_TRUE(has(motorPower(plateOf15hp(), reading).findings, kSlipOutside));
    MotorPlate plate = plateOf15hp();
    plate.noLoadAmps = Current::si(20);
    reading = {};
    reading.volts = {Voltage::si(460)};
    reading.amps = {Current::si(16)};
    EXPECT_TRUE(has(motorPower(plate, reading).findings, kNoLoadOutside));
}

TEST(MotorTest, synchronousSpeeds) {
    // Poles and frequency, own arithmetic.
    EXPECT_NEAR(synchronousSpeedAbove(rpm(1450))->in(quantity::Unit::RevolutionPerMinute), 1500, 1e-9);
    EXPECT_NEAR(synchronousSpeedAbove(rpm(3450))->in(quantity::Unit::RevolutionPerMinute), 3600, 1e-9);
    EXPECT_NEAR(synchronousSpeedAbove(rpm(2920))->in(quantity::Unit::RevolutionPerMinute), 3000, 1e-9);
    EXPECT_FALSE(synchronousSpeedAbove(rpm(2500)).has_value());
    EXPECT_FALSE(synchronousSpeedAbove(rpm(3600)).has_value());
}

TEST(MotorTest, imbalanceOfPhases) {
    // NEMA MG 1, its own example form: largest deviation from the mean over the mean. 467/473/469: 473
    // is 3.33 above the mean of 469.67: 0.71 %.
    MotorReading reading;
    reading.volts = {Voltage::si(467), Voltage::si(473), Voltage::si(469)};
    reading.amps = {Current::si(20), Current::si(16), Current::si(15)};
    const MotorCondition found = motorCondition(plateOf15hp(), reading);
    EXPECT_NEAR(found.voltageImbalance->si(), 0.0071, 0.0001);
    EXPECT_NEAR(found.currentImbalance->si(), 3.0 / 17, 1e-9);
    EXPECT_TRUE(has(found.findings, kCurrentImbalance));
    EXPECT_FALSE(has(found.findings, kVoltageImbalance));
    EXPECT_TRUE(has(found.findings, kMotorOverloaded)) << "20 A on a plate of 19.4 A";
    MotorPlate withReserve = plateOf15hp();
    withReserve.serviceFactor = 1.15;
    EXPECT_TRUE(has(motorCondition(withReserve, reading).findings, kMotorInService));
    reading.volts = {Voltage::si(400), Voltage::si(420)};
    const MotorCondition low = motorCondition(plateOf15hp(), reading);
    EXPECT_TRUE(has(low.findings, kVoltageImbalance) && has(low.findings, kVoltageOffPlate));
}

TEST(MotorTest, onePhaseHasNoImbalance) {
    MotorReading reading;
    reading.volts = {Voltage::si(230)};
    EXPECT_FALSE(motorCondition({}, reading).voltageImbalance.has_value());
}

}  // namespace
}  // namespace ww::energy
