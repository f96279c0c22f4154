// The one unit table: symbol, what it measures, exact factor to SI with its source.
// Not for heads turned into pressures: that needs a fluid's density (quantity.h, fluid/).
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace ww::quantity {

/// What a unit measures.
enum class Dimension : std::uint8_t {
    Flow,             ///< SI: m3/s
    Pressure,         ///< SI: Pa
    Length,           ///< SI: m; a head is a length of the flowing fluid
    FlowCoefficient,  ///< SI stands for Kv: m3/h of water at 1 bar
    Temperature,      ///< SI: K
    Power,            ///< SI: W
    RotationalSpeed,  ///< SI: 1/s
    Voltage,          ///< SI: V
    Current,          ///< SI: A
    Fraction,         ///< SI: 1
    Duration,         ///< SI: s
    Scale,            ///< position on a valve's own scale: turns, degrees, percent; SI: the number itself
};

enum class Unit : std::uint8_t {
    GallonPerMinute,
    LitrePerSecond,
    CubicMetrePerHour,
    ImperialGallonPerMinute,
    CubicMetrePerSecond,
    Psi,
    Kilopascal,
    Bar,
    Millibar,
    Pascal,
    InchOfWater,
    MillimetreOfWater,
    FootOfWater,
    Foot,
    Metre,
    Inch,
    Millimetre,
    Cv,
    Kv,
    Fahrenheit,
    Celsius,
    Kelvin,
    Horsepower,
    Kilowatt,
    Watt,
    RevolutionPerMinute,
    Volt,
    Ampere,
    Percent,
    One,
    HourPerYear,
    Minute,
    Turn,
    Degree,
    PercentOfScale,
};

/// One row of the table: value in SI = (written value + offset) * factor.
struct UnitRow {
    Unit unit;
    std::string_view symbol;  ///< as written in brackets in a table header and in JSON-free text
    Dimension dimension;
    double factor;
    double offset;
    std::string_view source;
};

/// The whole table, in the order of the enumeration.
std::span<const UnitRow> unitTable();

/// The row of a unit, its symbol, and what it measures.
const UnitRow& row(Unit unit);
std::string_view symbol(Unit unit);
Dimension dimension(Unit unit);

/// The unit written as `symbol` for a dimension; case matters only where two units differ by case (they do not).
/// "F" and "C" are temperatures; "m" and "ft" are lengths, and heads of the flowing fluid where a pressure is asked.
std::optional<Unit> unitFromSymbol(std::string_view symbol, Dimension dimension);

/// Standard gravity, m/s2: exact, ISO 80000-3 / CGPM 1901.
inline constexpr double kStandardGravity = 9.80665;

}  // namespace ww::quantity
