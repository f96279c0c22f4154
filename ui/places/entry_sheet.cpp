#include "ui/places/entry_sheet.h"

#include <QHeaderView>
#include <algorithm>

namespace ww::ui {

void setRowHeight(EntryTable& table, const theme::Metrics& metrics) {
    table.verticalHeader()->setMinimumSectionSize(metrics.rowHeight);
    table.verticalHeader()->setDefaultSectionSize(metrics.rowHeight);
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
    const int title = titleDigits * digit + kPadding;
    table.setColumnWidth(0, title);
    const int most = valueDigits * digit + kPadding;
    for (int column = 1; column < columns; ++column) {
        table.setColumnWidth(column,
                             std::clamp((table.viewport()->width() - title) / (columns - 1), 60, most));
    }
}

}  // namespace ww::ui
