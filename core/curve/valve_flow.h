// The square law of a valve: flow from dp and back, for the density of the flowing fluid; its uncertainty.
#pragma once

#include "core/quantity/quantity.h"

namespace ww::curve {

using quantity::Density;
using quantity::FlowCoefficient;
using quantity::PressureDifference;
using quantity::Ratio;
using quantity::VolumeFlow;

/// Density for which specific gravity is 1: water at 60 F, 999.0 kg/m3 (the reference of Cv tables in the
/// trade; 0.1 % below the maximum density, common practice).
inline constexpr Density kReferenceDensity = Density::si(999.0);

/// Specific gravity: density over kReferenceDensity.
double specificGravity(Density density);

/// Q = Kv sqrt(dp/SG), m3/h and bar; the same for Cv in gpm and psi (IEC 60534-2-1, turbulent and not
/// choked). A negative dp gives the flow backwards.
VolumeFlow valveFlow(FlowCoefficient coefficient, PressureDifference dp, Density density);
/// The dp that this flow needs; sign follows the flow. The coefficient must be positive.
PressureDifference valveDrop(FlowCoefficient coefficient, VolumeFlow flow, Density density);
/// The coefficient that passes this flow at this dp; both positive.
FlowCoefficient coefficientNeeded(VolumeFlow flow, PressureDifference dp, Density density);
/// The resistance of a valve, Pa/(m3/s)^2; the coefficient must be positive.
quantity::Resistance valveResistance(FlowCoefficient coefficient, Density density);

/// Relative standard uncertainties of what a flow is computed from.
struct FlowUncertaintyParts {
    double coefficient = 0;  ///< u(Kv)/Kv
    double pressure = 0;     ///< u(dp)/dp
    double density = 0;      ///< u(SG)/SG
    double position = 0;     ///< d ln Kv/d setting times u(setting)
};
/// u(Q)/Q of Q = Kv sqrt(dp/SG): root of squares, halves for dp and SG (JCGM 100:2008, 5.1.6).
double flowUncertainty(const FlowUncertaintyParts& parts);

}  // namespace ww::curve
