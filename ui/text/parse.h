// Text typed into a field as a value with its unit, kept as typed. Not for tables from files (core/exchange).
#pragma once

#include <QString>
#include <type_traits>

#include "core/base/instant.h"
#include "core/quantity/measured.h"

namespace ww::ui::text {

inline constexpr base::MessageForm kMustBePositive{"must_be_positive",
                                                   "{1} is not above zero; type a value above zero"};
inline constexpr base::MessageForm kNotAUnitHere{"typed_unit_unknown",
                                                 "\"{1}\" is not a unit of this value; use one of {2}"};
inline constexpr base::MessageForm kNotADate{"not_a_date", "\"{1}\" is not a date; write it as 2027-03-31"};

/// Digits and, behind them, a symbol of a unit; both as typed.
struct DigitsAndUnit {
    std::string digits;
    std::string unit;  ///< empty: none was typed
};
DigitsAndUnit split(const QString& text);

/// Digits with an optional unit of the same kind as `usual`, which holds where none is typed; of a flow also
/// its letter, as quantity::parseFlow takes it. Refused: text that is no number, an unknown unit.
template <class Q>
base::Result<quantity::Measured<Q>> parseMeasured(const QString& text, quantity::Unit usual) {
    const DigitsAndUnit typed = split(text);
    if constexpr (std::is_same_v<Q, quantity::VolumeFlow>) {
        return quantity::parseFlow(typed.digits + " " + typed.unit, usual);
    }
    auto digits = base::Decimal::parse(typed.digits.empty() ? text.toStdString() : typed.digits);
    if (!digits) {
        return digits.fault();
    }
    quantity::Unit unit = usual;
    if (!typed.unit.empty()) {
        const auto found = quantity::unitFromSymbol(typed.unit, quantity::dimension(usual));
        if (!found) {
            return base::Fault{
                &kNotAUnitHere, {}, {typed.unit, quantity::symbolsOf(quantity::dimension(usual))}};
        }
        unit = *found;
    }
    return quantity::measured<Q>(std::move(digits).value(), unit);
}

/// A date, written 2027-03-31.
base::Result<base::Instant> parseDate(const QString& text);

}  // namespace ww::ui::text
