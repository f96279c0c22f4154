// Power that goes into the water, into the shaft and into the wire. Not for a motor's readings
// (motor_power.h).
#pragma once

#include "core/quantity/quantity.h"

namespace ww::energy {

using quantity::Density;
using quantity::Energy;
using quantity::Head;
using quantity::Power;
using quantity::Ratio;
using quantity::VolumeFlow;

/// rho g Q H. The trade's Q H SG / 3960 (gpm, ft, hp) is this to 0.05 %.
Power waterPower(VolumeFlow flow, Head head, Density density);

/// Shaft power of a pump of this efficiency (above 0, to 1).
Power shaftPower(VolumeFlow flow, Head head, Density density, Ratio efficiency);

/// Power drawn from the mains for a shaft power, through motor and drive (each above 0, to 1).
Power wirePower(Power shaft, Ratio motorEfficiency, Ratio driveEfficiency = Ratio::si(1));

/// Power kept up for a time.
Energy energyOver(Power power, quantity::Duration time);

}  // namespace ww::energy
