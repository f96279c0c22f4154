// The fluid in the loop: water or glycol at one temperature, and its properties.
// Not for air, steam or refrigerants.
#pragma once

#include "core/base/result.h"
#include "core/quantity/shown_units.h"

namespace ww::fluid {

using quantity::AbsolutePressure;
using quantity::Density;
using quantity::DynamicViscosity;
using quantity::Head;
using quantity::PressureDifference;
using quantity::Ratio;
using quantity::SpecificHeat;
using quantity::Temperature;

enum class FluidKind { Water, EthyleneGlycol, PropyleneGlycol };

inline constexpr base::MessageForm kFluidTemperatureOutside{
    "fluid_temperature_outside", "{1} is outside the range of {2w}, {3} to {4}; correct the temperature"};
inline constexpr base::MessageForm kFluidConcentrationOutside{
    "fluid_concentration_outside",
    "{1} % by mass is outside the range of {2w}, {3} to {4} %; correct the concentration"};
inline constexpr base::MessageForm kFluidFrozen{
    "fluid_frozen",
    "{1} is below the freezing point {2} of this mixture; correct temperature or concentration"};

/// Properties of one fluid at one temperature and about 0.3 MPa absolute (a closed loop); hot water at 1.2
/// times its saturation pressure where that is more. 0.1 MPa more or less changes the density by 0.005 %.
/// Water 0 to 150 C: IAPWS-IF97 region 1 (R7-97), saturation line (R7-97 section 8.1), viscosity IAPWS
/// R12-08. Glycols: A. Melinder, Properties of Secondary Working Fluids, IIR 2010: mass fraction 0 to 60 %,
/// -45 (or freezing) to 100 C for both density, viscosity and heat capacity.
class Fluid {
  public:
    /// Water at 20 C.
    Fluid();
    /// `massFraction` must be 0 for water. All faults are of the user's input.
    static base::Result<Fluid> make(FluidKind kind, Ratio massFraction, Temperature temperature,
                                    const quantity::ShownUnits& units = {});

    FluidKind kind() const { return m_kind; }
    Ratio massFraction() const { return m_massFraction; }
    Temperature temperature() const { return m_temperature; }
    Density density() const { return m_density; }
    DynamicViscosity viscosity() const { return m_viscosity; }
    SpecificHeat specificHeat() const { return m_specificHeat; }
    /// Water: saturation pressure. Glycols: the water part's by Raoult's law (an estimate on the safe side).
    AbsolutePressure vapourPressure() const { return m_vapourPressure; }
    quantity::KinematicViscosity kinematicViscosity() const {
        return quantity::KinematicViscosity::si(m_viscosity.si() / m_density.si());
    }
    /// Freezing point of a glycol mixture; 0 C for water.
    Temperature freezingPoint() const { return m_freezingPoint; }

    PressureDifference pressure(Head head) const { return quantity::pressureOf(head, m_density); }
    Head head(PressureDifference dp) const { return quantity::headOf(dp, m_density); }

  private:
    /// Within the limits already.
    Fluid(FluidKind kind, Ratio massFraction, Temperature temperature);

    FluidKind m_kind = FluidKind::Water;
    Ratio m_massFraction;
    Temperature m_temperature;
    Density m_density;
    DynamicViscosity m_viscosity;
    SpecificHeat m_specificHeat;
    AbsolutePressure m_vapourPressure;
    Temperature m_freezingPoint;
};

}  // namespace ww::fluid
