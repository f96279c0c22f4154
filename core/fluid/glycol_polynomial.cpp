#include "core/fluid/glycol_polynomial.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace ww::fluid {

namespace {

using quantity::Ratio;
using quantity::Temperature;
using quantity::Unit;

/// Coefficients c[i][j] of (x - xm)^i (y - ym)^j; a 0 stands where the book has no term.
using Coefficients = std::array<std::array<double, 4>, 6>;

/// One mixture of the book. The freezing point's terms in y (below 0.01 K) belong to no temperature of ours
/// and are left out, so it is a polynomial in x alone.
struct Mixture {
    double middlePercent;
    double middleCelsius;
    Coefficients density_kgm3;
    Coefficients logViscosity_mPas;
    Coefficients specificHeat_JkgK;
    std::array<double, 6> freezing_C;
    double molarMass_gmol;
};

constexpr Mixture kEthylene{
    30.8462,
    31.728,
    {{{1.034e3, -4.781e-1, -2.692e-3, 4.725e-6},
      {1.311, -6.876e-3, 4.805e-5, 1.690e-8},
      {7.490e-5, 7.855e-5, -3.995e-7, 4.982e-9},
      {-1.062e-4, 1.229e-6, -1.153e-8, 0},
      {-9.623e-7, -7.211e-8, 0, 0},
      {4.891e-8, 0, 0, 0}}},
    {{{4.705e-1, -2.550e-2, 1.782e-4, -7.669e-7},
      {2.471e-2, -1.171e-4, 1.052e-6, -1.634e-8},
      {3.328e-6, 1.086e-6, 1.051e-8, -6.475e-10},
      {1.659e-6, 3.157e-9, 4.063e-10, 0},
      {3.089e-8, 1.831e-10, 0, 0},
      {-1.865e-9, 0, 0, 0}}},
    {{{3.737e3, 2.930, -4.675e-3, -1.389e-5},
      {-1.799e1, 1.046e-1, -4.147e-4, 1.847e-7},
      {-9.933e-2, 3.516e-4, 5.109e-6, -7.138e-8},
      {2.610e-3, -1.189e-6, -1.643e-7, 0},
      {1.537e-5, -4.272e-7, 0, 0},
      {-1.618e-6, 0, 0, 0}}},
    {-1.525e1, -8.080e-1, -1.334e-2, -7.293e-5, 1.006e-6, 1.140e-9},
    62.068,
};

constexpr Mixture kPropylene{
    30.7031,
    32.7083,
    {{{1.018e3, -5.406e-1, -2.666e-3, 1.347e-5},
      {7.604e-1, -9.450e-3, 5.541e-5, -1.343e-7},
      {-2.498e-3, 2.700e-5, -4.018e-7, 3.376e-9},
      {-1.550e-4, 2.829e-6, -7.175e-9, 0},
      {-1.131e-6, -2.221e-8, 0, 0},
      {2.342e-8, 0, 0, 0}}},
    {{{6.837e-1, -3.045e-2, 2.525e-4, -1.399e-6},
      {3.328e-2, -3.984e-4, 4.332e-6, -1.860e-8},
      {5.453e-5, -8.600e-8, -1.593e-8, -4.465e-11},
      {-3.900e-6, 1.054e-7, -1.589e-9, 0},
      {-1.587e-8, 4.475e-10, 0, 0},
      {3.564e-9, 0, 0, 0}}},
    {{{3.882e3, 2.699, -1.659e-3, -1.032e-5},
      {-1.304e1, 5.070e-2, -4.752e-5, 1.522e-6},
      {-1.598e-1, 9.534e-5, 1.167e-5, -4.870e-8},
      {3.539e-4, 3.102e-5, -2.950e-7, 0},
      {5.000e-5, -7.135e-7, 0, 0},
      {-4.959e-7, 0, 0, 0}}},
    {-1.325e1, -6.631e-1, -1.094e-2, -2.283e-4, -3.409e-6, 1.465e-8},
    76.094,
};

constexpr double kWaterMolarMass_gmol = 18.015;

const Mixture& mixture(Glycol glycol) {
    return glycol == Glycol::Ethylene ? kEthylene : kPropylene;
}

double polynomial(const Mixture& of, const Coefficients& coefficients, Ratio massFraction,
                  Temperature temperature) {
    const double x = massFraction.in(Unit::Percent)-of.middlePercent;
    const double y = temperature.in(Unit::Celsius)-of.middleCelsius;
    double sum = 0;
    for (std::size_t i = coefficients.size(); i-- > 0;) {
        const auto& c = coefficients[i];
        sum = sum * x + c[0] + y * (c[1] + y * (c[2] + y * c[3]));
    }
    return sum;
}

}  // namespace

quantity::Density glycolDensity(Glycol glycol, Ratio massFraction, Temperature temperature) {
    const Mixture& of = mixture(glycol);
    return quantity::Density::si(polynomial(of, of.density_kgm3, massFraction, temperature));
}

quantity::DynamicViscosity glycolViscosity(Glycol glycol, Ratio massFraction, Temperature temperature) {
    const Mixture& of = mixture(glycol);
    const double viscosity_mPas = std::exp(polynomial(of, of.logViscosity_mPas, massFraction, temperature));
    return quantity::DynamicViscosity::si(viscosity_mPas * 1e-3);
}

quantity::SpecificHeat glycolSpecificHeat(Glycol glycol, Ratio massFraction, Temperature temperature) {
    const Mixture& of = mixture(glycol);
    return quantity::SpecificHeat::si(polynomial(of, of.specificHeat_JkgK, massFraction, temperature));
}

Temperature glycolFreezingPoint(Glycol glycol, Ratio massFraction) {
    const Mixture& of = mixture(glycol);
    const double x = massFraction.in(Unit::Percent)-of.middlePercent;
    double freezing_C = 0;
    for (std::size_t i = of.freezing_C.size(); i-- > 0;) {
        freezing_C = freezing_C * x + of.freezing_C[i];
    }
    return Temperature::from(std::min(0.0, freezing_C), Unit::Celsius);
}

Ratio glycolWaterMoleFraction(Glycol glycol, Ratio massFraction) {
    const double glycol_molkg = massFraction.si() / mixture(glycol).molarMass_gmol;
    const double water_molkg = (1 - massFraction.si()) / kWaterMolarMass_gmol;
    return Ratio::si(water_molkg / (water_molkg + glycol_molkg));
}

}  // namespace ww::fluid
