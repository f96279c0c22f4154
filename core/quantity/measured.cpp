#include "core/quantity/measured.h"

#include "core/base/term.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <cstring>

namespace ww::quantity {

namespace {

PressureDifference differenceFrom(double number, Unit unit, Density density) {
    return isHeadUnit(unit) ? pressureOf(Head::from(number, unit), density)
                            : PressureDifference::from(number, unit);
}

std::optional<Unit> pressureUnitFromLetter(char letter) {
    switch (letter) {
        case 'k':
        case 'K':
            return Unit::Kilopascal;
        case 'm':
        case 'M':
            return Unit::Millibar;
        case 'p':
        case 'P':
            return Unit::Psi;
        case 'i':
        case 'I':
            return Unit::InchOfWater;
        case 'f':
        case 'F':
            return Unit::FootOfWater;
        default:
            return std::nullopt;
    }
}

std::optional<Unit> flowUnitFromLetter(char letter) {
    switch (letter) {
        case 'g':
        case 'G':
            return Unit::GallonPerMinute;
        case 'l':
        case 'L':
            return Unit::LitrePerSecond;
        case 'm':
        case 'M':
            return Unit::CubicMetrePerHour;
        default:
            return std::nullopt;
    }
}

bool isAsciiLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

struct TypedCell {
    base::Decimal digits;
    std::string_view unit;  ///< empty: none was typed
};

/// Digits and what stands behind them. The message quotes everything that was typed, not only the part
/// before the unit.
base::Result<TypedCell> digitsAndUnit(std::string_view text) {
    std::size_t firstLetter = 0;
    while (firstLetter < text.size() && !isAsciiLetter(text[firstLetter])) {
        ++firstLetter;
    }
    std::string_view unit = text.substr(firstLetter);
    while (!unit.empty() && unit.back() == ' ') {
        unit.remove_suffix(1);
    }
    const std::string_view before = text.substr(0, firstLetter);
    auto digits = base::Decimal::parse(before.find_first_not_of(' ') == before.npos ? text : before);
    if (!digits) {
        return base::Fault{digits.fault().form, "", {std::string(text.substr(0, 60))}};
    }
    return TypedCell{std::move(*digits), unit};
}

}  // namespace

bool isHeadUnit(Unit unit) {
    return dimension(unit) == Dimension::Length;
}

Measured<PressureDifference> measuredDifference(base::Decimal digits, Unit unit, Density density) {
    const double number = digits.value();
    return {std::move(digits), unit, differenceFrom(number, unit, density)};
}

Measured<GaugePressure> measuredGauge(base::Decimal digits, Unit unit, Density density) {
    const double number = digits.value();
    return {std::move(digits), unit, GaugePressure::si(differenceFrom(number, unit, density).si())};
}

Measured<Head> measuredHead(base::Decimal digits, Unit unit, Density density) {
    const double number = digits.value();
    const Head head =
        isHeadUnit(unit) ? Head::from(number, unit) : headOf(PressureDifference::from(number, unit), density);
    return {std::move(digits), unit, head};
}

std::optional<Unit> pressureOrHeadUnit(std::string_view text) {
    if (const auto pressure = unitFromSymbol(text, Dimension::Pressure)) {
        return pressure;
    }
    return unitFromSymbol(text, Dimension::Length);
}

std::string symbolsOf(Dimension wanted) {
    std::string out;
    for (const UnitRow& candidate : unitTable()) {
        if (candidate.dimension == wanted) {
            out += (out.empty() ? "" : ", ") + std::string(candidate.symbol);
        }
    }
    return out;
}

std::string pressureSymbols() {
    return symbolsOf(Dimension::Pressure) + ", " + symbolsOf(Dimension::Length);
}

base::Result<Measured<PressureDifference>> parseDifference(std::string_view text, Unit usual,
                                                           Density density) {
    auto typed = digitsAndUnit(text);
    if (!typed) {
        return typed.fault();
    }
    std::optional<Unit> unit = usual;
    if (!typed->unit.empty()) {
        unit = typed->unit.size() == 1 ? pressureUnitFromLetter(typed->unit.front())
                                       : pressureOrHeadUnit(typed->unit);
    }
    if (!unit) {
        return base::Fault{
            &kUnitUnknown, "", {std::string(typed->unit), base::term("pressure"), pressureSymbols()}};
    }
    return measuredDifference(std::move(typed->digits), *unit, density);
}

base::Result<Measured<VolumeFlow>> parseFlow(std::string_view text, Unit usual) {
    auto typed = digitsAndUnit(text);
    if (!typed) {
        return typed.fault();
    }
    std::optional<Unit> unit = usual;
    if (!typed->unit.empty()) {
        unit = typed->unit.size() == 1 ? flowUnitFromLetter(typed->unit.front())
                                       : unitFromSymbol(typed->unit, Dimension::Flow);
    }
    if (!unit) {
        return base::Fault{
            &kUnitUnknown, "", {std::string(typed->unit), base::term("flow"), symbolsOf(Dimension::Flow)}};
    }
    return measured<VolumeFlow>(std::move(typed->digits), *unit);
}

std::string significant(double number, int figures) {
    EXPECTS(figures >= 1 && figures <= 15);
    if (!std::isfinite(number)) {
        return "-";
    }
    if (number == 0.0) {
        return "0";
    }
    // The exponent is taken after rounding: 9.996 to three figures is 10.0, one place less behind the point.
    char rounded[32];
    std::snprintf(rounded, sizeof rounded, "%.*e", figures - 1, number);
    const int magnitude = std::atoi(std::strchr(rounded, 'e') + 1);
    const int decimals = std::clamp(figures - 1 - magnitude, 0, 12);
    char buffer[400];
    std::snprintf(buffer, sizeof buffer, "%.*f", decimals, number);
    const std::string_view text = buffer;
    const bool isNothing = text.find_first_not_of("-0.") == std::string_view::npos;
    return std::string(isNothing && text.front() == '-' ? text.substr(1) : text);
}

std::string concise(double number, int figures) {
    std::string out = significant(number, figures);
    if (out.find('.') != std::string::npos) {
        out.erase(out.find_last_not_of('0') + 1);
    }
    if (out.back() == '.') {
        out.pop_back();
    }
    return out;
}

}  // namespace ww::quantity
