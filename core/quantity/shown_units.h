// The units in which computed numbers stand inside sentences, and such a number with its unit as text. Not
// for what was typed: that keeps its own unit (measured.h).
#pragma once

#include <string>

#include "core/quantity/quantity.h"

namespace ww::quantity {

/// One unit for each kind. As it is made: the units of an SI job.
struct ShownUnits {
    Unit flow = Unit::CubicMetrePerHour;
    Unit head = Unit::Metre;
    Unit pressure = Unit::Kilopascal;
    Unit power = Unit::Kilowatt;
    Unit length = Unit::Millimetre;
    Unit temperature = Unit::Celsius;

    /// "23.5 m3/h": number and symbol, the number with `figures` significant figures, without zeros at its
    /// end.
    std::string text(VolumeFlow value, int figures = 4) const;
    std::string text(Head value, int figures = 4) const;
    std::string text(PressureDifference value, int figures = 4) const;
    std::string text(Power value, int figures = 4) const;
    std::string text(Length value, int figures = 4) const;
    std::string text(Temperature value, int figures = 4) const;
    /// "1.25 m": a computed head as every page writes it, with the decimals of headDigits().
    std::string written(Head value) const;

    bool operator==(const ShownUnits&) const = default;
};

/// "1.25": a computed head with the decimals that its unit has everywhere, two of a metre and one of a foot,
/// so that two pages say the same of one value; of any other unit four significant figures. Never "-0.00".
std::string headDigits(Head value, Unit unit);

/// A part of one in percent without the sign, with `figures` significant figures, without zeros at its end:
/// "93.4" of 0.934.
std::string percentDigits(double fraction, int figures);

}  // namespace ww::quantity
