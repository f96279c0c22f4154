#include "core/spreadsheet/number_format.h"

#include <chrono>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstdlib>

namespace ww::spreadsheet {

namespace {

/// Reads the first section of a format code sign by sign.
class FormatReader {
  public:
    explicit FormatReader(std::string_view code) : m_code(code) {}

    NumberFormat run() {
        if (m_code == "General" || m_code == "GENERAL") {
            return {};
        }
        while (m_at < m_code.size() && m_code[m_at] != ';') {
            takeOne();
        }
        while (!m_format.suffix.empty() && m_format.suffix.back() == ' ') {
            m_format.suffix.pop_back();
        }
        m_format.suffix.erase(0, m_format.suffix.find_first_not_of(' '));
        if (m_isFree || m_format.isDate || !m_hasDigit) {
            m_format.decimals.reset();
        }
        return m_format;
    }

  private:
    void takeOne() {
        const char c = m_code[m_at++];
        switch (c) {
            case '"':
                takeQuoted();
                break;
            case '\\':
                takeLiteral();
                break;
            case '_':
            case '*':
                m_at += m_at < m_code.size() ? 1 : 0;
                break;
            case '[':
                takeBracket();
                break;
            case '%':
                m_format.isPercent = true;
                break;
            case '0':
            case '#':
            case '?':
                takeDigit(c);
                break;
            case '.':
                m_isBehindPoint = true;
                break;
            case ',':
                break;
            case 'E':
            case 'e':
            case '/':
            case '@':
                m_isFree = true;
                break;
            default:
                takeOther(c);
        }
    }

    void takeQuoted() {
        while (m_at < m_code.size() && m_code[m_at] != '"') {
            m_format.suffix += m_code[m_at++];
        }
        ++m_at;
    }

    void takeLiteral() {
        if (m_at < m_code.size()) {
            m_format.suffix += m_code[m_at++];
        }
    }

    /// Colors, conditions and languages say nothing of the value; times that run beyond a day are numbers.
    void takeBracket() {
        const std::size_t end = m_code.find(']', m_at);
        const std::string_view inside = m_code.substr(m_at, end - m_at);
        m_isFree =
            m_isFree || (!inside.empty() && inside.find_first_not_of("hHmMsS") == std::string_view::npos);
        m_isElapsed = m_isElapsed || m_isFree;
        m_at = end == std::string_view::npos ? m_code.size() : end + 1;
    }

    void takeDigit(char c) {
        m_hasDigit = true;
        m_format.suffix.clear();
        m_format.decimals = m_format.decimals.value_or(0) + (m_isBehindPoint && c == '0' ? 1 : 0);
    }

    void takeOther(char c) {
        const std::string_view rest = m_code.substr(m_at - 1);
        const bool isDayHalf = rest.starts_with("AM/PM") || rest.starts_with("A/P");
        const bool isTime = isDayHalf || std::string_view("hHsS").find(c) != std::string_view::npos;
        const bool isDay = std::string_view("yYdDmM").find(c) != std::string_view::npos;
        if (isDayHalf) {
            m_at += rest.starts_with("AM/PM") ? 4 : 2;
        }
        if (isTime || isDay) {
            m_format.isDate = !m_isElapsed;
            m_format.hasTime = m_format.hasTime || isTime;
            m_format.suffix.clear();
        } else {
            m_format.suffix += c;
        }
    }

    std::string_view m_code;
    NumberFormat m_format;
    std::size_t m_at = 0;
    bool m_isBehindPoint = false;
    bool m_hasDigit = false;
    bool m_isFree = false;
    bool m_isElapsed = false;
};

/// "%.15g" without its exponent.
std::string withoutExponent(const std::string& written) {
    const std::size_t mark = written.find('e');
    if (mark == std::string::npos) {
        return written;
    }
    const int power = std::atoi(written.c_str() + mark + 1);
    const bool isNegative = written.front() == '-';
    std::string digits;
    for (const char c : written.substr(0, mark)) {
        digits += c >= '0' && c <= '9' ? std::string(1, c) : "";
    }
    const int whole = power + 1;
    if (whole <= 0) {
        digits = "0." + std::string(static_cast<std::size_t>(-whole), '0') + digits;
    } else if (static_cast<int>(digits.size()) <= whole) {
        digits += std::string(static_cast<std::size_t>(whole) - digits.size(), '0');
    } else {
        digits.insert(static_cast<std::size_t>(whole), ".");
    }
    return (isNegative ? "-" : "") + digits;
}

std::string timeText(std::int64_t inDay) {
    char buffer[40];
    std::snprintf(buffer, sizeof buffer, "%02d:%02d:%02d", static_cast<int>(inDay / 3600),
                  static_cast<int>(inDay / 60 % 60), static_cast<int>(inDay % 60));
    return buffer;
}

}  // namespace

NumberFormat numberFormat(std::string_view code) {
    return FormatReader(code).run();
}

NumberFormat builtInFormat(int number) {
    switch (number) {
        case 1:
        case 3:
            return numberFormat("0");
        case 2:
        case 4:
            return numberFormat("0.00");
        case 9:
            return numberFormat("0%");
        case 10:
            return numberFormat("0.00%");
        case 14:
        case 15:
            return numberFormat("yyyy-mm-dd");
        case 16:
        case 17:
            return numberFormat("mmm-yy");
        case 18:
        case 19:
        case 20:
        case 21:
        case 45:
        case 47:
            return numberFormat("hh:mm:ss");
        case 22:
            return numberFormat("yyyy-mm-dd hh:mm");
        default:
            // The numbers of the East Asian calendars' dates.
            return (number >= 27 && number <= 36) || (number >= 50 && number <= 58)
                       ? numberFormat("yyyy-mm-dd")
                       : NumberFormat{};
    }
}

std::string plainDigits(double dimensionless, const NumberFormat& format) {
    char buffer[64];
    std::snprintf(buffer, sizeof buffer, "%.15g", format.isPercent ? dimensionless * 100 : dimensionless);
    std::string digits = withoutExponent(buffer);
    if (digits == "-0") {
        digits = "0";
    }
    if (format.decimals && *format.decimals > 0) {
        std::size_t point = digits.find('.');
        if (point == std::string::npos) {
            point = digits.size();
            digits += '.';
        }
        const std::size_t wanted = point + 1 + static_cast<std::size_t>(*format.decimals);
        digits.resize(std::max(digits.size(), wanted), '0');
    }
    return digits;
}

std::optional<std::string> momentText(double dimensionless, const NumberFormat& format, bool is1904) {
    using namespace std::chrono;
    constexpr double kDaysToYear10000 = 2'958'466;
    if (!(dimensionless >= 0) || dimensionless >= kDaysToYear10000) {
        return std::nullopt;
    }
    const auto seconds = static_cast<std::int64_t>(std::llround(dimensionless * 86400.0));
    std::int64_t day = seconds / 86400;
    const std::int64_t inDay = seconds % 86400;
    if (day == 0 && !is1904) {
        return timeText(inDay);
    }
    // The 1900 system counts a 29 February 1900 that never was, as day 60.
    sys_days start = sys_days{year{1899} / 12 / 30};
    if (is1904) {
        start = sys_days{year{1904} / 1 / 1};
    } else if (day < 60) {
        ++day;
    }
    const year_month_day date{start + days{day}};
    char buffer[40];
    std::snprintf(buffer, sizeof buffer, "%04d-%02u-%02u", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
    std::string text = buffer;
    if (format.hasTime || inDay != 0) {
        text += "T" + timeText(inDay);
    }
    return text;
}

}  // namespace ww::spreadsheet
