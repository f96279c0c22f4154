#include "core/fluid/water_if97.h"

#include <array>
#include <cmath>

namespace ww::fluid {

namespace {

using quantity::AbsolutePressure;
using quantity::Temperature;

// R7-97(2012): specific gas constant (equation 1) and the reducing quantities of equation 7.
constexpr double kGasConstant_JkgK = 461.526;
constexpr double kRegion1Pressure_Pa = 16.53e6;
constexpr double kRegion1Temperature_K = 1386;

/// One term n (7.1 - pi)^i (tau - 1.222)^j of the dimensionless Gibbs energy.
struct GibbsTerm {
    int i;
    int j;
    double n;
};

// R7-97(2012), Table 2.
constexpr std::array<GibbsTerm, 34> kRegion1{{
    {0, -2, 0.14632971213167},        {0, -1, -0.84548187169114},       {0, 0, -0.37563603672040e1},
    {0, 1, 0.33855169168385e1},       {0, 2, -0.95791963387872},        {0, 3, 0.15772038513228},
    {0, 4, -0.16616417199501e-1},     {0, 5, 0.81214629983568e-3},      {1, -9, 0.28319080123804e-3},
    {1, -7, -0.60706301565874e-3},    {1, -1, -0.18990068218419e-1},    {1, 0, -0.32529748770505e-1},
    {1, 1, -0.21841717175414e-1},     {1, 3, -0.52838357969930e-4},     {2, -3, -0.47184321073267e-3},
    {2, 0, -0.30001780793026e-3},     {2, 1, 0.47661393906987e-4},      {2, 3, -0.44141845330846e-5},
    {2, 17, -0.72694996297594e-15},   {3, -4, -0.31679644845054e-4},    {3, 0, -0.28270797985312e-5},
    {3, 6, -0.85205128120103e-9},     {4, -5, -0.22425281908000e-5},    {4, -2, -0.65171222895601e-6},
    {4, 10, -0.14341729937924e-12},   {5, -8, -0.40516996860117e-6},    {8, -11, -0.12734301741641e-8},
    {8, -6, -0.17424871230634e-9},    {21, -29, -0.68762131295531e-18}, {23, -31, 0.14478307828521e-19},
    {29, -38, 0.26335781662795e-22},  {30, -39, -0.11947622640071e-22}, {31, -40, 0.18228094581404e-23},
    {32, -41, -0.93537087292458e-25},
}};

/// Reduced variables and the derivatives of the dimensionless Gibbs energy (R7-97(2012), Table 4).
struct Gibbs {
    double pi;
    double tau;
    double byPi = 0;
    double byTauTwice = 0;
};

Gibbs gibbs(Temperature temperature, AbsolutePressure pressure) {
    Gibbs g{pressure.si() / kRegion1Pressure_Pa, kRegion1Temperature_K / temperature.si()};
    const double a = 7.1 - g.pi;
    const double b = g.tau - 1.222;
    for (const GibbsTerm& term : kRegion1) {
        const double inA = std::pow(a, term.i);
        const double inB = std::pow(b, term.j);
        g.byPi -= term.n * term.i * inA / a * inB;
        g.byTauTwice += term.n * inA * term.j * (term.j - 1) * inB / (b * b);
    }
    return g;
}

// R7-97(2012), Table 34: n1 to n10 of the saturation line, for MPa and K.
constexpr std::array<double, 10> kRegion4{
    0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.12020824702470e5,  -0.32325550322333e7,
    0.14915108613530e2, -0.48232657361591e4, 0.40511340542057e6,  -0.23855557567849e0, 0.65017534844798e3};

// R12-08, reference constants.
constexpr double kCriticalTemperature_K = 647.096;
constexpr double kCriticalDensity_kgm3 = 322.0;
constexpr double kViscosityUnit_Pas = 1e-6;

// R12-08, Table 1.
constexpr std::array<double, 4> kDiluteGas{1.67752, 2.20462, 0.6366564, -0.241605};

// R12-08, Table 2: rows i (reduced temperature), columns j (reduced density).
constexpr std::array<std::array<double, 7>, 6> kFiniteDensity{{
    {5.20094e-1, 2.22531e-1, -2.81378e-1, 1.61913e-1, -3.25372e-2, 0, 0},
    {8.50895e-2, 9.99115e-1, -9.06851e-1, 2.57399e-1, 0, 0, 0},
    {-1.08374, 1.88797, -7.72479e-1, 0, 0, 0, 0},
    {-2.89555e-1, 1.26613, -4.89837e-1, 0, 6.98452e-2, 0, -4.35673e-3},
    {0, 0, -2.57040e-1, 0, 0, 8.72102e-3, 0},
    {0, 1.20573e-1, 0, 0, 0, 0, -5.93264e-4},
}};

}  // namespace

SpecificVolume waterSpecificVolume(Temperature temperature, AbsolutePressure pressure) {
    const Gibbs g = gibbs(temperature, pressure);
    return SpecificVolume::si(kGasConstant_JkgK * temperature.si() / pressure.si() * g.pi * g.byPi);
}

quantity::SpecificHeat waterSpecificHeat(Temperature temperature, AbsolutePressure pressure) {
    const Gibbs g = gibbs(temperature, pressure);
    return quantity::SpecificHeat::si(-kGasConstant_JkgK * g.tau * g.tau * g.byTauTwice);
}

AbsolutePressure waterSaturationPressure(Temperature temperature) {
    const auto& n = kRegion4;
    const double theta = temperature.si() + n[8] / (temperature.si() - n[9]);
    const double a = theta * theta + n[0] * theta + n[1];
    const double b = n[2] * theta * theta + n[3] * theta + n[4];
    const double c = n[5] * theta * theta + n[6] * theta + n[7];
    const double root = 2 * c / (-b + std::sqrt(b * b - 4 * a * c));
    return AbsolutePressure::si(root * root * root * root * 1e6);
}

quantity::DynamicViscosity waterViscosity(quantity::Density density, Temperature temperature) {
    const double reducedTemperature = temperature.si() / kCriticalTemperature_K;
    const double reducedDensity = density.si() / kCriticalDensity_kgm3;
    double gasSum = 0;
    for (std::size_t i = 0; i < kDiluteGas.size(); ++i) {
        gasSum += kDiluteGas[i] / std::pow(reducedTemperature, static_cast<double>(i));
    }
    double liquidSum = 0;
    double inTemperature = 1;
    for (const auto& row : kFiniteDensity) {
        double inDensity = 1;
        for (const double h : row) {
            liquidSum += inTemperature * h * inDensity;
            inDensity *= reducedDensity - 1;
        }
        inTemperature *= 1 / reducedTemperature - 1;
    }
    const double reduced =
        100 * std::sqrt(reducedTemperature) / gasSum * std::exp(reducedDensity * liquidSum);
    return quantity::DynamicViscosity::si(reduced * kViscosityUnit_Pas);
}

}  // namespace ww::fluid
