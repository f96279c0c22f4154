#include "core/quantity/unit.h"

#include <array>
#include <cctype>

#include "core/base/expects.h"

namespace ww::quantity {

namespace {

// Exact definitions. The pound, inch and US gallon: NIST SP 811 (2008) Appendix B; imperial gallon: UK Weights and
// Measures Act 1985 (4.546 09 L exactly); pound-force with standard gravity 9.80665 m/s2.
constexpr double kFoot_m = 0.3048;
constexpr double kInch_m = 0.0254;
constexpr double kGallon_m3 = 231.0 * kInch_m * kInch_m * kInch_m;
constexpr double kImperialGallon_m3 = 4.54609e-3;
constexpr double kPound_kg = 0.45359237;
constexpr double kPsi_Pa = kPound_kg * kStandardGravity / (kInch_m * kInch_m);
constexpr double kConventionalWater_PaPerM = 1000.0 * kStandardGravity;
constexpr double kHorsepower_W = 550.0 * kFoot_m * kPound_kg * kStandardGravity;

constexpr double squareRoot(double x) {
    double guess = x;
    for (int i = 0; i < 60; ++i) {
        guess = 0.5 * (guess + x / guess);
    }
    return guess;
}
// Kv is m3/h at 1 bar, Cv is US gallons a minute at 1 psi, of the same water.
constexpr double kCv_Kv = kGallon_m3 * 60.0 * squareRoot(1e5 / kPsi_Pa);

constexpr std::string_view kSp811 = "NIST SP 811 (2008), Appendix B";
constexpr std::string_view kSi = "SI Brochure, 9th edition";

constexpr std::array<UnitRow, 35> kTable{{
    {Unit::GallonPerMinute, "gpm", Dimension::Flow, kGallon_m3 / 60.0, 0, kSp811},
    {Unit::LitrePerSecond, "L/s", Dimension::Flow, 1e-3, 0, kSi},
    {Unit::CubicMetrePerHour, "m3/h", Dimension::Flow, 1.0 / 3600.0, 0, kSi},
    {Unit::ImperialGallonPerMinute, "imp_gpm", Dimension::Flow, kImperialGallon_m3 / 60.0, 0,
     "UK Weights and Measures Act 1985, Schedule 1"},
    {Unit::CubicMetrePerSecond, "m3/s", Dimension::Flow, 1.0, 0, kSi},
    {Unit::Psi, "psi", Dimension::Pressure, kPsi_Pa, 0, kSp811},
    {Unit::Kilopascal, "kPa", Dimension::Pressure, 1e3, 0, kSi},
    {Unit::Bar, "bar", Dimension::Pressure, 1e5, 0, kSi},
    {Unit::Millibar, "mbar", Dimension::Pressure, 1e2, 0, kSi},
    {Unit::Pascal, "Pa", Dimension::Pressure, 1.0, 0, kSi},
    {Unit::InchOfWater, "inH2O", Dimension::Pressure, kInch_m * kConventionalWater_PaPerM, 0,
     "NIST SP 811, inch of water, conventional"},
    {Unit::MillimetreOfWater, "mmH2O", Dimension::Pressure, 1e-3 * kConventionalWater_PaPerM, 0,
     "NIST SP 811, millimeter of water, conventional"},
    {Unit::FootOfWater, "ftH2O", Dimension::Pressure, kFoot_m * kConventionalWater_PaPerM, 0,
     "NIST SP 811, foot of water, conventional"},
    {Unit::Foot, "ft", Dimension::Length, kFoot_m, 0, kSp811},
    {Unit::Metre, "m", Dimension::Length, 1.0, 0, kSi},
    {Unit::Inch, "in", Dimension::Length, kInch_m, 0, kSp811},
    {Unit::Millimetre, "mm", Dimension::Length, 1e-3, 0, kSi},
    {Unit::Cv, "Cv", Dimension::FlowCoefficient, kCv_Kv, 0, "from the definitions in IEC 60534-1"},
    {Unit::Kv, "Kv", Dimension::FlowCoefficient, 1.0, 0, "IEC 60534-1"},
    {Unit::Fahrenheit, "F", Dimension::Temperature, 5.0 / 9.0, 459.67, kSp811},
    {Unit::Celsius, "C", Dimension::Temperature, 1.0, 273.15, kSi},
    {Unit::Kelvin, "K", Dimension::Temperature, 1.0, 0, kSi},
    {Unit::Horsepower, "hp", Dimension::Power, kHorsepower_W, 0, "NIST SP 811, horsepower (550 ft lbf/s)"},
    {Unit::Kilowatt, "kW", Dimension::Power, 1e3, 0, kSi},
    {Unit::Watt, "W", Dimension::Power, 1.0, 0, kSi},
    {Unit::RevolutionPerMinute, "rpm", Dimension::RotationalSpeed, 1.0 / 60.0, 0, kSi},
    {Unit::Volt, "V", Dimension::Voltage, 1.0, 0, kSi},
    {Unit::Ampere, "A", Dimension::Current, 1.0, 0, kSi},
    {Unit::Percent, "%", Dimension::Fraction, 0.01, 0, "ISO 80000-1"},
    {Unit::One, "1", Dimension::Fraction, 1.0, 0, "ISO 80000-1"},
    {Unit::HourPerYear, "h/yr", Dimension::Duration, 3600.0, 0, kSi},
    {Unit::Minute, "min", Dimension::Duration, 60.0, 0, kSi},
    {Unit::Turn, "turns", Dimension::Scale, 1.0, 0, "the valve's own scale"},
    {Unit::Degree, "degrees", Dimension::Scale, 1.0, 0, "the valve's own scale"},
    {Unit::PercentOfScale, "percent", Dimension::Scale, 1.0, 0, "the valve's own scale"},
}};

constexpr bool isInOrderOfUnits() {
    for (std::size_t i = 0; i < kTable.size(); ++i) {
        if (kTable[i].unit != static_cast<Unit>(i)) {
            return false;
        }
    }
    return true;
}
static_assert(isInOrderOfUnits(), "each row stands at the place of its unit in the enumeration");

bool sameIgnoringCase(std::string_view a, std::string_view b) {
    if (a.size() != b.size()) {
        return false;
    }
    for (std::size_t i = 0; i < a.size(); ++i) {
        if (std::tolower(static_cast<unsigned char>(a[i])) != std::tolower(static_cast<unsigned char>(b[i]))) {
            return false;
        }
    }
    return true;
}

}  // namespace

std::span<const UnitRow> unitTable() {
    return kTable;
}

const UnitRow& row(Unit unit) {
    const std::size_t index = static_cast<std::size_t>(unit);
    EXPECTS(index < kTable.size());
    return kTable[index];
}

std::string_view symbol(Unit unit) {
    return row(unit).symbol;
}

Dimension dimension(Unit unit) {
    return row(unit).dimension;
}

std::optional<Unit> unitFromSymbol(std::string_view symbol, Dimension dimension) {
    for (const UnitRow& candidate : kTable) {
        if (candidate.dimension == dimension && sameIgnoringCase(candidate.symbol, symbol)) {
            return candidate.unit;
        }
    }
    return std::nullopt;
}

}  // namespace ww::quantity
