#include "ui/places/entry_sheet.h"

#include <QHeaderView>
#include <algorithm>
#include <numeric>
#include <optional>
#include <utility>
#include <vector>

#include "ui/places/column_fit.h"
#include "ui/text/narrow_letters.h"

namespace ww::ui {

namespace {

/// Titles of rows are wrapped no shorter than this.
constexpr int kLeastTitleDigits = 14;

/// Of every column but the first its width, px, and which it is.
using ValueWidths = std::vector<std::pair<int, int>>;

/// For heads in letters of a width, percent; with `whole` also for each value in one line of such letters.
ValueWidths valueWidths(const QTableView& table, int headLetters, std::optional<int> whole = {}) {
    ValueWidths widths;
    for (int column = 1; column < table.model()->columnCount(); ++column) {
        const int least = leastColumnWidth(table, column, {headLetters});
        widths.emplace_back(whole ? std::max(least, wordsColumnWidth(table, column, *whole)) : least, column);
    }
    return widths;
}

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
    const int leastTitle = kLeastTitleDigits * digit;
    const int room = table.viewport()->width();
    const auto sumOf = [](const ValueWidths& widths) {
        return std::accumulate(widths.begin(), widths.end(), 0,
                               [](int sum, const auto& width) { return sum + width.first; });
    };
    // Heads become narrower before a value does.
    const QFont head = text::widestThatFits(QFont(), [&](const QFont& tried) {
                           return leastTitle + sumOf(valueWidths(table, text::stretchOf(tried))) <= room;
                       }).value_or(text::narrowest(QFont()));
    setHeadFont(table, head);
    const int letters = text::stretchOf(head);
    leaveRoomFor(table, leastTitle + sumOf(valueWidths(table, text::kLeastStretch)));
    ValueWidths leasts = valueWidths(table, letters);
    const int wanted = std::max(titleDigits * digit + kPadding, wordsColumnWidth(table, 0));
    // Values show whole where the titles do too, and keep their units beside them where titles may be
    // wrapped.
    if (const ValueWidths whole = valueWidths(table, letters, 100); wanted + sumOf(whole) <= room) {
        leasts = whole;
    } else if (const ValueWidths kept = valueWidths(table, letters, text::kLeastStretch);
               leastTitle + sumOf(kept) <= room) {
        leasts = kept;
    }
    const int title = std::clamp(room - sumOf(leasts), leastTitle, wanted);
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
