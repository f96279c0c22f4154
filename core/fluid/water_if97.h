// The published formulations for liquid water, as released: no ranges of ours, no choice of pressure.
// Not for use by the trade's own code: that takes a Fluid (fluid.h), which chooses the state and checks the
// range.
#pragma once

#include "core/quantity/quantity.h"

namespace ww::fluid {

using SpecificVolume = quantity::DerivedQuantity<struct SpecificVolumeKind>;  ///< m3/kg

/// Specific volume of liquid water: IAPWS-IF97 region 1, release R7-97(2012) equation 7 and Table 3.
/// Valid for 273.15 to 623.15 K, saturation pressure to 100 MPa; outside it extrapolates without a warning.
SpecificVolume waterSpecificVolume(quantity::Temperature temperature, quantity::AbsolutePressure pressure);
/// Isobaric heat capacity of liquid water; same equation, table and range.
quantity::SpecificHeat waterSpecificHeat(quantity::Temperature temperature,
                                         quantity::AbsolutePressure pressure);

/// Saturation pressure: R7-97(2012) equation 30, 273.15 to 647.096 K. Between 228.15 and 273.15 K it goes on
/// smoothly as the vapour pressure of undercooled water, without a claim of accuracy.
quantity::AbsolutePressure waterSaturationPressure(quantity::Temperature temperature);

/// Dynamic viscosity of water without the critical enhancement: IAPWS release R12-08 equations 10 to 12.
/// Valid for the liquid from 273.15 K on; about 1 % near atmospheric pressure.
quantity::DynamicViscosity waterViscosity(quantity::Density density, quantity::Temperature temperature);

}  // namespace ww::fluid
