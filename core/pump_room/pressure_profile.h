// The gauge pressure along one circuit, pump on and off, with the balancing valve on the return and on the
// supply side, and what that means for air. Not for flows.
#pragma once

#include <optional>
#include <vector>

#include "core/balancing/hydraulic_model.h"
#include "core/quantity/quantity.h"

namespace ww::pump_room {

using base::Id;
using quantity::GaugePressure;
using quantity::Length;
using quantity::PressureDifference;
using quantity::Ratio;
using quantity::Setting;

enum class ProfilePart {
    Pump,
    SupplyRun,  ///< half of a run's loss; the whole supply pipe of reverse return
    ReturnRun,
    BranchPath,  ///< half of a riser's or main's own path, each way
    Unit,        ///< the terminal's own path: coil, control valve, pipes
    Valve,       ///< a balancing valve
    DischargeThrottle,
};

/// One element, in the direction of flow from the pump's suction round to it.
struct ProfileElement {
    ProfilePart part{};
    std::optional<std::size_t> branch;  ///< index into Project::branches(); nothing for the pump
    Length height;                      ///< over the pump, at its end
    GaugePressure before;               ///< pump running
    GaugePressure after;
    GaugePressure atRest;  ///< pump off, at its end
    /// Of a supply run that ends at a tee of which the circuit passes the return too: supply less return
    /// there, at one height, pump running.
    std::optional<PressureDifference> available;
};

/// The circuit with its valve on one side of the unit.
struct CircuitProfile {
    std::vector<ProfileElement> elements;
    GaugePressure unitRunning;  ///< lowest pressure in the unit: at its end
    GaugePressure unitAtRest;
    /// Air that water in the unit holds, volume at 0 C and 1 atm over volume of water
    /// (energy/air_in_water.h); nothing for glycol.
    std::optional<Ratio> airRunning;
    std::optional<Ratio> airAtRest;
    GaugePressure lowest;      ///< anywhere along the circuit, pump running
    std::size_t lowestAt = 0;  ///< index into elements
};

inline constexpr base::MessageForm kFillUnknown{
    "profile_fill_unknown",
    "the fill pressure is not entered, so only differences of pressure are right; read it at the expansion "
    "vessel with the pumps off and enter it in Job"};
inline constexpr base::MessageForm kHeightUnknown{
    "profile_height_unknown",
    "the height of this unit over the pump is not entered, so it counts as level with the pump; enter it"};
inline constexpr base::MessageForm kAirReturnBetter{"profile_air_return_better",
                                                    "with the valve behind the unit its water stands {1} "
                                                    "higher and holds {2} mL/L more air; keep the valve "
                                                    "on the return side"};
inline constexpr base::MessageForm kAirOnSupply{
    "profile_air_on_supply",
    "this valve stands before the unit, where it lowers the pressure in it: air comes out there, and makes "
    "noise and false readings; move it to the return side, or vent at the unit"};
inline constexpr base::MessageForm kAirLittle{
    "profile_air_little",
    "the valve takes so little here that its side hardly matters for air; what counts is straight pipe"};
inline constexpr base::MessageForm kStaticLow{
    "profile_static_low",
    "with the pumps off the highest point stands at {1}, below the {2} that keep air out; raise the "
    "fill pressure, within what vessel and relief valve allow"};
inline constexpr base::MessageForm kBelowAir{
    "profile_below_air",
    "pressure falls to {1} below the surrounding air here while the pump runs, so air is drawn in at any "
    "leak; raise the fill pressure, or move the vessel to the pump's suction"};
inline constexpr base::MessageForm kProfileNoUnit{
    "profile_no_unit", "this branch feeds others; choose a terminal for the profile of a circuit"};

struct CircuitComparison {
    std::size_t terminal = 0;
    bool isFillKnown = false;        ///< else all pressures are differences to the fill pressure
    bool isIndex = false;            ///< it was looked at as the index circuit
    std::optional<Setting> setting;  ///< of its terminal's balancing valve, where the state says it
    std::optional<CircuitProfile> onReturn;
    std::optional<CircuitProfile> onSupply;
    std::vector<base::Fault> advice;    ///< in words; subject: the tag
    std::vector<base::Fault> findings;  ///< what is not known; subject: a tag
};

/// The least pressure with pumps off at the highest point: 4 psi (common practice, no source).
inline constexpr PressureDifference kLeastStatic = PressureDifference::si(27579);

/// Solves the loop in `state` and walks round the circuit of `terminal` (index into Project::branches()). The
/// fill pressure stands at the expansion vessel, taken to be at the pump's suction and height. A direct run's
/// loss is taken half on supply, half on return. Heights: of the unit's branch, linear along the way.
CircuitComparison compareSides(const project::Project& project, std::size_t terminal,
                               const balancing::LoopState& state, const balancing::Resistances& learned = {});

}  // namespace ww::pump_room
