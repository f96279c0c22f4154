#include "ui/widgets/column_fit.h"

#include <QHeaderView>
#include <algorithm>

namespace ww::ui {

namespace {

constexpr int kColumnPadding = 12;

}  // namespace

int columnWidthFor(const QTableView& table, int column, int digits) {
    constexpr int kHeadPadding = 14;
    const QHeaderView* head = table.horizontalHeader();
    int width = digits * table.fontMetrics().horizontalAdvance('0') + kColumnPadding;
    const QString words = table.model()->headerData(column, Qt::Horizontal).toString();
    for (const QString& line : words.split('\n')) {
        width = std::max(width, head->fontMetrics().horizontalAdvance(line) + kHeadPadding);
    }
    return width;
}

void fitColumns(QTableView& table, std::span<const int> digits, int filling) {
    int left = table.viewport()->width();
    for (std::size_t i = 0; i < digits.size(); ++i) {
        const int width = columnWidthFor(table, static_cast<int>(i), digits[i]);
        table.setColumnWidth(static_cast<int>(i), width);
        left -= width;
    }
    // Where all together are too wide the filling one gives up what it can.
    const int least = columnWidthFor(table, filling, 4);
    table.setColumnWidth(filling, std::max(least, table.columnWidth(filling) + left));
}

bool fitColumnsInTurn(QTableView& table, std::span<const int> digits, int filling, bool isOthers) {
    const int digit = table.fontMetrics().horizontalAdvance('0');
    const int room = table.viewport()->width();
    const auto widthOf = [&](std::size_t column) {
        return columnWidthFor(table, static_cast<int>(column), digits[column]);
    };
    std::size_t firstHidden = digits.size();
    int used = 0;
    for (std::size_t column = 0; column < digits.size() && firstHidden == digits.size(); ++column) {
        used += widthOf(column);
        firstHidden = used > room && column > 0 ? column : firstHidden;
    }
    const bool isSome = firstHidden < digits.size();
    int left = room;
    for (std::size_t column = 0; column < digits.size(); ++column) {
        const bool isShown = column == 0 || !isSome || (column >= firstHidden) == isOthers;
        const int width = std::min(widthOf(column), std::max(left, digit));
        table.setColumnHidden(static_cast<int>(column), !isShown);
        table.setColumnWidth(static_cast<int>(column), width);
        left -= isShown ? width : 0;
    }
    // What is left goes to the widest use there is for it.
    const int taker =
        table.isColumnHidden(filling) ? static_cast<int>(isOthers ? digits.size() - 1 : 0) : filling;
    table.setColumnWidth(taker, table.columnWidth(taker) + std::max(0, left));
    return isSome;
}

}  // namespace ww::ui
