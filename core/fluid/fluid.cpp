#include "core/fluid/fluid.h"

#include <algorithm>
#include <string>

#include "core/base/term.h"
#include "core/fluid/glycol_polynomial.h"
#include "core/fluid/water_if97.h"
#include "core/quantity/measured.h"

namespace ww::fluid {

namespace {

using quantity::Unit;

/// What one kind of fluid can be computed for.
struct Limits {
    const char* name;
    double mostPercent;
    double least_C;
    double most_C;
};

constexpr Limits limitsOf(FluidKind kind) {
    switch (kind) {
        case FluidKind::EthyleneGlycol:
            return {base::term("ethylene glycol"), 60, -45, 100};
        case FluidKind::PropyleneGlycol:
            return {base::term("propylene glycol"), 60, -45, 100};
        case FluidKind::Water:
            break;
    }
    return {base::term("water"), 0, 0, 150};
}

// A limit typed in another unit (32 F) may miss it by a few last places.
constexpr double kLimitTolerance = 1e-9;

constexpr AbsolutePressure kLoopPressure = AbsolutePressure::si(0.3e6);
constexpr double kMarginOverSaturation = 1.2;

bool isWithin(double number, double least, double most) {
    return number >= least - kLimitTolerance && number <= most + kLimitTolerance;
}

std::string text(double number) {
    return quantity::concise(number, 4);
}

}  // namespace

Fluid::Fluid() : Fluid(FluidKind::Water, Ratio(), Temperature::from(20, Unit::Celsius)) {}

Fluid::Fluid(FluidKind kind, Ratio massFraction, Temperature temperature)
    : m_kind(kind), m_massFraction(massFraction), m_temperature(temperature) {
    m_vapourPressure = waterSaturationPressure(temperature);
    if (kind == FluidKind::Water) {
        const AbsolutePressure pressure =
            std::max(kLoopPressure, AbsolutePressure::si(kMarginOverSaturation * m_vapourPressure.si()));
        m_density = Density::si(1 / waterSpecificVolume(temperature, pressure).si());
        m_viscosity = waterViscosity(m_density, temperature);
        m_specificHeat = waterSpecificHeat(temperature, pressure);
        m_freezingPoint = Temperature::from(0, Unit::Celsius);
        return;
    }
    const Glycol glycol = kind == FluidKind::EthyleneGlycol ? Glycol::Ethylene : Glycol::Propylene;
    m_density = glycolDensity(glycol, massFraction, temperature);
    m_viscosity = glycolViscosity(glycol, massFraction, temperature);
    m_specificHeat = glycolSpecificHeat(glycol, massFraction, temperature);
    m_freezingPoint = glycolFreezingPoint(glycol, massFraction);
    m_vapourPressure =
        AbsolutePressure::si(m_vapourPressure.si() * glycolWaterMoleFraction(glycol, massFraction).si());
}

base::Result<Fluid> Fluid::make(FluidKind kind, Ratio massFraction, Temperature temperature,
                                const quantity::ShownUnits& units) {
    const Limits limits = limitsOf(kind);
    const double concentration_percent = massFraction.in(Unit::Percent);
    const double temperature_C = temperature.in(Unit::Celsius);
    if (!isWithin(concentration_percent, 0, limits.mostPercent)) {
        return base::Fault{&kFluidConcentrationOutside,
                           "",
                           {text(concentration_percent), limits.name, "0", text(limits.mostPercent)}};
    }
    if (!isWithin(temperature_C, limits.least_C, limits.most_C)) {
        return base::Fault{&kFluidTemperatureOutside,
                           "",
                           {units.text(temperature), limits.name,
                            units.text(Temperature::from(limits.least_C, Unit::Celsius)),
                            units.text(Temperature::from(limits.most_C, Unit::Celsius))}};
    }
    const Fluid fluid(kind, massFraction, temperature);
    const double freezing_C = fluid.freezingPoint().in(Unit::Celsius);
    if (temperature_C < freezing_C - kLimitTolerance) {
        return base::Fault{&kFluidFrozen, "", {units.text(temperature), units.text(fluid.freezingPoint())}};
    }
    return fluid;
}

}  // namespace ww::fluid
