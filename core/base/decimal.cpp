#include "core/base/decimal.h"

#include <charconv>
#include <cmath>
#include <cstdio>
#include <optional>

namespace ww::base {

namespace {

constexpr MessageForm kNumberMissing{"number_missing", "the number is missing; write it in digits"};

/// The digit at `i` in UTF-8 text and how many bytes it takes; ASCII, U+0660-0669 and U+06F0-06F9.
std::optional<int> digitAt(std::string_view text, std::size_t i, std::size_t& width) {
    const auto byte = [&](std::size_t k) { return static_cast<unsigned char>(text[k]); };
    if (text[i] >= '0' && text[i] <= '9') {
        width = 1;
        return text[i] - '0';
    }
    if (i + 1 < text.size() && byte(i) == 0xD9 && byte(i + 1) >= 0xA0 && byte(i + 1) <= 0xA9) {
        width = 2;
        return byte(i + 1) - 0xA0;
    }
    if (i + 1 < text.size() && byte(i) == 0xDB && byte(i + 1) >= 0xB0 && byte(i + 1) <= 0xB9) {
        width = 2;
        return byte(i + 1) - 0xB0;
    }
    return std::nullopt;
}

/// Width in bytes of a blank at `i`: space, tab, no-break space, narrow no-break space; 0 if there is none.
std::size_t blankAt(std::string_view text, std::size_t i) {
    if (text[i] == ' ' || text[i] == '\t') {
        return 1;
    }
    if (text.substr(i, 2) == "\xC2\xA0") {
        return 2;
    }
    return text.substr(i, 3) == "\xE2\x80\xAF" ? 3 : 0;
}

/// Width of a minus sign at `i` (ASCII or U+2212), 0 if there is none.
std::size_t minusAt(std::string_view text, std::size_t i) {
    if (text[i] == '-') {
        return 1;
    }
    return text.substr(i, 3) == "\xE2\x88\x92" ? 3 : 0;
}

}  // namespace

Result<Decimal> Decimal::parse(std::string_view text, CommaMeaning comma) {
    const auto refuse = [&](const MessageForm& form) {
        return Fault{&form, "", {std::string(text.substr(0, 60))}};
    };
    std::string sign;
    std::string whole;
    std::string fraction;
    bool hasSign = false;
    bool hasPoint = false;
    bool pointIsComma = false;
    for (std::size_t i = 0; i < text.size();) {
        std::size_t width = 0;
        if (const std::size_t blank = blankAt(text, i)) {
            i += blank;
        } else if (const auto digit = digitAt(text, i, width)) {
            (hasPoint ? fraction : whole) += static_cast<char>('0' + *digit);
            i += width;
        } else if (const std::size_t minus = minusAt(text, i); minus != 0 || text[i] == '+') {
            if (hasSign || hasPoint || !whole.empty()) {
                return refuse(kNotANumber);
            }
            hasSign = true;
            sign = minus != 0 ? "-" : "";
            i += minus != 0 ? minus : 1;
        } else if (text[i] == '.' || text[i] == ',') {
            if (hasPoint) {
                return refuse(kNotANumber);
            }
            hasPoint = true;
            pointIsComma = text[i] == ',';
            i += 1;
        } else {
            return refuse(kNotANumber);
        }
    }
    if (whole.empty() && fraction.empty()) {
        return refuse(hasSign || hasPoint ? kNotANumber : kNumberMissing);
    }
    if (pointIsComma &&
        (comma == CommaMeaning::Refused || (comma == CommaMeaning::Careful && fraction.size() == 3))) {
        return refuse(kAmbiguousComma);
    }
    if (whole.size() + fraction.size() > 15) {
        return refuse(kTooManyDigits);
    }
    Decimal out;
    out.m_text = sign + (whole.empty() ? "0" : whole) + (fraction.empty() ? "" : "." + fraction);
    std::from_chars(out.m_text.data(), out.m_text.data() + out.m_text.size(), out.m_value);
    return out;
}

Decimal Decimal::fromNumber(double dimensionless, int decimals) {
    EXPECTS(std::isfinite(dimensionless) && decimals >= 0 && decimals <= 12);
    char buffer[400];
    std::snprintf(buffer, sizeof buffer, "%.*f", decimals, dimensionless);
    Decimal out;
    out.m_text = buffer;
    std::from_chars(out.m_text.data(), out.m_text.data() + out.m_text.size(), out.m_value);
    return out;
}

int Decimal::decimals() const {
    const std::size_t point = m_text.find('.');
    return point == std::string::npos ? 0 : static_cast<int>(m_text.size() - point - 1);
}

double Decimal::lastPlace() const {
    return std::pow(10.0, -decimals());
}

}  // namespace ww::base
