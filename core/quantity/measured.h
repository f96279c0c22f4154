// What a person typed or an instrument showed: the digits and the unit as entered, and the SI value they
// mean. Not for computed values. Switching the units of a screen never touches a Measured.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/base/decimal.h"
#include "core/base/result.h"
#include "core/quantity/quantity.h"

namespace ww::quantity {

inline constexpr base::MessageForm kUnitUnknown{"unit_unknown",
                                                "\"{1}\" is not a unit of {2w}; use one of {3}"};

/// Digits and unit as entered, with the value they mean. Equality compares what was entered.
template <class Q>
struct Measured {
    base::Decimal digits;
    Unit unit{};
    Q value{};

    /// "52.7 kPa"
    std::string text() const { return digits.text() + " " + std::string(symbol(unit)); }
    bool operator==(const Measured& other) const { return digits == other.digits && unit == other.unit; }
};

/// From digits and a unit that measures Q directly.
template <class Q>
Measured<Q> measured(base::Decimal digits, Unit unit) {
    const double number = digits.value();
    return Measured<Q>{std::move(digits), unit, Q::from(number, unit)};
}

/// A pressure difference, entered in a pressure unit or as a head of the flowing fluid (ft, m, in, mm), for
/// which the fluid's density is needed.
Measured<PressureDifference> measuredDifference(base::Decimal digits, Unit unit, Density density);
/// A gauge pressure, entered likewise.
Measured<GaugePressure> measuredGauge(base::Decimal digits, Unit unit, Density density);
/// A head of the flowing fluid, entered as a length or as a pressure.
Measured<Head> measuredHead(base::Decimal digits, Unit unit, Density density);

/// A unit for a quantity that may be written as pressure or as head of the flowing fluid.
std::optional<Unit> pressureOrHeadUnit(std::string_view symbol);
bool isHeadUnit(Unit unit);

/// All symbols of a dimension, "gpm, L/s, ...", for messages.
std::string symbolsOf(Dimension dimension);
/// All symbols that a pressure may be written in, heads included.
std::string pressureSymbols();

/// Digits with an optional unit behind them, as typed into one cell: "12.4", "12,4 psi", "1.8p". Unit
/// letters: k kPa, m mbar, p psi, i inH2O, f ftH2O (conventional); or a whole symbol. Without a unit, `usual`
/// holds.
base::Result<Measured<PressureDifference>> parseDifference(std::string_view text, Unit usual,
                                                           Density density);
/// The same for a flow: "3.9", "3,9 L/s", "1.1l". Unit letters: g gpm, l L/s, m m3/h; or a whole symbol.
base::Result<Measured<VolumeFlow>> parseFlow(std::string_view text, Unit usual);

/// The value alone, where there is one.
template <class Q>
std::optional<Q> valueOf(const std::optional<Measured<Q>>& typed) {
    return typed ? std::optional(typed->value) : std::nullopt;
}

/// A number with so many significant figures, plain notation, decimal point: for tables and messages.
std::string significant(double dimensionless, int figures);

/// The same without zeros at the end behind the point: "2.5", not "2.50000"; for numbers inside sentences.
std::string concise(double dimensionless, int figures);

}  // namespace ww::quantity
