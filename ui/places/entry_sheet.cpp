#include "ui/places/entry_sheet.h"

#include <QHeaderView>
#include <algorithm>
#include <utility>
#include <vector>

#include "ui/places/column_fit.h"

namespace ww::ui {

namespace {

/// Titles of rows are wrapped no shorter than this.
constexpr int kLeastTitleDigits = 14;

}  // namespace

void setRowHeight(EntryTable& table, const theme::Metrics& metrics) {
    table.verticalHeader()->setMinimumSectionSize(metrics.rowHeight);
    table.verticalHeader()->setDefaultSectionSize(metrics.rowHeight);
    constexpr int kLeastRows = 4;
    table.setMinimumHeight(metrics.noticeHeight + kLeastRows * metrics.rowHeight);
}

void beginAtValues(EntryTable& table) {
    table.setFocus(Qt::OtherFocusReason);
    const QModelIndex current = table.currentIndex();
    if (table.model()->columnCount() > 1 && (!current.isValid() || current.column() == 0)) {
        table.setCurrentIndex(table.model()->index(std::max(0, current.row()), 1));
    }
}

void fitFieldColumns(EntryTable& table, int titleDigits, int valueDigits) {
    constexpr int kPadding = 14;
    const int digit = table.fontMetrics().horizontalAdvance('0');
    const int columns = table.model() != nullptr ? table.model()->columnCount() : 0;
    if (columns == 0) {
        return;
    }
    std::vector<std::pair<int, int>> leasts;
    std::vector<std::pair<int, int>> whole;
    int sum = 0;
    int sumWhole = 0;
    for (int column = 1; column < columns; ++column) {
        leasts.emplace_back(leastColumnWidth(table, column), column);
        whole.emplace_back(std::max(leasts.back().first, wordsColumnWidth(table, column)), column);
        sum += leasts.back().first;
        sumWhole += whole.back().first;
    }
    leaveRoomFor(table, kLeastTitleDigits * digit + sum);
    const int room = table.viewport()->width();
    const int wanted = std::max(titleDigits * digit + kPadding, wordsColumnWidth(table, 0));
    // Values show whole where the titles do too.
    if (wanted + sumWhole <= room) {
        leasts = whole;
        sum = sumWhole;
    }
    const int title = std::clamp(room - sum, kLeastTitleDigits * digit, wanted);
    table.setColumnWidth(0, title);
    // Alike, but for those that need more: the widest come first, the others share what is left.
    std::sort(leasts.rbegin(), leasts.rend());
    const int most = valueDigits * digit + kPadding;
    int left = room - title;
    int others = columns - 1;
    for (const auto& [least, column] : leasts) {
        const int width = std::clamp(left / others, least, std::max(least, most));
        table.setColumnWidth(column, width);
        left -= width;
        --others;
    }
    heightenWhereCut(table);
}

}  // namespace ww::ui
