#include "core/spreadsheet/sheet.h"

namespace ww::spreadsheet {

std::string plainText(const WrittenCell& cell) {
    if (const auto* text = std::get_if<std::string>(&cell)) {
        return *text;
    }
    if (const auto* number = std::get_if<base::Decimal>(&cell)) {
        return number->text();
    }
    if (const auto* moment = std::get_if<base::Instant>(&cell)) {
        return moment->text();
    }
    const auto* day = std::get_if<Day>(&cell);
    return day != nullptr ? day->moment.date() : std::string();
}

}  // namespace ww::spreadsheet
