#include "ui/widgets/column_fit.h"

#include <algorithm>

namespace ww::ui {

void fitColumns(QTableView& table, std::span<const int> digits, int filling) {
    constexpr int kPadding = 12;
    const int digit = table.fontMetrics().horizontalAdvance('0');
    int left = table.viewport()->width();
    for (std::size_t i = 0; i < digits.size(); ++i) {
        const int width = digits[i] * digit + kPadding;
        table.setColumnWidth(static_cast<int>(i), width);
        left -= width;
    }
    table.setColumnWidth(filling, table.columnWidth(filling) + std::max(0, left));
}

}  // namespace ww::ui
