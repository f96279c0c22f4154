#include "core/spreadsheet/cell_name.h"

namespace ww::spreadsheet {

std::string columnName(std::size_t column) {
    std::string name;
    for (std::size_t rest = column + 1; rest > 0; rest = (rest - 1) / 26) {
        name.insert(name.begin(), static_cast<char>('A' + (rest - 1) % 26));
    }
    return name;
}

std::string cellName(CellPlace place) {
    return columnName(place.column) + std::to_string(place.row);
}

std::optional<CellPlace> cellPlace(std::string_view name) {
    std::size_t column = 0;
    std::size_t at = 0;
    while (at < name.size() && name[at] >= 'A' && name[at] <= 'Z' && column <= kMostColumns) {
        column = column * 26 + static_cast<std::size_t>(name[at++] - 'A' + 1);
    }
    const std::size_t letters = at;
    int row = 0;
    while (at < name.size() && name[at] >= '0' && name[at] <= '9' && row <= kMostRows) {
        row = row * 10 + (name[at++] - '0');
    }
    const bool isGood =
        letters > 0 && at == name.size() && row >= 1 && row <= kMostRows && column <= kMostColumns;
    return isGood ? std::optional(CellPlace{row, column - 1}) : std::nullopt;
}

}  // namespace ww::spreadsheet
