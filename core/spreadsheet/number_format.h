// What a cell's number format says of the number below it (ISO/IEC 29500-1, 18.8.30 and 18.8.31): a date, a
// percentage, digits after the point, a text behind. Not for painting it.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace ww::spreadsheet {

struct NumberFormat {
    bool isDate = false;
    bool hasTime = false;  ///< of a date: hours, minutes or seconds are shown
    bool isPercent = false;
    std::optional<int> decimals;  ///< digits always shown after the point; nothing where the form is free
    std::string suffix;           ///< the text shown behind, without blanks around it
};

/// The first section of a format code.
NumberFormat numberFormat(std::string_view code);
/// One of the formats that stand for a number alone; without a meaning where the number has none.
NumberFormat builtInFormat(int number);

/// The number in plain digits, the shortest that give at most 15 significant ones, so that what binary
/// arithmetic leaves (0.30000000000000004) falls away. Padded with zeros to what the format shows; a
/// percentage is given as shown, times 100.
std::string plainDigits(double dimensionless, const NumberFormat& format);

/// The moment of a date cell: "2026-03-04", or "2026-03-04T14:02:07" where a time is shown or the number has
/// one; a time of day alone is "14:02:07". `is1904`: days are counted from 1904. Nothing beyond the year 9999
/// and below 0.
std::optional<std::string> momentText(double dimensionless, const NumberFormat& format, bool is1904);

}  // namespace ww::spreadsheet
