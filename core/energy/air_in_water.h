// How much air water holds in solution, and so what comes out of it where pressure falls or heat rises.
// Not for free air, and not for glycol: its solubility is another.
#pragma once

#include "core/base/result.h"
#include "core/quantity/quantity.h"

namespace ww::energy {

using quantity::AbsolutePressure;
using quantity::Ratio;
using quantity::Temperature;

inline constexpr base::MessageForm kAirTemperature{
    "air_temperature_outside",
    "{1} C is outside 0 to 150 C, where the solubility of air is computed; correct the temperature"};

/// Air that water in equilibrium with air at this total pressure holds: its volume at 0 C and 1 atm over the
/// volume of water (0.0188 is 18.8 mL a litre). Henry's constants of nitrogen, oxygen and argon: IAPWS
/// G7-04; dry air 78.08 / 20.95 / 0.93 % by volume; the vapour pressure is taken off the total. 0 where the
/// total is below the vapour pressure.
base::Result<Ratio> airHeld(AbsolutePressure total, Temperature temperature);

/// Henry's constant k_H of one gas in water as ln(k_H / 1 GPa) (IAPWS G7-04, equation 3); 0 to 150 C here.
enum class Gas { Nitrogen, Oxygen, Argon };
base::Result<Ratio> henryLogRatio(Gas gas, Temperature temperature);

}  // namespace ww::energy
