// What a simulated building is like before its seed is thrown: shape, instruments, how wrong its papers are,
// and its faults. Not for the building itself (building.h).
#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

#include "core/quantity/quantity.h"

namespace ww::practice {

using quantity::PressureDifference;
using quantity::Ratio;
using quantity::Setting;

/// What can be wrong on a job.
enum class FaultKind {
    AirInCoil,         ///< one circuit resists 2.5 times as much
    CloggingStrainer,  ///< one circuit's resistance grows with every reading taken on the job
    ControlValve,      ///< one control valve does not open fully: twice the resistance
    SettingMisread,    ///< one handle stands a turn off what was noted; a second look in that round shows it
    WrongUnit,         ///< one dp was noted in kPa and the meter stood on another unit
    DpHalved,          ///< one dp was read at half its value
    DpDoubled,         ///< one dp was read at twice its value
};

/// Standard deviations of logarithms: how far the truth lies from the design, which the engineer of the
/// practice building computed as well as such designs are (common practice, no source).
struct DesignErrors {
    double circuitFactor = 0.3;    ///< each circuit
    double runFactor = 0.3;        ///< each run
    double commonRunFactor = 0.2;  ///< all runs together
    double pumpFactor = 0.03;      ///< the pump's curve
};

/// Everything but the seed. Fractions are standard deviations unless said otherwise.
struct BuildingPlan {
    /// Members of each group, from the pump outward: {3} is one ladder of three terminals, {3, 4} three
    /// branches of four, {6, 5, 4} six risers of five branches of four. 1 to 3 levels, each 1 to 40.
    std::vector<int> shape{3};
    bool hasBranchValves = true;  ///< risers and branches have a balancing valve as well
    DesignErrors designErrors;
    /// One circuit in so many (at least one of the building) has three times its design resistance; 0: none.
    int obstructedOneIn = 0;
    double coilExponent = 2;  ///< of every circuit's loss over flow, exact at design flow
    double runExponent = 2;   ///< of every run's
    Ratio tableBias;          ///< of a valve's coefficient, the same at all its settings
    Ratio tableTilt;          ///< further error, growing in a straight line from open to shut
    Ratio meterNoise = Ratio::si(0.01);
    PressureDifference meterResolution = PressureDifference::si(50);
    Ratio gaugeNoise = Ratio::si(0.01);  ///< of the pump's gauges together
    PressureDifference gaugeResolution = PressureDifference::si(100);
    Ratio flowMeterNoise = Ratio::si(0.015);  ///< of a clamp-on flow meter (from memory)
    Setting settingStep = Setting::si(0.05);  ///< how finely handles are set, turns
    std::vector<FaultKind> faults;            ///< placed by the seed, each at another terminal
};

/// How hard a practice job is.
enum class Difficulty {
    First,        ///< three terminals on one ladder, nothing wrong
    Steady,       ///< three branches of four, nothing wrong
    Faulty,       ///< the same with table errors, other loss exponents and faults
    Large,        ///< 120 terminals, nothing wrong
    LargeFaulty,  ///< 120 terminals with everything of Faulty
};
inline constexpr Difficulty kDifficulties[] = {Difficulty::First, Difficulty::Steady, Difficulty::Faulty,
                                               Difficulty::Large, Difficulty::LargeFaulty};

/// The word for a difficulty in a workbook: "first", "steady", "faulty", "large", "large_faulty".
std::string_view name(Difficulty difficulty);

/// The loop, its errors and its faults at this difficulty; which terminals the faults strike, the seed says.
BuildingPlan planOf(Difficulty difficulty);

/// Terminals of a plan.
int terminalCount(const BuildingPlan& plan);

}  // namespace ww::practice
