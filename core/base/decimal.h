// A decimal number exactly as a person wrote it: "12.50" stays "12.50".
// Not for arithmetic: value() gives the nearest double for that.
#pragma once

#include <string>
#include <string_view>

#include "core/base/result.h"

namespace ww::base {

inline constexpr MessageForm kNotANumber{"not_a_number",
                                         "\"{1}\" is not a number; use digits with one point or comma"};
inline constexpr MessageForm kAmbiguousComma{
    "ambiguous_comma", "\"{1}\" can be read two ways; write it without a thousands mark and with a point"};
inline constexpr MessageForm kTooManyDigits{"too_many_digits",
                                            "\"{1}\" has more than 15 digits; shorten it to what was read"};

/// How a written comma is understood.
enum class CommaMeaning {
    Decimal,   ///< typed by hand: "1,250" is 1.250, in every locale
    Refused,   ///< in a comma-separated file: any comma is ambiguous
    Careful,   ///< in a semicolon-separated file: a decimal comma, but refused before exactly three digits
};

/// Canonical text [-]digits[.digits]: ASCII digits, a point, no sign for plus, no spaces; trailing zeros kept.
class Decimal {
  public:
    Decimal() = default;
    /// Reads one optional sign, digits (ASCII, Arabic-Indic or Persian), at most one point or comma; spaces
    /// anywhere are ignored. At most 15 digits.
    static Result<Decimal> parse(std::string_view text, CommaMeaning comma = CommaMeaning::Decimal);
    /// A number formatted with so many decimals; for values that the program makes up itself (defaults, tests).
    static Decimal fromNumber(double dimensionless, int decimals);

    /// As written, in canonical form; and the number that it means (0 for a default one).
    const std::string& text() const { return m_text; }
    double value() const { return m_value; }
    /// Digits after the point.
    int decimals() const;
    /// One unit in the last written place: 0.1 for "12.5", 1 for "12".
    double lastPlace() const;
    bool isNegative() const { return !m_text.empty() && m_text.front() == '-'; }

    bool operator==(const Decimal& other) const { return m_text == other.m_text; }

  private:
    std::string m_text = "0";
    double m_value = 0.0;
};

}  // namespace ww::base
