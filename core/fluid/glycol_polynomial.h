// Density, viscosity, heat capacity and freezing point of water with ethylene or propylene glycol, as
// published. Not for inhibited commercial mixtures, which differ by 1 to 3 % (more in viscosity); not for
// range checks (fluid.h).
#pragma once

#include "core/quantity/quantity.h"

namespace ww::fluid {

enum class Glycol { Ethylene, Propylene };

/// Polynomials of A. Melinder, Properties of Secondary Working Fluids for Indirect Systems, 2nd edition, IIR
/// 2010: 18 terms in (mass percent - xm) and (Celsius - ym) for density, ln viscosity (mPa s) and heat
/// capacity; the freezing point in mass percent. Fitted for mass fractions 0 to 60 %, from freezing to 100 C;
/// outside they extrapolate without a warning. At 0 % they differ from water by up to 0.1 % in density.
quantity::Density glycolDensity(Glycol glycol, quantity::Ratio massFraction,
                                quantity::Temperature temperature);
quantity::DynamicViscosity glycolViscosity(Glycol glycol, quantity::Ratio massFraction,
                                           quantity::Temperature temperature);
quantity::SpecificHeat glycolSpecificHeat(Glycol glycol, quantity::Ratio massFraction,
                                          quantity::Temperature temperature);
/// Temperature at which the first ice forms; at most 0 C.
quantity::Temperature glycolFreezingPoint(Glycol glycol, quantity::Ratio massFraction);

/// Mole fraction of the water: from molar masses 18.015, 62.068 and 76.094 g/mol (IUPAC atomic weights).
quantity::Ratio glycolWaterMoleFraction(Glycol glycol, quantity::Ratio massFraction);

}  // namespace ww::fluid
