// How evenly a motor's phases are loaded and how far it stands from its plate. Not for its power
// (motor_power.h).
#pragma once

#include "core/energy/motor_power.h"

namespace ww::energy {

inline constexpr base::MessageForm kVoltageImbalance{
    "motor_voltage_imbalance",
    "the voltages of the phases differ by {1} % of their mean, more than {2} %; have the supply checked by a "
    "licensed electrician before the pump runs on"};
inline constexpr base::MessageForm kCurrentImbalance{"motor_current_imbalance",
                                                     "the currents of the phases differ by {1} % of their "
                                                     "mean, more than {2} %; have the motor and its supply "
                                                     "checked by a licensed electrician"};
inline constexpr base::MessageForm kMotorOverloaded{"motor_above_service_factor",
                                                    "the motor draws {1} A, more than plate times service "
                                                    "factor, {2} A; throttle the pump's discharge at once "
                                                    "and find out why"};
inline constexpr base::MessageForm kMotorInService{
    "motor_in_service_factor",
    "the motor draws {1} A, above its plate of {2} A and within its service factor; do not leave it there"};
inline constexpr base::MessageForm kVoltageOffPlate{
    "motor_voltage_off_plate",
    "the voltage is {1} % of the plate's; motors are made for 90 to 110 %, have the supply checked"};

/// Largest deviation of a phase from the mean over the mean (the definition of NEMA MG 1).
std::optional<Ratio> voltageImbalance(const MotorReading& reading);
std::optional<Ratio> currentImbalance(const MotorReading& reading);

/// Limits of the findings; editable. Common practice, no source.
struct MotorLimits {
    Ratio voltageImbalance = Ratio::si(0.02);
    Ratio currentImbalance = Ratio::si(0.10);
};

struct MotorCondition {
    std::optional<Ratio> voltageImbalance;  ///< nothing with fewer than two phases
    std::optional<Ratio> currentImbalance;
    std::optional<Ratio> ampsOfPlate;          ///< the most loaded phase over the plate
    std::optional<Ratio> ampsOfServiceFactor;  ///< likewise over plate times service factor
    std::optional<Ratio> voltsOfPlate;
    std::vector<base::Fault> findings;
};

/// The motor as read against its plate. What was not read, or is not on the plate, is nothing and gives no
/// finding.
MotorCondition motorCondition(const MotorPlate& plate, const MotorReading& reading,
                              const MotorLimits& limits = {});

}  // namespace ww::energy
