// Shaft power of a pump from its motor's readings, by each of five ways that the readings allow. Not for what
// the power does to the water (power.h). Electrical readings are for people licensed to take them, by the
// site's safety rules.
#pragma once

#include <optional>
#include <vector>

#include "core/base/fault.h"
#include "core/quantity/quantity.h"

namespace ww::energy {

using quantity::Current;
using quantity::Power;
using quantity::Ratio;
using quantity::RotationalSpeed;
using quantity::Voltage;

/// What the plate and the data sheet say of a motor.
struct MotorPlate {
    std::optional<Power> power;  ///< at the shaft
    std::optional<Voltage> volts;
    std::optional<Current> amps;
    std::optional<Ratio> efficiency;
    std::optional<Ratio> powerFactor;
    std::optional<RotationalSpeed> speed;             ///< at full load
    std::optional<RotationalSpeed> synchronousSpeed;  ///< nothing: the next one above the plate's speed
    std::optional<Current> noLoadAmps;                ///< uncoupled
    double serviceFactor = 1;
    bool isBehindDrive = false;  ///< a variable-frequency drive feeds it
};

/// What was read at one moment; phases that were not read are absent. One value counts for all three.
struct MotorReading {
    std::vector<Voltage> volts;  ///< between phases
    std::vector<Current> amps;
    std::optional<Ratio> powerFactor;
    std::optional<Power> inputPower;  ///< by a power meter, or the drive's display
    std::optional<Ratio> efficiency;  ///< at this load, where it is known better than the plate's
    std::optional<RotationalSpeed> speed;
};

inline constexpr base::MessageForm kAmpsWithoutVolts{
    "motor_amps_without_volts",
    "amps were read without volts, so no power follows from them; read the volts between the phases"};
inline constexpr base::MessageForm kNoMotorPower{
    "motor_no_power",
    "the readings and the plate allow none of the five ways to the shaft power; read volts, amps and power "
    "factor, or the input power"};
inline constexpr base::MessageForm kBehindDrive{
    "motor_behind_drive",
    "a drive feeds the motor, so volts and amps behind it are no measure of power; read the power on the "
    "drive's display"};
inline constexpr base::MessageForm kPlatePowerFactor{
    "motor_plate_power_factor",
    "the power factor is the plate's, at full load; at part load it is lower, so measure it"};
inline constexpr base::MessageForm kPlateEfficiency{
    "motor_plate_efficiency",
    "the motor's efficiency is the plate's, at full load; take it at the present load from the maker's data"};
inline constexpr base::MessageForm kAmpRatioLowLoad{
    "motor_amp_ratio_low_load",
    "the ratio of amps reads too high at {1} % load; it holds above about 65 %, prefer another way"};
inline constexpr base::MessageForm kSlipRough{
    "motor_slip_rough",
    "power from slip is rough: the plate's slip may be off by 20 %; use a stroboscope good to 1 rpm"};
inline constexpr base::MessageForm kSlipOutside{
    "motor_slip_outside",
    "the motor's speed of {1} rpm does not lie below its synchronous speed of {2} rpm; read the speed again"};
inline constexpr base::MessageForm kNoLoadOutside{
    "motor_no_load_outside",
    "the no-load amps of {1} A are not below the plate's {2} A; correct the no-load reading"};

/// The five ways (US DOE, Determining Electric Motor Load and Efficiency; the form with no-load amps is
/// common practice, no source).
enum class PowerMethod {
    InputPower,   ///< metered input power times efficiency
    PowerFactor,  ///< sqrt(3) V I PF times efficiency
    NoLoadAmps,   ///< plate (I - I0/2)/(Ifl - I0/2) V/Vplate
    AmpRatio,     ///< plate I/Iplate V/Vplate
    Slip,         ///< plate (Ns - N)/((Ns - Nn)(Vplate/V)^2)
};

struct MotorPowerEstimate {
    PowerMethod method{};
    Power shaft;
    std::vector<base::Fault> cautions;  ///< what makes it less sure
};

inline constexpr base::MessageForm kChosenInputPower{
    "motor_chosen_input_power", "the metered input power is chosen: it needs no power factor"};
inline constexpr base::MessageForm kChosenPowerFactor{
    "motor_chosen_power_factor", "volts, amps and power factor are chosen: the input power was not metered"};
inline constexpr base::MessageForm kChosenNoLoadAmps{
    "motor_chosen_no_load_amps",
    "the way with no-load amps is chosen: no power factor was measured, and it follows the load down"};
inline constexpr base::MessageForm kChosenAmpRatio{
    "motor_chosen_amp_ratio", "the ratio of amps is chosen: neither power factor nor no-load amps are known"};
inline constexpr base::MessageForm kChosenSlip{"motor_chosen_slip",
                                               "the slip is chosen: nothing better was read"};

/// All estimates that the readings allow, in the order of the methods, and the one that counts.
struct MotorPower {
    std::vector<MotorPowerEstimate> estimates;
    std::optional<std::size_t> chosen;  ///< index into estimates
    std::optional<base::Fault> reason;  ///< why that one
    std::optional<Power> lowest;
    std::optional<Power> highest;
    std::vector<base::Fault> findings;  ///< amps without volts and the like; subject empty
    std::optional<Power> input;         ///< drawn from the mains: metered, or of volts, amps and power factor

    /// Shaft power of the chosen estimate; nothing where none could be made.
    std::optional<Power> shaft() const {
        return chosen ? std::optional(estimates[*chosen].shaft) : std::nullopt;
    }
};

/// Chosen: input power, then measured power factor, then no-load amps, then the plate's power factor, then
/// the ratio of amps, then slip. Behind a drive only the input power counts.
MotorPower motorPower(const MotorPlate& plate, const MotorReading& reading);

/// The next synchronous speed above a plate's speed, of two to twelve poles at 50 or 60 Hz; nothing where the
/// slip would be more than 10 %.
std::optional<RotationalSpeed> synchronousSpeedAbove(RotationalSpeed plateSpeed);

/// Electrical input: sqrt(3) V I PF of the means.
std::optional<Power> electricalInput(const MotorReading& reading, std::optional<Ratio> powerFactor);

}  // namespace ww::energy
