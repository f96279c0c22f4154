// Fluid properties against the verification points of the IAPWS releases and published tables.

#include "core/fluid/fluid.h"

#include <gtest/gtest.h>

#include <optional>

#include "core/fluid/water_if97.h"

namespace ww::fluid {
namespace {

using quantity::PressureDifference;
using quantity::Unit;
using quantity::VolumeFlow;

Temperature kelvin(double number) {
    return Temperature::si(number);
}

AbsolutePressure megapascal(double number) {
    return AbsolutePressure::si(number * 1e6);
}

Temperature celsius(double number) {
    return Temperature::from(number, Unit::Celsius);
}

Fluid waterAt(double celsiusNumber) {
    return Fluid::make(FluidKind::Water, Ratio(), celsius(celsiusNumber)).value();
}

Fluid waterAtFahrenheit(double number) {
    return Fluid::make(FluidKind::Water, Ratio(), Temperature::from(number, Unit::Fahrenheit)).value();
}

double poundsPerCubicFoot(Density density) {
    // NIST SP 811 (2008), Appendix B: pound 0.45359237 kg, foot 0.3048 m.
    return density.si() * (0.3048 * 0.3048 * 0.3048) / 0.45359237;
}

/// IAPWS R7-97(2012), Table 5, as printed: m3/kg, kJ/(kg K).
struct Region1Point {
    double temperature_K;
    double pressure_MPa;
    double volume;
    double volumeDigit;
    double heatCapacity;
};

class IapwsIf97Region1 : public testing::TestWithParam<Region1Point> {};

TEST_P(IapwsIf97Region1, agreesToEveryPrintedDigit) {
    const Region1Point& point = GetParam();
    const Temperature temperature = kelvin(point.temperature_K);
    const AbsolutePressure pressure = megapascal(point.pressure_MPa);
    EXPECT_NEAR(waterSpecificVolume(temperature, pressure).si(), point.volume, 0.5 * point.volumeDigit);
    EXPECT_NEAR(waterSpecificHeat(temperature, pressure).si() / 1e3, point.heatCapacity, 0.5e-8);
}

INSTANTIATE_TEST_SUITE_P(Table5, IapwsIf97Region1,
                         testing::Values(Region1Point{300, 3, 0.100215168e-2, 1e-11, 4.17301218},
                                         Region1Point{300, 80, 0.971180894e-3, 1e-12, 4.01008987},
                                         Region1Point{500, 3, 0.120241800e-2, 1e-11, 4.65580682}));

TEST(IapwsIf97Saturation, pressureAgreesToEveryPrintedDigit) {
    // IAPWS R7-97(2012), Table 35.
    EXPECT_NEAR(waterSaturationPressure(kelvin(300)).si() / 1e6, 0.353658941e-2, 0.5e-11);
    EXPECT_NEAR(waterSaturationPressure(kelvin(500)).si() / 1e6, 0.263889776e1, 0.5e-8);
    EXPECT_NEAR(waterSaturationPressure(kelvin(600)).si() / 1e6, 0.123443146e2, 0.5e-7);
}

TEST(IapwsViscosity, agreesToEveryPrintedDigit) {
    // IAPWS R12-08, Table 4 (without the critical enhancement): K, kg/m3, micropascal seconds.
    const double table[][3] = {
        {298.15, 998, 889.735100}, {298.15, 1200, 1437.649467}, {373.15, 1000, 307.883622},
        {433.15, 1, 14.538324},    {433.15, 1000, 217.685358},  {873.15, 1, 32.619287},
        {873.15, 100, 35.802262},  {873.15, 600, 77.430195},    {1173.15, 1, 44.217245},
        {1173.15, 100, 47.640433}, {1173.15, 400, 64.154608},
    };
    for (const auto& [temperature_K, density, viscosity] : table) {
        EXPECT_NEAR(waterViscosity(Density::si(density), kelvin(temperature_K)).si() * 1e6, viscosity, 0.5e-6)
            << temperature_K << " K, " << density << " kg/m3";
    }
}

/// Water at 0.3 MPa absolute, computed with an independent program from IAPWS-IF97 and IAPWS R12-08;
/// saturation pressure from IF97. "ft per psi" and the factor of Btu/h = factor x gpm x F follow from density
/// and heat capacity.
struct WaterRow {
    double celsius;
    double density;
    double gravity4C;
    double viscosity_mPas;
    double kinematic_mm2s;
    double heat_kJkgK;
    double vapour_kPa;
    double vapourDigit;
    double feetPerPsi;
    double heatFactor;
};

constexpr WaterRow kWaterTable[] = {
    {0.01, 999.95, 0.99997, 1.7907, 1.7908, 4.2184, 0.6117, 1e-4, 2.3068, 504.5},
    {5, 1000.07, 1.00009, 1.5179, 1.5178, 4.2041, 0.8726, 1e-4, 2.3065, 502.8},
    {10, 999.80, 0.99982, 1.3057, 1.3060, 4.1947, 1.2282, 1e-4, 2.3071, 501.6},
    {15, 999.19, 0.99922, 1.1375, 1.1384, 4.1884, 1.7057, 1e-4, 2.3085, 500.5},
    {20, 998.30, 0.99832, 1.0015, 1.0032, 4.1842, 2.3392, 1e-4, 2.3106, 499.6},
    {25, 997.14, 0.99717, 0.8900, 0.8925, 4.1813, 3.1697, 1e-4, 2.3133, 498.6},
    {30, 995.74, 0.99577, 0.7972, 0.8006, 4.1795, 4.2467, 1e-4, 2.3165, 497.7},
    {35, 994.13, 0.99415, 0.7191, 0.7234, 4.1784, 5.6286, 1e-4, 2.3203, 496.8},
    {40, 992.31, 0.99234, 0.6528, 0.6578, 4.1781, 7.3844, 1e-4, 2.3245, 495.8},
    {45, 990.31, 0.99034, 0.5958, 0.6016, 4.1783, 9.5944, 1e-4, 2.3292, 494.9},
    {50, 988.13, 0.98816, 0.5466, 0.5531, 4.1791, 12.351, 1e-3, 2.3344, 493.9},
    {55, 985.79, 0.98582, 0.5037, 0.5109, 4.1804, 15.761, 1e-3, 2.3399, 492.9},
    {60, 983.30, 0.98332, 0.4661, 0.4740, 4.1823, 19.946, 1e-3, 2.3458, 491.8},
    {65, 980.65, 0.98068, 0.4330, 0.4415, 4.1847, 25.041, 1e-3, 2.3522, 490.8},
    {70, 977.87, 0.97789, 0.4036, 0.4127, 4.1877, 31.201, 1e-3, 2.3589, 489.7},
    {75, 974.95, 0.97497, 0.3775, 0.3872, 4.1911, 38.595, 1e-3, 2.3659, 488.7},
    {80, 971.89, 0.97192, 0.3541, 0.3644, 4.1951, 47.415, 1e-3, 2.3734, 487.6},
    {85, 968.71, 0.96874, 0.3331, 0.3439, 4.1996, 57.868, 1e-3, 2.3812, 486.5},
    {90, 965.41, 0.96544, 0.3142, 0.3255, 4.2046, 70.182, 1e-3, 2.3893, 485.5},
    {95, 961.99, 0.96201, 0.2971, 0.3089, 4.2101, 84.609, 1e-3, 2.3978, 484.4},
    {100, 958.45, 0.95847, 0.2816, 0.2938, 4.2162, 101.42, 1e-2, 2.4067, 483.3},
};

TEST(WaterTable, agreesInEveryPrintedDigitFrom0To100Celsius) {
    for (const WaterRow& row : kWaterTable) {
        SCOPED_TRACE(row.celsius);
        const Fluid water = waterAt(row.celsius);
        EXPECT_NEAR(water.density().si(), row.density, 0.56e-2);
        EXPECT_NEAR(water.viscosity().si() * 1e3, row.viscosity_mPas, 0.56e-4);
        EXPECT_NEAR(water.kinematicViscosity().si() * 1e6, row.kinematic_mm2s, 0.56e-4);
        EXPECT_NEAR(water.specificHeat().si() / 1e3, row.heat_kJkgK, 0.56e-4);
        EXPECT_NEAR(water.vapourPressure().in(Unit::Kilopascal), row.vapour_kPa, 0.56 * row.vapourDigit);
    }
}

TEST(WaterTable, gravityHeadAndHeatFactorFollow) {
    // Density of water at 4 C, 101.325 kPa: 999.975 kg/m3 (IAPWS-95). Btu(IT)/h: 0.29307107 W (NIST SP 811,
    // B.8).
    const double gallonPerMinute_m3s = VolumeFlow::from(1, Unit::GallonPerMinute).si();
    for (const WaterRow& row : kWaterTable) {
        SCOPED_TRACE(row.celsius);
        const Fluid water = waterAt(row.celsius);
        EXPECT_NEAR(water.density().si() / 999.975, row.gravity4C, 1.01e-5);
        EXPECT_NEAR(water.head(PressureDifference::from(1, Unit::Psi)).in(Unit::Foot), row.feetPerPsi,
                    0.56e-4);
        const double heat_W = gallonPerMinute_m3s * water.density().si() * water.specificHeat().si() * 5 / 9;
        EXPECT_NEAR(heat_W / 0.29307107, row.heatFactor, 0.0501);
    }
}

TEST(WaterDensity, at68FahrenheitWeighs62Point315PoundsPerCubicFoot) {
    // Karassik et al., Pump Handbook, ch. 13; IAPWS-IF97 at atmospheric pressure gives 62.316.
    const double weight = poundsPerCubicFoot(
        Density::si(1 / waterSpecificVolume(celsius(20), AbsolutePressure::si(101325)).si()));
    EXPECT_NEAR(weight, 62.316, 0.0005);
    EXPECT_NEAR(weight, 62.315, 0.0015);
}

TEST(WaterDensity, at60FahrenheitWeighs62Point364PoundsPerCubicFoot) {
    // Technical Paper 410, Flow of Fluids, ch. 7 uses 62.364; IAPWS-IF97 at atmospheric pressure
    // gives 62.3665.
    const Temperature temperature = Temperature::from(60, Unit::Fahrenheit);
    const double weight = poundsPerCubicFoot(
        Density::si(1 / waterSpecificVolume(temperature, AbsolutePressure::si(101325)).si()));
    EXPECT_NEAR(weight, 62.3665, 0.0005);
    EXPECT_NEAR(weight, 62.364, 0.001 * 62.364);
}

TEST(WaterHead, of40PsiGrowsAsWaterWarms) {
    // Computed with an independent program from IAPWS-IF97 at 0.3 MPa, in ft of the flowing water. The value
    // for 60 F is 40 times the trade's 2.309 ft/psi, which is rounded to 0.0005.
    const PressureDifference dp = PressureDifference::from(40, Unit::Psi);
    EXPECT_NEAR(waterAtFahrenheit(45).head(dp).in(Unit::Foot), 92.27, 0.5e-2);
    EXPECT_NEAR(waterAtFahrenheit(60).head(dp).in(Unit::Foot), 92.36, 40 * 0.0005);
    EXPECT_NEAR(waterAtFahrenheit(180).head(dp).in(Unit::Foot), 95.07, 0.5e-2);
}

TEST(HotWater, isTakenAboveItsSaturationPressure) {
    // IAPWS-IF97 at 150 C: saturated liquid 917.0 kg/m3 (v' = 1.0905e-3 m3/kg) and 4.307 kJ/(kg K), from
    // memory of the usual steam tables; vapour pressure 0.4761 MPa.
    const Fluid water = waterAt(150);
    EXPECT_NEAR(water.density().si(), 917.0, 0.2);
    EXPECT_NEAR(water.specificHeat().si(), 4307, 10);
    EXPECT_NEAR(water.vapourPressure().si(), 0.4761e6, 100);
}

/// A. Melinder, Properties of Secondary Working Fluids, IIR 2010, computed with an independent program:
/// density kg/m3, viscosity mPa s, heat capacity kJ/(kg K), each with its last printed digit; rounded twice
/// like the water table.
struct GlycolState {
    double celsius;
    double density;
    double viscosity;
    double viscosityDigit;
    std::optional<double> heat;
};
struct GlycolRow {
    FluidKind kind;
    double percent;
    GlycolState states[4];
    double freezing;
};

constexpr FluidKind kEthylene = FluidKind::EthyleneGlycol;
constexpr FluidKind kPropylene = FluidKind::PropyleneGlycol;
constexpr double kTwo = 1e-2;
constexpr double kThree = 1e-3;

const GlycolRow kGlycolTable[] = {
    {kEthylene,
     20,
     {{5, 1028.1, 2.66, kTwo, 3.870},
      {20, 1024.1, 1.66, kTwo, 3.896},
      {40, 1016.4, 1.01, kTwo, {}},
      {80, 993.8, 0.524, kThree, 4.005}},
     -7.9},
    {kEthylene,
     30,
     {{5, 1043.5, 3.56, kTwo, 3.673},
      {20, 1038.0, 2.17, kTwo, 3.718},
      {40, 1028.8, 1.29, kTwo, {}},
      {80, 1004.3, 0.639, kThree, 3.878}},
     -14.6},
    {kEthylene,
     40,
     {{5, 1058.5, 4.76, kTwo, 3.456},
      {20, 1051.9, 2.82, kTwo, 3.519},
      {40, 1041.4, 1.64, kTwo, {}},
      {80, 1015.4, 0.780, kThree, 3.734}},
     -23.8},
    {kEthylene,
     50,
     {{5, 1072.4, 6.41, kTwo, 3.231},
      {20, 1064.9, 3.69, kTwo, 3.312},
      {40, 1053.4, 2.10, kTwo, {}},
      {80, 1026.4, 0.968, kThree, 3.582}},
     -36.0},
    {kPropylene,
     20,
     {{5, 1019.1, 3.49, kTwo, 3.946},
      {20, 1014.8, 2.03, kTwo, 3.977},
      {40, 1006.4, 1.17, kTwo, {}},
      {80, 983.2, 0.564, kThree, 4.102}},
     -7.2},
    {kPropylene,
     30,
     {{5, 1029.9, 5.57, kTwo, 3.816},
      {20, 1023.8, 2.97, kTwo, 3.857},
      {40, 1013.4, 1.57, kTwo, {}},
      {80, 987.6, 0.701, kThree, 4.012}},
     -12.8},
    {kPropylene,
     40,
     {{5, 1040.1, 8.98, kTwo, 3.658},
      {20, 1032.3, 4.38, kTwo, 3.707},
      {40, 1020.1, 2.14, kTwo, {}},
      {80, 991.6, 0.874, kThree, 3.896}},
     -20.6},
    {kPropylene,
     50,
     {{5, 1048.2, 14.05, kTwo, 3.472},
      {20, 1039.1, 6.39, kTwo, 3.530},
      {40, 1025.4, 2.91, kTwo, {}},
      {80, 994.9, 1.088, kThree, 3.760}},
     -32.2},
};

TEST(GlycolTable, agreesInEveryPrintedDigit) {
    for (const GlycolRow& row : kGlycolTable) {
        for (const GlycolState& state : row.states) {
            SCOPED_TRACE(testing::Message() << static_cast<int>(row.kind) << " " << row.percent << " % "
                                            << state.celsius << " C");
            const Ratio concentration = Ratio::from(row.percent, Unit::Percent);
            const Fluid glycol = Fluid::make(row.kind, concentration, celsius(state.celsius)).value();
            EXPECT_NEAR(glycol.density().si(), state.density, 0.56e-1);
            EXPECT_NEAR(glycol.viscosity().si() * 1e3, state.viscosity, 0.56 * state.viscosityDigit);
            if (state.heat) {
                EXPECT_NEAR(glycol.specificHeat().si() / 1e3, *state.heat, 0.56e-3);
            }
            EXPECT_NEAR(glycol.freezingPoint().in(Unit::Celsius), row.freezing, 0.0501);
        }
    }
}

TEST(Glycol, ethylene30PercentAt20Celsius) {
    // A. Melinder, IIR 2010, computed with an independent program.
    const Fluid glycol = Fluid::make(kEthylene, Ratio::from(30, Unit::Percent), celsius(20)).value();
    EXPECT_NEAR(glycol.density().si(), 1038.0, 0.0501);
    EXPECT_NEAR(glycol.viscosity().si() * 1e3, 2.166, 0.000501);
    EXPECT_NEAR(glycol.specificHeat().si() / 1e3, 3.718, 0.000501);
}

TEST(Glycol, propylene40PercentAt5Celsius) {
    // A. Melinder, IIR 2010, computed with an independent program.
    const Fluid glycol = Fluid::make(kPropylene, Ratio::from(40, Unit::Percent), celsius(5)).value();
    EXPECT_NEAR(glycol.density().si(), 1040.1, 0.0501);
    EXPECT_NEAR(glycol.viscosity().si() * 1e3, 8.98, 0.56e-2);
    EXPECT_NEAR(glycol.specificHeat().si() / 1e3, 3.658, 0.000501);
    EXPECT_NEAR(glycol.freezingPoint().in(Unit::Celsius), -20.6, 0.0501);
}

TEST(Glycol, changesTheHeatFactorOfTheTrade) {
    // Computed from A. Melinder, IIR 2010, at 20 C: what stands for the 500 of Btu/h = 500 x gpm x F.
    const double ethylene[] = {477, 462, 443, 422};
    const double propylene[] = {483, 472, 458, 439};
    const auto factor = [](FluidKind kind, double percent) {
        const Fluid glycol = Fluid::make(kind, Ratio::from(percent, Unit::Percent), celsius(20)).value();
        const double heat_WperK = VolumeFlow::from(1, Unit::GallonPerMinute).si() * glycol.density().si() *
                                  glycol.specificHeat().si();
        return heat_WperK * 5 / 9 / 0.29307107;
    };
    for (int i = 0; i < 4; ++i) {
        EXPECT_NEAR(factor(kEthylene, 20 + 10 * i), ethylene[i], 0.501);
        EXPECT_NEAR(factor(kPropylene, 20 + 10 * i), propylene[i], 0.501);
    }
}

}  // namespace
}  // namespace ww::fluid
