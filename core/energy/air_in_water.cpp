#include "core/energy/air_in_water.h"

#include <array>
#include <cmath>

#include "core/fluid/fluid.h"
#include "core/quantity/measured.h"

namespace ww::energy {

namespace {

constexpr double kCriticalTemperature_K = 647.096;
constexpr double kMolarMassOfWater_kg = 0.018015268;  // a mole, IAPWS R6-95
constexpr double kMolarVolumeOfGas_m3 = 0.022413970;  // a mole at 0 C and 101.325 kPa, CODATA

/// A, B, C of IAPWS G7-04, table 2, with water as solvent, and the gas's part of dry air.
struct GasRow {
    Gas gas;
    double a;
    double b;
    double c;
    double partOfAir;
};
constexpr std::array kGases{GasRow{Gas::Nitrogen, -9.67578, 4.72162, 11.70585, 0.7808},
                            GasRow{Gas::Oxygen, -9.44833, 4.43822, 11.42005, 0.2095},
                            GasRow{Gas::Argon, -8.40954, 4.29587, 10.52779, 0.0093}};

base::Result<fluid::Fluid> waterAt(Temperature temperature) {
    const auto water = fluid::Fluid::make(fluid::FluidKind::Water, Ratio::si(0), temperature);
    if (!water) {
        return base::Fault{
            &kAirTemperature, "", {quantity::concise(temperature.in(quantity::Unit::Celsius), 4)}};
    }
    return water;
}

double henry_Pa(const GasRow& gas, Temperature temperature, AbsolutePressure vapour) {
    const double reduced = temperature.si() / kCriticalTemperature_K;
    const double tau = 1 - reduced;
    return vapour.si() * std::exp(gas.a / reduced + gas.b * std::pow(tau, 0.355) / reduced +
                                  gas.c * std::pow(reduced, -0.41) * std::exp(tau));
}

}  // namespace

base::Result<Ratio> henryLogRatio(Gas gas, Temperature temperature) {
    const auto water = waterAt(temperature);
    if (!water) {
        return water.fault();
    }
    for (const GasRow& row : kGases) {
        if (row.gas == gas) {
            return Ratio::si(std::log(henry_Pa(row, temperature, water->vapourPressure()) / 1e9));
        }
    }
    EXPECTS(false);
    return Ratio();
}

base::Result<Ratio> airHeld(AbsolutePressure total, Temperature temperature) {
    const auto water = waterAt(temperature);
    if (!water) {
        return water.fault();
    }
    const double air_Pa = (total - water->vapourPressure()).si();
    if (air_Pa <= 0) {
        return Ratio();
    }
    double moleFraction = 0;
    for (const GasRow& gas : kGases) {
        moleFraction += gas.partOfAir * air_Pa / henry_Pa(gas, temperature, water->vapourPressure());
    }
    return Ratio::si(moleFraction * water->density().si() / kMolarMassOfWater_kg * kMolarVolumeOfGas_m3);
}

}  // namespace ww::energy
